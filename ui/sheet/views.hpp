#pragma once

#include "sheet/callouts.hpp"
#include "sheet/car_drawing.hpp"
#include "sheet/job.hpp"

#include <functional>

namespace rampwright::ui::paper {

/// Side view and, below it as in first-angle projection (ISO 5456-2), top view at one scale, with room for
/// what is written around them.
struct TwoViews {
    double side_strip = 0; ///< mm kept free at the right
    double most_scale = 1; ///< page mm per model mm, at most
    double size = 1;       ///< of what there is room for
    bool wheels = false, ballast = false, centre = false, block = false, length = false;
    /// Adds words around a view: above it, below it and at its right.
    std::function<void(const Placement&, Callouts& above, Callouts& below, Callouts& right)> say;
};

/// Draws the two views at the flow's place, as large as the page is wide.
/// @return the scale, page mm per model mm.
double put_two_views(Flow& flow, const Job& job, const TwoViews& views);

} // namespace rampwright::ui::paper
