#include "run/versus_panel.hpp"

#include "fields/quiet_combo_box.hpp"
#include "look/theme.hpp"
#include "run/bell_plot.hpp"
#include "run/difference_table.hpp"
#include "run/draws_bar.hpp"
#include "run/race_panel.hpp"

#include <rampwright/results/versus_text.hpp>

#include <QHBoxLayout>
#include <QLabel>
#include <QSignalBlocker>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr std::size_t versus_draws = 10000;

QString text_of(const std::string& text) {
    return QString::fromStdString(text);
}

/// "17.2 ms" of "−17.2 ms".
QString without_sign(const std::string& text) {
    QString amount = text_of(text);
    if (amount.startsWith(QChar(0x2212))) amount.remove(0, 1);
    return amount;
}

} // namespace

VersusPanel::VersusPanel(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), job_(session, this) {
    setObjectName(QStringLiteral("versus"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 12, 20, 10);
    column->setSpacing(6);

    auto* choice = new QHBoxLayout;
    first_ = new QuietComboBox(this);
    first_->setObjectName(QStringLiteral("versus.first"));
    first_->setAccessibleName(tr("First car"));
    second_ = new QuietComboBox(this);
    second_->setObjectName(QStringLiteral("versus.second"));
    second_->setAccessibleName(tr("Second car"));
    for (QComboBox* box : {first_, second_}) {
        box->setMinimumWidth(150);
        connect(box, &QComboBox::activated, this, [this, box] { choose(box == second_); });
    }
    choice->addWidget(first_);
    choice->addWidget(new QLabel(tr("against"), this));
    choice->addWidget(second_);
    choice->addStretch(1);
    column->addLayout(choice);

    results_ = new QWidget(this);
    auto* inner = new QVBoxLayout(results_);
    inner->setContentsMargins(0, 0, 0, 0);
    inner->setSpacing(4);
    wins_ = new QLabel(results_);
    wins_->setObjectName(QStringLiteral("versus.wins"));
    wins_->setFont(text_font(1.5, true));
    gap_ = new QLabel(results_);
    gap_->setObjectName(QStringLiteral("versus.gap"));
    lead_ = new QLabel(results_);
    lead_->setObjectName(QStringLiteral("versus.lead"));
    for (QLabel* label : {wins_, gap_, lead_}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    gap_->setToolTip(
        tr("What both cars share is drawn once for both: the lane, the air, the kind of friction. "
           "What is each car's own is drawn apart."));
    bells_ = new BellPlot(results_);
    bells_->setObjectName(QStringLiteral("versus.bells"));
    inner->addWidget(wins_);
    inner->addWidget(gap_);
    inner->addWidget(lead_);
    inner->addWidget(bells_, 2);
    auto* halves = new QHBoxLayout;
    halves->setSpacing(20);
    differences_ = new DifferenceTable(session_, this);
    halves->addWidget(results_, 1);
    halves->addWidget(differences_, 1);
    column->addLayout(halves, 3);
    auto* bar = new DrawsBar(job_, this);
    column->addWidget(bar);
    race_ = new RacePanel(this);
    column->addWidget(race_, 3);

    connect(bar, &DrawsBar::asked, this, &VersusPanel::ask);
    connect(&job_, &DrawsJob::changed, this, &VersusPanel::refresh);
    connect(&session_, &Session::changed, this, [this](const QStringList& keys) {
        list_cars();
        if (!isVisible()) return;
        show_race();
        if (keys.isEmpty()) ask(1); // another project
    });
    list_cars();
    refresh();
}

/// Names may change, cars may come and go; whom a person has chosen stays as long as there is such a place.
void VersusPanel::list_cars() {
    const auto& cars = session_.project().cars;
    const int count = static_cast<int>(cars.size());
    const bool anew = first_->count() == 0;
    for (QComboBox* box : {first_, second_}) {
        const QSignalBlocker blocker(box);
        const int chosen = box->currentIndex();
        box->clear();
        for (const CarPlan& car : cars)
            box->addItem(text_of(car.name));
        box->setCurrentIndex(std::clamp(chosen, 0, std::max(0, count - 1)));
    }
    if (anew && count > 1) second_->setCurrentIndex(1);
}

/// The same car twice is no race: the other place takes the car that was here before.
void VersusPanel::choose(bool second) {
    QComboBox *here = second ? second_ : first_, *other = second ? first_ : second_;
    if (here->currentIndex() == other->currentIndex() && other->count() > 1)
        other->setCurrentIndex((here->currentIndex() + 1) % other->count());
    show_race();
    ask(1);
}

void VersusPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    show_race();
    ask(1);
}

void VersusPanel::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    job_.release();
    race_->pause();
}

void VersusPanel::ask(std::uint64_t seed) {
    if (session_.project().cars.size() < 2) return job_.release();
    job_.want({std::size_t(first_->currentIndex()), std::size_t(second_->currentIndex())}, versus_draws,
              seed);
}

void VersusPanel::show_race() {
    differences_->want(std::size_t(std::max(0, first_->currentIndex())),
                       std::size_t(std::max(0, second_->currentIndex())));
    race_->show_race(session_.project(), std::size_t(first_->currentIndex()),
                     std::size_t(second_->currentIndex()));
}

void VersusPanel::refresh() {
    const DrawsResult* result = job_.result();
    results_->setEnabled(job_.state() == DrawsJob::State::done);
    if (result && result == shown_ && job_.state() != DrawsJob::State::done) return;
    shown_ = result;
    if (!result || !result->versus) {
        wins_->setText(session_.project().cars.size() < 2
                           ? tr("A race needs two cars: duplicate this one and change the copy.")
                           : QStringLiteral("–"));
        gap_->setText(QStringLiteral(" "));
        lead_->setText(QStringLiteral(" "));
        bells_->show_bells({});
        return;
    }
    const auto& cars = session_.project().cars;
    const VersusText text = to_text(*result->versus, session_.project().units);
    const QString first = text_of(cars[result->cars[0]].name);
    wins_->setText(tr("%1 wins %2 of the heats").arg(first, text_of(text.wins)));
    // The gap is the first's; where it is the slower one, the sentence is the other's.
    const QString second = text_of(cars[result->cars[1]].name);
    gap_->setText(tr("%1 is faster by %2, one sigma %3; %4 is the faster car in %5 of the draws.")
                      .arg(result->versus->mean_gap < 0 ? second : first, without_sign(text.gap),
                           text_of(text.sigma), first, text_of(text.better)));
    lead_->setText(tr("At the finish %1 leads by %2.")
                       .arg(result->versus->gap_at_finish < 0 ? second : first, without_sign(text.lead)));
    std::vector<BellPlot::Bell> bells;
    for (std::size_t i = 0; i < 2; ++i) {
        const DrawnHeat heat = summarise(result->draws.cars[i]);
        bells.push_back({text_of(cars[result->cars[i]].name), result->draws.cars[i].heat, heat.mean,
                         heat.interval95, i == 0});
    }
    bells_->show_bells(std::move(bells));
}

} // namespace rampwright::ui
