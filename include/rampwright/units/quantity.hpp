#pragma once

#include <optional>
#include <string_view>

namespace rampwright {

/// What a number measures. The core holds each in its SI unit: m, m², m³, kg, kg m², kg/m³, rad, s, m/s,
/// m/s², N, N m, J, K, Pa; percent as a fraction of 1.
enum class Quantity {
    plain,
    percent,
    length,
    area,
    volume,
    mass,
    inertia,
    density,
    angle,
    time,
    speed,
    acceleration,
    force,
    torque,
    energy,
    temperature,
    pressure
};

/// The units a person reads and types by default. It changes what is shown, never what is stored.
enum class UnitSystem { metric, inch_ounce };

/// The quantity in words, for messages: "a length", "a mass".
std::string_view in_words(Quantity quantity);

/// "metric" or "inch-ounce", as the project file spells it.
std::string_view to_string(UnitSystem system);

/// The inverse of to_string; nothing for any other word.
std::optional<UnitSystem> find_unit_system(std::string_view word);

/// A unit: SI value = number * scale + offset (an offset only in °C and °F).
struct Unit {
    std::string_view symbol; ///< As it is shown: "mm", "kg/m³", "°".
    Quantity quantity;
    double scale;
    double offset;
    std::string_view spellings; ///< Further ways to type it, parted by '|'.
};

/// A unit's number in SI, and back. The way back gives the shortest decimal number that leads to the same SI
/// value, so that 9.525 mm stays 9.525 through any number of conversions.
double to_si(double number, const Unit& unit);
double from_si(double si, const Unit& unit);

/// The unit in which a bare number is read and a value shown.
const Unit& default_unit(Quantity quantity, UnitSystem system);

/// How many decimals a value of this quantity is shown with in its default unit.
int default_decimals(Quantity quantity, UnitSystem system);

/// The unit that is shown by this symbol; null where there is none.
const Unit* find_unit(std::string_view symbol);

/// The longest unit of this quantity spelled at the start of `text`, and how many bytes it takes.
/// A word must end there: "mmm" starts with no unit. Case matters only where it tells milli from mega.
struct SpelledUnit {
    const Unit* unit = nullptr;
    std::size_t length = 0;
};
SpelledUnit match_unit(std::string_view text, Quantity quantity);

/// The same among all quantities, to say what a wrong unit measures.
SpelledUnit match_any_unit(std::string_view text);

} // namespace rampwright
