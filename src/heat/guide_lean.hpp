#pragma once

#include <rampwright/heat/guide.hpp>

namespace rampwright {

/// What does not depend on speed in the guide's force, meaned over what the holes leave and the lane takes up
/// of the steer.
struct LeanMean {
    double force = 0;    ///< N, leaning on one side of the rail or the other, and the tread's own slip
    double crossing = 0; ///< 0..1: how often the joints find it changing sides, of as often as they could
};

/// @param net mean net steer, rad; not that of the setup, which is not read.
LeanMean lean_mean(const GuideSetup& setup, double net);

} // namespace rampwright
