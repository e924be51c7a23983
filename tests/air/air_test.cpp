#include <rampwright/air/air.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>

#include <array>
#include <cmath>

using namespace rampwright;

namespace {

constexpr double ice_point = 273.15;
constexpr double mmhg = 133.322387415; // Pa; conventional, from memory

double density(double celsius, double pressure, double humidity) {
    return moist_air(ice_point + celsius, pressure, humidity).density;
}

// The older equation of Jones (1978) as NIST SOP 2 (option B) has it; read in the R package masscor.
double jones_density(double celsius, double mm_of_mercury, double percent) {
    const double kelvin = ice_point + celsius;
    const double saturation = 1.3146e9 * std::exp(-5315.56 / kelvin); // mmHg
    return 0.46460 * (mm_of_mercury - 0.0037960 * percent * saturation) / kelvin;
}

// IAPWS-IF97 region 4 (Wagner et al., 2000), coefficients from memory; checked against its own Table 35
// below.
double if97_saturation_pressure(double kelvin) {
    constexpr std::array n = {
        0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
        0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6,  -0.23855557567849,  0.65017534844798e3};
    const double theta = kelvin + n[8] / (kelvin - n[9]);
    const double a = theta * theta + n[0] * theta + n[1];
    const double b = n[2] * theta * theta + n[3] * theta + n[4];
    const double c = n[5] * theta * theta + n[6] * theta + n[7];
    return 1e6 * std::pow(2 * c / (-b + std::sqrt(b * b - 4 * a * c)), 4);
}

} // namespace

TEST_CASE("moist air agrees with published tables") {
    // Table of a mass-metrology appendix (p. 205), seen as quoted in the tests of the R package masscor.
    CHECK(density(10, 730 * mmhg, 0.40) == Approx(1.1957).margin(5e-5));
    CHECK(density(40, 760 * mmhg, 0.40) == Approx(1.1150).margin(1e-4));
    // NIST SOP 2 appendix B, examples 1 and 3, seen as quoted there; they are by the equation of Jones, which
    // differs from CIPM-2007 by 5e-5.
    CHECK(jones_density(22.3, 748.1, 37) == Approx(1.17194).margin(1e-5));
    CHECK(jones_density(23.4, 612.3, 23) == Approx(0.95632).margin(1e-5));
    CHECK(density(22.3, 748.1 * mmhg, 0.37) == Approx(1.17194).margin(1e-4));
    CHECK(density(23.4, 612.3 * mmhg, 0.23) == Approx(0.95632).margin(5e-5));
    // CIPM's simplified formula, valid at 15 to 27 °C, seen with its value in the same package.
    CHECK(density(25, 760 * mmhg, 0.40) == Approx(1.1787).margin(5e-5));
    const double simplified = (3.4848 * 101.325 - 0.9024 * 0.5 * std::exp(0.0612 * 20)) / (ice_point + 20);
    CHECK(density(20, 101325, 0.5) == Approx(simplified).epsilon(1e-4));
}

TEST_CASE("moist air follows the equation to its last digits") {
    // Calculated from the equation as published (coefficients seen in the R package masscor), at 25 digits.
    CHECK(density(20, 101325, 0.5) == Approx(1.19931390).epsilon(5e-9));
    CHECK(density(15, 101325, 0) == Approx(1.22552134).epsilon(5e-9));
    CHECK(density(20, 101325, 0) == Approx(1.20455734).epsilon(5e-9));
    CHECK(density(10, 730 * mmhg, 0.40) == Approx(1.19569495).epsilon(5e-9));
    CHECK(density(40, 760 * mmhg, 0.40) == Approx(1.11503525).epsilon(5e-9));
    CHECK(density(22.3, 748.1 * mmhg, 0.37) == Approx(1.17199824).epsilon(5e-9));
    CHECK(density(23.4, 612.3 * mmhg, 0.23) == Approx(0.95630459).epsilon(5e-9));
    CHECK(density(25, 760 * mmhg, 0.40) == Approx(1.17871041).epsilon(5e-9));
    CHECK(saturation_vapour_pressure(293.15) == Approx(2339.163).epsilon(1e-6));
}

TEST_CASE("moist air is lighter, warm air is lighter, thick air is heavier") {
    CHECK(density(20, 101325, 1) < density(20, 101325, 0));
    CHECK(density(21, 101325, 0.5) < density(20, 101325, 0.5));
    CHECK(density(20, 101326, 0.5) > density(20, 101325, 0.5));
}

