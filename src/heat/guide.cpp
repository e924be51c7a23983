#include <rampwright/core/constants.hpp>
#include <rampwright/heat/guide.hpp>

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <heat/guide_bounce.hpp>
#include <limits>
#include <numbers>

namespace rampwright {

namespace {

double normal_probability(double x) {
    return std::erfc(-x / std::numbers::sqrt2) / 2;
}

/// Probability of a normal variable's being below `value`; a step where the spread is zero.
double below(double value, double spread) {
    if (spread > 0) return normal_probability(value / spread);
    return value > 0 ? 1 : value < 0 ? 0 : 0.5;
}

/// Everything of the guide but the table.
Guide without_table(const GuideSetup& s) {
    Guide guide;
    guide.rail = true;
    guide.steer = s.steer;
    guide.rear_toe = s.rear_toe;
    const double net = s.steer - s.rear_toe;
    const double force = s.side_force(net);
    const double moment = force * s.wheelbase;
    guide.margin = s.kick > 0 ? moment / s.kick : moment > 0 ? std::numeric_limits<double>::infinity() : 0;
    guide.ride_probability = below(net - s.need, s.align) * below(guide.margin - 1, s.hold_width);
    guide.ride_force = s.ride_share * s.rail_friction * std::abs(force) + force * std::sin(net);
    return guide;
}

double expected(const Guide& guide, double bounce) {
    return guide.ride_probability * guide.ride_force + (1 - guide.ride_probability) * bounce;
}

double held_inverse(double speed) {
    return 1 / std::sqrt(speed * speed + bounce_hold_speed * bounce_hold_speed);
}

constexpr std::size_t n = Guide::terms;
using Values = Eigen::Matrix<double, n, 2>;
using Transform = Eigen::Matrix<double, n, n>;

double node(std::size_t j) {
    return std::cos(std::numbers::pi * (static_cast<double>(j) + 0.5) / n);
}

/// Takes values at the Chebyshev nodes to coefficients of powers of x: powers can be summed in four
/// chains at once, where Chebyshev's recurrence is one. The loss of digits, 2^n at worst, is far below what
/// is asked.
const Transform& to_powers() {
    static const Transform transform = [] {
        Transform series; // to Chebyshev coefficients
        for (std::size_t k = 0; k < n; ++k)
            for (std::size_t j = 0; j < n; ++j)
                series(k, j) =
                    (k == 0 ? 1.0 : 2.0) / n *
                    std::cos(std::numbers::pi * static_cast<double>(k) * (static_cast<double>(j) + 0.5) / n);
        Transform powers = Transform::Zero(); // column k: T_k in powers of x
        powers(0, 0) = powers(1, 1) = 1;
        for (std::size_t k = 2; k < n; ++k) {
            powers.col(k) = -powers.col(k - 2);
            powers.col(k).tail<n - 1>() += 2 * powers.col(k - 1).head<n - 1>();
        }
        return Transform(powers * series);
    }();
    return transform;
}

} // namespace

double GuideSetup::side_force(double toe) const {
    const double greatest = grip * front_load;
    return greatest > 0 ? greatest * std::tanh(creep * toe / grip) : 0;
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
    setup.side_gap = side_gap;
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

double Guide::bounce_force(double speed) const {
    if (!rail) return 0;
    const double v = std::clamp(speed, 0.0, last_speed);
    const double x = map_gain * v * v / (v * v + map_speed_squared) - 1;
    // Powers of x taken in a tree: half the time of a chain, since a heat waits for each force.
    using Pair = Eigen::Array2d;
    const double x2 = x * x, x4 = x2 * x2, x8 = x4 * x4;
    const auto term = [this](std::size_t k) {
        return Eigen::Map<const Pair, Eigen::Aligned16>(table[k].data());
    };
    const auto four = [&](std::size_t k) -> Pair {
        return (term(k) + term(k + 1) * x) + (term(k + 2) + term(k + 3) * x) * x2;
    };
    static_assert(terms == 20);
    const Pair sum = (four(0) + four(4) * x4) + ((four(8) + four(12) * x4) + four(16) * x8) * x8;
    return std::max(sum[0] + sum[1] * held_inverse(v), 0.0);
}

double Guide::force(double speed) const {
    return rail ? expected(*this, bounce_force(speed)) : 0;
}

// Both parts are smooth in the energy m v² but for poles on and near its negative axis, about as far from
// zero as the tread's own scale, L C W. The map v² / (v² + w²) carries these away from the interval.
Guide make_guide(const GuideSetup& setup, double top_speed) {
    Guide guide = without_table(setup);
    const BounceMean mean(setup);
    const double mass = setup.effective_mass;
    guide.last_speed = std::max(top_speed, 0.0);
    guide.map_speed_squared = std::max(mean.natural_energy() / mass, 1e-6);
    const double top = guide.last_speed * guide.last_speed;
    const double last = top / (top + guide.map_speed_squared);
    guide.map_gain = last > 0 ? 2 / last : 0;
    Values values;
    for (std::size_t j = 0; j < n; ++j) {
        const double mapped = last * (1 + node(j)) / 2;
        values.row(static_cast<Eigen::Index>(j)) =
            mean.parts(mass * guide.map_speed_squared * mapped / (1 - mapped)).transpose();
    }
    const Values powers = to_powers() * values;
    for (std::size_t k = 0; k < n; ++k)
        guide.table[k] = {powers(static_cast<Eigen::Index>(k), 0), powers(static_cast<Eigen::Index>(k), 1)};
    return guide;
}

Guide make_guide(const CarOnWheels& car, const TrackPlan& track, double side_gap, double front_load,
                 double top_speed) {
    if (!track.rail) return {};
    return make_guide(guide_setup(car, side_gap, front_load), top_speed);
}

double bounce_force_at(const GuideSetup& setup, double speed) {
    const Eigen::Vector2d parts = BounceMean(setup).parts(setup.effective_mass * speed * speed);
    return parts[0] + parts[1] * held_inverse(speed);
}

double guide_force_at(const GuideSetup& setup, double speed) {
    return expected(without_table(setup), bounce_force_at(setup, speed));
}

double best_steer(GuideSetup setup, double speed) {
    const auto force = [&](double steer) {
        setup.steer = steer;
        return guide_force_at(setup, speed);
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

double best_steer(const CarOnWheels& car, double side_gap, double front_load, double speed) {
    return best_steer(guide_setup(car, side_gap, front_load), speed);
}

} // namespace rampwright
