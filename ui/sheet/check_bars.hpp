#pragma once

#include "sheet/job.hpp"

namespace rampwright::ui::paper {

/// How high the two check bars stand, side by side with what to do about them, mm.
double check_bars_height(const Job& job);

/// Puts the bars, 100 mm across and 4 in up, at the bottom of the page's room where it is high enough for the
/// upright one, else one above the other at the flow's place.
void put_check_bars(Flow& flow, const Job& job);

} // namespace rampwright::ui::paper
