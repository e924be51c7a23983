#include <rampwright/core/constants.hpp>
#include <rampwright/units/decimal.hpp>
#include <rampwright/units/quantity.hpp>

#include <algorithm>
#include <array>
#include <cctype>
#include <cstdlib>

namespace rampwright {

namespace {

constexpr double foot = 12 * inch;
constexpr double pound_force = pound * standard_gravity;
constexpr double ounce_force = ounce * standard_gravity;
constexpr double mm2 = 1e-6, mm3 = 1e-9, in2 = inch * inch, in3 = in2 * inch, ft3 = foot * foot * foot;
// Conventional millimetre of mercury: 13 595.1 kg/m³ under standard gravity.
constexpr double mmhg = 13.5951 * standard_gravity;
constexpr double fahrenheit = 5.0 / 9;

// The one table of units. Thousandths are written as quotients: 1/1000 is the double nearest to it either
// way.
constexpr auto units = std::to_array<Unit>({
    {"", Quantity::plain, 1, 0, ""},
    {"%", Quantity::percent, 0.01, 0, "pct|percent|per cent"},

    {"mm", Quantity::length, 1e-3, 0, "MM|millimetre|millimetres|millimeter|millimeters"},
    {"cm", Quantity::length, 1e-2, 0, "centimetre|centimetres|centimeter|centimeters"},
    {"m", Quantity::length, 1, 0, "metre|metres|meter|meters"},
    {"µm", Quantity::length, 1e-6, 0, "um|micron|microns"},
    {"in", Quantity::length, inch, 0, "\"|inch|inches"},
    {"ft", Quantity::length, foot, 0, "'|foot|feet"},
    {"yd", Quantity::length, 3 * foot, 0, "yard|yards"},
    {"thou", Quantity::length, inch / 1000, 0, "thousandths"},

    {"mm²", Quantity::area, mm2, 0, "mm2|mm^2|sq mm"},
    {"cm²", Quantity::area, 1e-4, 0, "cm2|cm^2|sq cm"},
    {"m²", Quantity::area, 1, 0, "m2|m^2|sq m"},
    {"in²", Quantity::area, in2, 0, "in2|in^2|sq in"},

    {"mm³", Quantity::volume, mm3, 0, "mm3|mm^3"},
    {"cm³", Quantity::volume, 1e-6, 0, "cm3|cm^3|cc|ml|mL"},
    {"m³", Quantity::volume, 1, 0, "m3|m^3"},
    {"in³", Quantity::volume, in3, 0, "in3|in^3|cu in"},

    {"g", Quantity::mass, 1e-3, 0, "gram|grams|gramme|grammes"},
    {"mg", Quantity::mass, 1e-6, 0, "milligram|milligrams"},
    {"kg", Quantity::mass, 1, 0, "kilogram|kilograms"},
    {"oz", Quantity::mass, ounce, 0, "ounce|ounces"},
    {"lb", Quantity::mass, pound, 0, "lbs|pound|pounds"},
    {"gr", Quantity::mass, pound / 7000, 0, "grain|grains"},

    {"g mm²", Quantity::inertia, 1e-9, 0, "g mm2|g·mm²|g·mm2|g*mm2|g mm^2"},
    {"kg m²", Quantity::inertia, 1, 0, "kg m2|kg·m²|kg·m2|kg*m2|kg m^2"},
    {"g cm²", Quantity::inertia, 1e-7, 0, "g cm2|g·cm²|g·cm2|g*cm2|g cm^2"},
    {"oz in²", Quantity::inertia, ounce* in2, 0, "oz in2|oz·in²|oz·in2|oz*in2|oz in^2"},
    {"lb in²", Quantity::inertia, pound* in2, 0, "lb in2|lb·in²|lb·in2|lb*in2|lb in^2"},

    {"kg/m³", Quantity::density, 1, 0, "kg/m3|kg/m^3"},
    {"g/cm³", Quantity::density, 1000, 0, "g/cm3|g/cm^3|g/cc|g/ml|g/mL"},
    {"lb/ft³", Quantity::density, pound / ft3, 0, "lb/ft3|lb/ft^3"},
    {"lb/in³", Quantity::density, pound / in3, 0, "lb/in3|lb/in^3"},
    {"oz/in³", Quantity::density, ounce / in3, 0, "oz/in3|oz/in^3"},

    {"°", Quantity::angle, degree, 0, "deg|degree|degrees"},
    {"′", Quantity::angle, degree / 60, 0, "'|arcmin"},
    {"″", Quantity::angle, degree / 3600, 0, "\"|arcsec"},
    {"rad", Quantity::angle, 1, 0, "radian|radians"},
    {"mrad", Quantity::angle, 1e-3, 0, "milliradian|milliradians"},

    {"s", Quantity::time, 1, 0, "sec|second|seconds"},
    {"ms", Quantity::time, 1e-3, 0, "millisecond|milliseconds"},
    {"µs", Quantity::time, 1e-6, 0, "us|microsecond|microseconds"},
    {"min", Quantity::time, 60, 0, "minute|minutes"},
    {"h", Quantity::time, 3600, 0, "hour|hours"},

    {"m/s", Quantity::speed, 1, 0, ""},
    {"mm/s", Quantity::speed, 1e-3, 0, ""},
    {"km/h", Quantity::speed, 1000.0 / 3600, 0, "kph"},
    {"ft/s", Quantity::speed, foot, 0, "fps"},
    {"in/s", Quantity::speed, inch, 0, "ips"},
    {"mph", Quantity::speed, 5280 * foot / 3600, 0, ""},

    {"m/s²", Quantity::acceleration, 1, 0, "m/s2|m/s^2"},
    {"ft/s²", Quantity::acceleration, foot, 0, "ft/s2|ft/s^2"},

    {"mN", Quantity::force, 1e-3, 0, "millinewton|millinewtons"},
    {"N", Quantity::force, 1, 0, "newton|newtons"},
    {"gf", Quantity::force, gram* standard_gravity, 0, "gram-force"},
    {"kgf", Quantity::force, standard_gravity, 0, "kilogram-force"},
    {"ozf", Quantity::force, ounce_force, 0, "ounce-force"},
    {"lbf", Quantity::force, pound_force, 0, "pound-force"},

    {"N mm", Quantity::torque, 1e-3, 0, "N·mm|N*mm|Nmm"},
    {"N m", Quantity::torque, 1, 0, "N·m|N*m|Nm"},
    {"ozf in", Quantity::torque, ounce_force* inch, 0, "ozf·in|ozf*in|oz in|oz·in"},
    {"lbf in", Quantity::torque, pound_force* inch, 0, "lbf·in|lbf*in|lb in|lb·in"},

    {"mJ", Quantity::energy, 1e-3, 0, "millijoule|millijoules"},
    {"J", Quantity::energy, 1, 0, "joule|joules"},
    {"µJ", Quantity::energy, 1e-6, 0, "uJ"},
    {"ft lbf", Quantity::energy, foot* pound_force, 0, "ft·lbf|ft*lbf"},

    {"°C", Quantity::temperature, 1, 273.15, "C|degC|deg C"},
    {"°F", Quantity::temperature, fahrenheit, 273.15 - 32 * fahrenheit, "F|degF|deg F"},
    {"K", Quantity::temperature, 1, 0, "kelvin"},

    {"hPa", Quantity::pressure, 100, 0, "hpa|HPA|mbar|millibar|millibars"},
    {"Pa", Quantity::pressure, 1, 0, "pascal|pascals"},
    {"kPa", Quantity::pressure, 1000, 0, "kpa|KPA"},
    {"bar", Quantity::pressure, 1e5, 0, ""},
    {"atm", Quantity::pressure, 101325, 0, ""},
    {"mmHg", Quantity::pressure, mmhg, 0, "mmhg"},
    {"inHg", Quantity::pressure, 25.4 * mmhg, 0, "inhg"},
    {"psi", Quantity::pressure, pound_force / in2, 0, ""},
});

struct Default {
    Quantity quantity;
    std::string_view metric;
    int metric_decimals;
    std::string_view inch_ounce;
    int inch_ounce_decimals;
};

// Decimals: what a careful builder can read off a rule, a scale or a clock, and no more.
constexpr auto defaults = std::to_array<Default>({
    {Quantity::plain, "", 3, "", 3},
    {Quantity::percent, "%", 1, "%", 1},
    {Quantity::length, "mm", 1, "in", 3},
    {Quantity::area, "mm²", 0, "in²", 3},
    {Quantity::volume, "cm³", 2, "in³", 3},
    {Quantity::mass, "g", 1, "oz", 3},
    {Quantity::inertia, "g mm²", 0, "oz in²", 3},
    {Quantity::density, "kg/m³", 0, "lb/ft³", 1},
    {Quantity::angle, "°", 2, "°", 2},
    {Quantity::time, "s", 3, "s", 3},
    {Quantity::speed, "m/s", 2, "ft/s", 2},
    {Quantity::acceleration, "m/s²", 4, "ft/s²", 3},
    {Quantity::force, "mN", 2, "mN", 2},
    {Quantity::torque, "N mm", 3, "ozf in", 4},
    {Quantity::energy, "mJ", 2, "mJ", 2},
    {Quantity::temperature, "°C", 1, "°F", 1},
    {Quantity::pressure, "hPa", 1, "inHg", 2},
});

const Default& default_of(Quantity quantity) {
    return *std::find_if(defaults.begin(), defaults.end(),
                         [&](const Default& row) { return row.quantity == quantity; });
}

bool is_word_byte(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return std::isalnum(byte) != 0 || byte >= 0x80;
}

bool equal_without_case(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

// "MJ" must not be read as "mJ": a spelling that begins with milli, or is a single capital, is taken as
// written.
bool case_matters(std::string_view spelling) {
    return spelling.front() == 'm' || spelling.front() == 'N' || spelling == "J" || spelling == "g";
}

bool starts_with_spelling(std::string_view text, std::string_view spelling) {
    if (spelling.empty() || text.size() < spelling.size()) return false;
    const std::string_view head = text.substr(0, spelling.size());
    if (head != spelling && (case_matters(spelling) || !equal_without_case(head, spelling))) return false;
    if (!is_word_byte(spelling.back()) || text.size() == spelling.size()) return true;
    const char next = text[spelling.size()];
    // 2″ and 3° are marks, not words: "3°30'" is two units side by side.
    const bool mark = spelling == "°" || spelling == "′" || spelling == "″";
    return mark ? std::isalpha(static_cast<unsigned char>(next)) == 0 : !is_word_byte(next);
}

template <class Accept>
SpelledUnit longest_match(std::string_view text, Accept accept) {
    SpelledUnit best;
    for (const Unit& unit : units) {
        if (!accept(unit)) continue;
        const auto consider = [&](std::string_view spelling) {
            if (spelling.size() > best.length && starts_with_spelling(text, spelling))
                best = {&unit, spelling.size()};
        };
        consider(unit.symbol);
        std::string_view rest = unit.spellings;
        while (!rest.empty()) {
            const std::size_t bar = std::min(rest.find('|'), rest.size());
            consider(rest.substr(0, bar));
            rest.remove_prefix(std::min(bar + 1, rest.size()));
        }
    }
    return best;
}

} // namespace

std::string_view in_words(Quantity quantity) {
    switch (quantity) {
    case Quantity::plain:
        return "a plain number";
    case Quantity::percent:
        return "a percentage";
    case Quantity::length:
        return "a length";
    case Quantity::area:
        return "an area";
    case Quantity::volume:
        return "a volume";
    case Quantity::mass:
        return "a mass";
    case Quantity::inertia:
        return "a moment of inertia";
    case Quantity::density:
        return "a density";
    case Quantity::angle:
        return "an angle";
    case Quantity::time:
        return "a time";
    case Quantity::speed:
        return "a speed";
    case Quantity::acceleration:
        return "an acceleration";
    case Quantity::force:
        return "a force";
    case Quantity::torque:
        return "a torque";
    case Quantity::energy:
        return "an energy";
    case Quantity::temperature:
        return "a temperature";
    case Quantity::pressure:
        return "a pressure";
    }
    std::abort();
}

std::string_view to_string(UnitSystem system) {
    return system == UnitSystem::metric ? "metric" : "inch-ounce";
}

std::optional<UnitSystem> find_unit_system(std::string_view word) {
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::inch_ounce})
        if (word == to_string(system)) return system;
    return std::nullopt;
}

