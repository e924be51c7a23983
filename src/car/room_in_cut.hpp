#pragma once

#include "car/car_parts.hpp"

#include <rampwright/body/fit_volumes.hpp>

/// What a cut has room for besides what lies in it.
namespace rampwright {

/// Room in a cut that nothing fills, m³: what it holds within the wood's outlines less the weights and the
/// putty in it. Negative where it overflows.
/// @param cavity the cut's shape.
double room_in_cut(const CarPlan& plan, std::size_t cut, const Cut& cavity, const BodyOutlines& outlines);

/// How far a weight can slide along x before its cut or another weight stops it, m; at most `wanted`, whose
/// sign says which way. A weight in no cut is stopped by the wood. What is wrong already, an overlap or an
/// end that sticks out, may stay but not grow.
/// @param body with the plan's cuts, in their order, and no axle holes.
double room_to_slide(const CarPlan& plan, std::size_t weight, const BodyShape& body, double wanted);

} // namespace rampwright
