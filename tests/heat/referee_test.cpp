#include <catch2/catch.hpp>

#include <heat/ode_referee.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// Tight enough that what is left is the model and rounding.
constexpr HeatOptions tight{.tolerance = 1e-13, .parts = 2};

} // namespace

TEST_CASE("A general ODE suite, with equations written apart, finds the reference heat") {
    const RefereeHeat referee = referee_heat(reference_track(), reference_car());
    const HeatResult heat = run(reference_track(), reference_car(), HeatDetail::time, tight);
    CHECK(referee.time == Approx(2.501364).margin(2e-6));
    CHECK(heat.time == Approx(referee.time).margin(1e-9));
    CHECK(heat.finish_speed == Approx(referee.finish_speed).margin(1e-9));
}

TEST_CASE("A general ODE suite agrees on drawn cars and tracks with everything on") {
    Draw draw(11);
    int compared = 0;
    for (int n = 0; n < 40; ++n) {
        const TrackPlan plan = draw_track(draw);
        const PlainCar car = draw_car(draw);
        const RefereeHeat referee = referee_heat(plan, car);
        if (referee.lifted) continue; // it has no rule for a wheel in the air
        ++compared;
        const HeatResult heat = run(plan, car, HeatDetail::time, tight);
        INFO("draw " << n);
        REQUIRE(heat.finished);
        CHECK(heat.time == Approx(referee.time).margin(1e-9));
        CHECK(heat.finish_speed == Approx(referee.finish_speed).margin(1e-9));
    }
    CHECK(compared >= 30);
}
