#include <rampwright/study/time_curves.hpp>

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cassert>
#include <functional>
#include <limits>

namespace rampwright {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();

/// One axis of the study: the case at a setting, and where that lies on the curve.
using Setting = std::function<std::pair<double, HeatCase>(double)>;

struct Sample {
    double setting = 0;
    TimeAt point;
    double time() const { return point.time.value_or(never); }
};

/// Where the time crosses `level` between two samples, by a straight line.
double crossing(const Sample& in, const Sample& out, double level) {
    if (!out.point.time) return in.point.at;
    const double part = (level - in.time()) / (out.time() - in.time());
    return in.point.at + std::clamp(part, 0.0, 1.0) * (out.point.at - in.point.at);
}

TimeCurve trace(const Setting& set, double least, double most, std::size_t count,
                const std::shared_ptr<const Track>& track) {
    assert(count >= 3 && least < most);
    const auto sample = [&](double setting) {
        const auto [at, heat_case] = set(setting);
        return Sample{setting, {at, clock_time(heat_case, track)}};
    };
    std::vector<Sample> samples;
    for (std::size_t i = 0; i < count; ++i)
        samples.push_back(sample(least + (most - least) * double(i) / double(count - 1)));
    const auto quickest = std::min_element(
        samples.begin(), samples.end(), [](const Sample& a, const Sample& b) { return a.time() < b.time(); });

    TimeCurve curve;
    for (const Sample& each : samples)
        curve.points.push_back(each.point);
    if (curve.points.front().at > curve.points.back().at)
        std::reverse(curve.points.begin(), curve.points.end());
    curve.today = sample(0).point;
    curve.best = quickest->point;
    if (!quickest->point.time) return curve;

    // Between the quickest sample's neighbours lies the best itself, unless it is at an end.
    Sample best = *quickest;
    if (quickest != samples.begin() && quickest + 1 != samples.end()) {
        constexpr int bits = 14;
        const auto [setting, time] =
            boost::math::tools::brent_find_minima([&](double s) { return sample(s).time(); },
                                                  (quickest - 1)->setting, (quickest + 1)->setting, bits);
        if (time < best.time()) best = sample(setting);
    }
    curve.best = best.point;

    const double level = best.time() + flat_within;
    double ends[2] = {best.point.at, best.point.at};
    const auto walk = [&](auto from, auto to, double& end) {
        Sample inside = best;
        for (; from != to; ++from) {
            if (from->time() > level) {
                end = crossing(inside, *from, level);
                return;
            }
            inside = *from;
            end = inside.point.at;
        }
    };
    const auto after = std::find_if(samples.begin(), samples.end(),
                                    [&](const Sample& s) { return s.setting > best.setting; });
    walk(after, samples.end(), ends[0]);
    const auto before = std::find_if(samples.rbegin(), samples.rend(),
                                     [&](const Sample& s) { return s.setting < best.setting; });
    walk(before, samples.rend(), ends[1]);
    curve.flat_from = std::min(ends[0], ends[1]);
    curve.flat_to = std::max(ends[0], ends[1]);
    return curve;
}

} // namespace

TimeCurve time_against_steer(const HeatCase& heat_case, double most, std::size_t count) {
    const auto track = std::make_shared<const Track>(heat_case.track);
    const double side = ridden_side(heat_case.car.wheels);
    const auto at_steer = [&](double steer) {
        HeatCase changed = heat_case;
        for (Wheel& wheel : changed.car.wheels)
            if (is_front(wheel.corner) && wheel.touches) wheel.toe = side * steer;
        return std::pair{steer, std::move(changed)};
    };
    TimeCurve curve = trace(at_steer, -most, most, count, track);
    // A touching pair need not be set alike today: its own time, at its mean.
    curve.today = {side * mean_toe(heat_case.car.wheels, true), clock_time(heat_case, track)};
    return curve;
}

TimeCurve time_against_front_load(const HeatCase& heat_case, double most_shift, std::size_t count) {
    const auto track = std::make_shared<const Track>(heat_case.track);
    const CarModel& car = heat_case.car;
    double loose = 0;
    for (const Part& part : car.parts)
        if (part.kind == PartKind::ballast) loose += part.properties.mass;
    const double mass = car.as_built.mass.value_or(total(car).mass);
    const double wheelbase = car.front_x - car.rear_x;
    const auto shifted = [&](double shift) {
        HeatCase changed = heat_case;
        for (Part& part : changed.car.parts)
            if (part.kind == PartKind::ballast) part.properties.centre.x() += shift;
        AsBuilt& built = changed.car.as_built;
        if (built.front_load) *built.front_load += loose * shift / wheelbase;
        if (built.balance_ahead_of_rear_axle) *built.balance_ahead_of_rear_axle += loose * shift / mass;
        return changed;
    };
    const auto front_load = [&](const HeatCase& changed) {
        return stand(on_wheels(changed.car), 0, track->gravity()).front / track->gravity();
    };
    // Only shifts that leave the front a load: linear in the shift, so two standings tell.
    const double today = front_load(heat_case), per_shift = loose / wheelbase;
    double least = -most_shift;
    if (per_shift > 0 && today - per_shift * most_shift < 0.02 * today) least = -0.98 * today / per_shift;
    return trace(
        [&](double shift) {
            HeatCase changed = shifted(shift);
            const double at = front_load(changed);
            return std::pair{at, std::move(changed)};
        },
        least, most_shift, count, track);
}

} // namespace rampwright
