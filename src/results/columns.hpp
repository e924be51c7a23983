#pragma once

#include <algorithm>
#include <string>

namespace rampwright {

/// Characters a reader sees: UTF-8 continuation bytes take no room.
inline std::size_t width(const std::string& text) {
    return std::size_t(std::count_if(text.begin(), text.end(),
                                     [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

/// Filled up with blanks to a column's width.
inline std::string padded(const std::string& text, std::size_t wide) {
    return text + std::string(wide > width(text) ? wide - width(text) : 0, ' ');
}

} // namespace rampwright
