#pragma once

#include <rampwright/results/figures.hpp>

namespace rampwright {

/// The car of this mass on the race's two scales; nothing where the rules set no greatest mass.
std::optional<ScaleFigures> weigh_car(const Project& project, const CarModel& car, double mass);

/// That much putty (none below zero) as a pellet of the roll and the material that `scale` names.
PuttyAmount putty_of(const ScaleFigures& scale, double mass);

/// What the finished car's mass is known to, kg: by its weighings, or by those of its parts.
double mass_sigma_of(const Project& project, const CarModel& car);

/// As `figures --json` has it under "scale".
Json to_json(const ScaleFigures& scale);

} // namespace rampwright
