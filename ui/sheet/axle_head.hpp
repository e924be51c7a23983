#pragma once

#include "sheet/flow.hpp"

/// The next turn of tuning as the axle is seen from its head.
namespace rampwright::ui::paper {

/// @param turn rad clockwise from straight up, where the bend points. @param by rad clockwise, the next turn.
void put_axle_head(Flow& flow, double turn, double by);

} // namespace rampwright::ui::paper
