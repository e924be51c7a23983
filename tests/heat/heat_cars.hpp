#pragma once

#include <rampwright/air/air.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/heat/heat.hpp>

#include <random>

/// Cars and tracks for the tests and benchmarks of the heat.
namespace rampwright::test {

/// What a heat reads of a car, before it is summed by axle.
struct PlainCar {
    CarOnWheels on_wheels;
    std::array<WheelLoss, 4> losses{};
    double air_density = 0;
    Guide guide;
    std::array<double, 2> right_share{0.5, 1}; ///< of the rear and front axle's load, on the right wheel

    Wheel& wheel(Corner corner) { return on_wheels.wheels[std::size_t(corner)]; }
    WheelLoss& loss(Corner corner) { return losses[std::size_t(corner)]; }
    /// The standing loads follow from the balance point alone.
    Standing standing(double gravity) const {
        Standing level;
        const double weight = on_wheels.mass * gravity;
        level.front = weight * on_wheels.centre.x() / on_wheels.wheelbase;
        level.rear = weight - level.front;
        for (Corner corner : all_corners) {
            if (!on_wheels.wheels[std::size_t(corner)].touches) continue;
            const double right = right_share[is_front(corner)];
            level.loads[std::size_t(corner)] =
                (is_left(corner) ? 1 - right : right) * (is_front(corner) ? level.front : level.rear);
        }
        return level;
    }
    HeatCar prepared(double gravity = standard_gravity) const {
        return prepare(on_wheels, losses, standing(gravity), air_density, guide);
    }
};

/// The car of the reference figures: three wheels touch (front left raised, and massless, as the figures have
/// it), journal, rolling resistance, drag; neither hub torque nor windage nor guide.
inline PlainCar reference_car() {
    PlainCar car;
    CarOnWheels& c = car.on_wheels;
    c.mass = 0.1417;
    c.wheelbase = 0.1111;
    c.rear_radius = c.front_radius = 0.0151;
    c.centre = {0.022, 0, 0.016};
    c.nose = {0.1111 + 0.042, 0.012};
    c.air_area = 0.000495;
    c.drag_height = 0.018;
    car.air_density = 1.19;
    double spin = 0;
    for (Corner corner : all_corners) {
        Wheel& wheel = car.wheel(corner);
        wheel.corner = corner;
        wheel.touches = corner != Corner::front_left;
        if (!wheel.touches) continue;
        wheel.mass = 0.0026;
        wheel.radius = 0.0151;
        wheel.spin_inertia = 0.55 * wheel.mass * wheel.radius * wheel.radius;
        car.loss(corner).journal_arm = 0.114e-3;
        car.loss(corner).rolling = 0.0015;
        spin += wheel.spin_inertia;
    }
    // 2.6e-4 kg m² is the pitch inertia less the turning wheels' own spin inertia.
    c.inertia(1, 1) = 2.6e-4 + spin;
    return car;
}

/// Takes away every loss, and the spin inertia of the wheels.
inline void make_lossless(PlainCar& car) {
    for (Corner corner : all_corners) {
        Wheel& wheel = car.wheel(corner);
        if (wheel.touches) car.on_wheels.inertia(1, 1) -= wheel.spin_inertia;
        wheel.spin_inertia = 0;
        car.loss(corner) = {};
    }
    car.on_wheels.air_area = 0;
    car.guide = {};
}

/// Start line 1.2192 m above the level, ramp 25 degrees, arc of radius 1.2 m to the level, finish line 5.9 m
/// after the arc.
inline TrackPlan reference_track() {
    constexpr double slope = 25 * degree, radius = 1.2, height = 1.2192;
    const double ramp = (height - radius * (1 - std::cos(slope))) / std::sin(slope);
    TrackPlan plan;
    plan.first_slope = -slope;
    plan.pieces = {Straight{0.5 + ramp}, Arc{radius, slope, 0}, Straight{6.5}};
    plan.start_line = 0.5;
    plan.finish_line = 0.5 + ramp + radius * slope + 5.9;
    plan.start_height = height;
    return plan;
}

/// A hall's lane of usual size: 10.8 m between the lines, eased arc.
inline TrackPlan hall_track() {
    TrackPlan plan;
    plan.first_slope = -25 * degree;
    plan.pieces = {Straight{2.823}, Arc{1.2, 25 * degree, 0.1}, Straight{9.2}};
    plan.start_line = 0.3;
    plan.finish_line = 11.1;
    plan.rail = LaneRail{0.041, 0.006};
    return plan;
}

/// The hall's lane as a person would measure it: points every `step` of X, with the surface's own heights.
inline TrackPlan measured(const TrackPlan& plan, double step, double error = 0, unsigned seed = 1) {
    const Track track(plan);
    TrackPlan result = plan;
    result.pieces.clear();
    std::mt19937_64 random(seed);
    std::normal_distribution<double> normal;
    const double length = track.length();
    const int count = int(std::ceil(length / step));
    for (int n = 0; n <= count; ++n) {
        const auto at = track.point(length * n / count).at;
        result.measured.push_back({at.real(), at.imag() + error * normal(random)});
    }
    result.start_height.reset();
    return result;
}

/// A car small enough to be a point on the surface: its centre of mass and its nose are the middle of its two
/// contacts. Its path differs from the surface by size²/8 times curvature.
/// @param rotary spin inertia over radius squared, relative to the mass.
inline PlainCar point_car(double rotary = 0, double size = 1e-3) {
    PlainCar car;
    CarOnWheels& c = car.on_wheels;
    c.mass = 1;
    c.wheelbase = size;
    c.rear_radius = c.front_radius = 1e-3 * size; // their centres follow the surface too
    c.centre = {0.5 * size, 0, 0};
    c.nose = {0.5 * size, 0};
    car.right_share = {0.5, 0.5};
    for (Corner corner : all_corners) {
        Wheel& wheel = car.wheel(corner);
        wheel.corner = corner;
        wheel.radius = c.rear_radius;
        wheel.spin_inertia = 0.25 * rotary * wheel.radius * wheel.radius;
        c.inertia(1, 1) += wheel.spin_inertia; // leaves no pitch inertia
    }
    return car;
}

/// One straight slope, downhill positive.
inline TrackPlan slope_track(double slope, double distance, double gravity = standard_gravity) {
    TrackPlan plan;
    plan.first_slope = -slope;
    plan.pieces = {Straight{distance + 2}};
    plan.start_line = 1;
    plan.finish_line = 1 + distance;
    plan.gravity = gravity;
    return plan;
}

inline HeatResult run(const TrackPlan& plan, const PlainCar& plain, HeatDetail detail = HeatDetail::books,
                      const HeatOptions& options = {}) {
    const Track track(plan);
    const HeatCar car = plain.prepared(track.gravity());
    return run_heat(Course(track, car), car, detail, options);
}

/// Uniform draws.
class Draw {
public:
    explicit Draw(std::uint64_t seed) : random_(seed) {}
    double between(double low, double high) { return low + (high - low) * uniform_(random_); }
    bool chance(double p) { return uniform_(random_) < p; }

private:
    std::mt19937_64 random_;
    std::uniform_real_distribution<double> uniform_;
};

struct Include {
    bool guide = true, windage = true, hub = true, scrub = true;
};

/// A car with everything a heat reads drawn over more than its usual range.
inline PlainCar draw_car(Draw& draw, const Include& include = {}) {
    PlainCar car;
    CarOnWheels& c = car.on_wheels;
    c.mass = draw.between(0.06, 0.2);
    c.wheelbase = draw.between(0.08, 0.15);
    c.rear_radius = draw.between(0.011, 0.018);
    c.front_radius = draw.chance(0.5) ? c.rear_radius : draw.between(0.011, 0.018);
    c.centre = {c.wheelbase * draw.between(0.12, 0.5), 0, draw.between(0.010, 0.022)};
    c.nose = {c.wheelbase + draw.between(0.015, 0.05), draw.between(0.008, 0.02)};
    c.inertia(1, 1) = c.mass * std::pow(draw.between(0.035, 0.05), 2);
    c.inertia(2, 2) = c.inertia(1, 1) * 1.05;
    c.air_area = draw.between(0.0002, 0.002);
    c.drag_height = draw.between(0.012, 0.022);
    car.air_density = draw.between(1.0, 1.3);
    const bool raised = draw.chance(0.6);
    const bool right = draw.chance(0.5);
    car.right_share = {draw.between(0.4, 0.6), raised ? (right ? 1.0 : 0.0) : draw.between(0.3, 0.7)};
    for (Corner corner : all_corners) {
        Wheel& wheel = car.wheel(corner);
        wheel.corner = corner;
        wheel.touches = !is_front(corner) || !raised || is_left(corner) != right;
        wheel.radius = is_front(corner) ? c.front_radius : c.rear_radius;
        wheel.mass = draw.between(0.001, 0.004);
        wheel.spin_inertia = draw.between(0.4, 0.8) * wheel.mass * wheel.radius * wheel.radius;
        if (!wheel.touches) continue;
        WheelLoss& loss = car.loss(corner);
        loss.journal_arm = draw.between(0.03, 0.2) * 1.2e-3;
        loss.rolling = draw.between(0.0005, 0.004);
        if (include.hub) loss.hub_arm = draw.between(0, 2e-5);
        if (include.scrub) loss.scrub = draw.between(0, 1e-3);
        // Both faces of a disc in laminar flow, at 20 degrees Celsius (see losses.hpp).
        if (include.windage)
            loss.windage = draw.between(0.5, 1.5) * 1.935 * 0.00467 * std::pow(wheel.radius, 4);
    }
    if (include.guide) {
        GuideSetup guide;
        guide.steer = draw.between(0, 2) * degree;
        guide.rear_toe = draw.between(-0.2, 0.2) * degree;
        guide.wheelbase = c.wheelbase;
        guide.effective_mass =
            (c.inertia(2, 2) + c.mass * c.centre.x() * c.centre.x()) / (c.wheelbase * c.wheelbase);
        guide.front_load = c.mass * standard_gravity * c.centre.x() / c.wheelbase;
        guide.side_gap = draw.between(0.001, 0.004);
        guide.grip = draw.between(0.2, 0.4);
        guide.creep = draw.between(4, 25);
        guide.rail_friction = draw.between(0.1, 0.3);
        guide.ride_share = draw.between(0.1, 0.4);
        guide.touch_share = draw.between(0.3, 0.9);
        guide.restitution = draw.between(0.2, 0.8);
        guide.align = draw.between(0.1, 1.0) * degree;
        guide.need = draw.between(0.2, 0.8) * degree;
        guide.kick = draw.between(0.6e-3, 2.2e-3);
        guide.hold_width = 0.35;
        car.guide = make_guide(guide);
    }
    return car;
}

/// A ramp that comes out level, by an arc with or without easing.
inline TrackPlan draw_track(Draw& draw) {
    TrackPlan plan;
    const double slope = draw.between(15, 40) * degree, radius = draw.between(0.6, 2.5);
    const double easing = draw.chance(0.5) ? 0 : draw.between(0.02, 0.9) * radius * slope;
    const double before = 0.4, ramp = draw.between(0.8, 3), level = draw.between(3, 9);
    plan.first_slope = -slope;
    plan.pieces = {Straight{before + ramp}, Arc{radius, slope, easing}, Straight{level + 0.3}};
    plan.start_line = before;
    plan.finish_line = before + ramp + radius * slope + easing + level;
    plan.gravity = draw.between(9.78, 9.83);
    return plan;
}

} // namespace rampwright::test
