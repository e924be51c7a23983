#pragma once

#include "car/room_in_cut.hpp"

#include <rampwright/car/car_model.hpp>

#include <optional>
#include <vector>

/// Where a finished car can still be changed, and by how much.
namespace rampwright {

/// Putty that can be taken off again.
struct LoosePutty {
    std::size_t piece = 0; ///< in the plan's ballast
    double mass = 0;       ///< kg, what is there
    double ahead = 0;      ///< m ahead of the rear axle, level frame
};

/// A cut with room for putty.
struct OpenCut {
    std::size_t cut = 0;              ///< in the body's cuts
    double mass = 0;                  ///< kg that still fits
    double ahead = 0;                 ///< m ahead of the rear axle, level frame: where it would lie
    std::optional<std::size_t> putty; ///< the piece of putty that lies there already
};

/// Whether a weight is in the car for good: locked, glued, or, where nobody said what holds it, among the
/// weights that the plan's `done` says are fixed. A screw, tape, a skin of putty and a press fit come off
/// again. Putty comes off unless it is locked or glued over.
bool is_stuck(const CarPlan& plan, const BallastPlan& piece);

/// @param car the car of `plan`, put together.
std::vector<LoosePutty> find_loose_putty(const CarPlan& plan, const CarModel& car);
std::vector<OpenCut> find_open_cuts(const CarPlan& plan, const CarModel& car);

/// How far a weight can slide, at most `wanted` forward or, negative, back, and what stops it.
SlideRoom find_slide(const CarPlan& plan, const CarModel& car, std::size_t weight, double wanted);

} // namespace rampwright
