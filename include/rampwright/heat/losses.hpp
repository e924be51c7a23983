#pragma once

#include <rampwright/car/car_model.hpp>

namespace rampwright {

/// What resists one wheel, ready for the equations of motion (docs/model.md, "Losses at the wheel").
/// All are means over the toe that the axle's hole leaves.
struct WheelLoss {
    double journal_arm = 0;   ///< m: journal torque per N of bearing load, mu * bore radius
    double hub_arm = 0;       ///< m: thrust-collar torque per N of bearing load
    double scrub = 0;         ///< N of retarding force per N of load
    double rolling = 0;       ///< coefficient of rolling resistance, edge factor included
    double windage = 0;       ///< N m per (rad/s)^1.5, rotating disc, laminar, both faces
};

/// @param rail whether the lane has a guide: then the steered front wheel's toe belongs to the guide model.
/// @throws nothing; a raised wheel's losses are zero.
std::array<WheelLoss, 4> wheel_losses(const CarOnWheels& car, bool rail, double air_density, double viscosity);

/// Arm of a thrust collar under uniform pressure: 2/3 (r2³ - r1³)/(r2² - r1²), m. With r1 = r2 it is r1.
/// Source: Engineering Statics (Baker and Haynes), collar bearings; docs/model.md.
double collar_arm(double inner_radius, double outer_radius);

/// The guide rail and the steer of the front wheel: a reduced model of going straight.
/// Force on the car, along the path at the front contact, retarding, as a function of speed.
struct Guide {
    bool rail = false;             ///< without a rail every figure is absent and the force zero
    double steer = 0;              ///< rad, toe of the touching front wheel towards the rail it rides
    double rear_toe = 0;           ///< rad, mean toe of the rear pair, same sign convention
    double ride_probability = 0, margin = 0;
    double ride_force = 0;         ///< N, while it rides
    /// Mean bouncing force at speed v, N (v > 0).
    double bounce_force(double speed) const;
    /// P ride_force + (1 - P) bounce_force(v), N.
    double force(double speed) const;

    /// Chebyshev table of bounce_force * speed-scaling over speed, so that one call costs nanoseconds.
    std::vector<double> table;
    double top_speed = 0;
};

/// @param side_gap clearance between rail and inner wheel faces on each side, m.
/// @param front_load level standing load of the touching front wheel, N.
/// @param top_speed greatest speed asked for, m/s.
Guide make_guide(const CarOnWheels& car, const TrackPlan& track, double side_gap, double front_load,
                 double top_speed);

/// Steer that makes the expected guide force at `speed` least, rad, and how flat that optimum is is left to the caller.
double best_steer(const CarOnWheels& car, const TrackPlan& track, double side_gap, double front_load,
                  double speed);

} // namespace rampwright
