#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

// A straight slope: with constant coefficients the motion has a closed form, so the only difference allowed
// is rounding and the integrator's own aim, 1e-9 s.

namespace {

constexpr double aim = 2e-9;

/// Distance and speed after a time, from rest, where dv/dt = a - b v²: v = sqrt(a/b) tanh(sqrt(ab) t), x = ln
/// cosh(sqrt(ab) t) / b (elementary integration).
double time_with_drag(double a, double b, double distance) {
    return std::acosh(std::exp(b * distance)) / std::sqrt(a * b);
}
double speed_with_drag(double a, double b, double time) {
    return std::sqrt(a / b) * std::tanh(std::sqrt(a * b) * time);
}

/// A car all of whose wheels have these.
PlainCar uniform_car(double journal_arm, double rolling) {
    PlainCar car = reference_car();
    car.on_wheels.air_area = 0;
    for (Corner corner : all_corners)
        if (car.wheel(corner).touches) {
            car.loss(corner).journal_arm = journal_arm;
            car.loss(corner).rolling = rolling;
        }
    return car;
}

struct Sums {
    double wheel_mass = 0, spin_mass = 0;
};
Sums sums(const PlainCar& car) {
    Sums result;
    for (const Wheel& wheel : car.on_wheels.wheels)
        if (wheel.touches) {
            result.wheel_mass += wheel.mass;
            result.spin_mass += wheel.spin_inertia / (wheel.radius * wheel.radius);
        }
    return result;
}

/// a = [m g sin - (mu r / R)(m - m_wheels) g cos - C_rr m g cos] / (m + sum I / R²).
double acceleration(const PlainCar& car, double slope, double journal_arm, double rolling) {
    const Sums s = sums(car);
    const double m = car.on_wheels.mass, g = standard_gravity;
    return (m * g * std::sin(slope) -
            journal_arm / car.on_wheels.rear_radius * (m - s.wheel_mass) * g * std::cos(slope) -
            rolling * m * g * std::cos(slope)) /
           (m + s.spin_mass);
}

} // namespace

TEST_CASE("A straight slope with journal and rolling friction follows the closed form") {
    for (double degrees : {4.0, 15.0, 30.0, 60.0}) {
        const double slope = degrees * degree, distance = 4.2;
        const PlainCar car = uniform_car(0.2e-3, 0.003);
        const double a = acceleration(car, slope, 0.2e-3, 0.003);
        const HeatResult heat = run(slope_track(slope, distance), car);
        CHECK(heat.time == Approx(std::sqrt(2 * distance / a)).margin(aim));
        CHECK(heat.finish_speed == Approx(std::sqrt(2 * distance * a)).margin(aim));
        CHECK(heat.top_speed == Approx(heat.finish_speed));
        CHECK(std::abs(heat.residual) < 1e-12);
    }
}

TEST_CASE("A straight slope with drag as well follows ln cosh") {
    for (double area : {1e-4, 5e-4, 3e-3, 3e-2}) {
        const double slope = 20 * degree, distance = 4.2;
        PlainCar car = uniform_car(0.12e-3, 0.002);
        car.on_wheels.air_area = area;
        const double a = acceleration(car, slope, 0.12e-3, 0.002);
        const double b = 0.5 * car.air_density * area / (car.on_wheels.mass + sums(car).spin_mass);
        const double time = time_with_drag(a, b, distance);
        const HeatResult heat = run(slope_track(slope, distance), car);
        CHECK(heat.time == Approx(time).margin(aim));
        CHECK(heat.finish_speed == Approx(speed_with_drag(a, b, time)).margin(aim));
    }
}

