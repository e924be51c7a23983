#pragma once

#include <rampwright/heat/heat.hpp>

#include <array>

namespace rampwright {

/// The contacts and media that take energy from a heat.
enum class Loss { journal, hub, rolling, scrub, air, rail };

/// The car with one loss gone, everything else as it was.
HeatCar without(HeatCar car, Loss loss);
/// The same for one wheel alone; `air` is then what it stirs, and `rail`, which no wheel has to itself,
/// stays.
HeatCar without(HeatCar car, Loss loss, Corner corner);

/// Heat time less that of a heat without the loss, for each loss. A heat each.
/// @param time s, of the heat as it is, which finishes.
LossTimes regained(const Course& course, const HeatCar& car, double time);
/// The same wheel by wheel; zero for a raised wheel.
std::array<WheelLossTimes, 4> regained_by_wheel(const Course& course, const HeatCar& car, double time);

} // namespace rampwright
