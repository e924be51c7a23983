#pragma once

#include "drawing/car_shape.hpp"
#include "sheet/flow.hpp"

#include <rampwright/templates/line_work.hpp>

namespace rampwright::ui::paper {

/// Where a view of the car stands on a page.
struct Placement {
    View view = View::side;
    QPointF origin;   ///< page, mm, of the view's plane point (0, 0)
    double scale = 1; ///< page mm per model mm
    std::optional<QRectF> clip;

    /// @param plane across and up, m.
    QPointF at(const QPointF& plane) const { return origin + QPointF(plane.x(), -plane.y()) * (1e3 * scale); }
    QPointF at(const Vec3& car) const { return at(to_plane(view, car)); }
    QPainterPath on_page(const QPainterPath& plane) const;
};

/// The view's box on the plane: the block, and wood that a plan puts outside of it; m, y upward.
QRectF block_box(View view, const CarPlan& plan, const CarShape& shape);

/// The block before it is sawn, as a phantom.
void draw_block(Flow& flow, const Placement& placed, const CarPlan& plan);
/// A light tint of the wood, below everything else.
void draw_tint(Flow& flow, const Placement& placed, const CarShape& shape);
/// The core's lines of the body: outline, cuts and holes (hidden ones dashed), centre lines.
void draw_body(Flow& flow, const Placement& placed, const LineWork& lines);
/// Pieces of ballast, light grey.
void draw_ballast(Flow& flow, const Placement& placed, const CarShape& shape);
void draw_wheels(Flow& flow, const Placement& placed, const CarShape& shape);
/// The quartered circle of a centre of mass.
void draw_centre(Flow& flow, QPointF at, double radius);
/// A dimension line with arrowheads and its text above the middle (ISO 129-1).
void draw_dimension(Flow& flow, double from_x, double to_x, double y, const QString& text);

} // namespace rampwright::ui::paper
