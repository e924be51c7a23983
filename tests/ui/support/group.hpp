#pragma once

#include "support/bench.hpp"

#include <vector>

/// Several pieces at once, as a hand chooses and works them.
namespace rampwright::ui::testing {

inline const Target piece_0{TargetKind::piece, 0, 0}, piece_1{TargetKind::piece, 1, 0};

/// Clicks a piece of the car on the sheet in its side view.
void click_piece(Workbench& bench, std::size_t piece, Qt::KeyboardModifiers keys = {});

/// A key on the drawing of the window one has turned to.
void press(Workbench& bench, Qt::Key key, Qt::KeyboardModifiers keys = Qt::ControlModifier);

/// Where the plan has a piece of the car on the sheet, m.
Vec3 place_of_piece(Workbench& bench, std::size_t piece);

/// The chosen rows of a list by its object name.
std::vector<int> chosen_rows(Workbench& bench, const char* list_name);

} // namespace rampwright::ui::testing
