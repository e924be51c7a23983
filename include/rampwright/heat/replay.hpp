#pragma once

#include <rampwright/heat/heat.hpp>

namespace rampwright {

/// Where the nose's foot point is at a time after the pin's fall, m from the start line, from a heat run with
/// HeatDetail::trace; before the start 0, after the end the last place reached. Cubic between the trace's
/// points, with the speed there as slope: micrometres on a straight, tenths of a millimetre where the car
/// pitches.
double place_at(const HeatResult& heat, double time);

/// How far the slower of two has still to go when the faster one's nose reaches the finish, m; positive: the
/// first leads. Both on one clock. Zero where neither finishes.
double gap_at_finish(const HeatResult& first, const HeatResult& second);

} // namespace rampwright
