#include <rampwright/core/constants.hpp>
#include <rampwright/heat/guide.hpp>

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <heat/guide_lean.hpp>
#include <limits>
#include <numbers>

namespace rampwright {

namespace {

// Fitted to a planar simulation of 254 drawn cars, tests/steer/planar_car.hpp [fit].
constexpr double crossing_share = 0.5; ///< of what all the way across could cost
constexpr double easy_swing = 1.5;     ///< swing at which half of that is reached

double normal_probability(double x) {
    return std::erfc(-x / std::numbers::sqrt2) / 2;
}

double ride_probability(const GuideSetup& s) {
    // Both times the joints' moment, which may be zero.
    const double width = std::hypot(s.hold_width * s.kick, s.moment_per_steer() * s.spread());
    const double over = s.side_force(s.net_steer()) * s.wheelbase - hold_margin * s.kick;
    if (width > 0) return normal_probability(over / width);
    return over > 0 ? 1 : over < 0 ? 0 : 0.5;
}

} // namespace

double GuideSetup::side_force(double toe) const {
    const double greatest = grip * front_load;
    return greatest > 0 ? greatest * std::tanh(creep * toe / grip) : 0;
}

double GuideSetup::spread() const {
    return std::hypot(align, need);
}

double GuideSetup::moment_per_steer() const {
    const double net = net_steer();
    return wheelbase * (net != 0 ? side_force(net) / net : creep * front_load);
}

double GuideSetup::margin() const {
    const double moment = side_force(net_steer()) * wheelbase;
    return kick > 0 ? moment / kick : moment > 0 ? std::numeric_limits<double>::infinity() : 0;
}

double mean_toe(const std::array<Wheel, 4>& wheels, bool front) {
    double sum = 0;
    int touching = 0;
    for (const Wheel& wheel : wheels)
        if (is_front(wheel.corner) == front && wheel.touches) {
            sum += wheel.toe;
            ++touching;
        }
    return touching > 0 ? sum / touching : 0.0;
}

double ridden_side(const std::array<Wheel, 4>& wheels) {
    const bool left_touches = wheels[std::size_t(Corner::front_left)].touches;
    const bool right_touches = wheels[std::size_t(Corner::front_right)].touches;
    if (left_touches != right_touches) return right_touches ? 1 : -1;
    return mean_toe(wheels, true) - mean_toe(wheels, false) >= 0 ? 1 : -1;
}

GuideSetup guide_setup(const CarOnWheels& car, double side_gap, double front_load) {
    const double side = ridden_side(car.wheels);
    const auto value = [&](ModelName name) { return car.model[name].value; };
    GuideSetup setup;
    setup.steer = side * mean_toe(car.wheels, true);
    setup.rear_toe = side * mean_toe(car.wheels, false);
    setup.wheelbase = car.wheelbase;
    setup.effective_mass =
        (car.inertia(2, 2) + car.mass * car.centre.x() * car.centre.x()) / (car.wheelbase * car.wheelbase);
    setup.front_load = std::max(front_load, 0.0);
    setup.side_gap = std::max(side_gap, 0.0);
    setup.grip = value(ModelName::tread_grip);
    setup.creep = value(ModelName::creep_per_rad);
    setup.rail_friction = value(ModelName::rail);
    setup.ride_share = value(ModelName::rail_share);
    setup.touch_share = value(ModelName::touch_share);
    setup.restitution = value(ModelName::restitution);
    setup.align = value(ModelName::align_deg) * degree;
    setup.need = value(ModelName::need_deg) * degree;
    setup.kick = value(ModelName::kick_n_mm) * 1e-3;
    setup.hold_width = value(ModelName::hold_width);
    return setup;
}

double Guide::crossing_force(double speed) const {
    if (!rail) return 0;
    const double v2 = speed * speed, v4 = v2 * v2;
    // Where nothing stands on the front wheel nothing takes the swing out of the car either.
    return crossing_per_speed2 * v2 * v4 / std::max(v4 + swing_speed4, std::numeric_limits<double>::min());
}

double Guide::force(double speed) const {
    return rail ? lean_force + crossing * crossing_force(speed) : 0;
}

Guide make_guide(const GuideSetup& s) {
    Guide guide;
    guide.rail = true;
    guide.setup = s;
    const double net = s.net_steer(), side = s.side_force(net);
    guide.margin = s.margin();
    guide.ride_probability = ride_probability(s);
    guide.ride_force = s.ride_share * s.rail_friction * std::abs(side) + side * std::sin(net);

    const LeanMean mean = lean_mean(s, net);
    guide.lean_force = mean.force;
    guide.crossing = mean.crossing;
    guide.crossing_per_speed2 = crossing_share * s.touch_share * s.rail_friction * s.effective_mass *
                                s.side_gap / (s.wheelbase * s.wheelbase);
    const double swing_speed2 =
        easy_swing * s.creep * s.front_load * s.wheelbase / ((1 + s.restitution) * s.effective_mass);
    guide.swing_speed4 = swing_speed2 * swing_speed2;
    return guide;
}

Guide make_guide(const CarOnWheels& car, const TrackPlan& track, double side_gap, double front_load) {
    if (!track.rail) return {};
    return make_guide(guide_setup(car, side_gap, front_load));
}

double bounce_force(GuideSetup setup, double speed) {
    setup.steer = setup.rear_toe;
    return make_guide(setup).force(speed);
}

double best_steer(GuideSetup setup, double speed) {
    const auto force = [&](double steer) {
        setup.steer = steer;
        return make_guide(setup).force(speed);
    };
    // Without steer a car may bounce little, with more it rides: there can be two valleys.
    constexpr double step = 0.1 * degree, most = 6 * degree;
    double best = 0, least = force(0);
    for (double steer = step; steer < most + step / 2; steer += step)
        if (const double f = force(steer); f < least) {
            best = steer;
            least = f;
        }
    constexpr int bits = 26; // half the digits: a minimum is flat
    return boost::math::tools::brent_find_minima(force, std::max(best - step, 0.0),
                                                 std::min(best + step, most), bits)
        .first;
}

} // namespace rampwright
