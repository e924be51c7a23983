#pragma once

#include <string>

namespace rampwright {

/// `value` in decimal notation with this many decimals, '.' whatever the locale, never "-0".
///
/// Halves round away from zero as on paper. What is rounded is the number to 15 significant digits, the one a
/// person typed: 2.675 gives 2.68, though the nearest double lies below 2.675. Negative `decimals` round to
/// tens, hundreds, ... `value` must be finite.
std::string to_fixed(double value, int decimals);

/// The double nearest to `value` rounded to this many significant digits (1 to 17).
double round_to_significant(double value, int digits);

/// The power of ten of the first significant digit: 2 for 123, -2 for 0.0123; 0 for zero.
int decimal_exponent(double value);

} // namespace rampwright
