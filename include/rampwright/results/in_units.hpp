#pragma once

#include <rampwright/results/figures.hpp>

#include <string>

/// What findings and steps say to people, in the units they read. Their own `text` is for scripts: it has the
/// units of the values beside it.
namespace rampwright {

std::string text_of(const Finding& finding, UnitSystem units);
std::string text_of(const BuilderStep& step, UnitSystem units);

/// A catalogue's text, or its translation, with values named by their units in the places `{name}`.
std::string fill_in_units(std::string_view text, const std::vector<std::pair<std::string, double>>& values,
                          UnitSystem units);

} // namespace rampwright
