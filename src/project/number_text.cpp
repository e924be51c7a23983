#include "project/number_text.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace rampwright {

std::string plain_number(double value) {
    std::array<char, 64> buffer{};
    const double size = std::abs(value);
    const bool plain = value == 0 || (size >= 1e-5 && size < 1e15);
    const auto end = plain ? std::to_chars(buffer.begin(), buffer.end(), value, std::chars_format::fixed).ptr
                           : std::to_chars(buffer.begin(), buffer.end(), value).ptr;
    return {buffer.begin(), end};
}

std::string number_text(double value) {
    std::string text = plain_number(value);
    if (text.find_first_of(".e") == std::string::npos) text += ".0";
    return text;
}

} // namespace rampwright