// Worked numbers of the same forms, computed apart from this program with the standard library alone.
TEST_CASE("Worked slopes come out digit by digit") {
    const double slope = std::asin(0.25), distance = 4.8768;
    const HeatResult free = run(slope_track(slope, distance), point_car());
    CHECK(free.time == Approx(1.99458306971).margin(aim));
    CHECK(free.finish_speed == Approx(4.89004451513).margin(aim));

    // Coulomb friction 0.02 on the whole weight: as rolling resistance.
    PlainCar rubbing = point_car();
    for (WheelLoss& loss : rubbing.losses)
        loss.rolling = 0.02;
    const HeatResult rubbed = run(slope_track(slope, distance), rubbing);
    CHECK(rubbed.time == Approx(2.07663154642).margin(aim));
    CHECK(rubbed.finish_speed == Approx(4.69683705654).margin(aim));

    // Five ounces on four wheels of 2.6 g, 2.5e-7 kg m², radius 15 mm, axle radius 1.15 mm, friction 0.10.
    PlainCar racer = reference_car();
    CarOnWheels& c = racer.on_wheels;
    c.mass = 5 * ounce;
    c.rear_radius = c.front_radius = 0.015;
    c.air_area = 0;
    racer.right_share = {0.5, 0.5};
    for (Corner corner : all_corners) {
        Wheel& wheel = racer.wheel(corner);
        wheel.touches = true;
        wheel.mass = 0.0026;
        wheel.radius = 0.015;
        wheel.spin_inertia = 2.5e-7;
        racer.loss(corner) = {};
        racer.loss(corner).journal_arm = 0.10 * 1.15e-3;
    }
    const HeatResult five_ounces = run(slope_track(slope, distance), racer);
    CHECK(five_ounces.time == Approx(2.05406664692).margin(aim));
    CHECK(five_ounces.finish_speed == Approx(4.74843404648).margin(aim));
    // The force along the slope is the books' journal energy over the distance.
    CHECK(five_ounces.budget.journal / distance == Approx(0.00956169945).epsilon(1e-9));

    // a = 2.45 m/s², c = rho Cd A / 2 m = 0.0036 /m with rho 1.2, Cd 0.6, A 0.0015 m², m 0.15 kg.
    PlainCar draggy = point_car();
    draggy.on_wheels.mass = 0.15;
    draggy.on_wheels.air_area = 0.6 * 0.0015;
    draggy.air_density = 1.2;
    const HeatResult dragged = run(slope_track(std::asin(2.45 / standard_gravity), distance), draggy);
    CHECK(dragged.time == Approx(2.00110307).margin(6e-9)); // eight decimals given
    CHECK(dragged.finish_speed == Approx(4.84578707).margin(6e-9));
}

// OpenStax, University Physics 1, sections 5 and 11.1 (g = 9.80 m/s²): rolling without slipping, a = g sin /
// (1 + I/mr²). Printed answers carry two or three digits; the closed form they come from carries all.
TEST_CASE("Bodies of a textbook roll down as printed") {
    constexpr double g = 9.80;
    struct Case {
        const char* what;
        double rotary, degrees, distance, printed, tolerance;
    };
    const Case cases[] = {
        {"marble on 30 degrees: 15.75 m in 3 s", 0.4, 30, 15.75, 3.0, 1e-6},
        {"unknown body, I = 0.66 m r² (0.65620): 10.0 m in 2.60 s", 0.65620, 30, 10.0, 2.60, 1e-5},
        {"frictionless slope of 30 m at 20 degrees: 4.2 s", 0, 20, 30, 4.2309, 5e-5},
    };
    for (const Case& c : cases) {
        INFO(c.what);
        const HeatResult heat = run(slope_track(c.degrees * degree, c.distance, g), point_car(c.rotary));
        CHECK(heat.time == Approx(c.printed).margin(c.tolerance));
    }
    // Solid cylinder 2/3, sphere 5/7, hoop 1/2 of g sin.
    for (const auto& [rotary, part] : {std::pair{0.5, 2.0 / 3}, {0.4, 5.0 / 7}, {1.0, 0.5}}) {
        const HeatResult heat = run(slope_track(30 * degree, 5, g), point_car(rotary));
        CHECK(heat.time == Approx(std::sqrt(2 * 5 / (part * g * 0.5))).margin(aim));
    }
    // A hoop-like wheel that falls 25 m where g is 3.71: 9.63 m/s.
    const HeatResult hoop = run(slope_track(30 * degree, 50, 3.71), point_car(1.0));
    CHECK(hoop.finish_speed == Approx(9.63068).margin(1e-5));
}

