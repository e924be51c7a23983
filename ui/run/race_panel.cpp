#include "run/race_panel.hpp"

#include "run/race_view.hpp"
#include "text/figure_text.hpp"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>
#include <QSlider>
#include <QToolButton>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr int steps_a_second = 1000; ///< of the slider
constexpr int tick_ms = 16;
constexpr double slow_part = 0.25;

} // namespace

RacePanel::RacePanel(QWidget* parent)
    : QWidget(parent),
      view_(new RaceView(this)),
      play_(new QToolButton(this)),
      slider_(new QSlider(Qt::Horizontal, this)),
      slow_(new QCheckBox(tr("&Slow, a quarter"), this)),
      said_(new QLabel(this)) {
    setObjectName(QStringLiteral("race"));
    play_->setObjectName(QStringLiteral("race.play"));
    play_->setToolButtonStyle(Qt::ToolButtonTextOnly);
    play_->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Space));
    play_->setMinimumWidth(72);
    slider_->setObjectName(QStringLiteral("race.time"));
    slider_->setAccessibleName(tr("Time since the start"));
    slider_->setSingleStep(5);
    slider_->setPageStep(100);
    slow_->setObjectName(QStringLiteral("race.slow"));
    said_->setObjectName(QStringLiteral("race.said"));
    said_->setMinimumWidth(250);
    said_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    auto* row = new QHBoxLayout;
    row->setSpacing(10);
    row->addWidget(play_);
    row->addWidget(slider_, 1);
    row->addWidget(slow_);
    row->addWidget(said_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(view_, 1);
    column->addLayout(row);
    ticks_.setInterval(tick_ms);
    connect(&ticks_, &QTimer::timeout, this, &RacePanel::advance);
    connect(play_, &QToolButton::clicked, this, &RacePanel::toggle);
    connect(slider_, &QSlider::valueChanged, this, [this](int value) {
        pause();
        go_to(double(value) / steps_a_second);
    });
    pause();
}

void RacePanel::show_race(const Project& project, std::size_t first, std::size_t second) {
    pause();
    view_->look(nullptr, 0);
    race_.reset();
    units_ = project.units;
    try {
        if (std::max(first, second) < project.cars.size() && first != second)
            race_.emplace(project, first, second);
    } catch (const Problem& problem) {
        said_->setText(problem_text(problem));
    }
    const bool there = race_.has_value() && race_->duration() > 0;
    for (QWidget* each :
         {static_cast<QWidget*>(play_), static_cast<QWidget*>(slider_), static_cast<QWidget*>(slow_)})
        each->setEnabled(there);
    if (!there) return;
    const QSignalBlocker blocker(slider_);
    slider_->setRange(0, static_cast<int>(std::ceil(race_->duration() * steps_a_second)));
    go_to(0);
}

void RacePanel::toggle() {
    if (ticks_.isActive()) return pause();
    if (!race_) return;
    if (time_ >= race_->duration()) go_to(0);
    play_->setText(tr("&Pause"));
    since_.start();
    ticks_.start();
}

void RacePanel::pause() {
    ticks_.stop();
    play_->setText(tr("&Play"));
}

void RacePanel::advance() {
    const double passed = 1e-3 * double(since_.restart()) * (slow_->isChecked() ? slow_part : 1);
    if (!race_) return pause();
    go_to(time_ + passed);
    if (time_ >= race_->duration()) pause();
}

void RacePanel::go_to(double time) {
    time_ = std::clamp(time, 0.0, race_ ? race_->duration() : 0.0);
    {
        const QSignalBlocker blocker(slider_);
        slider_->setValue(static_cast<int>(std::lround(time_ * steps_a_second)));
    }
    view_->look(race_ ? &*race_ : nullptr, time_);
    if (!race_) return;
    said_->setText(
        tr("%1: %2").arg(quantity_text(time_, Quantity::time, units_), race_->standing_text(time_, units_)));
}

} // namespace rampwright::ui
