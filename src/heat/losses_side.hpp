#pragma once

namespace rampwright {

/// Toe of a wheel against its travel, outward positive: normal, rad.
struct Toe {
    double mean = 0;
    double spread = 0;
};

/// Means over the toe of what the side load does, per unit of load.
struct SideLoad {
    double on_head = 0; ///< of the outward part, max(F, 0)
    double on_wood = 0; ///< of the inward part, max(-F, 0)
    double scrub = 0;   ///< of the toe's side force times sin(toe)
};

/// F = sine_of_cant + grip * tanh(creep * toe / grip).
SideLoad mean_side_load(double sine_of_cant, double grip, double creep, Toe toe);

} // namespace rampwright
