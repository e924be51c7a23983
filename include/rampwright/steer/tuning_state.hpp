#pragma once

#include <rampwright/project/project.hpp>
#include <rampwright/steer/tuning_log.hpp>

#include <optional>
#include <vector>

namespace rampwright {

/// A car's tuning log worked through. Signs of the file: drift and steer positive to the car's left, turns
/// clockwise seen from the axle's head.
struct TuningState {
    TuningPlan plan;
    TuningLog log;
    std::vector<double> surprises; ///< of each entry; zero for turns
    double side = 1;               ///< +1 where the ridden rail lies to the car's left, -1 to its right
    double steer() const { return side * log.steer(); }
    double drift() const { return side * log.drift(); }
    double target() const { return side * plan.target; }
    std::optional<double> next_turn() const;
};

/// +1 where the wanted steer is to the car's left: towards the raised front wheel, where one is; else to the
/// side the board showed, or the left.
double steer_side(const CarPlan& car);

/// @param usual_target m of drift wanted where the file names none.
TuningState follow_tuning_log(const CarPlan& car, double usual_target);

} // namespace rampwright
