#pragma once

#include "drawing/car_shape.hpp"

#include <rampwright/project/edits.hpp>

#include <QMimeData>

#include <memory>
#include <optional>

/// A piece of the shelf on its way to the drawing, and where it comes to lie.
namespace rampwright::ui {

/// What a drag carries: the piece's place on the shelf.
std::unique_ptr<QMimeData> shelf_mime(std::size_t shelf);
std::optional<std::size_t> shelf_piece_in(const QMimeData* mime);

/// Where a piece that is let go at a pixel comes to lie.
///
/// On a pocket or bore it goes into it: within its sides where it fits, on its floor; a cylinder takes the
/// bore's direction. Elsewhere it stays under the hand, on the centre line where the view does not tell:
/// from above it lies on the wood. @param step the grid it keeps to, m; 0: none.
Placement place_piece(const ShelfPiece& piece, const CarPlan& plan, const CarShape& shape,
                      const DrawingMap& map, View view, const QPointF& pixel, double step);

/// The same without a mouse: into the car's last cut, or midway between the axles on the wood.
Placement place_piece_somewhere(const ShelfPiece& piece, const CarPlan& plan, const CarShape& shape);

/// Where a piece of the car that is dragged in a view comes to lie, and in which cut.
///
/// It stays in its cut as long as any of it does, so that what sticks out of it is told; over another cut it
/// lies in that one, and from above on its floor; wholly outside of every cut none holds it.
/// @param to where its middle is dragged to, m. @param shape the car's, wherever the piece is drawn by now.
Placement drag_piece(const CarPlan& plan, const CarShape& shape, std::size_t index, View view,
                     const Vec3& to);

/// The piece as it will be, for drawing it before it is there.
BallastPlan ghost_of(const ShelfPiece& piece, const Placement& placement);

} // namespace rampwright::ui
