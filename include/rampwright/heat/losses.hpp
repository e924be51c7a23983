#pragma once

#include <rampwright/car/car_model.hpp>
#include <rampwright/heat/guide.hpp>

#include <array>

namespace rampwright {

/// What resists one wheel, ready for the equations of motion (docs/model.md, "Losses at the wheel").
/// All are means over the toe that the axle's hole leaves.
struct WheelLoss {
    double journal_arm = 0; ///< m: journal torque per N of bearing load, mu * bore radius
    double hub_arm = 0;     ///< m: thrust-collar torque per N of bearing load
    double scrub = 0;       ///< N of retarding force per N of load
    double rolling = 0;     ///< coefficient of rolling resistance, edge factor included
    double windage = 0;     ///< N m per (rad/s)^1.5, rotating disc, laminar, both faces
};

/// What each wheel's contacts take.
///
/// - Journal: the wheel turns on a standing axle, so the arm is the bore's radius.
/// - Side load per unit load, outward positive: sin(cant) plus tread_grip * tanh(creep * tau / tread_grip)
///   with tau the wheel's toe against its travel, outward positive, normal about the stated toe. Outward it
///   bears on the axle's head, inward on the wood, each with its own coefficient and ring.
/// - The mean toe of a pair of touching rear wheels makes the car crab and is the guide's; each pays for half
///   their difference, spread align / sqrt 2. With a rail the same holds for the front: a lone touching
///   front wheel pays nothing for its toe, a pair pays for half its difference. A lone touching rear wheel
///   rolls where it points.
/// - Rolling: the edge factor is reached as 1 - exp(-(cant / 0.5 deg)²), 98 % at one degree.
/// - Windage: C_M = 3.87 / sqrt(Re) for both faces of a disc in laminar flow, M = 1/2 rho omega² R⁵ C_M,
///   Re = omega R² / nu (von Karman, Cochran; Schlichting, Boundary-Layer Theory, rotating disc; from
///   memory), times the factor `windage`.
///
/// Error below 1e-6 relative; about 0.3 us a wheel.
/// @param rail whether the lane has a guide.
/// @param air_density kg/m³.
/// @param viscosity dynamic, Pa s.
/// @throws nothing; a raised wheel's losses are zero.
std::array<WheelLoss, 4> wheel_losses(const CarOnWheels& car, bool rail, double air_density,
                                      double viscosity);

/// Arm of a thrust collar under uniform pressure: 2/3 (r2³ - r1³)/(r2² - r1²), m. With r1 = r2 it is r1.
/// Source: Engineering Statics (Baker and Haynes), collar bearings; docs/model.md.
double collar_arm(double inner_radius, double outer_radius);

} // namespace rampwright
