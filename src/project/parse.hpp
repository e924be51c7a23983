#pragma once

#include <rampwright/core/json.hpp>

#include <string_view>

namespace rampwright {

/// Parses JSON from outside: no key twice in one object, nothing nested deeply, numbers whatever the locale.
/// @throws Problem (Exit::not_ours).
Json parse_tree(std::string_view text);

} // namespace rampwright
