#include <rampwright/core/constants.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;

TEST_CASE("units are the defined ones") {
    // Debian's units 2.22 definitions.units: inch 2.54 cm, pound 0.45359237 kg, gravity 9.80665 m/s² (seen).
    CHECK(inch == 0.0254);
    CHECK(pound == 0.45359237);
    CHECK(ounce == Approx(0.028349523125).epsilon(1e-15));
    CHECK(standard_gravity == 9.80665);
    CHECK(5 * ounce / gram == Approx(141.747615625).epsilon(1e-12));
    CHECK(42 * 12 * inch == Approx(12.8016).epsilon(1e-15));
}
