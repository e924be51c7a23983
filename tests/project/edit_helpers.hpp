#pragma once

#include <rampwright/project/edits.hpp>

#include <string>

namespace rampwright::test {

inline constexpr double mm = 1e-3, g = 1e-3, deg = 0.017453292519943295;

/// What stands at a pointer after an edit.
inline const Json& at(const Edit& edit, const std::string& pointer) {
    return edit.document.root.at(Json::json_pointer(pointer));
}

} // namespace rampwright::test
