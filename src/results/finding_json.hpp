#pragma once

#include <rampwright/core/json.hpp>
#include <rampwright/results/finding.hpp>

namespace rampwright {

/// As every JSON result has a finding.
Json to_json(const Finding& finding);

} // namespace rampwright
