#include "explain/along_heat.hpp"

#include "heat/motion.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace rampwright {

namespace {

/// Fine enough for seven digits: the trapezoids' error falls with the square of the step.
constexpr int trace_parts = 64;

double dot(std::complex<double> a, std::complex<double> b) {
    return a.real() * b.real() + a.imag() * b.imag();
}

/// What is summed, at one place.
struct Sample {
    double q = 0, at = 0, w = 0; ///< w: q'^2
    std::array<AlongHeat::WheelMeans, 4> wheels;
    double air = 0, rear_stirring = 0, front_stirring = 0, rail_rate = 0, crossing = 0;
};

struct AxleState {
    const HeatAxle* axle;
    const CentrePath::Point* path;
    double rate = 1, load = 0;
};

Sample sample_at(const ReadyHeat& ready, const Course::Stretch& stretch, const HeatPoint& point) {
    const HeatCar& car = ready.car;
    const Pose pose = ready.course.axles().pose(stretch.rear_piece, stretch.front_piece, point.q,
                                                stretch.front_q + (point.q - stretch.from));
    const std::complex<double> arm = pose.along * in_axle_frame(car, car.centre);
    const std::complex<double> centre_rate =
        pose.rear.tangent + pose.pitch_rate * std::complex<double>(-arm.imag(), arm.real());
    const double speed = point.speed / std::abs(centre_rate);
    Sample s{point.q, point.at, speed * speed, {}, 0, 0, 0, 0, 0};

    const std::array<AxleState, 2> axles{
        AxleState{&car.rear, &pose.rear, 1, point.rear_load},
        AxleState{&car.front, &pose.front, pose.front_rate, point.front_load}};
    for (std::size_t n = 0; n < 4; ++n) {
        const HeatCar::WheelPart& part = car.parts[n];
        if (!part.touches) continue;
        const AxleState& a = axles[is_front(Corner(n)) ? 1 : 0];
        const double relative = a.rate + a.axle->radius * pose.pitch_rate;
        const double per_mass =
            ready.course.gravity() * a.path->tangent.real() + a.path->curvature * a.rate * a.rate * s.w;
        if (a.load > 0)
            s.wheels[n] = {0, part.load_share * a.load * a.rate, part.load_share * a.load * relative};
        // A wheel in the air still weighs on nothing: its bearing rests.
        if (a.load > a.axle->wheel_mass * per_mass)
            s.wheels[n].bearing = (part.load_share * a.load - part.mass * per_mass) * relative;
    }
    const std::complex<double> line(car.wheelbase, car.front.radius - car.rear.radius);
    const std::complex<double> axis = pose.along * std::conj(line) / std::abs(line);
    s.air = point.speed * point.speed *
            (dot(axis, centre_rate) - (car.drag_height - car.centre.y()) * pose.pitch_rate);
    s.rear_stirring = std::pow(speed, 1.5);
    s.front_stirring = std::pow(speed * pose.front_rate, 1.5) * pose.front_rate;
    s.rail_rate = pose.front_rate + car.front.radius * pose.pitch_rate;
    if (car.guide.rail) s.crossing = car.guide.crossing_force(speed * pose.front_rate) * s.rail_rate;
    return s;
}

std::vector<Sample> samples_of(const ReadyHeat& ready, const HeatResult& heat) {
    std::vector<Sample> samples;
    const auto& stretches = ready.course.stretches();
    std::size_t stretch = 0;
    for (std::size_t n = 0; n < heat.trace.size(); ++n) {
        // Where a stretch ends and the next begins, the trace may have the place twice: once on each side.
        const double q = heat.trace[n].q;
        const bool again = n > 0 && q == heat.trace[n - 1].q;
        while (stretch + 1 < stretches.size() &&
               (q > stretches[stretch].to || (again && q == stretches[stretch].to)))
            ++stretch;
        samples.push_back(sample_at(ready, stretches[stretch], heat.trace[n]));
    }
    return samples;
}

/// ∫ dq / q' between two samples. Time goes with the fourth root of the way as heats are integrated: near
/// rest 1/q' has no trapezoid in q, but one in the root.
double time_between(const Sample& a, const Sample& b, double start) {
    const auto rate = [start](const Sample& s) {
        const double root = std::sqrt(std::sqrt(s.q - start));
        return s.w > 0 && root > 0 ? 4 * root * root * root / std::sqrt(s.w) : 0.0;
    };
    const double from = std::sqrt(std::sqrt(a.q - start)), to = std::sqrt(std::sqrt(b.q - start));
    return 0.5 * (rate(a) + rate(b)) * (to - from);
}

/// Where each leg ends, m of the nose's foot point from the start line.
std::vector<double> leg_ends(const ReadyHeat& ready, const TrackPlan& plan) {
    const double whole = ready.track->finish_line() - ready.track->start_line();
    std::vector<double> ends;
    if (!plan.measured.empty()) {
        for (int quarter = 1; quarter < 4; ++quarter)
            ends.push_back(0.25 * quarter * whole);
    } else {
        double s = -ready.track->start_line();
        for (const TrackPiece& piece : plan.pieces) {
            if (const auto* straight = std::get_if<Straight>(&piece))
                s += straight->length;
            else
                s += std::get<Arc>(piece).radius * std::abs(std::get<Arc>(piece).turn) +
                     std::get<Arc>(piece).easing;
            if (s > 0 && s < whole) ends.push_back(s);
        }
    }
    ends.push_back(whole);
    return ends;
}

std::vector<AlongHeat::Leg> legs_of(const ReadyHeat& ready, const TrackPlan& plan,
                                    const std::vector<Sample>& samples) {
    std::vector<AlongHeat::Leg> legs;
    const double start = ready.course.start();
    const std::vector<double> ends = leg_ends(ready, plan);
    double from = 0;
    Sample last = samples.front();
    std::size_t next = 1;
    for (std::size_t leg = 0; leg < ends.size(); ++leg) {
        AlongHeat::Leg made{ends[leg] - from, 0};
        const bool final_leg = leg + 1 == ends.size();
        while (next < samples.size() && (final_leg || samples[next].at <= ends[leg])) {
            made.time += time_between(last, samples[next], start);
            last = samples[next++];
        }
        if (!final_leg && next < samples.size()) {
            const Sample& beyond = samples[next];
            const double part = (ends[leg] - last.at) / (beyond.at - last.at);
            Sample joint = last;
            joint.at = ends[leg];
            joint.q += part * (beyond.q - last.q);
            joint.w += part * (beyond.w - last.w);
            made.time += time_between(last, joint, start);
            last = joint;
        }
        legs.push_back(made);
        from = ends[leg];
    }
    return legs;
}

AlongHeat::Fastest find_fastest(const HeatResult& heat) {
    const auto power = [](const HeatPoint& p) {
        return p.power_journal + p.power_hub + p.power_rolling + p.power_scrub + p.power_air + p.power_rail;
    };
    AlongHeat::Fastest fastest;
    double lost = 0, speed = 0;
    for (std::size_t n = 1; n < heat.trace.size(); ++n) {
        const HeatPoint &a = heat.trace[n - 1], &b = heat.trace[n];
        lost += 0.5 * (power(a) + power(b)) * (b.time - a.time);
        if (b.speed <= speed) continue;
        speed = b.speed;
        fastest = {b.q, lost};
    }
    return fastest;
}

AlongHeat::Lightest find_lightest(const ReadyHeat& ready, const std::vector<Sample>& samples, double at) {
    const auto beyond = std::find_if(samples.begin() + 1, samples.end() - 1,
                                     [at](const Sample& sample) { return sample.at >= at; });
    const Sample &a = *(beyond - 1), &b = *beyond;
    const double part = b.at > a.at ? std::clamp((at - a.at) / (b.at - a.at), 0.0, 1.0) : 0;
    const double q = a.q + part * (b.q - a.q), w = a.w + part * (b.w - a.w);
    const MotionAt::Setting setting(ready.car, ready.course.gravity());
    const MotionAt motion(setting, ready.course.axles().pose(q));
    const MotionAt::State state = motion.solve(w);
    const std::array<double, 4> terms = motion.front_terms();
    return {terms[0],
            terms[1],
            terms[2],
            terms[3],
            std::sqrt(w),
            state.guide_force,
            state.rear == MotionAt::Acting{} && state.front == MotionAt::Acting{}};
}

} // namespace