TEST_CASE("saturation pressure agrees with IAPWS-IF97") {
    // IF97's own check values, Table 35: 300 K 0.353658941e-2 MPa (memory), 500 K 2.63889776 MPa (seen in the
    // docstring of Debian's python3-iapws).
    CHECK(if97_saturation_pressure(300) == Approx(3536.58941).epsilon(1e-8));
    CHECK(if97_saturation_pressure(500) == Approx(2.63889776e6).epsilon(1e-8));
    for (double celsius = 0; celsius <= 40; celsius += 2.5)
        CHECK(saturation_vapour_pressure(ice_point + celsius) ==
              Approx(if97_saturation_pressure(ice_point + celsius)).epsilon(1e-3));
}

TEST_CASE("air outside the formula is refused, and said") {
    CHECK_THROWS_AS(density(-21, 101325, 0.5), Problem);
    CHECK_THROWS_AS(density(61, 101325, 0.5), Problem);
    CHECK_THROWS_AS(density(20, 1013.25, 0.5), Problem); // hPa given as Pa
    CHECK_THROWS_AS(density(20, 101325, 40), Problem);   // per cent given as a fraction
    CHECK_THROWS_AS(density(20, 101325, -0.1), Problem);
    CHECK_THROWS_AS(density(std::nan(""), 101325, 0.5), Problem);
    CHECK_NOTHROW(density(-20, 50e3, 1));
    CHECK_NOTHROW(density(60, 120e3, 0));
    CHECK(in_cipm_range(ice_point + 20, 101325));
    CHECK_FALSE(in_cipm_range(ice_point + 10, 101325));
    CHECK_FALSE(in_cipm_range(ice_point + 20, 55e3));
}

TEST_CASE("standard atmosphere of 1976") {
    struct Row {
        double altitude, density, pressure, temperature;
    };
    // By geometric altitude: seen by running Debian's python3-fluids 1.0.22 (ATMOSPHERE_1976).
    for (const Row& row : {Row{0, 1.22499916, 101325.0, 288.15},
                           {500, 1.16727251, 95461.289, 284.90026},
                           {1000, 1.11165899, 89876.285, 281.65102},
                           {1500, 1.05810385, 84559.677, 278.40230},
                           {2000, 1.00655322, 79501.425, 275.15409},
                           {3000, 0.90925394, 70121.162, 268.65920}}) {
        const StandardAir air = standard_atmosphere(row.altitude);
        CHECK(air.density == Approx(row.density).epsilon(1e-8));
        CHECK(air.pressure == Approx(row.pressure).epsilon(1e-8));
        CHECK(air.temperature == Approx(row.temperature).epsilon(2e-8));
    }
    // The printed Table I, from memory.
    CHECK(standard_atmosphere(0).density == Approx(1.2250).margin(5e-5));
    CHECK(standard_atmosphere(1000).density == Approx(1.1117).margin(5e-5));
    CHECK(standard_atmosphere(3000).density == Approx(0.90925).margin(5e-6));
    // Calculated with the altitude taken as geopotential: 1.5e-5 off at 1 km, which the test above would see.
    CHECK(std::abs(standard_atmosphere(1000).density - 1.11164181) > 1e-5);
    CHECK(geopotential_altitude(1000) == Approx(999.8427).margin(1e-4));
    CHECK(standard_air(500).density == standard_atmosphere(500).density);

    CHECK_THROWS_AS(standard_atmosphere(-5001), Problem);
    CHECK_NOTHROW(standard_atmosphere(11019));
    CHECK_THROWS_AS(standard_atmosphere(11020), Problem);
    CHECK_THROWS_AS(standard_atmosphere(-6356766), Problem);
    CHECK_THROWS_AS(standard_atmosphere(std::nan("")), Problem);
}

TEST_CASE("viscosity by Sutherland's law") {
    // U.S. Standard Atmosphere, 1976, prints 1.7894e-5 Pa s at sea level (constants and value from memory).
    CHECK(dynamic_viscosity(288.15) == Approx(1.7894e-5).margin(5e-10));
    CHECK(dynamic_viscosity(288.15) == Approx(1.78938e-5).epsilon(2e-6));
}

TEST_CASE("normal gravity by Somigliana's formula") {
    // Formula and WGS 84 constants from memory, values calculated from them at 25 digits.
    CHECK(normal_gravity(0) == Approx(9.7803253359).epsilon(1e-10));
    CHECK(normal_gravity(30 * degree) == Approx(9.7932472692).epsilon(1e-10));
    CHECK(normal_gravity(45 * degree) == Approx(9.8061977694).epsilon(1e-10));
    CHECK(normal_gravity(60 * degree) == Approx(9.8191769531).epsilon(1e-10));
    CHECK(normal_gravity(90 * degree) == Approx(9.8321849379).epsilon(1e-10));
    CHECK(normal_gravity(-30 * degree) == normal_gravity(30 * degree));
    CHECK_THROWS_AS(normal_gravity(45), Problem); // degrees given as radians
}
