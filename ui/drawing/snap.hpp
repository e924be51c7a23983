#pragma once

#include <rampwright/core/constants.hpp>
#include <rampwright/units/quantity.hpp>

#include <QLineF>
#include <Qt>

#include <cmath>

/// The grid that dragging and the arrow keys keep to: 1 mm, or 1/16 in.
namespace rampwright::ui {

constexpr double snap_step(UnitSystem units) {
    return units == UnitSystem::metric ? millimetre : inch / 16;
}

/// Whether the hand, its button down, has moved far enough to mean it. @param from, to px.
inline bool means_to_move(const QPointF& from, const QPointF& to) {
    constexpr double least = 3;
    return QLineF(from, to).length() >= least;
}

/// How far an arrow key goes: a step of the grid, ten with Shift, a fifth with Ctrl.
inline double nudge_step(UnitSystem units, Qt::KeyboardModifiers keys) {
    double step = snap_step(units);
    if (keys & Qt::ShiftModifier) step *= 10;
    if (keys & Qt::ControlModifier) step /= 5;
    return step;
}

/// `to` on the grid; a move of less than half a step stays exactly at `from`, on the grid or not.
inline double snapped(double from, double to, double step) {
    return std::abs(to - from) < step / 2 ? from : std::round(to / step) * step;
}

} // namespace rampwright::ui
