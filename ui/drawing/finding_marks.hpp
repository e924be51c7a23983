#pragma once

#include "drawing/paint_context.hpp"

#include <QPointF>

#include <vector>

namespace rampwright::ui {

/// A finding's place on the paper. `number` is its place in the list, from 1: the same in both.
struct FindingMark {
    QPointF at;
    std::size_t number = 1;
    Severity severity = Severity::note;
    View view = View::side;
};

/// The marks of all findings that have a place, in the side and the top view.
std::vector<FindingMark> finding_marks(const PaintContext& context);

inline constexpr double finding_mark_radius = 9;

/// A note is a circle, a warning a triangle, a breach a square on its corner; each with its number.
void paint_finding_mark(QPainter& painter, QPointF at, std::size_t number, Severity severity, bool chosen);

} // namespace rampwright::ui
