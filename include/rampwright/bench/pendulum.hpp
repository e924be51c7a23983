#pragma once

#include <rampwright/bench/combine.hpp>

namespace rampwright {

/// Something hung on two or three equally long wires, turning to and fro about their common axis. SI.
/// The wires hang upright and parallel at rest, each `radius` from the axis, which passes through the centre
/// of mass. Small swings: T = 2 pi sqrt(I h / (m g r²)), for two wires and for three (rigid-body dynamics;
/// the wires' own mass and their torsion are left out).
struct WirePendulum {
    double mass = 0;   ///< kg, all that hangs
    double radius = 0; ///< m, half the spacing of two wires
    double length = 0; ///< m, of the wires
    double gravity = 0;
};

/// Period of a swing of that amplitude (rad, from the middle to one side), s. Exact for rigid wires without
/// mass: the rise of the body and its own speed upward are counted. Zero amplitude is the small-swing limit.
double wire_period(const WirePendulum& pendulum, double inertia, double amplitude = 0);

/// Moment of inertia from the period, kg m², the inverse of `wire_period`; zero where no inertia swings that
/// quickly.
double inertia_from_period(const WirePendulum& pendulum, double period, double amplitude = 0);

/// What was measured at a wire pendulum with a platform that carries the body. Without a platform its mass is
/// 0.
struct WireBench {
    Measured body_mass, platform_mass;
    Measured radius, length;
    Measured period;          ///< s, platform and body
    Measured platform_period; ///< s, platform alone; not used where it has no mass
    double amplitude = 0;     ///< rad, of both
    double gravity = 0;
};

/// The body's own moment of inertia, kg m², with its uncertainty. Contributions in the order body mass,
/// platform mass, radius, length, period, platform period.
Combined measure_inertia(const WireBench& bench);

/// A body swinging on a pin as a clock's pendulum does: period about a pin `arm` from the centre of mass.
/// Exact in amplitude: 2 pi sqrt((I + m d²)/(m g d)) times 2 K(sin(amplitude / 2)) / pi.
double pin_period(double inertia, double mass, double arm, double gravity, double amplitude = 0);

/// Moment of inertia about the centre of mass from that period. Best where the arm is known well: an error in
/// it counts least near the arm that gives the shortest period, d = sqrt(I / m).
Combined inertia_from_pin(const Measured& period, const Measured& mass, const Measured& arm, double gravity,
                          double amplitude = 0);

} // namespace rampwright
