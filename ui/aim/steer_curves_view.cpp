#include "aim/steer_curves_view.hpp"

#include "plots/time_plot.hpp"
#include "text/figure_text.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/steer/tuning_state.hpp>
#include <rampwright/study/time_curves.hpp>

#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

constexpr double most_steer = 3 * degree, most_shift = 0.03;
constexpr std::size_t steer_points = 41, load_points = 25;
constexpr int settle_ms = 120;

TimePlot::Curve in_units(const TimeCurve& curve, const Unit& unit) {
    TimePlot::Curve shown;
    const double best = curve.best.time.value_or(0);
    const auto place = [&](const TimeAt& at) {
        return QPointF(from_si(at.at, unit), 1000 * (at.time.value_or(qInf()) - best));
    };
    for (const TimeAt& point : curve.points)
        shown.points.push_back(place(point));
    if (curve.best.time) shown.best = place(curve.best);
    if (curve.today.time) shown.today = place(curve.today);
    shown.flat_from = from_si(curve.flat_from, unit);
    shown.flat_to = from_si(curve.flat_to, unit);
    shown.flat_height = 1000 * flat_within;
    return shown;
}

} // namespace

SteerCurvesView::SteerCurvesView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      steer_(new TimePlot(QStringLiteral("curve.steer"), tr("steer towards the rail"), this)),
      load_(new TimePlot(QStringLiteral("curve.load"), tr("front load"), this)),
      steer_words_(new QLabel(this)),
      load_words_(new QLabel(this)) {
    setObjectName(QStringLiteral("curves"));
    steer_words_->setObjectName(QStringLiteral("curve.steer.words"));
    load_words_->setObjectName(QStringLiteral("curve.load.words"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    for (const auto& [plot, words] : {std::pair{steer_, steer_words_}, {load_, load_words_}}) {
        words->setWordWrap(true);
        column->addWidget(words);
        column->addWidget(plot, 1);
    }
    wait_.setSingleShot(true);
    wait_.setInterval(settle_ms);
    connect(&wait_, &QTimer::timeout, this, &SteerCurvesView::refresh);
    const auto later = [this] {
        if (isVisible()) wait_.start();
    };
    connect(&session_, &Session::changed, this, later);
    connect(&session_, &Session::car_chosen, this, later);
}

void SteerCurvesView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void SteerCurvesView::refresh() {
    const UnitSystem units = session_.project().units;
    try {
        const HeatCase heat_case = make_case(session_.project(), session_.car());
        const Unit& degrees = default_unit(Quantity::angle, units);
        const TimeCurve steer = time_against_steer(heat_case, most_steer, steer_points);
        steer_->show_curve(in_units(steer, degrees),
                           QString::fromUtf8(degrees.symbol.data(), qsizetype(degrees.symbol.size())));
        const CarPlan& plan = session_.plan();
        const double over = follow_tuning_log(plan, 0).plan.over;
        const double wheelbase = plan.axles.front_x - plan.axles.rear_x;
        const auto drift = [&](double angle) {
            const auto seen = drift_from_steer(wheelbase, angle, over, plan.steer.watched_ahead);
            return seen ? quantity_text(*seen, Quantity::length, units) : QStringLiteral("–");
        };
        steer_words_->setText(tr("Best is about %1 of steer towards the rail, %2 of drift over %3. Anything "
                                 "between %4 and %5 of "
                                 "drift costs less than 1 ms. A reduced model: its friction and bump values "
                                 "are to be fitted to "
                                 "your lane.")
                                  .arg(quantity_text(steer.best.at, Quantity::angle, units),
                                       drift(steer.best.at), quantity_text(over, Quantity::length, units),
                                       drift(steer.flat_from), drift(steer.flat_to)));

        const Unit& grams = default_unit(Quantity::mass, units);
        const TimeCurve load = time_against_front_load(heat_case, most_shift, load_points);
        load_->show_curve(in_units(load, grams),
                          QString::fromUtf8(grams.symbol.data(), qsizetype(grams.symbol.size())));
        load_words_->setText(tr("Moving all the ballast together: best is about %1 on the front wheels, "
                                "today it is %2. Between "
                                "%3 and %4 the difference is less than 1 ms.")
                                 .arg(quantity_text(load.best.at, Quantity::mass, units),
                                      quantity_text(load.today.at, Quantity::mass, units),
                                      quantity_text(load.flat_from, Quantity::mass, units),
                                      quantity_text(load.flat_to, Quantity::mass, units)));
    } catch (const Problem& problem) {
        steer_->show_curve({}, {});
        load_->show_curve({}, {});
        steer_words_->setText(problem_text(problem));
        load_words_->clear();
    }
}

} // namespace rampwright::ui
