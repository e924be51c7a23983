#pragma once

#include "car/car_parts.hpp"

#include <rampwright/body/fit_volumes.hpp>
#include <rampwright/car/wood_memo.hpp>

/// The questions of check_fit, each with its findings.
namespace rampwright {

/// What a question may need: the plan, the car put together and its shapes.
struct FitCase {
    const Project& project;
    const CarPlan& plan;
    const CarModel& car;
    BodyOutlines outlines;
    BodyShape uncut, cut, drilled; ///< before any cut; with the plan's cuts; with the axles' holes as well
    WoodMemo& memo;
};

/// Anything below these is rounding: 1 µm, and 0.01 mm³.
inline constexpr double least_length = 1e-6, least_volume = 1e-11;

using Findings = std::vector<Finding>;

/// Weights in their cuts, in the wood, outside the body and in one another.
void check_ballast(const FitCase& fit, Findings& findings);
/// Weights against axles, wheels and the track.
void check_ballast_clearance(const FitCase& fit, Findings& findings);
/// Axles in the wood, wheels beside it.
void check_running_gear(const FitCase& fit, Findings& findings);
/// Walls thinner than 3 mm.
void check_walls(const FitCase& fit, Findings& findings);
/// Bores of a size that no drill bit of the person's has, and what the saw's blade is too thick for.
void check_tools(const FitCase& fit, Findings& findings);
/// Tipping, wheels in the air, steer against a raised wheel.
void check_stance(const FitCase& fit, Findings& findings);

/// A weight as a convex solid; putty is none.
std::optional<Piece> piece_of(const BallastPlan& plan);
Piece piece_of(const Wheel& wheel);
/// The shank, from its inner end to the head.
Piece piece_of(const AxleShape& axle);

/// Where a straight line lies inside a cut, by its parameter; `along` need not be of unit length.
std::optional<Interval> inside_cut(const Cut& cut, const Vec3& from, const Vec3& along);
/// A stretch of a line in the wood, and whether each of its ends is the wall of a cut.
struct WoodStretch {
    Interval range;                  ///< the coordinate along the axis, m
    int low_cut = -1, high_cut = -1; ///< index of the cut, or -1 for the body's own surface
};
/// The wood along the axis-parallel line through a point (rounded edges are taken as sharp).
std::vector<WoodStretch> wood_along(const BodyOutlines& outlines, std::span<const Cut> cuts,
                                    const Vec3& through, int axis);

} // namespace rampwright
