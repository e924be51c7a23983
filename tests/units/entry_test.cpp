#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <random>
#include <string>

using namespace rampwright;

namespace {

constexpr auto metric = UnitSystem::metric;
constexpr auto inches = UnitSystem::inch_ounce;
using enum Quantity;

struct Read {
    const char* text;
    Quantity quantity;
    UnitSystem system;
    double si;
};

struct Refused {
    const char* text;
    Quantity quantity;
    UnitSystem system;
    EntryFault fault;
    std::size_t position;
};

// Values by the definitions of inch and pound (1959) and by hand arithmetic in decimal.
constexpr auto taken_rows = std::to_array<Read>({
    // Plain and signed numbers, in the person's default unit.
    {"111", length, metric, 0.111},
    {"111", length, inches, 2.8194},
    {" 12.5 ", mass, metric, 0.0125},
    {"5", mass, inches, 0.141747615625},
    {"-3", angle, metric, -0.052359877559829887},
    {"−3", angle, metric, -0.052359877559829887},
    {"+3", length, metric, 0.003},
    {"--3", length, metric, 0.003},
    {".5", length, metric, 0.0005},
    {"5.", length, metric, 0.005},
    {"1e-3", plain, metric, 0.001},
    {"0,15", plain, metric, 0.15},
    {"40", percent, metric, 0.4},
    {"40 %", percent, inches, 0.4},
    {"2.501", Quantity::time, metric, 2.501},
    {"12", energy, metric, 0.012},
    {"0", mass, metric, 0},
    // Either decimal mark, never ten times too big.
    {"2,5", length, metric, 0.0025},
    {"2.5", length, metric, 0.0025},
    {"1,5 in", length, metric, 0.0381},
    {"1,234", length, metric, 0.001234},
    {"0,1 oz", mass, metric, 0.0028349523125},
    // Units, any of them in any field, in the ways people spell them.
    {"111 mm", length, inches, 0.111},
    {"11.1cm", length, inches, 0.111},
    {"0.111 m", length, inches, 0.111},
    {"0.5 oz", mass, metric, 0.0141747615625},
    {"5 OZ", mass, metric, 0.141747615625},
    {"12 g", mass, inches, 0.012},
    {"1 lb", mass, metric, 0.45359237},
    {"7000 gr", mass, metric, 0.45359237},
    {"3°", angle, metric, 0.052359877559829887},
    {"3 deg", angle, metric, 0.052359877559829887},
    {"3º", angle, metric, 0.052359877559829887},
    {"0.05 rad", angle, inches, 0.05},
    {"2.5 ms", Quantity::time, metric, 0.0025},
    {"4 in.", length, metric, 0.1016},
    {"250 µm", length, metric, 0.00025},
    {"250 μm", length, metric, 0.00025},
    {"1.8 kg/m³", density, inches, 1.8},
    {"0.45 g/cm3", density, metric, 450},
    {"28 lb/ft³", density, metric, 448.51693127},
    {"326 g mm2", inertia, metric, 3.26e-7},
    {"326 g·mm²", inertia, metric, 3.26e-7},
    {"36 km/h", speed, metric, 10},
    {"20 °C", temperature, inches, 293.15},
    {"68", temperature, inches, 293.15},
    {"-40 °F", temperature, metric, 233.15},
    {"-40", temperature, metric, 233.15},
    {"20°", temperature, metric, 293.15},
    {"293.15 K", temperature, metric, 293.15},
    {"1013.25", pressure, metric, 101325},
    {"760 mmHg", pressure, metric, 101325},
    {"29.92 inHg", pressure, metric, 101320.8},
    {"2 cc", volume, metric, 2e-6},
    {"0.9 N mm", torque, metric, 9e-4},
    {"4.95 cm²", area, metric, 4.95e-4},
    // Fractions.
    {"7/8", length, inches, 0.022225},
    {"7/8", length, metric, 0.000875},
    {"7/8 in", length, metric, 0.022225},
    {"4 3/8 in", length, metric, 0.111125},
    {"4-3/8\"", length, metric, 0.111125},
    {"4-3/8", length, inches, 0.111125},
    {"-4 3/8 in", length, metric, -0.111125},
    {"3/8\"", length, metric, 0.009525},
    {"3/8″", length, metric, 0.009525},
    {"3/8''", length, metric, 0.009525},
    {"½ in", length, metric, 0.0127},
    {"4½\"", length, metric, 0.1143},
    {"4 ⅜ in", length, metric, 0.111125},
    {"4-⅜ in", length, metric, 0.111125},
    {"3⁄8 in", length, metric, 0.009525},
    {"1 1/2 oz", mass, metric, 0.0425242846875},
    {"1 / 8 in", length, metric, 0.003175},
    // Compounds.
    {"4 ft 2 in", length, metric, 1.27},
    {"4' 2\"", length, metric, 1.27},
    {"4'-2\"", length, metric, 1.27},
    {"4' - 2\"", length, metric, 1.1684},
    {"-4' 2 3/8\"", length, metric, -1.279525},
    {"4'2", length, metric, 1.27},
    {"5 lb 2 oz", mass, metric, 2.32466089625},
    {"3° 30'", angle, metric, 0.061086523819801536},
    {"3°30'36\"", angle, metric, 0.061261056745000965},
    {"1 min 2.5 s", Quantity::time, metric, 62.5},
    // Sums, products, brackets.
    {"10mm+2", length, metric, 0.012},
    {"10 mm - 3/8 in", length, metric, 0.000475},
    {"10 mm-3/8 in", length, metric, 0.000475},
    {"4 in - 3/8", length, inches, 0.092075},
    {"4 - 3/8 in", length, inches, 0.092075},
    {"4-9/8", length, inches, 0.073025},
    {"2*(3 mm+1/8 in)", length, metric, 0.01235},
    {"2 × 3 mm", length, metric, 0.006},
    {"24 in / 2", length, metric, 0.3048},
    {"(3+1/8) in", length, metric, 0.079375},
    {"-(1 in + 1 mm)", length, metric, -0.0264},
    {"5 oz - 3 g", mass, metric, 0.138747615625},
    {"1.219 m + 2 mm", length, inches, 1.221},
    {"10*3/4", plain, metric, 7.5},
    {"2*-3 mm", length, metric, -0.006},
});

constexpr auto refused_rows = std::to_array<Refused>({
    {"", length, metric, EntryFault::empty, 0},
    {"   ", length, metric, EntryFault::empty, 3},
    {"abc", length, metric, EntryFault::unknown_unit, 0},
    {"3 furlongs", length, metric, EntryFault::unknown_unit, 2},
    {"3 Fuß", length, metric, EntryFault::unknown_unit, 2},
    {"3 mmm", length, metric, EntryFault::unknown_unit, 2},
    {"3 MJ", energy, metric, EntryFault::unknown_unit, 2},
    {"0.15 x", plain, metric, EntryFault::unknown_unit, 5},
    {"3 g", length, metric, EntryFault::wrong_quantity, 2},
    {"3 in²", length, metric, EntryFault::wrong_quantity, 2},
    {"3 mm", plain, metric, EntryFault::wrong_quantity, 2},
    {"5 %", plain, metric, EntryFault::wrong_quantity, 2},
    {"2\"", mass, metric, EntryFault::wrong_quantity, 1},
    {"mm", length, metric, EntryFault::not_understood, 0},
    {"1.234,5", length, metric, EntryFault::several_marks, 0},
    {"1,234.5", length, metric, EntryFault::several_marks, 0},
    {"½ + 1.2.3", length, metric, EntryFault::several_marks, 4},
    {"1 234", length, metric, EntryFault::two_numbers, 2},
    {"3 4 in", length, metric, EntryFault::two_numbers, 2},
    {"4 9/8 in", length, metric, EntryFault::two_numbers, 2},
    {"4 in 2 ft", length, metric, EntryFault::two_numbers, 9},
    {"4½5", length, metric, EntryFault::two_numbers, 2},
    {"10½.5", length, metric, EntryFault::two_numbers, 3},
    {"2 cm + 3", length, metric, EntryFault::unit_missing, 5},
    {"3 + 1/8 in", length, metric, EntryFault::unit_missing, 2},
    {"10mm+2", length, inches, EntryFault::unit_missing, 4},
    {"4-3/8", length, metric, EntryFault::unclear_hyphen, 1},
    {"4-3/8 mm", length, inches, EntryFault::unclear_hyphen, 1},
    {"3 mm * 2 mm", length, metric, EntryFault::unit_product, 11},
    {"3 / (2 mm)", length, metric, EntryFault::unit_product, 10},
    {"(3 mm) mm", length, metric, EntryFault::unit_product, 9},
    {"3/0", length, metric, EntryFault::division_by_zero, 3},
    {"3/(1-1)", length, metric, EntryFault::division_by_zero, 7},
    {"(3 mm", length, metric, EntryFault::unclosed_bracket, 5},
    {"3 mm)", length, metric, EntryFault::unclosed_bracket, 4},
    {"20 °C + 5 °C", temperature, metric, EntryFault::temperature_sum, 12},
    {"2 * 20 °C", temperature, metric, EntryFault::temperature_sum, 9},
    {"-300 °C", temperature, metric, EntryFault::below_absolute_zero, 7},
    {"1e999", length, metric, EntryFault::too_large, 5},
    {"1e300*1e300", length, metric, EntryFault::too_large, 11},
    {"3 +", length, metric, EntryFault::not_understood, 3},
    {"3 # 4", length, metric, EntryFault::not_understood, 2},
    {"inf", length, metric, EntryFault::unknown_unit, 0},
    {"nan", plain, metric, EntryFault::unknown_unit, 0},
    {"0x10", plain, metric, EntryFault::unknown_unit, 1},
});

} // namespace

