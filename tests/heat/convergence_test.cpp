#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

TEST_CASE("The time is converged to a tenth of a microsecond on a thousand drawn cars and tracks") {
    Draw draw(3);
    double worst = 0, sum = 0;
    for (int n = 0; n < 1000; ++n) {
        TrackPlan plan = draw_track(draw);
        if (n % 50 == 0) plan = measured(plan, 0.08, 0.1e-3, unsigned(n));
        const Track track(plan);
        const HeatCar car = draw_car(draw).prepared(track.gravity());
        const Course course(track, car);
        const HeatResult usual = run_heat(course, car, HeatDetail::time);
        if (!usual.finished) continue;
        const HeatResult tight = run_heat(course, car, HeatDetail::time, {.tolerance = 1e-14, .parts = 4});
        const double error = std::abs(usual.time - tight.time);
        worst = std::max(worst, error);
        sum += error;
        INFO("draw " << n);
        CHECK(error < 1e-7);
        // What is asked for beside the time does not change it.
        CHECK(run_heat(course, car, HeatDetail::trace).time == usual.time);
    }
    CAPTURE(worst, sum / 1000);
    CHECK(sum / 1000 < 2e-8);
}

// Collocation of n nodes integrates to order 2n; the way from rest is mapped so that the start does not spoil
// it.
TEST_CASE("The time converges at the integrator's order") {
    PlainCar car = reference_car();
    const double exact = run(reference_track(), car, HeatDetail::time, {.tolerance = 1e-15, .parts = 8}).time;
    for (std::size_t nodes : {2, 3}) {
        const auto error = [&](int parts) {
            const HeatOptions fixed{.tolerance = 1, .nodes = nodes, .parts = parts};
            return std::abs(run(reference_track(), car, HeatDetail::time, fixed).time - exact);
        };
        const int parts = nodes == 2 ? 16 : 8;
        INFO(nodes << " nodes: " << error(parts) << ' ' << error(2 * parts));
        CHECK(std::log2(error(parts) / error(2 * parts)) == Approx(2.0 * double(nodes)).margin(0.5));
    }
}

// Steps are chosen by an error estimate: where the choice changes, the time must not.
TEST_CASE("The time moves smoothly with the inputs") {
    Draw draw(4);
    for (int car_number = 0; car_number < 20; ++car_number) {
        const TrackPlan plan = draw_track(draw);
        const PlainCar plain = draw_car(draw);
        const Track track(plan);
        double before = 0, before_that = 0, worst = 0;
        for (int n = 0; n < 60; ++n) {
            PlainCar moved = plain;
            moved.on_wheels.mass *= 1 + 1e-5 * n;
            moved.on_wheels.wheelbase *= 1 + 1e-5 * n;
            const HeatCar car = moved.prepared(track.gravity());
            const double time = run_heat(Course(track, car), car, HeatDetail::time).time;
            if (n >= 2) worst = std::max(worst, std::abs(time - 2 * before + before_that));
            before_that = before;
            before = time;
        }
        INFO("car " << car_number);
        CHECK(worst < 2e-8); // second differences of the true time are below 1e-9
    }
}
