#pragma once

#include <rampwright/bench/wheel_choice.hpp>
#include <rampwright/study/heat_case.hpp>

namespace rampwright {

/// What a wheel's mass costs this car where it sits: heats of the car with each kind of wheel a little
/// heavier, its spin inertia in proportion. The uncertainty is what one sigma of the axles' friction, the
/// input it hangs on most, makes of it. Run-out and unlike rear wheels carry no time in the model: their
/// weights only rank (ours, no source: a tenth of a millimetre counts as 0.05 g of wheel does).
WheelWorth wheel_worth(const HeatCase& heat_case);

} // namespace rampwright
