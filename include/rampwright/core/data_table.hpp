#pragma once

#include <string_view>
#include <vector>

namespace rampwright {

/// The JSON text of data/tables/NAME.json, or for "rules/NAME" of data/rules/NAME.json, built into the
/// library; empty where there is none.
std::string_view find_data_table(std::string_view name);

/// Every name that find_data_table knows.
std::vector<std::string_view> data_table_names();

} // namespace rampwright
