#pragma once

#include <rampwright/results/figures.hpp>
#include <rampwright/study/inputs.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace rampwright {

/// First-order propagation: what each input's one sigma is worth, and the sum of their squares.
struct FirstOrder {
    struct Term {
        std::string key;
        double per_sigma = 0;             ///< s: half the difference of the times at plus and minus one sigma
        double low = 0, high = 0;         ///< s: the times there
        std::optional<std::size_t> input; ///< its place in the list of inputs; none for clock and run
    };
    std::vector<Term> terms;
    double sigma = 0; ///< s, of a single heat: the inputs, the clock's offset, a run's scatter
};

/// The law of propagation for any quantity (JCGM 100:2008, 5.1.2, with the derivative times sigma taken as
/// half the difference at plus and minus one sigma). @param at its value with the n-th input at z standard
/// deviations and the others at their nominal values; none leaves that input out of `terms`.
FirstOrder propagate(const std::vector<std::string>& keys,
                     const std::function<std::optional<double>(std::size_t n, double z)>& at);

/// @throws Problem as make_ready does. Inputs that stop the car on one side are left out of `terms`.
FirstOrder propagate(const Project& project, const HeatCase& heat_case);

/// What practical steps are worth, by central differences, ranked by size (docs/model.md, "Sensitivities").
std::vector<Sensitivity> find_sensitivities(const HeatCase& heat_case);

} // namespace rampwright
