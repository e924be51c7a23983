#pragma once

#include <rampwright/units/quantity.hpp>

#include <string>

namespace rampwright {

/// How many decimals a length or a mass deserves by its size: what a hand reads off a rule or a scale, and no
/// digit more. 0.001 in up to 20 in, 0.01 in up to 200 in, 0.1 in beyond; 0.1 mm up to a metre, 1 mm beyond;
/// 0.1 g; 0.001 oz, below 0.01 oz one more. Other quantities: as `format` has them.
int reading_decimals(double si, Quantity quantity, UnitSystem system);

/// `format` in the system's own unit with those decimals: "47.24 in", "1200 mm", "0.0035 oz".
std::string format_reading(double si, Quantity quantity, UnitSystem system, bool with_unit = true);

} // namespace rampwright
