#include <rampwright/core/constants.hpp>
#include <rampwright/steer/bent_axle.hpp>

#include <cmath>

namespace rampwright {

Alignment alignment_of(const BentAxle& axle) {
    const double slope = std::tan(axle.bend);
    return {std::atan(slope * std::sin(axle.turn)), std::atan(slope * std::cos(axle.turn))};
}

BentAxle bent_axle_of(const Alignment& alignment) {
    const double side = std::tan(alignment.toe), up = std::tan(alignment.cant);
    return {std::atan(std::hypot(side, up)), std::atan2(side, up)};
}

std::optional<double> turn_for_toe(double bend, double toe) {
    const double slope = std::tan(bend), side = std::tan(toe);
    if (side == 0) return 0;
    if (!(std::abs(side) <= slope)) return std::nullopt;
    return std::asin(side / slope);
}

double toe_per_turn(const BentAxle& axle) {
    const double slope = std::tan(axle.bend);
    const double side = slope * std::sin(axle.turn);
    return slope * std::cos(axle.turn) / (1 + side * side);
}

Alignment change_by(const BentAxle& axle, double by) {
    const Alignment before = alignment_of(axle), after = alignment_of({axle.bend, axle.turn + by});
    return {after.toe - before.toe, after.cant - before.cant};
}

std::optional<AxleMove> move_to_steer(const BentAxle& axle, double steer, bool rail_on_left) {
    const double toe = rail_on_left ? steer : -steer;
    const std::optional<double> turn = turn_for_toe(axle.bend, toe);
    if (!turn) return std::nullopt;
    AxleMove move;
    move.by = *turn - axle.turn;
    move.toe_change = toe - alignment_of(axle).toe;
    move.towards_rail = rail_on_left ? move.toe_change > 0 : move.toe_change < 0;
    move.next_change = change_by({axle.bend, *turn}, std::copysign(5 * degree, move.by)).toe;
    return move;
}

} // namespace rampwright
