#pragma once

#include <rampwright/core/problem.hpp>
#include <rampwright/units/quantity.hpp>

#include <string_view>

namespace rampwright {

/// Why typed text is not a value.
enum class EntryFault {
    empty,
    too_long,
    not_understood,
    several_marks,  ///< 1.234,5: which mark is the decimal one?
    unknown_unit,   ///< 3 furlongs
    wrong_quantity, ///< 3 g where a length is asked for
    unit_missing,   ///< 2 cm + 3: three of what?
    unclear_hyphen, ///< 4-3/8 in a metric field: 4 3/8, or 4 minus 3/8?
    two_numbers,    ///< 3 4
    unit_product,   ///< 3 mm * 2 mm, 3 / 2 mm
    division_by_zero,
    unclosed_bracket,
    temperature_sum, ///< 20 °C + 5 °C
    below_absolute_zero,
    too_large
};

/// Typed text that is not a value: what is wrong and what to do, in words for the person who typed it.
class EntryError : public Problem {
public:
    EntryError(EntryFault fault, std::size_t position, std::string what_is_wrong, std::string what_to_do);

    EntryFault fault() const { return fault_; }
    /// Character (code point) of the text where the trouble starts, from 0.
    std::size_t position() const { return position_; }

private:
    EntryFault fault_;
    std::size_t position_;
};

/// The SI value of what a person typed into a field for this quantity.
///
/// - Numbers: `12`, `.5`, `1e-3`; "." and "," are both a decimal mark, whatever the locale, and neither ever
///   parts thousands: `1,5` is one and a half, `1.234,5` is refused.
/// - Fractions: `7/8`, `4 3/8`, `4-3/8"`, `4½`.
/// - Units: any of the quantity's (quantity.cpp lists them); none means the default unit of `system`.
/// - Compounds: `4 ft 2 in`, `5 lb 2 oz`, `3° 30'`; the sign in front is the whole compound's.
/// - Sums, and products and quotients with plain numbers: `10mm+2`, `2*(3 mm + 1/8 in)`. A number without a
///   unit beside others with one is taken in the default unit if they are, and refused otherwise.
///
/// Throws EntryError.
double parse_entry(std::string_view text, Quantity quantity, UnitSystem system);

} // namespace rampwright
