#pragma once

#include <string_view>

namespace rampwright::test {

/// The value of a formula's text in the notation of Explanation::formula.
/// @throws std::runtime_error for anything else.
double evaluate(std::string_view text);

} // namespace rampwright::test
