#pragma once

#include <string_view>

namespace rampwright {

/// The JSON text of data/tables/NAME.json, built into the library; empty where there is none.
std::string_view find_data_table(std::string_view name);

} // namespace rampwright
