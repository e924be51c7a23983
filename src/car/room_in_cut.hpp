#pragma once

#include "car/car_parts.hpp"

#include <rampwright/body/fit_volumes.hpp>

/// What a cut has room for besides what lies in it.
namespace rampwright {

/// Room in a cut that nothing fills, m³: what it holds within the wood's outlines less the weights and the
/// putty in it and the axles that cross it. Negative where it overflows.
/// @param cavity the cut's shape.
double room_in_cut(const CarPlan& plan, const CarModel& car, std::size_t cut, const Cut& cavity,
                   const BodyOutlines& outlines);

/// How far a weight can slide, and what stops it there.
struct SlideRoom {
    enum class Stop { none, stuck, cut, wood, outside, weight, axle, wheel, putty };
    double by = 0;          ///< m, forward where positive
    Stop stop = Stop::none; ///< none where it goes all the way
    std::size_t other = 0;  ///< `weight`, `putty`: which in the plan's ballast
};

/// How far a weight can slide along x before something stops it; at most `wanted`, whose sign says which way:
/// its cut's end (the wood for a weight in no cut), the body's outside, another weight, an axle in its bore,
/// a wheel. A weight that putty reaches higher than its underside does not slide at all. What is wrong
/// already, an overlap or an end that sticks out, may stay but not grow.
/// @param body with the plan's cuts, in their order, and no axle holes.
SlideRoom room_to_slide(const CarPlan& plan, const CarModel& car, std::size_t weight, const BodyShape& body,
                        const BodyOutlines& outlines, double wanted);

} // namespace rampwright
