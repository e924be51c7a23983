#pragma once

#include <rampwright/steer/tuning_state.hpp>
#include <rampwright/units/quantity.hpp>

#include <optional>
#include <string>

namespace rampwright {

/// The next move of tuning as one sentence: the same on screen, sheet and command line.
/// @param turn rad, clockwise seen from the axle's head; where the move is a turn.
/// @param towards_rail whether that turn makes the wheel steer more towards the rail that is ridden.
std::string next_move_text(TuningMove move, std::optional<double> turn, bool towards_rail, UnitSystem units);

} // namespace rampwright
