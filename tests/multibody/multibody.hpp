#pragma once

#include <array>
#include <vector>

/// A heat by a general multibody library (Simbody), spoken to in plain numbers: the library does not compile
/// as the language version the rest is written in.
namespace rampwright::multibody {

struct WheelOnAxle {
    bool front = false;
    double mass = 0, spin_inertia = 0;
    double load_share = 1;  ///< of its axle's load
    double bearing_arm = 0; ///< m: torque per N of bearing load, journal and hub together
    double rolling = 0;     ///< coefficient of rolling resistance
};

/// SI; level frame: x ahead of the rear axle, z above the surface. All wheels of one radius.
struct Car {
    double mass = 0;
    double pitch_inertia = 0; ///< about the centre of mass, touching wheels as points
    double wheelbase = 0, radius = 0;
    double centre_x = 0, centre_z = 0, nose_x = 0, nose_z = 0;
    double drag = 0, drag_z = 0; ///< half density times area, kg/m; height of its line
    std::vector<WheelOnAxle> wheels;
};

/// A straight ramp, an arc to the level, the level. Arc lengths along the surface from the start line.
struct Lane {
    double slope = 0; ///< rad, downhill positive
    double ramp = 0;  ///< from the start line to the arc
    double radius = 0;
    double level = 0; ///< from the arc's end to the finish line
    double gravity = 9.80665;
};

struct Heat {
    double time = 0, finish_speed = 0;
};

/// The car as a rigid body in the plane with each wheel on a revolute joint; both axles' centres held to the
/// path that a wheel's centre takes, each wheel coupled to its way along it (rolling without slip). Normal
/// loads are the multipliers of those constraints, and friction follows from them.
/// @param accuracy of the library's own error control.
Heat run(const Car& car, const Lane& lane, double accuracy);

} // namespace rampwright::multibody
