#include <rampwright/steer/tuning_state.hpp>

namespace rampwright {

namespace {

// What is believed of an axle nobody has measured, and how well a protractor at its head tells it.
constexpr double usual_bend = 1.5 * degree, unknown_bend = 1 * degree, read_bend = 0.3 * degree;
constexpr double unknown_turn = 30 * degree, read_turn = 5 * degree;
constexpr double usual_tolerance = 0.006;
/// A board of 48 in: common practice, no source.
constexpr double usual_board = 1.2192;

} // namespace

double steer_side(const CarPlan& car) {
    const bool left = car.wheels[std::size_t(Corner::front_left)].touches;
    const bool right = car.wheels[std::size_t(Corner::front_right)].touches;
    if (left != right) return right ? 1 : -1;
    return car.steer.drift.value_or(0) < 0 ? -1 : 1;
}

std::string_view to_string(TuningMove move) {
    switch (move) {
    case TuningMove::roll:
        return "roll";
    case TuningMove::turn:
        return "turn";
    case TuningMove::roll_again:
        return "roll-again";
    case TuningMove::bend_more:
        return "bend-more";
    case TuningMove::done:
        break;
    }
    return "done";
}

TuningMove TuningState::next() const {
    if (log.done()) return TuningMove::done;
    // Before the first roll a turn would be a guess about a guess.
    if (log.rolls() == 0) return TuningMove::roll;
    if (log.next_turn()) return TuningMove::turn;
    return log.bend_too_small() ? TuningMove::bend_more : TuningMove::roll_again;
}

std::optional<double> TuningState::next_turn() const {
    if (next() != TuningMove::turn) return {};
    const auto turn = log.next_turn();
    return turn ? std::optional(side * *turn) : std::nullopt;
}

TuningState follow_tuning_log(const CarPlan& car, double usual_target) {
    const double side = steer_side(car);
    const SteerNote& note = car.steer;
    TuningPlan plan;
    plan.wheelbase = car.axles.front_x - car.axles.rear_x;
    plan.over = note.over.value_or(usual_board);
    plan.watched_ahead = note.watched_ahead;
    plan.target = note.target.value_or(usual_target);
    plan.tolerance = note.tolerance.value_or(usual_tolerance);
    plan.bend = note.bend.value_or(usual_bend);
    plan.bend_sigma = note.bend ? read_bend : unknown_bend;
    plan.turn = side * note.turn.value_or(0);
    plan.turn_sigma = note.turn ? read_turn : unknown_turn;
    TuningState state{plan, TuningLog(plan), {}, side};
    for (const TuningEvent& event : note.log) {
        if (event.drift) state.log.add_roll(side * *event.drift);
        if (event.turned) state.log.add_turn(side * *event.turned);
        state.surprises.push_back(event.drift ? state.log.surprise() : 0);
    }
    return state;
}

} // namespace rampwright
