#pragma once

#include <string>
#include <vector>

namespace rampwright {

/// Every template that reaches `Core::tr` from a catalogue or a built-in table, each once, in the order of
/// their places. Those written in place are found by the translators' tool itself.
std::vector<std::string> translatable_texts();

} // namespace rampwright
