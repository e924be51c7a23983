#pragma once

#include <nlohmann/json.hpp>

namespace rampwright {

/// JSON as the project file needs it: the order of keys is the person's, and is kept.
using Json = nlohmann::ordered_json;

} // namespace rampwright
