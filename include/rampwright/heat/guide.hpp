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
    double touch_share = 0; ///< the same at a touch while it bounces
    double restitution = 0;
    double align = 0;      ///< rad, one sigma of what the holes leave
    double need = 0;       ///< rad, steer that the lane's unevenness takes up, one sigma
    double kick = 0;       ///< N m, yaw moment of joints and bumps
    double hold_width = 0; ///< width of the passage from not holding to holding, in margins

    /// Side force of the steered wheel at that much toe, N; odd in it.
    double side_force(double toe) const;
};

/// Mean toe of an axle's touching wheels, rad, positive to the car's left; zero where none touches.
double mean_toe(const std::array<Wheel, 4>& wheels, bool front);

/// +1 where the ridden rail lies to the car's left, -1 to its right: the side of the raised front wheel, or
/// where none is raised the one that the net steer points to.
double ridden_side(const std::array<Wheel, 4>& wheels);

/// @param side_gap clearance between rail and inner wheel faces on each side, m.
/// @param front_load level standing load of the touching front wheels, N.
GuideSetup guide_setup(const CarOnWheels& car, double side_gap, double front_load);

/// Speed below which the bouncing term is held, m/s (see `Guide::bounce_force`).
inline constexpr double bounce_hold_speed = 0.1;

/// The guide rail and the steer of the front wheel: a reduced model of going straight, which says how often
/// the car holds the rail, not when. Its inputs are meant to be calibrated.
///
/// Holding and riding go by the net steer, the front wheel's less the rear pair's mean: a car whose rear
/// wheels point aside crabs along the rail, and the front wheel slips by the difference.
///
/// Where it fails (tests/steer/planar_car_test.cpp, a planar simulation of a car between two rails):
/// - The rear wheels' faces are taken to stand clear of the rail. A rear pair that points towards the ridden
/// rail
///   by r settles L r nearer to it than the front wheel; with no more room there than in front it rubs, at
///   several millinewtons.
/// - A car with a light front wheel or little steer, a wide gap and speed can wag: each touch sends the front
/// across
///   harder than it came. That costs several times the bouncing force, a car believed to ride may not, and
///   more steer than the model thinks best can cure it.
/// - Waves of the rail itself are not in it.
struct Guide {
    bool rail = false;           ///< without a rail every figure is zero
    double steer = 0;            ///< rad, as in GuideSetup
    double rear_toe = 0;         ///< rad, as in GuideSetup
    double ride_probability = 0; ///< 0..1
    double margin = 0;           ///< guidance margin: moment of the steered tread over that of the joints
    double ride_force = 0;       ///< N, retarding, while it rides

    /// Mean retarding force while it bounces, N, along the path at the front contact, for 0 <= v.
    /// Read from a table up to the speed the guide was made for, held at its end beyond. Relative error below
    /// 1e-6; on a lane without joints to speak of (a kick below 0.2 N mm), where the force vanishes towards
    /// rest, that of its value at the end.
    ///
    /// Per touch eta mu m v² psi (1 + e) + 1/2 m v² psi² (1 - e²), over the distance between touches, meaned
    /// over the mean toe of the rear pair. The second term grows as 1/v towards rest, because the model lets
    /// the joints' moment turn a standing car: its power is finite, but a start from rest would not be. It is
    /// held with 1/sqrt(v² + v0²), v0 = bounce_hold_speed: smooth in v², less than 1e-3 of the force above
    /// 2 m/s, and microseconds of a heat.
    double bounce_force(double speed) const;

    /// P ride_force + (1 - P) bounce_force(v), N. About 20 ns.
    double force(double speed) const;

    /// Chebyshev series of the two parts of bounce_force over a mapped energy, see guide.cpp.
    static constexpr std::size_t terms = 20;
    alignas(16) std::array<std::array<double, 2>, terms> table{};
    double map_gain = 0, map_speed_squared = 1; ///< x = gain v² / (v² + w²) - 1
    double last_speed = 0;                      ///< m/s
};

/// @param top_speed greatest speed asked for, m/s.
/// A few microseconds. A front load of zero is allowed: the car does not hold the rail.
Guide make_guide(const GuideSetup& setup, double top_speed);

/// The guide of a car on a track; without a rail, one whose forces are zero.
Guide make_guide(const CarOnWheels& car, const TrackPlan& track, double side_gap, double front_load,
                 double top_speed);

/// Mean bouncing force at one speed, N, from the integral itself rather than the table.
double bounce_force_at(const GuideSetup& setup, double speed);

/// Expected force at one speed, N: what `Guide::force` reads from its table.
double guide_force_at(const GuideSetup& setup, double speed);

/// Steer between 0 and 6 degrees that makes the expected guide force at `speed` least, rad. How flat that
/// optimum is follows from `guide_force_at`.
double best_steer(GuideSetup setup, double speed);
double best_steer(const CarOnWheels& car, double side_gap, double front_load, double speed);

} // namespace rampwright
