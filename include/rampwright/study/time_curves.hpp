#pragma once

#include <rampwright/study/heat_case.hpp>

#include <optional>
#include <vector>

namespace rampwright {

/// One point of a curve of expected heat time.
struct TimeAt {
    double at = 0;              ///< SI: rad of steer, kg of front load
    std::optional<double> time; ///< s on the clock; none where the car stops short
};

/// Expected heat time against one decision of the builder, with today's place and the best.
struct TimeCurve {
    std::vector<TimeAt> points; ///< in rising order
    TimeAt today, best;
    /// Where the time stays within `flat_within` of the best, m or rad or kg as the points.
    double flat_from = 0, flat_to = 0;
};

/// A loss of time nobody can see on a clock: what "as good as the best" means. s
inline constexpr double flat_within = 0.001;

/// Time against the steer of the touching front wheels, all set alike, positive towards the ridden rail
/// (guide.hpp), from `-most` to `most` rad.
/// @param count points, at least 3.
TimeCurve time_against_steer(const HeatCase& heat_case, double most, std::size_t count);

/// Time against the front load, kg: all ballast moved together along the car by up to `most_shift` m either
/// way, as-built loads along with it. Points where the front would lift are left out.
TimeCurve time_against_front_load(const HeatCase& heat_case, double most_shift, std::size_t count);

} // namespace rampwright
