#pragma once

#include <rampwright/results/figures.hpp>

#include <string>
#include <vector>

namespace rampwright {

/// What the two scales say of the car, and the putty to have ready, in English sentences and the project's
/// units: for check, window and sheet alike. None where the rules set no greatest mass.
std::vector<std::string> scale_words(const Project& project, const Figures& figures);

} // namespace rampwright
