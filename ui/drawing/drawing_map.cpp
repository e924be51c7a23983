#include "drawing/drawing_map.hpp"

#include <algorithm>

namespace rampwright::ui {

std::array<int, 2> axes_of(View view) {
    switch (view) {
    case View::side:
        return {0, 2};
    case View::top:
        return {0, 1};
    case View::front:
        break;
    }
    return {1, 2};
}

QPointF to_plane(View view, const Vec3& at) {
    const auto axes = axes_of(view);
    return {at[axes[0]], at[axes[1]]};
}

Vec3 from_plane(View view, const QPointF& plane, const Vec3& depth) {
    const auto axes = axes_of(view);
    Vec3 at = depth;
    at[axes[0]] = plane.x();
    at[axes[1]] = plane.y();
    return at;
}

DrawingMap DrawingMap::fit(const QRectF& paper, const CarExtent& extent, double zoom, QPointF pan) {
    using namespace sheet;
    const Vec3 size = (extent.high - extent.low).cwiseMax(1e-3);
    const double fixed_width = ruler + 2 * edge + column_gap;
    const double fixed_height = ruler + above + below + beneath;
    DrawingMap map;
    map.paper_ = paper;
    const double natural = std::min((paper.width() - fixed_width) / (size.x() + size.y()),
                                    (paper.height() - fixed_height) / (size.y() + size.z()));
    const double fitted = std::max(natural, 100.0);

    // At the fitted scale, left over room is shared between both sides.
    const double spare_x = paper.width() - fixed_width - fitted * (size.x() + size.y());
    const double spare_y = paper.height() - fixed_height - fitted * (size.y() + size.z());
    const double left = paper.left() + ruler + edge + std::max(0.0, spare_x) * 0.4;
    const double up = paper.top() + ruler + above + std::max(0.0, spare_y) * 0.35;
    const double side_left = left + fitted * size.y() + column_gap + std::max(0.0, spare_x) * 0.2;
    const double top_up = up + fitted * size.z() + below + std::max(0.0, spare_y) * 0.3;

    const QPointF middle = paper.center();
    const auto place = [&](double x, double y) { return middle + (QPointF(x, y) - middle) * zoom + pan; };
    map.scale_ = fitted * zoom;
    const double s = map.scale_;
    const QPointF side = place(side_left, up), top = place(side_left, top_up), front = place(left, up);
    map.origins_[index(View::side)] = {side.x() - s * extent.low.x(), side.y() + s * extent.high.z()};
    map.origins_[index(View::top)] = {top.x() - s * extent.low.x(), top.y() + s * extent.high.y()};
    map.origins_[index(View::front)] = {front.x() - s * extent.low.y(), front.y() + s * extent.high.z()};

    const double column = (front.x() + s * size.y() + side.x()) / 2;
    const double side_bottom = side.y() + s * size.z();
    const double row = side_bottom + (top.y() - side_bottom) * 0.9; // the scale pan hangs below the side view
    map.frames_[index(View::side)] = QRectF(QPointF(column, paper.top()), QPointF(paper.right(), row));
    map.frames_[index(View::top)] = QRectF(QPointF(column, row), paper.bottomRight());
    map.frames_[index(View::front)] = QRectF(paper.topLeft(), QPointF(column, row));
    return map;
}

QPointF DrawingMap::plane_to_pixel(View view, const QPointF& plane) const {
    const QPointF& origin = origins_[index(view)];
    return {origin.x() + scale_ * plane.x(), origin.y() - scale_ * plane.y()};
}

QPointF DrawingMap::to_plane_point(View view, const QPointF& pixel) const {
    const QPointF& origin = origins_[index(view)];
    return {(pixel.x() - origin.x()) / scale_, (origin.y() - pixel.y()) / scale_};
}

QPointF DrawingMap::to_pixel(View view, const Vec3& at) const {
    return plane_to_pixel(view, to_plane(view, at));
}

Vec3 DrawingMap::to_model(View view, const QPointF& pixel, const Vec3& depth) const {
    return from_plane(view, to_plane_point(view, pixel), depth);
}

QTransform DrawingMap::transform(View view) const {
    const QPointF& origin = origins_[index(view)];
    return {scale_, 0, 0, -scale_, origin.x(), origin.y()};
}

std::optional<View> DrawingMap::view_at(const QPointF& pixel) const {
    for (const View view : all_views)
        if (frame(view).contains(pixel)) return view;
    return std::nullopt;
}

} // namespace rampwright::ui
