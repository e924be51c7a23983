#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

// Figures of one heat on which two implementations written apart from this program, and from each other,
// agree in every digit printed: a first-principles integration of the same car on the same track.

TEST_CASE("A heat with losses agrees with the independent figures") {
    const Track track(reference_track());
    const HeatCar car = reference_car().prepared();
    const HeatResult heat = run_heat(Course(track, car), car);
    REQUIRE(heat.finished);
    // The figures have six decimals; half a unit of the last one is a rounding, the rest is theirs.
    CHECK(heat.time == Approx(2.501364).margin(2e-6));
    CHECK(heat.finish_speed == Approx(4.683083).margin(2e-6));
    // Energies have two decimals of a millijoule.
    constexpr double last_digit = 0.0051;
    CHECK(heat.budget.released * 1e3 == Approx(1769.11).margin(last_digit));
    CHECK(heat.budget.journal * 1e3 == Approx(97.12).margin(last_digit));
    CHECK(heat.budget.rolling * 1e3 == Approx(20.38).margin(last_digit));
    CHECK(heat.budget.air * 1e3 == Approx(50.73).margin(last_digit));
    CHECK(heat.budget.spin * 1e3 == Approx(47.04).margin(last_digit));
    CHECK(heat.budget.hub == 0);
    CHECK(heat.budget.scrub == 0);
    CHECK_FALSE(heat.budget.rail.has_value());
    CHECK(std::abs(heat.residual) < 1e-9);
}

TEST_CASE("A heat without loss or spin agrees with the independent figures") {
    const Track track(reference_track());
    PlainCar plain = reference_car();
    make_lossless(plain);
    const HeatCar car = plain.prepared();
    const HeatResult heat = run_heat(Course(track, car), car);
    REQUIRE(heat.finished);
    CHECK(heat.time == Approx(2.411439).margin(2e-6));
    CHECK(heat.finish_speed == Approx(4.996980).margin(2e-6));
    CHECK(heat.budget.lost() == 0);
}