// Molesworth's pocket-book (public domain), railway vehicles with journals: R = f (W + w) + F W d/D. With
// 10000 N in all of which 9000 N press on journals, f = 0.001, F = 0.035, d/D = 0.1: 41.5 N.
// Beer and Johnston, problem 8.98: a car of 2500 lb on tyres of 23 in with b = 0.05 in needs 10.87 lb.
TEST_CASE("Rolling and journal resistance agree with handbook values") {
    const double slope = 10 * degree, distance = 5;
    PlainCar vehicle = point_car();
    vehicle.on_wheels.mass = 10000 / standard_gravity;
    for (Corner corner : all_corners) {
        Wheel& wheel = vehicle.wheel(corner);
        wheel.mass = 250 / standard_gravity;
        vehicle.loss(corner).journal_arm = 0.035 * 0.1 * wheel.radius;
        vehicle.loss(corner).rolling = 0.001;
    }
    const HeatResult rail = run(slope_track(slope, distance), vehicle);
    CHECK((rail.budget.journal + rail.budget.rolling) / distance / std::cos(slope) ==
          Approx(41.5).epsilon(1e-10));

    PlainCar automobile = point_car();
    automobile.on_wheels.mass = 2500 * pound;
    for (WheelLoss& loss : automobile.losses)
        loss.rolling = 0.05 / 11.5;
    const HeatResult road = run(slope_track(slope, distance), automobile);
    CHECK(road.budget.rolling / distance / std::cos(slope) / (pound * standard_gravity) ==
          Approx(10.8696).epsilon(1e-5));
}

// On the level after a ramp: dv/dt = -(B + c v²), so v = sqrt(B/c) tan(atan(v0 sqrt(c/B)) - sqrt(B c) t).
TEST_CASE("Slowing down on the level with drag follows the tangent form") {
    const auto level_time = [](double v0, double b, double c, double distance, double& v_end) {
        v_end = std::sqrt((v0 * v0 + b / c) * std::exp(-2 * c * distance) - b / c);
        return (std::atan(v0 * std::sqrt(c / b)) - std::atan(v_end * std::sqrt(c / b))) / std::sqrt(b * c);
    };
    // The form itself, against worked numbers: 8 m from 4.84578707 m/s, B = 0.10 m/s², c = 0.0036 /m.
    double end = 0;
    CHECK(level_time(4.84578707, 0.10, 0.0036, 8, end) == Approx(1.70521969).margin(1e-8));
    CHECK(end == Approx(4.54010275).margin(1e-8));

    const PlainCar car = reference_car();
    const Track track(reference_track());
    const HeatCar heat_car = car.prepared();
    const Course course(track, heat_car);
    const HeatResult heat = run_heat(course, heat_car, HeatDetail::trace);
    const double level_from = course.stretches().back().from;
    const auto first = std::find_if(heat.trace.begin(), heat.trace.end(),
                                    [&](const HeatPoint& p) { return p.q >= level_from + 1e-9; });
    REQUIRE(first != heat.trace.end());
    const Sums s = sums(car);
    const double m = car.on_wheels.mass, effective = m + s.spin_mass;
    const double b = (0.114e-3 / 0.0151 * (m - s.wheel_mass) + 0.0015 * m) * standard_gravity / effective;
    const double c = 0.5 * car.air_density * car.on_wheels.air_area / effective;
    const double time = level_time(first->speed, b, c, course.finish() - first->q, end);
    CHECK(heat.time - first->time == Approx(time).margin(aim));
    CHECK(heat.finish_speed == Approx(end).margin(aim));
}
