#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace rampwright {

/// Typed text with the many signs of print brought to one: minus, fraction, times and prime signs become
/// ASCII, odd spaces become plain, and ½ becomes 1/2.
struct PlainEntry {
    std::string text;
    std::vector<std::size_t>
        typed_at; ///< For every byte of `text`, and its end, the typed character (code point) it stands for.
};

PlainEntry to_plain_entry(std::string_view typed);

} // namespace rampwright
