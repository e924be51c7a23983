#pragma once

#include <algorithm>
#include <array>
#include <string_view>

namespace rampwright {

/// The keys of `rules` that this version reads, and so may replace.
inline constexpr auto rule_keys = std::to_array<std::string_view>({"set",
                                                                   "title",
                                                                   "source",
                                                                   "max_mass_g",
                                                                   "max_length_mm",
                                                                   "max_width_mm",
                                                                   "max_height_mm",
                                                                   "min_ground_clearance_mm",
                                                                   "min_inner_width_mm",
                                                                   "wheelbase_mm",
                                                                   "wheel_min_mass_g",
                                                                   "wheel_diameter_mm",
                                                                   "wheel_min_width_mm",
                                                                   "max_nose_height_mm",
                                                                   "wheels_touching",
                                                                   "allow",
                                                                   "lubricants",
                                                                   "built_after",
                                                                   "words",
                                                                   "house"});

inline bool is_rule_key(std::string_view key) {
    return std::find(rule_keys.begin(), rule_keys.end(), key) != rule_keys.end();
}

} // namespace rampwright
