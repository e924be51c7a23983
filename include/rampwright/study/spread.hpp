#pragma once

#include <rampwright/study/first_order.hpp>

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace rampwright {

/// One input of a quantity: what the quantity changes by at minus and plus one standard deviation.
struct Axis {
    double low = 0, high = 0;
    double log_sigma = 0; ///< of a log-normal input; 0 for a normal one
};

/// An input moved by z standard deviations; those that are not named stay at their nominal values.
struct Deviation {
    std::size_t input = 0;
    double z = 0;
};

/// The change of a quantity from its nominal value; none where it has none there.
using Change = std::function<std::optional<double>(std::span<const Deviation>)>;

/// The 2.5 % and 97.5 % quantiles of a quantity's change, where first order does not do: it bends along its
/// inputs, and inputs multiply each other.
///
/// A response surface takes the quantity's place. The strongest inputs bend as a power law (log-normal ones)
/// or a parabola through the three points known, or as a quartic through five where they are very wide, and
/// every two of them multiply by what one more value each tells. The others and `noise` (its own sigma) make
/// one normal variable (central limit). The quantiles are read from a fixed Sobol' sequence put through the
/// surface, so that like inputs give like intervals. docs/model.md, "How wide".
std::array<double, 2> curved_interval95(const std::vector<Axis>& axes, double noise, const Change& change);

/// What a single heat's time is spread by.
struct HeatSpread {
    FirstOrder first_order;
    std::array<double, 2> interval95{}; ///< s on the track's clock, by curved_interval95
};

/// @throws Problem as make_ready does. A car that stops short has no spread: all zero.
HeatSpread spread_heat(const Project& project, const HeatCase& heat_case);

} // namespace rampwright
