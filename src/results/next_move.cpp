#include <rampwright/core/say.hpp>
#include <rampwright/results/next_move.hpp>
#include <rampwright/units/format.hpp>

#include <cmath>

namespace rampwright {

namespace {

std::string turn_text(double turn, bool towards_rail, UnitSystem units) {
    const std::string angle = format(std::abs(turn), Quantity::angle, units);
    if (turn > 0)
        return towards_rail ? Core::tr("Turn the axle {angle} clockwise, seen from its head, towards the "
                                       "rail. Then roll again.",
                                       {{"angle", angle}})
                            : Core::tr("Turn the axle {angle} clockwise, seen from its head, away from the "
                                       "rail. Then roll again.",
                                       {{"angle", angle}});
    return towards_rail ? Core::tr("Turn the axle {angle} anticlockwise, seen from its head, towards the "
                                   "rail. Then roll again.",
                                   {{"angle", angle}})
                        : Core::tr("Turn the axle {angle} anticlockwise, seen from its head, away from the "
                                   "rail. Then roll again.",
                                   {{"angle", angle}});
}

} // namespace

std::string next_move_text(TuningMove move, std::optional<double> turn, bool towards_rail, UnitSystem units) {
    switch (move) {
    case TuningMove::roll:
        return Core::tr("Roll the car and note how far it drifts.");
    case TuningMove::turn:
        return turn_text(turn.value_or(0), towards_rail, units);
    case TuningMove::roll_again:
        return Core::tr("Leave the axle, and roll again to be sure.");
    case TuningMove::bend_more:
        return Core::tr("Bend the axle a little more: no turn of it reaches the target.");
    case TuningMove::done:
        break;
    }
    return Core::tr("Done: leave the axle as it is.");
}

} // namespace rampwright