double to_si(double number, const Unit& unit) {
    return number * unit.scale + unit.offset;
}

double from_si(double si, const Unit& unit) {
    const double number = (si - unit.offset) / unit.scale;
    for (const int digits : {15, 16}) {
        const double shorter = round_to_significant(number, digits);
        if (to_si(shorter, unit) == si) return shorter;
    }
    return number;
}

const Unit& default_unit(Quantity quantity, UnitSystem system) {
    const Default& row = default_of(quantity);
    return *find_unit(system == UnitSystem::metric ? row.metric : row.inch_ounce);
}

int default_decimals(Quantity quantity, UnitSystem system) {
    const Default& row = default_of(quantity);
    return system == UnitSystem::metric ? row.metric_decimals : row.inch_ounce_decimals;
}

const Unit* find_unit(std::string_view symbol) {
    const auto found =
        std::find_if(units.begin(), units.end(), [&](const Unit& unit) { return unit.symbol == symbol; });
    return found == units.end() ? nullptr : &*found;
}

SpelledUnit match_unit(std::string_view text, Quantity quantity) {
    return longest_match(text, [&](const Unit& unit) { return unit.quantity == quantity; });
}

SpelledUnit match_any_unit(std::string_view text) {
    return longest_match(text, [](const Unit&) { return true; });
}

} // namespace rampwright
