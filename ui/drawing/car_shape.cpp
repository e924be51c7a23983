#include "drawing/car_shape.hpp"

#include "drawing/outline.hpp"

#include <rampwright/car/wheel_profile.hpp>

#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr double hair = 1e-6; ///< m: closer than this counts as touching

QRectF rectangle(QPointF a, QPointF b) {
    return QRectF(a, b).normalized();
}

QPainterPath circle(QPointF centre, double radius) {
    QPainterPath path;
    path.addEllipse(centre, radius, radius);
    return path;
}

/// Box or upright prism of a footprint, seen in a view; `turned` about z.
QPainterPath box_path(View view, const Vec3& at, const Vec3& size, double turned) {
    QPainterPath path;
    const double c = std::cos(turned), s = std::sin(turned);
    if (view == View::top) {
        QPolygonF corners;
        for (const auto& [u, v] : {std::pair{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
            const double x = u * size.x() / 2, y = v * size.y() / 2;
            corners << QPointF(at.x() + c * x - s * y, at.y() + s * x + c * y);
        }
        path.addPolygon(corners);
        path.closeSubpath();
        return path;
    }
    const double across = view == View::side ? std::abs(c) * size.x() + std::abs(s) * size.y()
                                             : std::abs(s) * size.x() + std::abs(c) * size.y();
    const QPointF centre = to_plane(view, at);
    path.addRect(QRectF(centre.x() - across / 2, centre.y() - size.z() / 2, across, size.z()));
    return path;
}

QPainterPath bore_path(View view, const CutPlan& cut) {
    const QPointF a = to_plane(view, cut.from), b = to_plane(view, cut.to);
    const QPointF along = b - a;
    const double length = std::hypot(along.x(), along.y()), radius = cut.diameter / 2;
    if (length < hair) return circle(a, radius);
    const QPointF unit = along / length, side(-unit.y() * radius, unit.x() * radius);
    QPolygonF corners;
    corners << a + side << b + side;
    // A drill's point of 118 degrees reaches (d/2) / tan 59° further.
    if (cut.pointed) corners << b + unit * (radius / std::tan(59 * std::numbers::pi / 180));
    corners << b - side << a - side;
    QPainterPath path;
    path.addPolygon(corners);
    path.closeSubpath();
    return path;
}

QPainterPath cut_path(View view, const CutPlan& cut) {
    if (cut.is_bore) return bore_path(view, cut);
    QPainterPath path;
    path.addRect(rectangle(to_plane(view, cut.from), to_plane(view, cut.to)));
    return path;
}

/// Whether a cut breaks through the face that each view looks at: top, right-hand side, nose.
std::array<bool, 3> open_faces(const CutPlan& cut, const CarShape& shape) {
    const double reach = cut.is_bore ? cut.diameter / 2 : 0;
    const Vec3 low = cut.from.cwiseMin(cut.to), high = cut.from.cwiseMax(cut.to);
    const double x = (low.x() + high.x()) / 2;
    const auto along = [&](int axis) {
        return cut.is_bore && std::abs(cut.to[axis] - cut.from[axis]) < hair ? reach : 0.0;
    };
    std::array<bool, 3> open{};
    open[index(View::top)] = high.z() + along(2) >= span_at(shape.wood[index(View::side)], x).second - hair;
    open[index(View::side)] = low.y() - along(1) <= span_at(shape.wood[index(View::top)], x).first + hair;
    open[index(View::front)] =
        high.x() + along(0) >= shape.wood[index(View::side)].boundingRect().right() - hair;
    return open;
}

} // namespace

QPainterPath piece_outline(View view, const BallastPlan& piece) {
    const auto size = [&](std::size_t i) { return i < piece.size.size() ? piece.size[i] : 0.0; };
    switch (piece.shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        return box_path(view, piece.at, {size(0), size(1), size(2)}, piece.turned);
    case PieceShape::sphere:
        return circle(to_plane(view, piece.at), size(0) / 2);
    case PieceShape::cylinder: {
        const auto axes = axes_of(view);
        const bool end_on = axes[0] != piece.axis && axes[1] != piece.axis &&
                            (piece.axis == 2 || std::abs(std::sin(piece.turned)) < 1e-9);
        if (end_on) return circle(to_plane(view, piece.at), size(0) / 2);
        Vec3 box = Vec3::Constant(size(0));
        box[piece.axis] = size(1);
        return box_path(view, piece.at, box, piece.axis == 2 ? 0 : piece.turned);
    }
    case PieceShape::putty:
        break;
    }
    return {};
}

CarShape make_car_shape(const CarPlan& plan) {
    CarShape shape;
    const Vec3& block = plan.body.block;
    auto& side = shape.wood[index(View::side)];
    auto& top = shape.wood[index(View::top)];
    side = outline_path(plan.body.profile, block.x(), 0, block.z());
    top = outline_path(plan.body.plan, block.x(), -block.y() / 2, block.y() / 2);
    const QRectF side_box = side.boundingRect(), top_box = top.boundingRect();
    shape.height = side_box.bottom();
    shape.half_width = std::max(-top_box.top(), top_box.bottom());
    shape.wood[index(View::front)].addRoundedRect(
        QRectF(QPointF(top_box.top(), side_box.top()), QPointF(top_box.bottom(), side_box.bottom())),
        plan.body.edge_radius, plan.body.edge_radius);

    shape.axle_x = {plan.axles.rear_x, plan.axles.front_x};
    shape.axle_z = {plan.axles.rear_z, plan.axles.front_z};
    shape.shank = plan.axles.shank_diameter;
    shape.head = plan.axles.head_diameter;
    shape.axle_length = plan.axles.length;
    for (const Corner corner : all_corners) {
        const auto& wheel = plan.wheels[static_cast<std::size_t>(corner)];
        const std::size_t end = is_front(corner);
        CarShape::WheelShape drawn;
        drawn.corner = corner;
        drawn.radius = wheel.outer_diameter / 2;
        drawn.width = wheel.width;
        drawn.bore = wheel.bore_diameter;
        const WheelProfile profile = profile_of(wheel);
        drawn.tread_inner = profile.outer_diameter / 2 - profile.tread_thickness;
        drawn.hub = profile.hub_diameter / 2;
        drawn.touches = wheel.touches;
        const auto [right, left] = span_at(top, shape.axle_x[end]);
        const double out = wheel.gap_to_body + wheel.width / 2;
        drawn.centre = {shape.axle_x[end], is_left(corner) ? left + out : right - out, shape.axle_z[end]};
        shape.wheels[static_cast<std::size_t>(corner)] = drawn;
    }
    for (const std::size_t end : {0, 1}) {
        double radius = 0;
        for (const auto& wheel : shape.wheels)
            if (is_front(wheel.corner) == (end == 1) && wheel.touches)
                radius = std::max(radius, wheel.radius);
        shape.ground[end] = {shape.axle_x[end], shape.axle_z[end] - radius};
    }
    for (auto& wheel : shape.wheels) {
        if (wheel.touches) continue;
        const double gap = plan.wheels[static_cast<std::size_t>(wheel.corner)].raised;
        wheel.centre.z() = shape.ground_at(wheel.centre.x()) + wheel.radius + gap;
    }

    for (const auto& cut : plan.body.cuts) {
        CarShape::CutShape drawn;
        drawn.name = cut.name;
        for (const View view : all_views)
            drawn.outline[index(view)] = cut_path(view, cut);
        drawn.open = open_faces(cut, shape);
        shape.cuts.push_back(std::move(drawn));
    }
    for (const auto& piece : plan.ballast) {
        CarShape::BallastShape drawn;
        drawn.at = piece.at;
        drawn.movable = !piece.fixed && piece.shape != PieceShape::putty;
        const auto holder = find_cut(plan.body.cuts, piece.in);
        for (const View view : all_views)
            drawn.outline[index(view)] = piece.shape != PieceShape::putty ? piece_outline(view, piece)
                                         : holder ? cut_path(view, plan.body.cuts[*holder])
                                                  : QPainterPath();
        shape.ballast.push_back(std::move(drawn));
    }
    return shape;
}

CarExtent CarShape::extent() const {
    CarExtent extent;
    const QRectF side = wood[index(View::side)].boundingRect();
    extent.low = {side.left(), -half_width, side.top()};
    extent.high = {side.right(), half_width, side.bottom()};
    for (const auto& wheel : wheels) {
        const Vec3 reach(wheel.radius, wheel.width / 2, wheel.radius);
        extent.low = extent.low.cwiseMin(wheel.centre - reach);
        extent.high = extent.high.cwiseMax(wheel.centre + reach);
    }
    return extent;
}

double CarShape::ground_at(double x) const {
    const double run = ground[1].x() - ground[0].x();
    if (std::abs(run) < hair) return ground[0].y();
    return ground[0].y() + (ground[1].y() - ground[0].y()) * (x - ground[0].x()) / run;
}

} // namespace rampwright::ui
