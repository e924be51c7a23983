#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

// On the level dv/dt = -(B + c v²), so a car stops after ln(1 + c v0²/B) / 2c.
TEST_CASE("A car that stops on a long level says where") {
    TrackPlan plan = reference_track();
    plan.pieces.back() = Straight{200};
    plan.finish_line = 150;
    PlainCar plain = reference_car();
    double c = 0.5 * plain.air_density * plain.on_wheels.air_area;
    SECTION("with drag") {}
    SECTION("without drag") {
        plain.on_wheels.air_area = 0;
        c = 0;
    }
    const Track track(plan);
    const HeatCar car = plain.prepared();
    const Course course(track, car);
    const HeatResult heat = run_heat(course, car, HeatDetail::trace);
    CHECK_FALSE(heat.finished);
    const auto first = std::find_if(heat.trace.begin(), heat.trace.end(), [&](const HeatPoint& p) {
        return p.q >= course.stretches().back().from + 1e-9;
    });
    REQUIRE(first != heat.trace.end());
    const double wheels = car.rear.wheel_mass + car.front.wheel_mass;
    const double mass = car.mass + car.rear.spin_mass + car.front.spin_mass;
    const double b = (0.114e-3 / 0.0151 * (car.mass - wheels) + 0.0015 * car.mass) * standard_gravity / mass;
    c /= mass;
    const double v2 = first->speed * first->speed;
    const double distance = c > 0 ? std::log1p(c * v2 / b) / (2 * c) : v2 / (2 * b);
    CHECK(heat.reached == Approx(first->at + distance).margin(1e-4));
    CHECK(std::abs(heat.residual) < 1e-6);
    // Asking only for the time notices as well.
    CHECK_FALSE(run_heat(course, car, HeatDetail::time).finished);
}

TEST_CASE("A car that does not start has reached nothing") {
    const HeatResult heat = [] {
        PlainCar car = reference_car();
        for (WheelLoss& loss : car.losses)
            loss.rolling = 0.2;
        return run(slope_track(5 * degree, 3), car);
    }();
    CHECK_FALSE(heat.finished);
    CHECK(heat.reached == Approx(0).margin(1e-9));
}

// On a straight slope the front load of a car that rolls freely follows from moments about the centre of
// mass: with f the retarding force at each contact and a the acceleration, N_f x_f = N_r x_g + (sum of
// tangential forces at the ground) z_g + (rolling couples and the change of spin). Without losses: tangential
// force -I a/R², spin -I a/R.
TEST_CASE("Freely rolling loads follow from moments") {
    PlainCar plain = reference_car();
    plain.on_wheels.air_area = 0;
    for (WheelLoss& loss : plain.losses)
        loss = {};
    const double slope = 30 * degree;
    const Track track(slope_track(slope, 3));
    const HeatCar car = plain.prepared();
    const HeatResult heat = run_heat(Course(track, car), car, HeatDetail::trace);
    const double g = standard_gravity, spin = car.rear.spin_mass + car.front.spin_mass;
    const double a = car.mass * g * std::sin(slope) / (car.mass + spin);
    // About the centre of mass, nose-up: N_f (L - x_g) - N_r x_g + (-spin a) z_g = -spin R a.
    const double total = car.mass * g * std::cos(slope);
    const double front =
        (total * car.centre.x() + spin * a * (car.centre.y() - car.rear.radius)) / car.wheelbase;
    for (const HeatPoint& point : heat.trace) {
        CHECK(point.front_load == Approx(front).epsilon(1e-10));
        CHECK(point.rear_load == Approx(total - front).epsilon(1e-10));
    }
    CHECK(heat.smallest_front_load == Approx(front).epsilon(1e-10));
}

TEST_CASE("A front that lifts is reported with its place") {
    SECTION("from the start, where the weight lies behind the rear axle") {
        PlainCar car = reference_car();
        car.on_wheels.centre.x() = -0.003;
        const HeatResult heat = run(reference_track(), car);
        CHECK(heat.lifted_front);
        CHECK_FALSE(heat.lifted_rear);
        CHECK(heat.lifted_at == Approx(0).margin(1e-9));
        CHECK(heat.smallest_front_load < 0);
        CHECK(std::abs(heat.residual) < 1e-9);
    }
    SECTION("on a sharp transition, with little weight in front") {
        PlainCar car = reference_car();
        car.on_wheels.centre.x() = 0.004;
        TrackPlan plan;
        plan.first_slope = -30 * degree;
        plan.pieces = {Straight{2}, Arc{0.25, 30 * degree, 0.05}, Straight{5}};
        plan.start_line = 0.3;
        plan.finish_line = 6;
        const HeatResult heat = run(plan, car, HeatDetail::trace);
        REQUIRE(heat.lifted_front);
        CHECK(std::abs(heat.residual) < 1e-9);
        // It carries on the ramp; the first place where an axle does not lies on the arc, where the trace has
        // it.
        const auto first = std::find_if(heat.trace.begin(), heat.trace.end(), [](const HeatPoint& p) {
            return std::min(p.front_load, p.rear_load) < 0;
        });
        REQUIRE(first != heat.trace.end());
        CHECK(heat.trace.front().front_load > 0);
        CHECK(heat.lifted_at == Approx(first->at).margin(1e-9));
        const double arc = 2 - plan.start_line;
        CHECK(heat.lifted_at > arc);
        CHECK(heat.lifted_at < arc + 0.25 * 30 * degree + 0.05 + 0.2);
        const auto least = std::min_element(
            heat.trace.begin(), heat.trace.end(),
            [](const HeatPoint& a, const HeatPoint& b) { return a.front_load < b.front_load; });
        CHECK(heat.smallest_front_load == least->front_load);
        CHECK(heat.smallest_front_load_at == Approx(least->at).margin(1e-9));
    }
    SECTION("a usual car does not lift") {
        const HeatResult heat = run(reference_track(), reference_car());
        CHECK_FALSE(heat.lifted_front);
        CHECK_FALSE(heat.lifted_rear);
        CHECK(heat.smallest_front_load > 0);
    }
}
