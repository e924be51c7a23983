#pragma once

#include <rampwright/study/heat_case.hpp>

#include <array>
#include <optional>
#include <vector>

namespace rampwright {

/// The power that each loss takes at a moment, W.
struct LossPowers {
    double journal = 0, hub = 0, rolling = 0, scrub = 0, air = 0;
    std::optional<double> rail; ///< absent where the lane has no guide
};

/// A moment of a heat with everything that is drawn along the track. Track frame: X downtrack, Z up, m.
struct CurvePoint {
    double at = 0;                        ///< m: the nose's foot point along the surface from the start line
    double time = 0;                      ///< s, by the equations; the clock's offset is not in it
    double speed = 0;                     ///< of the centre of mass, m/s
    double rear_load = 0, front_load = 0; ///< N, of the axles; negative where held down
    std::array<std::optional<double>, 4> wheel_load; ///< N, by Corner: its share of the axle's
    LossPowers power;
    Vec2 rear_centre = Vec2::Zero(), front_centre = Vec2::Zero(); ///< of the wheels
};

/// One heat along the track.
struct Curves {
    std::vector<CurvePoint> points; ///< in order; never less than two
    bool finished = false;
    double length = 0; ///< m, from the start line to the finish line
};

/// Runs a car's heat and keeps what happens on the way, densely enough to draw (a point each centimetre or
/// so) and to sum: powers over time by trapezoids give the books' entries to a thousandth. A few
/// milliseconds.
/// @throws Problem as compute_figures does.
Curves curves_along_track(const Project& project, std::size_t car);

/// The moment at a place, or the nearest end: between two points in proportion, speed by its square.
CurvePoint curve_at(const Curves& curves, double at);

} // namespace rampwright
