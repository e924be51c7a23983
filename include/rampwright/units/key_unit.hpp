#pragma once

#include <rampwright/units/quantity.hpp>

#include <string_view>

namespace rampwright {

/// The unit that ends a key of the project file or of the results: "mass_g", "density_kg_m3", "time_s".
/// The longest ending counts ("finish_speed_m_s" is no time); null where the key names no unit,
/// or a rate ("creep_per_rad").
const Unit* find_key_unit(std::string_view key);

/// The inverse: the ending, with its underscore, for values of this unit; empty where files never use it.
std::string_view key_ending(const Unit& unit);

} // namespace rampwright
