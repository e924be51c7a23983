#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>

#include <boost/multiprecision/cpp_int.hpp>
#include <catch2/catch.hpp>

#include <array>
#include <cmath>

using namespace rampwright;
using boost::multiprecision::cpp_int;
using Rational = boost::multiprecision::cpp_rational;

namespace {

// The definition in exact arithmetic, from numbers that were never doubles.
Rational floor_of(const Rational& x) {
    cpp_int quotient = numerator(x) / denominator(x);
    if (quotient * denominator(x) > numerator(x)) --quotient;
    return quotient;
}

Rational exact_reading(const Rational& division, bool down, const Rational& offset, const Rational& mass) {
    const Rational steps = (mass + offset) / division;
    return division * floor_of(down ? steps : steps + Rational(1, 2));
}

Rational exact_bound(const Rational& division, bool down, const Rational& offset, const Rational& limit) {
    return division * (floor_of(limit / division) + (down ? Rational(1) : Rational(1, 2))) - offset;
}

// A mass as a file gives it: a decimal number of grams, read as a double, then in kg.
struct Mass {
    Rational grams;
    double kilograms;
};

Mass milligrams(long count) {
    return {Rational(count, 1000), static_cast<double>(count) / 1000 * gram};
}

// The ounce is 28.349523125 g by definition.
Mass ounces(long above, long below) {
    return {Rational(28349523125LL, 1000000000) * Rational(above, below),
            static_cast<double>(above) / static_cast<double>(below) * ounce};
}

bool same(double kilograms, const Rational& grams) {
    return std::abs(kilograms / gram - grams.convert_to<double>()) < 1e-12 * (1 + std::abs(kilograms / gram));
}

} // namespace

TEST_CASE("readings and bounds agree with exact arithmetic for every division, offset and mass") {
    const std::array divisions = {milligrams(1),   milligrams(2),    milligrams(5),    milligrams(10),
                                  milligrams(20),  milligrams(50),   milligrams(100),  milligrams(200),
                                  milligrams(500), milligrams(1000), milligrams(2000), milligrams(5000),
                                  ounces(1, 100),  ounces(1, 20),    ounces(1, 10),    ounces(1, 8),
                                  ounces(1, 16),   ounces(1, 32)};
    const std::array offsets = {milligrams(0), milligrams(50), milligrams(-50), milligrams(137),
                                milligrams(-1400)};
    const std::array limits = {milligrams(141700), milligrams(141748), milligrams(142000),
                               milligrams(150000), ounces(5, 1),       ounces(1001, 200)};
    long wrong_readings = 0, wrong_bounds = 0, wrong_verdicts = 0, checked = 0;
    for (const Mass& division : divisions) {
        for (const Mass& offset : offsets) {
            for (const bool down : {false, true}) {
                const Scale scale{division.kilograms, down, offset.kilograms};
                for (const Mass& limit : limits) {
                    const Rational bound = exact_bound(division.grams, down, offset.grams, limit.grams);
                    if (!same(legal_bound(scale, limit.kilograms), bound)) ++wrong_bounds;
                    // Halves of thousandths of a gram on either side of the bound, and the bound.
                    for (long step = -4; step <= 4; ++step) {
                        const Rational mass = bound + Rational(step, 2000);
                        const bool legal =
                            exact_reading(division.grams, down, offset.grams, mass) <= limit.grams;
                        const ScaleVerdict verdict =
                            weigh(scale, Rational(mass / 1000).convert_to<double>(), limit.kilograms);
                        if (verdict.legal != legal || (step == 0 && legal) || (step < 0 && !legal))
                            ++wrong_verdicts;
                        if (!same(verdict.margin, bound - mass)) ++wrong_verdicts;
                    }
                }
                for (long mg = 138000; mg <= 146000; mg += 5) {
                    const Mass mass = milligrams(mg);
                    ++checked;
                    if (!same(scale_reading(scale, mass.kilograms),
                              exact_reading(division.grams, down, offset.grams, mass.grams)))
                        ++wrong_readings;
                }
                for (long hundredths = 480; hundredths <= 520; ++hundredths) {
                    const Mass mass = ounces(hundredths, 100);
                    if (!same(scale_reading(scale, mass.kilograms),
                              exact_reading(division.grams, down, offset.grams, mass.grams)))
                        ++wrong_readings;
                }
            }
        }
    }
    CHECK(wrong_readings == 0);
    CHECK(wrong_bounds == 0);
    CHECK(wrong_verdicts == 0);
    CHECK(checked == 18 * 5 * 2 * 1601);
}

TEST_CASE("a 143 g car reads 5.0 oz on a scale that shows tenths") {
    // Common practice, no source; 5 oz is 141.747615625 g by definition.
    const Scale tenths{0.1 * ounce, false, 0};
    CHECK(scale_reading(tenths, 0.143) == Approx(5 * ounce).epsilon(1e-14));
    CHECK(weigh(tenths, 0.143, 5 * ounce).legal);
    CHECK(legal_bound(tenths, 5 * ounce) == Approx(5.05 * ounce).epsilon(1e-14));
    const Scale hundredths{0.01 * ounce, false, 0};
    CHECK(scale_reading(hundredths, 0.143) == Approx(5.04 * ounce).epsilon(1e-14));
    CHECK_FALSE(weigh(hundredths, 0.143, 5 * ounce).legal);
    // What must come off for the better scale too: down to 5.005 oz.
    CHECK(excess_on_both(tenths, hundredths, 0.143, 5 * ounce) ==
          Approx(0.143 - 5.005 * ounce).epsilon(1e-12));
}

TEST_CASE("halves go up, and the display's half is where its reading turns") {
    const Scale tenth_gram{0.1e-3, false, 0};
    CHECK(scale_reading(tenth_gram, 0.14305) == Approx(0.1431).epsilon(1e-15));
    CHECK(scale_reading(tenth_gram, 0.14304999) == Approx(0.1430).epsilon(1e-15));
    CHECK(scale_reading(tenth_gram, -0.00005) == 0);
    // OIML R 76-1 A.4.4.3, error before rounding E = I + e/2 - dL - L, with its example from memory: e = 5 g,
    // I = L = 1000 g, turning at dL = 1.5 g more, so P = 1001 g. Here: a scale that is 1 g heavy turns there.
    const Scale oiml{5e-3, false, 1e-3};
    CHECK(scale_reading(oiml, 1.0) == 1.0);
    CHECK(scale_reading(oiml, 1.0 + 1.49e-3) == 1.0);
    CHECK(scale_reading(oiml, 1.0 + 1.5e-3) == Approx(1.005).epsilon(1e-15));
    // GUM F.2.2.1 (seen as quoted): a reading tells the true mass to half a division either way.
    for (int i = 0; i < 1000; ++i) {
        const double mass = 0.1 + i * 1.7e-5;
        CHECK(std::abs(scale_reading(tenth_gram, mass) - mass) <= 0.05e-3 * (1 + 1e-12));
    }
}

TEST_CASE("a scale without a division, and a mass that is none, are refused") {
    CHECK_THROWS_AS(scale_reading({0, false, 0}, 0.1), Problem);
    CHECK_THROWS_AS(scale_reading({-1e-4, false, 0}, 0.1), Problem);
    CHECK_THROWS_AS(scale_reading({1e-4, false, 0}, std::nan("")), Problem);
    CHECK_THROWS_AS(legal_bound({1e-4, false, 0}, 1e9), Problem);
}
