#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/materials/moisture.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

TEST_CASE("wood density follows the handbook's formulas") {
    // Wood Handbook (FPL-GTR-190) chapter 4 as quoted by D. R. Larsen (2015): G 0.4 at 12 % gives 448 kg/m³.
    CHECK(wood_density(0.4, 0.12) == Approx(448).epsilon(1e-12));
    // Its 27.968 lb/ft³ with water of 62.43 lb/ft³ (999.94 to 1000.02 kg/m³ as rounded there).
    CHECK(wood_density(0.4, 0.12) * std::pow(12 * inch, 3) / pound == Approx(27.968).epsilon(1e-4));
    // G_x from G_b (formula from memory), against the species table of USDA Forest Service FIA (seen; Miles
    // and Smith 2009): the formula is for an average wood, so that single species differ by up to 3 %.
    CHECK(specific_gravity_at(0.34, 0.12) == Approx(0.35943).margin(5e-6)); // calculated by hand
    CHECK(specific_gravity_at(0.51, 0.12) == Approx(0.55501).margin(5e-6));
    CHECK(specific_gravity_at(0.56, 0.12) == Approx(0.61474).margin(5e-6));
    CHECK(specific_gravity_at(0.34, 0.12) == Approx(0.35).epsilon(0.03)); // eastern white pine
    CHECK(specific_gravity_at(0.51, 0.12) == Approx(0.55).epsilon(0.03)); // black walnut
    CHECK(specific_gravity_at(0.56, 0.12) == Approx(0.63).epsilon(0.03)); // sugar maple
    CHECK(specific_gravity_at(0.40, 0.12) == Approx(0.42).epsilon(0.03)); // yellow-poplar
    // Above fibre saturation wood swells no more.
    CHECK(specific_gravity_at(0.4, 0.30) == 0.4);
    CHECK(specific_gravity_at(0.4, 0.80) == 0.4);
}

TEST_CASE("the density formula of the timber standard agrees within the swelling law") {
    // NDS: 62.4 G / (1 + 0.009 G M) (1 + M/100) lb/ft³, G oven-dry, M in per cent (formula seen in two
    // engineering references); G 0.36, M 12 gives 24.21808 lb/ft³. Its oven-dry volume is another law of
    // swelling: 1 %.
    const double standard = 24.21808 * pound / std::pow(12 * inch, 3);
    const double oven_dry_basic = basic_specific_gravity(0.36, 0);
    CHECK(wood_density(specific_gravity_at(oven_dry_basic, 0.12), 0.12) == Approx(standard).epsilon(0.01));
}

TEST_CASE("moisture goes both ways and always adds weight") {
    for (const double specific_gravity : {0.16, 0.35, 0.63}) {
        for (double moisture = 0; moisture < 0.6; moisture += 0.05) {
            const double basic = basic_specific_gravity(specific_gravity, moisture);
            CHECK(specific_gravity_at(basic, moisture) == Approx(specific_gravity).epsilon(1e-14));
        }
    }
    CHECK(density_at_moisture(400, 0.12, 0.12) == Approx(400).epsilon(1e-14));
    const double damp = density_at_moisture(400, 0.12, 0.18);
    CHECK(damp > 400);
    CHECK(density_at_moisture(damp, 0.18, 0.12) == Approx(400).epsilon(1e-14));
    // A block's own mass, with its swelling undone, grows by the water alone.
    double before = 0;
    for (double moisture = 0; moisture <= 0.4; moisture += 0.01) {
        const double density = density_at_moisture(400, 0.12, moisture);
        CHECK(density > before);
        before = density;
    }
    CHECK_THROWS_AS(density_at_moisture(400, 12, 8), Problem); // per cent given as a fraction
    CHECK_THROWS_AS(density_at_moisture(0.4, 0.12, 0.08), Problem);
    CHECK_THROWS_AS(density_at_moisture(std::nan(""), 0.12, 0.08), Problem);
}
