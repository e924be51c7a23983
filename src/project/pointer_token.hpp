#pragma once

#include <string>
#include <string_view>

namespace rampwright {

/// A key as one step of a JSON pointer (RFC 6901, section 3).
inline std::string pointer_token(std::string_view key) {
    std::string token;
    for (const char c : key) {
        if (c == '~')
            token += "~0";
        else if (c == '/')
            token += "~1";
        else
            token += c;
    }
    return token;
}

} // namespace rampwright
