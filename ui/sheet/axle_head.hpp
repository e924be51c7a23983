#pragma once

#include "sheet/flow.hpp"

#include <rampwright/results/figures.hpp>

/// The next move of tuning, in words and as the axle is seen from its head.
namespace rampwright::ui::paper {

QString next_move_text(const SteerFigures& steer);

/// @param turn rad clockwise from straight up, where the bend points. @param by rad clockwise, the next turn.
void put_axle_head(Flow& flow, double turn, double by);

} // namespace rampwright::ui::paper
