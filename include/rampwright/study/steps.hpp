#pragma once

#include <rampwright/study/heat_case.hpp>

#include <string_view>
#include <vector>

namespace rampwright {

/// The steps open to a builder on this car within the rules, each run as a heat of its own: the greatest gain
/// first, those that cost time last. Sigma is first-order over every input of the prediction: half the
/// difference of the gains at plus and minus one sigma. What the builder's hand makes of the step is not in
/// it. How far a step goes is common practice, no source (src/study/steps.cpp).
/// About a thousand heats. @throws Problem as compute_figures does. Empty where the car stops short.
std::vector<BuilderStep> find_steps(const Project& project, std::size_t car);

/// The catalogue's English for a step, `{name}` where a value goes; empty where it has none.
std::string_view find_step_text(std::string_view key);

/// Runs of each of two set-ups that tell a gap from chance: Welch's comparison at 95 % confidence with a
/// power of 80 %, n = 2 (1.960 + 0.842)² (scatter / gap)² (NIST/SEMATECH e-Handbook 7.2.2.2, sample sizes,
/// normal approximation). @param gap, scatter s; scatter one sigma of a single run.
double runs_to_settle(double gap, double scatter);

} // namespace rampwright
