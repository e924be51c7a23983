#pragma once

#include <rampwright/explain/explain.hpp>

#include <string>
#include <utility>
#include <vector>

namespace rampwright {

/// A number of a formula: plain digits, "(−0.5)", or "(1.2 × 10^−6)".
std::string formula_number(double value, int significant = 7);

/// "a + b − c" of numbers.
std::string formula_sum(const std::vector<double>& terms, int significant = 7);

/// Values by the names that a text of the catalogue uses.
using Words = std::vector<std::pair<std::string_view, std::string>>;

/// Makes an explanation from the catalogue's texts.
/// @param left what stands before "="; empty for a figure that has no formula now.
Explanation make_explanation(std::string_view code, const Words& words, const std::string& left,
                             double result, std::string unit, bool integral = false);

} // namespace rampwright
