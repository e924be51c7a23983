#include "run/steps_page.hpp"

#include "look/theme.hpp"
#include "session/aside.hpp"
#include "text/figure_text.hpp"

#include <rampwright/results/in_units.hpp>
#include <rampwright/study/names.hpp>
#include <rampwright/study/steps.hpp>
#include <rampwright/units/format.hpp>

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <memory>

namespace rampwright::ui {
namespace {

constexpr int steps_settling_ms = 150, rows_of_worth = 8, rows_of_doubt = 6;

/// A gain on a scale with its one-sigma range: to the right of the zero line it is faster, to the left
/// slower.
class GainBar : public QWidget {
public:
    GainBar(double gain, double sigma, double least, double most, QWidget* parent)
        : QWidget(parent), gain_(gain), sigma_(sigma), least_(least), most_(most) {
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    }
    QSize sizeHint() const override { return {180, 18}; }
    QSize minimumSizeHint() const override { return {80, 16}; }

protected:
    void paintEvent(QPaintEvent*) override {
        const Theme& t = theme();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        const auto x = [this](double ms) { return 3 + (ms - least_) / (most_ - least_) * (width() - 6); };
        const double y = 0.5 * height(), zero = x(0);
        painter.setPen(Qt::NoPen);
        painter.setBrush(gain_ >= 0 ? t.accent : t.caution);
        painter.drawRect(
            QRectF(QPointF(std::min(zero, x(gain_)), y - 5), QPointF(std::max(zero, x(gain_)), y + 5)));
        painter.setPen(QPen(t.ink, 1.4));
        painter.drawLine(QPointF(x(gain_ - sigma_), y), QPointF(x(gain_ + sigma_), y));
        for (const double end : {gain_ - sigma_, gain_ + sigma_})
            painter.drawLine(QPointF(x(end), y - 3), QPointF(x(end), y + 3));
        painter.setPen(QPen(t.faint_ink, 1));
        painter.drawLine(QPointF(zero, 0), QPointF(zero, height()));
    }

private:
    double gain_, sigma_, least_, most_;
};

void clear_grid(QGridLayout* grid) {
    while (QLayoutItem* item = grid->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

QLabel* wrapped_label(QWidget* parent, const QString& text, bool bold = false) {
    auto* label = new QLabel(text, parent);
    label->setFont(text_font(1.0, bold));
    label->setWordWrap(!bold);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setFocusPolicy(Qt::NoFocus);
    return label;
}

QString effort_words(Effort effort) {
    switch (effort) {
    case Effort::small:
        return StepsPage::tr("little work");
    case Effort::some:
        return StepsPage::tr("some work");
    case Effort::much:
        break;
    }
    return StepsPage::tr("much work");
}

} // namespace

StepsPage::StepsPage(Session& session, QWidget* parent)
    : QScrollArea(parent), session_(session), settle_(new QTimer(this)) {
    setObjectName(QStringLiteral("what-pays"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("What pays"));
    auto* page = new QWidget;
    page->setBackgroundRole(QPalette::Base);
    page->setAutoFillBackground(true);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(16, 8, 16, 12);
    column->setSpacing(4);
    const auto title = [&](QVBoxLayout* to, const QString& text, const QString& note) {
        auto* label = new QLabel(text, page);
        label->setFont(text_font(1.1, true));
        to->addWidget(label);
        auto* why = wrapped_label(page, note);
        why->setForegroundRole(QPalette::PlaceholderText);
        to->addWidget(why);
        return why;
    };
    state_ = title(column, tr("What you can still do"), QString());
    state_->setObjectName(QStringLiteral("what-pays.state"));
    steps_ = new QGridLayout;
    steps_->setHorizontalSpacing(14);
    steps_->setVerticalSpacing(5);
    steps_->setColumnStretch(0, 5);
    steps_->setColumnStretch(2, 3);
    column->addLayout(steps_);
    column->addSpacing(12);
    auto* halves = new QHBoxLayout;
    halves->setSpacing(28);
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    title(left, tr("What a change is worth"), tr("Heat time for one more of each; less is faster."));
    title(right, tr("What makes the time unsure"), tr("Part of the uncertainty that each brings."));
    worth_ = new QGridLayout;
    doubt_ = new QGridLayout;
    for (QGridLayout* grid : {worth_, doubt_}) {
        grid->setVerticalSpacing(2);
        grid->setColumnStretch(0, 1);
    }
    left->addLayout(worth_);
    right->addLayout(doubt_);
    left->addStretch(1);
    right->addStretch(1);
    halves->addLayout(left, 1);
    halves->addLayout(right, 1);
    column->addLayout(halves);
    column->addStretch(1);
    setWidget(page);

    settle_->setSingleShot(true);
    settle_->setInterval(steps_settling_ms);
    connect(settle_, &QTimer::timeout, this, &StepsPage::start);
    connect(&session_, &Session::changed, this, &StepsPage::ask);
    connect(&session_, &Session::car_chosen, this, &StepsPage::ask);
}

void StepsPage::ask() {
    ++wanted_;
    if (isVisible()) settle_->start();
}

void StepsPage::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    if (!fresh()) settle_->start(0);
}

void StepsPage::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::PaletteChange) widget()->update();
}

void StepsPage::start() {
    if (fresh()) return;
    fill_worth();
    if (!session_.figures()) {
        shown_ = wanted_;
        fill({});
        return;
    }
    state_->setText(tr("Working it out…"));
    // A copy of its own: the project may change while heats are run.
    auto project = std::make_shared<const Project>(session_.project());
    work_aside(
        this,
        [project, car = session_.car()] {
            try {
                return find_steps(*project, car);
            } catch (const Problem&) {
                return std::vector<BuilderStep>(); // the panels say what is wrong with the car
            }
        },
        [this, asked = wanted_](const std::vector<BuilderStep>& steps) {
            if (wanted_ != asked) return;
            shown_ = asked;
            fill(steps);
        });
}

void StepsPage::fill(const std::vector<BuilderStep>& steps) {
    clear_grid(steps_);
    state_->setText(steps.empty()
                        ? tr("Nothing to work out: the car does not finish.")
                        : tr("Each alone, on this car, within the rules; the range is one sigma of what is "
                             "not known for sure, not of the hand that does it."));
    double least = 0, most = 1e-3;
    for (const BuilderStep& step : steps) {
        least = std::min(least, step.gain - step.sigma);
        most = std::max(most, step.gain + step.sigma);
    }
    const UnitSystem units = session_.project().units;
    int row = 0;
    for (const BuilderStep& step : steps) {
        const QString what = QString::fromStdString(text_of(step, units));
        const QString amount = QString::fromStdString(format_with_sigma(
            std::abs(step.gain), step.sigma, Quantity::time, units, {.unit = find_unit("ms")}));
        const QString gain = step.gain >= 0 ? tr("%1 faster").arg(amount) : tr("%1 slower").arg(amount);
        auto* phrase = wrapped_label(widget(), what);
        auto* value = wrapped_label(widget(), gain, true);
        value->setObjectName(QStringLiteral("step-gain.") + QString::fromStdString(step.key));
        value->setAccessibleName(tr("%1 %2, %3").arg(what, gain, effort_words(step.effort)));
        auto* effort = wrapped_label(widget(), effort_words(step.effort));
        effort->setWordWrap(false);
        effort->setForegroundRole(QPalette::PlaceholderText);
        steps_->addWidget(phrase, row, 0);
        steps_->addWidget(effort, row, 1);
        steps_->addWidget(new GainBar(step.gain, step.sigma, least, most, widget()), row, 2);
        steps_->addWidget(value, row, 3, Qt::AlignRight);
        ++row;
        if (step.key != "cant-rear" || step.gain >= 0) continue;
        auto* remark = wrapped_label(
            widget(),
            tr("Builders say that cant is faster; this model says otherwise: the hub then "
               "rubs on the axle's head all the way, and a tread on its edge is taken to "
               "roll no easier. About %1 runs each way would tell.")
                .arg(runs_to_settle(-step.gain, std::max(1e-3, session_.project().track.run_scatter))));
        remark->setObjectName(QStringLiteral("what-pays.dispute"));
        remark->setForegroundRole(QPalette::PlaceholderText);
        steps_->addWidget(remark, row++, 0, 1, 4);
    }
}

void StepsPage::fill_worth() {
    clear_grid(worth_);
    clear_grid(doubt_);
    const Figures* figures = session_.figures();
    if (!figures) return;
    const auto add = [this](QGridLayout* grid, int row, const QString& name, const QString& value) {
        grid->addWidget(wrapped_label(widget(), name), row, 0);
        auto* number = wrapped_label(widget(), value, true);
        number->setAccessibleName(tr("%1: %2").arg(name, value));
        grid->addWidget(number, row, 1, Qt::AlignRight);
    };
    for (int n = 0; n < std::min<int>(rows_of_worth, int(figures->sensitivities.size())); ++n) {
        const Sensitivity& s = figures->sensitivities[std::size_t(n)];
        const QString ms = QString::fromStdString(
            format_milliseconds(s.ms * 1e-3, session_.project().units, std::abs(s.ms) < 1 ? 2 : 1));
        add(worth_, n, QString::fromStdString(change_phrase(s.key, s.per, session_.project().units)),
            s.ms > 0 ? QStringLiteral("+") + ms : ms);
    }
    for (int n = 0; n < std::min<int>(rows_of_doubt, int(figures->shares.size())); ++n) {
        const Share& share = figures->shares[std::size_t(n)];
        add(doubt_, n, QString::fromStdString(input_name(share.key, session_.plan())),
            QString::fromStdString(format(share.share, Quantity::percent, session_.project().units)));
    }
}

} // namespace rampwright::ui
