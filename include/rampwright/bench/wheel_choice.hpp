#pragma once

#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/project/project.hpp>

#include <array>

namespace rampwright {

/// What a property of a wheel costs where it sits. Times come from the heat's own sensitivities; the run-out
/// and the rear pair's difference carry no time in the model, so theirs are weights for ranking only.
struct WheelWorth {
    Uncertain touching_mass;    ///< s of heat per kg of a touching wheel, its spin included
    Uncertain raised_mass;      ///< s of heat per kg of the raised wheel
    double guide_runout = 0;    ///< weight per m of run-out of the wheel that meets the rail, s/m
    double rear_runout = 0;     ///< the same of each rear wheel
    double pair_difference = 0; ///< weight per m between the rear wheels' diameters, s/m
    double mass_sigma = 0;      ///< kg, one sigma of a wheel's weighing
};

/// Which wheel goes where.
struct WheelChoice {
    std::size_t guide = 0, raised = 0;     ///< places in the table
    std::array<std::size_t, 2> rear{0, 0}; ///< the smaller diameter first
    double rank = 0;                       ///< s, times and weights together: what was made least
    double time = 0;                       ///< s, the part of it that is time
    /// What the choice saves against four wheels taken blindly, s, time only; its sigma follows from those of
    /// the worth and of the weighing.
    Uncertain saved;
};

/// Chooses four wheels and where each goes so that `rank` is least: exactly the exhaustive search's best, in
/// time proportional to the number of wheels but for one sort. Only wheels with a mass are considered; where
/// no wheel's run-out, or diameter, is known that property does not count, and a wheel without it takes the
/// table's median.
/// @throws Problem where fewer than four wheels have a mass.
WheelChoice choose_wheels(const std::vector<MeasuredWheel>& wheels, const WheelWorth& worth);

} // namespace rampwright
