#pragma once

#include <rampwright/project/project.hpp>

#include <string>
#include <string_view>

namespace rampwright {

/// What an input, a sensitivity or a share is called among people: "friction at the axles" for `journal`,
/// "weight of tungsten bar 13" for `mass/ballast/0`. A key the catalogue does not know is given back as it
/// is.
/// @param plan the car it belongs to, for the names of its pieces.
std::string input_name(std::string_view key, const CarPlan& plan);
/// Without a car: "weight of ballast piece 1".
std::string input_name(std::string_view key);

/// What a sensitivity is about, in words: "friction at the axles, 0.01 more", "balance point, 1 mm forward".
std::string change_phrase(std::string_view key, std::string_view per, UnitSystem units);
/// By how much, as people read it: "0.1 mm", where they read inches "0.004 in (0.1 mm)".
std::string change_size(std::string_view per, UnitSystem units);

/// The catalogue's English for a key's stem ("mass/ballast"), `{what}` where a name goes; empty where it has
/// none. A window translates by it.
std::string_view find_input_name_text(std::string_view stem);

} // namespace rampwright
