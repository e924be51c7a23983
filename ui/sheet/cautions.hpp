#pragma once

#include "sheet/flow.hpp"

#include <string>
#include <vector>

namespace rampwright::ui::paper {

/// Warning signs with their words (the core's table of cautions), kept together; a code comes once.
void put_cautions(Flow& flow, const std::vector<std::string>& codes, double indent = 0);

/// How high they stand, mm.
double cautions_height(const Flow& flow, const std::vector<std::string>& codes, double indent = 0);

} // namespace rampwright::ui::paper
