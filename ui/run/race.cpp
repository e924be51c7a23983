#include "run/race.hpp"

#include "text/figure_text.hpp"

#include <rampwright/heat/replay.hpp>

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

struct RaceWords {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Race)
};

constexpr double level_gap = 0.05e-3; ///< m: nearer than this nobody leads

} // namespace

Race::Race(const Project& project, std::size_t first, std::size_t second)
    : track_(std::make_shared<const Track>(project.track)) {
    const std::array<std::size_t, 2> cars{first, second};
    for (std::size_t i = 0; i < cars.size(); ++i) {
        const CarPlan& plan = project.cars.at(cars[i]);
        const ReadyHeat ready = make_ready(make_case(project, cars[i]), track_);
        racers_[i] = {QString::fromStdString(plan.name), make_car_shape(plan),
                      run_heat(ready.course, ready.car, HeatDetail::trace), ready.wheels.nose.x(),
                      ready.wheels.wheelbase};
    }
    const HeatResult &a = racers_[0].heat, &b = racers_[1].heat;
    const auto end = [](const HeatResult& heat) { return heat.trace.empty() ? 0 : heat.trace.back().time; };
    if (a.finished && b.finished)
        duration_ = std::min(a.time, b.time);
    else if (a.finished || b.finished)
        duration_ = a.finished ? a.time : b.time;
    else
        duration_ = std::max(end(a), end(b));
}

double Race::place(std::size_t which, double time) const {
    return place_at(racers_[which].heat, time);
}

QTransform Race::stand(std::size_t which, double time) const {
    const Racer& racer = racers_[which];
    const double rear = track_->start_line() + place(which, time) - racer.nose_ahead;
    const std::complex<double> from = track_->point(rear).at;
    const std::complex<double> to = track_->point(rear + racer.wheelbase).at;
    // Both wheels' feet in the car's own frame, taken to the surface: turned, and moved.
    const Vec2 foot = racer.shape.ground[0], ahead = racer.shape.ground[1] - foot;
    const std::complex<double> turn = (to - from) / std::complex<double>(ahead.x(), ahead.y());
    const std::complex<double> unit = turn / std::abs(turn);
    QTransform transform;
    transform.translate(from.real(), from.imag());
    transform = QTransform(unit.real(), unit.imag(), -unit.imag(), unit.real(), 0, 0) * transform;
    return QTransform::fromTranslate(-foot.x(), -foot.y()) * transform;
}

QString Race::standing_text(double time, UnitSystem units) const {
    const double gap = place(0, time) - place(1, time);
    if (std::abs(gap) < level_gap) return RaceWords::tr("side by side");
    return RaceWords::tr("%1 leads by %2")
        .arg(name(gap > 0 ? 0 : 1), quantity_text(std::abs(gap), Quantity::length, units));
}

} // namespace rampwright::ui
