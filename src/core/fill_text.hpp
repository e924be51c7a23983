#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace rampwright {

/// A text with what `find` has for each `{name}` in its place.
std::string fill_places(std::string_view text, const std::function<std::string(std::string_view name)>& find);

/// A catalogue's text with values in their places: `{name}` stands for the value of that name, rounded as
/// suits the unit that ends its name; `{name*}` for the value whose name is that and a unit, with its unit.
std::string fill_text(std::string_view text, const std::vector<std::pair<std::string, double>>& values);

} // namespace rampwright
