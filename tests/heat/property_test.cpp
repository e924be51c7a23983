#include <catch2/catch.hpp>

#include <functional>
#include <heat/heat_cars.hpp>
#include <limits>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// The time, or never.
double time_of(const Track& track, const PlainCar& plain) {
    const HeatCar car = plain.prepared(track.gravity());
    const HeatResult heat = run_heat(Course(track, car), car, HeatDetail::time);
    return heat.finished ? heat.time : std::numeric_limits<double>::infinity();
}

/// What two converged times may differ by without meaning it.
constexpr double slack = 2e-8;

/// The same car with everything but its wheels made heavier in place.
PlainCar heavier(const PlainCar& plain, double factor) {
    PlainCar result = plain;
    CarOnWheels& c = result.on_wheels;
    // Body: mass, first and second moments about the rear contact, in the plane of pitch.
    const auto inertia = [](const Vec2& r) { return r.squaredNorm(); };
    const Vec2 centre(c.centre.x(), c.centre.z());
    double mass = c.mass, second = c.inertia(1, 1) + c.mass * inertia(centre);
    Vec2 first = c.mass * centre;
    double wheel_mass = 0, wheel_second = 0;
    Vec2 wheel_first = Vec2::Zero();
    for (Corner corner : all_corners) {
        const Wheel& wheel = c.wheels[std::size_t(corner)];
        const Vec2 at(is_front(corner) ? c.wheelbase : 0, is_front(corner) ? c.front_radius : c.rear_radius);
        wheel_mass += wheel.mass;
        wheel_first += wheel.mass * at;
        wheel_second += wheel.spin_inertia + wheel.mass * inertia(at);
    }
    mass = wheel_mass + factor * (mass - wheel_mass);
    first = wheel_first + factor * (first - wheel_first);
    second = wheel_second + factor * (second - wheel_second);
    c.mass = mass;
    c.centre = {first.x() / mass, 0, first.y() / mass};
    c.inertia(1, 1) = second - first.squaredNorm() / mass;
    return result;
}

} // namespace

TEST_CASE("More of a loss never makes a faster car") {
    using Change = std::function<void(PlainCar&, WheelLoss&, double)>;
    const std::pair<const char*, Change> changes[] = {
        {"journal", [](PlainCar&, WheelLoss& loss, double more) { loss.journal_arm += more * 1e-4; }},
        {"hub", [](PlainCar&, WheelLoss& loss, double more) { loss.hub_arm += more * 2e-5; }},
        {"rolling", [](PlainCar&, WheelLoss& loss, double more) { loss.rolling += more * 2e-3; }},
        {"scrub", [](PlainCar&, WheelLoss& loss, double more) { loss.scrub += more * 1e-3; }},
        {"windage", [](PlainCar&, WheelLoss& loss, double more) { loss.windage *= 1 + more; }},
        {"drag", [](PlainCar& car, WheelLoss&, double more) { car.on_wheels.air_area += more * 1e-3; }},
    };
    Draw draw(5);
    for (int n = 0; n < 1000; ++n) {
        const Track track(draw_track(draw));
        const PlainCar plain = draw_car(draw, {.guide = false});
        const double time = time_of(track, plain);
        for (const auto& [name, change] : changes) {
            PlainCar worse = plain;
            const bool all = draw.chance(0.5);
            const Corner one = draw.chance(0.5) ? Corner::rear_left : Corner::rear_right;
            const double more = draw.between(0.01, 1);
            for (Corner corner : all_corners)
                if (worse.wheel(corner).touches && (all || corner == one))
                    change(worse, worse.loss(corner), more);
            INFO("draw " << n << ", more " << name);
            CHECK(time_of(track, worse) >= time - slack);
        }
    }
}

// Common practice, no source: on a usual track a heavier car is not slower. What air takes and what the
// wheels' spin holds back is shared by more mass; friction is not.
TEST_CASE("More mass at the same places is not slower on usual tracks") {
    Draw draw(6);
    for (int n = 0; n < 1000; ++n) {
        TrackPlan plan;
        const double slope = draw.between(20, 45) * degree, radius = draw.between(0.6, 2);
        const double ramp = draw.between(1.5, 4), level = draw.between(2, 12);
        plan.first_slope = -slope;
        plan.pieces = {Straight{0.4 + ramp}, Arc{radius, slope, draw.chance(0.5) ? 0 : 0.1},
                       Straight{level + 1}};
        plan.start_line = 0.4;
        plan.finish_line = 0.4 + ramp + radius * slope + level;
        const Track track(plan);
        PlainCar plain = draw_car(draw, {.guide = false, .hub = false, .scrub = false});
        const double bore = draw.between(0.9e-3, 1.2e-3), friction = draw.between(0.02, 0.15);
        for (WheelLoss& loss : plain.losses)
            if (loss.journal_arm > 0) loss.journal_arm = friction * bore;
        const PlainCar more = heavier(plain, draw.between(1.05, 1.5));
        INFO("draw " << n << ", mass " << plain.on_wheels.mass << " to " << more.on_wheels.mass);
        CHECK(time_of(track, more) <= time_of(track, plain) + slack);
    }
}

// The bearing carries the car but not the wheel itself, so its share of the weight grows with the mass: on a
// long level with a dry axle that costs more than the rest gains. On the level, without air, a car slows by
// g (mu r / R)(m - m_wheels) / (m + I / R²), which rises with m (docs/model-notes.md).
TEST_CASE("More mass is slower on a long level with a dry axle") {
    TrackPlan plan = reference_track();
    plan.pieces.back() = Straight{60};
    plan.finish_line = 3.5 + 28;
    const Track track(plan);
    PlainCar plain = reference_car();
    plain.on_wheels.air_area = 0;
    for (Corner corner : all_corners)
        if (plain.wheel(corner).touches) plain.loss(corner).journal_arm = 0.35 * 1.14e-3;
    const double light = time_of(track, plain), heavy = time_of(track, heavier(plain, 1.3));
    REQUIRE(std::isfinite(light));
    CHECK(heavy > light + 1e-3);
    // With a polished axle the order is the usual one.
    for (WheelLoss& loss : plain.losses)
        loss.journal_arm *= 0.1;
    CHECK(time_of(track, heavier(plain, 1.3)) < time_of(track, plain));
}
