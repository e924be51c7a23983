#include <rampwright/study/curves.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Into which each smooth stretch is cut: about a centimetre between points of a lane of ten metres.
constexpr int parts = 24;

double between(double a, double b, double part) {
    return a + part * (b - a);
}

LossPowers between(const LossPowers& a, const LossPowers& b, double part) {
    LossPowers p{between(a.journal, b.journal, part), between(a.hub, b.hub, part),
                 between(a.rolling, b.rolling, part), between(a.scrub, b.scrub, part),
                 between(a.air, b.air, part),         {}};
    if (a.rail && b.rail) p.rail = between(*a.rail, *b.rail, part);
    return p;
}

} // namespace

Curves curves_along_track(const Project& project, std::size_t car) {
    const ReadyHeat ready = make_ready(make_case(project, car));
    const HeatResult heat = run_heat(ready.course, ready.car, HeatDetail::trace, {.parts = parts});
    Curves curves;
    curves.finished = heat.finished;
    curves.length = ready.track->finish_line() - ready.track->start_line();
    curves.points.reserve(heat.trace.size());
    for (const HeatPoint& moment : heat.trace) {
        const Pose pose = ready.course.axles().pose(moment.q);
        CurvePoint point;
        point.at = moment.at;
        point.time = moment.time;
        point.speed = moment.speed;
        point.rear_load = moment.rear_load;
        point.front_load = moment.front_load;
        for (Corner corner : all_corners) {
            const HeatCar::WheelPart& part = ready.car.parts[std::size_t(corner)];
            if (!part.touches) continue;
            const double axle = is_front(corner) ? moment.front_load : moment.rear_load;
            point.wheel_load[std::size_t(corner)] = part.load_share * axle;
        }
        point.power = {moment.power_journal, moment.power_hub, moment.power_rolling,
                       moment.power_scrub,   moment.power_air, {}};
        if (ready.car.guide.rail) point.power.rail = moment.power_rail;
        point.rear_centre = {pose.rear.at.real(), pose.rear.at.imag()};
        point.front_centre = {pose.front.at.real(), pose.front.at.imag()};
        curves.points.push_back(point);
    }
    return curves;
}

CurvePoint curve_at(const Curves& curves, double at) {
    const std::vector<CurvePoint>& points = curves.points;
    if (points.empty()) return {};
    if (at <= points.front().at) return points.front();
    if (at >= points.back().at) return points.back();
    const auto after =
        std::upper_bound(points.begin(), points.end(), at,
                         [](double place, const CurvePoint& point) { return place < point.at; });
    const CurvePoint &a = *(after - 1), &b = *after;
    const double part = b.at > a.at ? (at - a.at) / (b.at - a.at) : 0;
    CurvePoint point = a;
    point.at = at;
    // Energy changes evenly with place, not speed: near rest that is the difference.
    point.speed = std::sqrt(between(a.speed * a.speed, b.speed * b.speed, part));
    const double whole = a.speed + b.speed, done = a.speed + point.speed;
    point.time = between(a.time, b.time, done > 0 ? part * whole / done : 0);
    point.rear_load = between(a.rear_load, b.rear_load, part);
    point.front_load = between(a.front_load, b.front_load, part);
    for (std::size_t n = 0; n < 4; ++n)
        if (a.wheel_load[n] && b.wheel_load[n])
            point.wheel_load[n] = between(*a.wheel_load[n], *b.wheel_load[n], part);
    point.power = between(a.power, b.power, part);
    point.rear_centre += part * (b.rear_centre - a.rear_centre);
    point.front_centre += part * (b.front_centre - a.front_centre);
    return point;
}

} // namespace rampwright
