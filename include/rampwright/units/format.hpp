#pragma once

#include <rampwright/units/quantity.hpp>

#include <optional>
#include <string>

namespace rampwright {

/// How a value is written. What is left out follows from the quantity.
struct FormatOptions {
    const Unit* unit = nullptr;     ///< Instead of the system's default unit, of the same quantity.
    std::optional<int> decimals;    ///< Instead of the quantity's default; negative rounds to tens, ...
    std::optional<int> significant; ///< Significant digits, instead of `decimals`.
    bool with_unit = true;
    bool trim = false;      ///< "12.5 mm" for "12.500 mm".
    bool fractions = false; ///< Whole and fractional inches where the value is a 64th of one.
    bool ascii = false;     ///< "-" for "−", "+-" for "±": for tables that machines read.
};

/// The one way a value (SI) becomes text: the same in every locale, '.' as the decimal mark, halves away from
/// zero, never "-0.0"; "–" where there is no finite value. Plain text, not a change: the value stays as it
/// is.
std::string format(double si, Quantity quantity, UnitSystem system, const FormatOptions& options = {});

/// A value as an entry field shows it: up to two decimals more than `format` (at least four significant
/// digits), no idle zeros, inches as fractions where they are: 3/8 in stays 3/8 in. parse_entry reads it
/// back.
std::string format_entry(double si, Quantity quantity, UnitSystem system);

/// Value and standard uncertainty, "10.058 ± 0.027 s", by JCGM 100:2008 (GUM) 7.2.6: the uncertainty to two
/// significant digits, the value to the same decimal. The GUM rounds 10.47 up to 11 and 28.05 down to 28;
/// here that is: to the nearest, unless that understates by more than 1 %. A sigma of zero, or none, leaves
/// the value alone. `options.decimals` and `significant` do not apply.
std::string format_with_sigma(double si, double sigma, Quantity quantity, UnitSystem system,
                              const FormatOptions& options = {});

/// Seconds as "12.3 ms".
std::string format_milliseconds(double seconds, UnitSystem system, int decimals = 1);

} // namespace rampwright
