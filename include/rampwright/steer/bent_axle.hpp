#pragma once

#include <optional>

/// An axle bent near its head and turned in its hole: what toe and cant its wheel gets (plane geometry).
///
/// Seen from the axle's head, the turn is counted clockwise from "bend straight up"; then on either side of
/// the car a positive turn steers to the car's left. Toe is positive where the wheel steers to the car's
/// left, cant where the axle's outer end is higher. All angles in rad.
namespace rampwright {

struct BentAxle {
    double bend = 0; ///< between shank and bent end, 0 <= bend < pi/2
    double turn = 0;
};

struct Alignment {
    double toe = 0, cant = 0;
};

/// toe = atan(tan bend sin turn), cant = atan(tan bend cos turn).
Alignment alignment_of(const BentAxle& axle);

/// The bend and turn that give this alignment.
BentAxle bent_axle_of(const Alignment& alignment);

/// The turn nearest straight up (cant not negative) that gives this toe; none where the bend is too small for
/// it.
std::optional<double> turn_for_toe(double bend, double toe);

/// Toe per turn, rad/rad.
double toe_per_turn(const BentAxle& axle);

/// What the next bit of turn does: the change of toe and cant when turned on by `by`.
Alignment change_by(const BentAxle& axle, double by);

/// One move at the axle's head.
struct AxleMove {
    double by = 0;             ///< rad, positive clockwise seen from the head
    bool towards_rail = false; ///< it moves the steer towards the ridden rail
    double toe_change = 0;     ///< rad
    double next_change = 0;    ///< rad of toe that five degrees beyond it, the same way, would add
};

/// The move that brings the guide wheel's steer to `steer` (positive towards the rail).
/// @param rail_on_left whether the ridden rail lies to the left of the guide wheel, as it does when the left
///        front wheel is raised.
std::optional<AxleMove> move_to_steer(const BentAxle& axle, double steer, bool rail_on_left);

} // namespace rampwright
