#pragma once

#include <rampwright/units/quantity.hpp>

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace rampwright {

/// A text with what `find` has for each `{name}` in its place.
std::string fill_places(std::string_view text, const std::function<std::string(std::string_view name)>& find);

/// A catalogue's text with values in their places. `{name}` stands for the value of that name with its unit:
/// the one that ends its name, or where `system` reads others, the one it reads ("{wall_mm}": "1.4 mm",
/// "0.055 in"); rounded to what a builder can measure and a little more. `{name*}` stands for the value whose
/// name is that and a unit.
std::string fill_text(std::string_view text, const std::vector<std::pair<std::string, double>>& values,
                      UnitSystem system);

} // namespace rampwright
