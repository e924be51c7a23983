#include <rampwright/results/in_units.hpp>
#include <rampwright/study/names.hpp>
#include <rampwright/units/reading.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3, g = 1e-3;

} // namespace

TEST_CASE("a length and a mass have the digits a hand can use", "[units]") {
    const auto inches = [](double si, Quantity quantity) {
        return format_reading(si, quantity, UnitSystem::inch_ounce);
    };
    const auto metric = [](double si, Quantity quantity) {
        return format_reading(si, quantity, UnitSystem::metric);
    };
    // An inch is 25.4 mm, an ounce 28.349523125 g, both by definition.
    CHECK(inches(1200 * mm, Quantity::length) == "47.24 in");
    CHECK(inches(180 * mm, Quantity::length) == "7.087 in");
    CHECK(inches(9753.6 * mm, Quantity::length) == "384.0 in");
    CHECK(inches(2.4 * g, Quantity::mass) == "0.085 oz");
    CHECK(inches(0.1 * g, Quantity::mass) == "0.0035 oz");
    CHECK(inches(0, Quantity::mass) == "0.000 oz");
    CHECK(metric(141.747 * g, Quantity::mass) == "141.7 g");
    CHECK(metric(999.9 * mm, Quantity::length) == "999.9 mm");
    CHECK(metric(1200 * mm, Quantity::length) == "1200 mm");
    CHECK(format_reading(12.7 * mm, Quantity::length, UnitSystem::inch_ounce, false) == "0.500");
}

TEST_CASE("a finding speaks the person's units; its values and its own text stay the file's", "[units]") {
    const Finding wall =
        make_finding("wall-thin", Severity::warning, "/cars/0", {}, {{"wall_mm", 1.27}, {"least_mm", 3}});
    CHECK(wall.text == "The wall left here is 1.3 mm: under 3.0 mm pine breaks easily.");
    CHECK(text_of(wall, UnitSystem::metric) == wall.text);
    CHECK(text_of(wall, UnitSystem::inch_ounce) ==
          "The wall left here is 0.050 in: under 0.118 in pine breaks easily.");
    CHECK(wall.values[0].second == 1.27);
    const Finding volume = make_finding("ballast-overlap", Severity::warning, "/cars/0", {},
                                        {{"overlap_mm3", 1638.7064}, {"other", 1}});
    CHECK(text_of(volume, UnitSystem::inch_ounce) == "Two weights take the same room: 0.1000 in³ of it.");
    const Finding lighter =
        make_finding("as-built-lighter", Severity::note, "/cars/0", {},
                     {{"difference_g", 28.349523125}, {"density_kg_m3", 400}, {"planned_kg_m3", 450}});
    // 1 lb/ft³ is 16.01846 kg/m³ (NIST SP 811, appendix B.8).
    CHECK(text_of(lighter, UnitSystem::inch_ounce) ==
          "The car weighs 1.000 oz less than its parts add up to. If the wood alone is lighter, it is "
          "25.0 lb/ft³ instead of 28.1 lb/ft³.");
    const Finding rule = make_finding("rule-breach", Severity::breach, "/cars/0", {},
                                      {{"limit_g", 141.747615625}, {"measured_g", 143}});
    CHECK(text_of(rule, UnitSystem::inch_ounce) ==
          "A rule of this race is broken: the limit is 5.000 oz, the car has 5.044 oz.");
    // Angles, times and counts are alike in both.
    const Finding cant = make_finding("cant-disputed", Severity::note, "/cars/0", {},
                                      {{"cant_deg", 3}, {"cost_ms", 4.2}, {"hub_mj", 10}, {"runs", 12}});
    CHECK(text_of(cant, UnitSystem::inch_ounce) == text_of(cant, UnitSystem::metric));
    // A translation is filled the same way.
    CHECK(fill_in_units("Noch {wall_mm}.", wall.values, UnitSystem::inch_ounce) == "Noch 0.050 in.");
}

TEST_CASE("what a change is worth is said for a change people can set", "[units]") {
    CHECK(change_size("0.1 mm", UnitSystem::metric) == "0.1 mm");
    CHECK(change_size("0.1 mm", UnitSystem::inch_ounce) == "0.004 in (0.1 mm)");
    CHECK(change_size("0.1 g each", UnitSystem::inch_ounce) == "0.0035 oz (0.1 g) each");
    CHECK(change_size("1 mm forward", UnitSystem::inch_ounce) == "0.039 in (1 mm) forward");
    CHECK(change_size("1 cm²", UnitSystem::inch_ounce) == "0.155 in² (1 cm²)");
    CHECK(change_size("1°", UnitSystem::inch_ounce) == "1°");
    CHECK(change_size("0.01", UnitSystem::inch_ounce) == "0.01");
}