AlongHeat sum_along(const ReadyHeat& ready, const TrackPlan& plan, double lightest_at) {
    AlongHeat along;
    const HeatResult heat = run_heat(ready.course, ready.car, HeatDetail::trace, {.parts = trace_parts});
    if (!heat.finished) return along;
    const std::vector<Sample> samples = samples_of(ready, heat);
    along.way = ready.course.finish() - ready.course.start();
    const auto mean = [&](const std::function<double(const Sample&)>& value) {
        double sum = 0;
        for (std::size_t n = 1; n < samples.size(); ++n)
            sum += 0.5 * (value(samples[n - 1]) + value(samples[n])) * (samples[n].q - samples[n - 1].q);
        return sum / along.way;
    };
    for (std::size_t n = 0; n < 4; ++n) {
        along.wheels[n].bearing = mean([n](const Sample& s) { return s.wheels[n].bearing; });
        along.wheels[n].tread = mean([n](const Sample& s) { return s.wheels[n].tread; });
        along.wheels[n].scrub = mean([n](const Sample& s) { return s.wheels[n].scrub; });
    }
    along.speed_squared = mean([](const Sample& s) { return s.air; });
    along.rear_stirring = mean([](const Sample& s) { return s.rear_stirring; });
    along.front_stirring = mean([](const Sample& s) { return s.front_stirring; });
    along.rail_way = along.way * mean([](const Sample& s) { return s.rail_rate; });
    along.crossing = along.way * mean([](const Sample& s) { return s.crossing; }) / along.rail_way;
    along.legs = legs_of(ready, plan, samples);
    along.fastest = find_fastest(heat);
    along.lightest = find_lightest(ready, samples, lightest_at);
    return along;
}

} // namespace rampwright
