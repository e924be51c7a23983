#pragma once

#include <heat/heat_cars.hpp>

namespace rampwright::test {

struct RefereeHeat {
    double time = 0, finish_speed = 0;
    bool lifted = false;
};

/// The same heat by another way all along: the surface from its slope by quadrature, accelerations of both
/// wheel centres and of the pitch as unknowns beside the loads (five equations, solved densely), wheels one
/// by one, time as the independent variable, GSL's eighth-order Runge-Kutta (rk8pd) to `tolerance`. Only the
/// guide's force is asked of the program. Straights and arcs only, not measured tracks; loads must stay
/// positive.
RefereeHeat referee_heat(const TrackPlan& plan, const PlainCar& car, double tolerance = 1e-12);

} // namespace rampwright::test
