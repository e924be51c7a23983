#pragma once

#include <rampwright/core/constants.hpp>
#include <rampwright/units/quantity.hpp>

#include <cmath>

/// The grid that dragging and the arrow keys keep to: 1 mm, or 1/16 in.
namespace rampwright::ui {

constexpr double snap_step(UnitSystem units) {
    return units == UnitSystem::metric ? millimetre : inch / 16;
}

/// `to` on the grid; a move of less than half a step stays exactly at `from`, on the grid or not.
inline double snapped(double from, double to, double step) {
    return std::abs(to - from) < step / 2 ? from : std::round(to / step) * step;
}

} // namespace rampwright::ui
