#pragma once

#include <string_view>

namespace rampwright {

/// The program's version, from the build.
std::string_view version();

} // namespace rampwright
