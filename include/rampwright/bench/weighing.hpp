#pragma once

#include <rampwright/bench/combine.hpp>

namespace rampwright {

/// Where the centre of mass lies, from weighing. Loads may be in any one unit (g as read); lengths in m.

/// Ahead of the rear support, from two balances a distance apart: D front / (front + rear). Contributions in
/// the order of the arguments.
Combined balance_on_two_supports(const Measured& front, const Measured& rear, const Measured& distance);

/// The same where the rear was not weighed but the whole car was: D front / whole.
Combined balance_from_whole(const Measured& front, const Measured& whole, const Measured& distance);

/// What a scale showed several times for one thing, taken off and put back each time: the mean, with the
/// spread of the readings (divided by the root of their number) and the display's own division (rectangular,
/// division / sqrt 12) in its sigma. Source: JCGM 100:2008 (GUM) 4.2.3, 4.3.7, F.2.2.1 and G.4. No reading:
/// zero, with a sigma of infinity.
Measured mean_of_weighings(const std::vector<double>& readings, double division);

/// Greatest less least reading; zero for fewer than two.
double spread_of_weighings(const std::vector<double>& readings);

/// A car whose wheels turn freely, level and then with its front raised by a known angle: less of it bears on
/// the front the higher its centre of mass lies.
struct TiltWeighing {
    Measured whole;        ///< load of the whole car
    Measured level_front;  ///< load of the front axle, level
    Measured tilted_front; ///< the same, front raised
    Measured wheelbase;    ///< m
    Measured tilt;         ///< rad, nose up, of the line through the wheels' centres
    Measured radius;       ///< m, of the touching wheels, front and rear alike
};

/// Height of the centre of mass above the running surface: R + L (level - tilted) / (whole tan(tilt)), from
/// moments about the rear wheels' centres. Contributions in the order of the fields.
Combined height_from_tilt(const TiltWeighing& weighing);

} // namespace rampwright
