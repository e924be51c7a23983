#pragma once

#include <rampwright/study/inputs.hpp>

namespace rampwright {

/// One sigma of what a tool leaves, of which its owner says that it keeps within ± `tolerance`: anything in
/// between is as likely (GUM 4.3.7: the half width over the root of 3).
double tool_sigma(double tolerance);

/// What saw and drill leave: the wood's faces, and the depth of its bores. To be added after the parts'
/// masses.
void add_tools(std::vector<Input>& inputs, const Project& project, const HeatCase& heat_case);

} // namespace rampwright
