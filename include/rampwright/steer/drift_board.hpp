#pragma once

#include <optional>

/// Steer from a car's drift on a board, and back. Sideways and steer are positive to the car's left; lengths
/// in m, angles in rad. The car follows a circle whose centre lies on the rear axle's line (plane geometry; a
/// bicycle's two wheels turning about one point).
namespace rampwright {

/// Radius of the rear axle's circle at that steer, R = L / tan(steer), signed like the steer. `steer` is not
/// 0.
double turn_radius(double wheelbase, double steer);

/// Steer that turns on that radius, atan(L / R).
double steer_of_radius(double wheelbase, double radius);

/// Steer of a car that went `drift` sideways over `over` straight along the board, tangent to it at the
/// start, both seen at a mark `watched_ahead` of the rear axle. Zero drift is zero steer.
double steer_from_drift(double wheelbase, double drift, double over, double watched_ahead = 0);

/// The drift that steer shows at that mark; none where the circle turns back before it has gone that far.
std::optional<double> drift_from_steer(double wheelbase, double steer, double over, double watched_ahead = 0);

/// How much steer one metre more of drift means, rad/m.
double steer_per_drift(double wheelbase, double drift, double over, double watched_ahead = 0);

/// A board whose cross fall drifts every car towards its low edge, rolled both ways round. Both drifts are
/// measured towards the same edge of the board; that edge is on the car's left on the first roll.
struct BothWays {
    double drift = 0;      ///< the car's own, half the difference: to its left
    double cross_fall = 0; ///< the board's, half the sum: towards that edge
};
BothWays split_cross_fall(double first, double second);

} // namespace rampwright
