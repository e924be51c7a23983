#pragma once

#include <rampwright/study/heat_case.hpp>

#include <array>
#include <string>
#include <vector>

namespace rampwright {

/// What a car meets on its way, each summed by itself from the loads and speeds of a dense trace, by
/// trapezoids: another road than the one the books take, and nothing here is worked back from an energy.
/// "Mean" is over the rear wheel centre's way.
struct AlongHeat {
    double way = 0; ///< m, of the rear wheels' centre
    struct WheelMeans {
        double bearing = 0; ///< N: what presses on the bearing, times the way it slides per way of the car
        double tread = 0;   ///< N under the tread
        double scrub = 0;   ///< N under the tread, with the body's own pitching in the way
    };
    std::array<WheelMeans, 4> wheels;             ///< by Corner; zero for a raised wheel
    double speed_squared = 0;                     ///< mean of v² as the air meets it, (m/s)²
    double rear_stirring = 0, front_stirring = 0; ///< means of v^1.5, (m/s)^1.5
    double rail_way = 0;                          ///< m, along which the guide acts
    double crossing = 0; ///< N, mean over `rail_way` of what changing sides as often as it could would cost
    struct Leg {
        double length = 0, time = 0; ///< m of the nose's foot point; s, summed as way over speed
    };
    /// Where it is fastest.
    struct Fastest {
        double q = 0;    ///< m, the rear centre's coordinate
        double lost = 0; ///< J, up to there: powers times time
    } fastest;
    /// Where the front is lightest. Its load there is the sum of these, from the equations of motion.
    struct Lightest {
        double weight = 0;          ///< N, of weight and of what the wheels' own weight does
        double per_speed2 = 0;      ///< N per (m/s)²: the surface's curvature, air, wheels speeding up
        double per_speed15 = 0;     ///< N per (m/s)^1.5: air stirred by the wheels
        double per_guide = 0;       ///< N per N of the guide
        double speed = 0;           ///< m/s, of the rear wheels' centre
        double guide = 0;           ///< N
        bool as_if_carrying = true; ///< false where an axle hangs: the sum does not hold then
    } lightest;
    std::vector<Leg> legs; ///< the track's pieces one by one; quarters of the way where it was measured
};

/// @param plan the track's pieces, for the legs.
/// @param lightest_at the nose's foot point where the front is lightest, m from the start line.
/// @return empty (no way) where the car stops short.
AlongHeat sum_along(const ReadyHeat& ready, const TrackPlan& plan, double lightest_at);

} // namespace rampwright
