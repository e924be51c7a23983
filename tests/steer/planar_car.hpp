#pragma once

#include <cstdint>

/// A test referee that shares no code with the program: a rigid car on a level plane between two rails, with
/// slipping treads, integrated in small steps. Plain numbers, SI; y and yaw to the left.
namespace planar {

struct Car {
    double mass, yaw_inertia, wheelbase;
    double ahead;       ///< centre of mass ahead of the rear axle
    double front_load;  ///< N on the one touching front wheel
    double rear_load;   ///< N on both rear wheels
    double steer;       ///< of the front wheel, to the left: towards the rail it is to ride
    double rear_toe;    ///< mean of the rear wheels, to the left
    double grip, creep; ///< side force = load * grip * tanh(creep * slip / grip)
};

struct Lane {
    double gap;      ///< on each side between the front wheels' faces and the rail
    double rear_gap; ///< the same of the rear wheels
    double rail_friction;
    double ride_share;  ///< part of the sliding that counts in lasting contact
    double touch_share; ///< and in a touch
    double restitution;
    double uneven;             ///< rad, steer that the surface's unevenness takes up, root mean square
    double kick;               ///< N m, yaw moment of joints, root mean square, another every `kick_length`
    double kick_length = 0.25; ///< m
    double shortest_wave = 2;  ///< m, of the unevenness; the longest is four times that
};

struct Outcome {
    double loss;    ///< N: energy lost per metre at rail and treads
    double contact; ///< share of the way with the front wheel's face on the rail it is to ride
    int touches;    ///< of front faces with either rail
};

/// Runs `length` metres at a steady speed, from a start drawn by `seed` (place, heading, lane); the first
/// quarter is not counted.
Outcome run(const Car& car, const Lane& lane, double speed, double length, std::uint64_t seed);

} // namespace planar
