#pragma once

#include <rampwright/project/project.hpp>
#include <rampwright/steer/tuning_log.hpp>

#include <optional>
#include <string_view>
#include <vector>

namespace rampwright {

/// What tuning asks for next: roll the car; turn the axle; leave it and roll again to be sure; bend the axle
/// more, because no turn of it reaches the target; nothing.
enum class TuningMove { roll, turn, roll_again, bend_more, done };
/// "roll", "turn", "roll-again", "bend-more", "done".
std::string_view to_string(TuningMove move);

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
    TuningMove next() const;
    std::optional<double> next_turn() const; ///< rad; none where the next move is another
    /// Whether the next turn makes the wheel steer more towards the rail that is ridden.
    bool towards_rail() const { return plan.target > log.drift(); }
};

/// Drift wanted where neither the file nor the model says one, m: 4 in on a board of 48 in (common practice,
/// no source).
inline constexpr double practice_target = 4 * inch;

/// +1 where the wanted steer is to the car's left: towards the raised front wheel, where one is; else to the
/// side the board showed, or the left.
double steer_side(const CarPlan& car);

/// @param usual_target m of drift wanted where the file names none.
TuningState follow_tuning_log(const CarPlan& car, double usual_target);

} // namespace rampwright
