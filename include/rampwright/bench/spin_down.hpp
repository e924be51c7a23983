#pragma once

#include <rampwright/bench/combine.hpp>

namespace rampwright {

/// A wheel spinning down on its level axle under its own weight: speed read at several times. SI.
struct SpinDown {
    Eigen::VectorXd time, speed; ///< s, rad/s; at least four readings, all while it still turns
    Measured inertia;            ///< kg m²
    Measured mass, bore_radius;
    Measured windage; ///< N m per (rad/s)^1.5, as WheelLoss::windage; zero sigma and value to leave it out
    double gravity = 0;
};

struct SpinDownFit {
    Combined journal;         ///< effective coefficient: torque / (load * bore radius)
    double first_speed = 0;   ///< rad/s at the first reading, fitted
    double deceleration = 0;  ///< rad/s², what the journal alone takes
    double scatter = 0;       ///< rad/s, standard deviation of the readings about the curve
    Eigen::VectorXd expected; ///< rad/s, the fitted curve at each reading
};

/// Journal friction from the whole curve, by least squares: I w' = -journal m g r - windage w^1.5. Without
/// windage the curve is a straight line. Contributions of `journal` in the order: scatter of the readings,
/// inertia, mass, bore radius, windage.
/// @throws Problem where there are fewer than four readings, or they do not slow down.
SpinDownFit fit_spin_down(const SpinDown& spin);

} // namespace rampwright
