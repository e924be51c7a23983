#pragma once

#include "sheet/cut_map.hpp"
#include "sheet/words.hpp"

#include <string>
#include <vector>

namespace rampwright::ui::paper {

/// The order in which weights go in: cut by cut from the tail, the deepest first; then those that lie in no
/// cut; putty last, since it is what trims. Indices into the plan's ballast.
std::vector<std::size_t> fitting_order(const CarPlan& plan, const CarShape& shape);

/// "tungsten, box 13.0 × 24.0 × 7.0 mm"
QString piece_words(const BallastPlan& piece, const Words& words);

/// What holds it: as planned, or a way to do it where nothing is planned.
QString held_words(const BallastPlan& piece, const Words& words);

/// The cautions that a piece and what holds it ask for.
std::vector<std::string> piece_cautions(const BallastPlan& piece);

} // namespace rampwright::ui::paper