TEST_CASE("typed text becomes a value") {
    for (const Read& row : taken_rows) {
        INFO(row.text << " as " << in_words(row.quantity));
        double si = 0;
        REQUIRE_NOTHROW(si = parse_entry(row.text, row.quantity, row.system));
        // The two rows with long decimals carry as many digits as are written.
        const double tolerance = row.quantity == pressure || row.quantity == density ? 1e-6 : 1e-14;
        CHECK(si == Approx(row.si).epsilon(tolerance).margin(0));
    }
}

TEST_CASE("what is no value is refused by name, place and remedy") {
    for (const Refused& row : refused_rows) {
        INFO(row.text << " as " << in_words(row.quantity));
        try {
            const double si = parse_entry(row.text, row.quantity, row.system);
            FAIL_CHECK("taken as " << si);
        } catch (const EntryError& error) {
            INFO(error.what());
            CHECK(static_cast<int>(error.fault()) == static_cast<int>(row.fault));
            CHECK(error.position() == row.position);
            CHECK_FALSE(error.wrong().empty());
            CHECK_FALSE(error.remedy().empty());
        }
    }
}

TEST_CASE("a very long or deeply nested entry is refused, not recursed into") {
    CHECK_THROWS_AS(parse_entry(std::string(100000, '('), length, metric), EntryError);
    CHECK_THROWS_AS(parse_entry(std::string(100, '(') + "1" + std::string(99, ')'), length, metric),
                    EntryError);
    CHECK(parse_entry(std::string(20, '(') + "1" + std::string(20, ')'), length, metric) == 0.001);
}

TEST_CASE("no text, however odd, does anything but give a finite value or an entry error") {
    const auto pieces =
        std::to_array<std::string>({"1",  "23", "0", ".", ",", " ",  "/", "-", "+", "*",  "(",    ")",
                                    "in", "mm", "g", "°", "'", "\"", "½", "e", "−", "ft", "\xff", "%"});
    std::mt19937 random(20261125);
    std::uniform_int_distribution<std::size_t> pick(0, pieces.size() - 1), count(1, 12);
    int taken = 0;
    for (int i = 0; i < 50000; ++i) {
        std::string text;
        for (std::size_t n = count(random); n > 0; --n)
            text += pieces[pick(random)];
        for (const Quantity quantity : {length, angle, plain, temperature}) {
            try {
                const double si = parse_entry(text, quantity, i % 2 == 0 ? metric : inches);
                if (!std::isfinite(si)) FAIL(text);
                ++taken;
            } catch (const EntryError&) {
            }
        }
    }
    CHECK(taken > 1000);
}
