#pragma once

#include <rampwright/car/car_model.hpp>

#include <array>

namespace rampwright {

/// What the model of going straight reads (docs/model.md, "Going straight"). SI. `steer` and `rear_toe` are
/// positive towards the rail that is ridden: towards the side of the raised front wheel, so that the touching
/// wheel's inner face meets the rail; where no front wheel is raised, towards the side the net steer points.
struct GuideSetup {
    double steer = 0;          ///< rad, toe of the touching front wheel (the mean of a touching pair)
    double rear_toe = 0;       ///< rad, mean toe of the touching rear wheels
    double wheelbase = 0;      ///< m
    double effective_mass = 0; ///< kg, (I_yaw + m x_g²) / L²: the car swinging about its rear axle
    double front_load = 0;     ///< N, level standing load of the touching front wheels
    double side_gap = 0;       ///< m, clearance between rail and inner wheel faces on each side
    double grip = 0;           ///< greatest side force of a tread per load
    double creep = 0;          ///< creep stiffness per load, 1/rad
    double rail_friction = 0;
    double ride_share = 0;  ///< part of the sliding that counts while it rides
    double touch_share = 0; ///< the same at a touch, and on the other side
    double restitution = 0;
    double align = 0;      ///< rad, one sigma of what the holes leave
    double need = 0;       ///< rad, steer that the lane's unevenness takes up, one sigma
    double kick = 0;       ///< N m, yaw moment of joints and bumps
    double hold_width = 0; ///< width of the passage from not holding to holding, in margins

    /// rad, the front wheel's steer less the rear pair's: a car whose rear wheels point aside crabs along the
    /// rail, and the front wheel slips by the difference.
    double net_steer() const { return steer - rear_toe; }
    /// rad, one sigma of the net steer: what the holes leave and what the lane takes up.
    double spread() const;
    /// Side force of the steered wheel at that much toe, N; odd in it.
    double side_force(double toe) const;
    /// N m/rad, moment of the steered tread about the rear axle over the net steer; at none, its slope.
    double moment_per_steer() const;
    /// Guidance margin: moment of the steered tread at the net steer over that of the joints; infinite
    /// without joints.
    double margin() const;
};

/// The guidance margin from which a car is believed to hold the rail: at 1 the joints still throw it off
/// often enough to keep it bouncing. [fit], to the planar simulation.
inline constexpr double hold_margin = 1.3;

/// Mean toe of an axle's touching wheels, rad, positive to the car's left; zero where none touches.
double mean_toe(const std::array<Wheel, 4>& wheels, bool front);

/// +1 where the ridden rail lies to the car's left, -1 to its right: the side of the raised front wheel, or
/// where none is raised the one that the net steer points to.
double ridden_side(const std::array<Wheel, 4>& wheels);

/// @param side_gap clearance between rail and inner wheel faces on each side, m; below zero counts as none.
/// @param front_load level standing load of the touching front wheels, N; below zero counts as none.
GuideSetup guide_setup(const CarOnWheels& car, double side_gap, double front_load);

/// The guide rail and the steer of the front wheel: a reduced model of going straight, which says how often
/// the car holds the rail, not when. Its inputs are meant to be calibrated.
///
/// The steered tread, F(δ) at the net steer, and the joints' moment M together push the front to one side. At
/// each moment it leans with |F + M/L| on the rail: on the side it is to ride, where only the ride share of
/// the friction counts, or with the other front wheel on the other side, where the touch share does. M is
/// normal with the size `kick`; the net steer wanders by `spread()`. Where the sum changes its sign, the car
/// crosses to the other side, and that costs once more. How often that happens, of as often as it could,
/// is 4 Φ(F L/M) Φ(-F L/M); what it then costs, per metre,
///     ½ touch_share rail_friction m_e v² gap / L² × t² / (t² + 1.5²),   t = (1 + e) m_e v² / (C W L):
/// t is the swing. A touch turns the car about its rear axle by (1 + e) times the angle it came at, per
/// wheelbase, and the tread takes m_e v² / (C W) to stop that: above 2 the front crosses harder than it came,
/// and wags from side to side. ½ and 1.5 are fitted [fit] to a planar simulation, with joints every quarter
/// metre, at 1 to 5 m/s.
///
/// Where it fails (tests/steer/planar_car_test.cpp, that simulation on other cars):
/// - The rear wheels' faces are taken to stand clear of the rail. A rear pair that points towards the ridden
///   rail by r settles L r nearer to it than the front wheel; with no more room there than in front it rubs,
///   at several millinewtons.
/// - A car with hardly any joints to jolt it that has begun to wag may go on doing so for long: at no steer
///   several times the force given here. Steer cures that as the model says.
/// - Waves of the rail itself are not in it.
struct Guide {
    bool rail = false;           ///< without a rail every figure is zero
    GuideSetup setup;            ///< what it was made from
    double ride_probability = 0; ///< 0..1, Φ((G - 1.3) / hypot(hold_width, spread dG)), dG = G / net steer
    double margin = 0;           ///< guidance margin G
    double ride_force = 0;       ///< N, retarding, while it rides at just the net steer

    double lean_force = 0; ///< N, leaning and slipping, the mean over joints and spread
    double crossing = 0;   ///< 0..1: how often it changes sides, of as often as it could

    /// What changing sides as often as it could would cost at that speed, N along the path at the front
    /// contact; smooth in v².
    double crossing_force(double speed) const;

    /// Expected force, N: lean_force + crossing * crossing_force(v).
    double force(double speed) const;

    double crossing_per_speed2 = 0; ///< kg/m
    double swing_speed4 = 0;        ///< (m/s)^4, v^4 at a swing of 1.5
};

/// About 2 us. A front load of zero is allowed: the car does not hold the rail.
Guide make_guide(const GuideSetup& setup);

/// The guide of a car on a track; without a rail, one whose forces are zero.
Guide make_guide(const CarOnWheels& car, const TrackPlan& track, double side_gap, double front_load);

/// Expected force of the same car without net steer, N: what it costs to bounce from side to side.
double bounce_force(GuideSetup setup, double speed);

/// Steer between 0 and 6 degrees that makes the expected guide force at `speed` least, rad.
double best_steer(GuideSetup setup, double speed);

} // namespace rampwright
