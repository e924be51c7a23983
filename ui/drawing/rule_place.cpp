#include "drawing/rule_place.hpp"

#include "look/theme.hpp"

#include <QPainter>

#include <algorithm>

namespace rampwright::ui {
namespace {

bool is_about_weights(std::string_view what) {
    return what == "lead" || what.ends_with("weights") || what == "magnets";
}

bool is_about_axles(std::string_view what) {
    return what.ends_with("axles") || what == "bearings";
}

bool is_about_wheels(std::string_view what) {
    return what.ends_with("wheels") || what == "coned_hubs" || what == "raised_wheel";
}

QRectF wheel_box(const CarShape& shape, std::size_t corner) {
    const CarShape::WheelShape& wheel = shape.wheels[corner];
    return QRectF(QPointF(wheel.centre.x() - wheel.radius, wheel.centre.z() - wheel.radius),
                  QSizeF(2 * wheel.radius, 2 * wheel.radius));
}

/// The wheels of the near side, or the raised ones.
QRectF wheels_box(const CarPlan& plan, const CarShape& shape, bool raised_only) {
    QRectF box;
    for (std::size_t corner = 0; corner < shape.wheels.size(); ++corner)
        if (!raised_only || !plan.wheels[corner].touches) box |= wheel_box(shape, corner);
    return box;
}

QRectF size_box(const CarShape& shape, View view) {
    const CarExtent extent = shape.extent();
    return QRectF(to_plane(view, extent.low), to_plane(view, extent.high)).normalized();
}

/// From the running surface up to the body between the axles.
QRectF clearance_box(const CarShape& shape) {
    const double rear = shape.axle_x[0], front = shape.axle_x[1];
    const double bottom = shape.wood[index(View::side)].boundingRect().top();
    const double ground = std::min(shape.ground_at(rear), shape.ground_at(front));
    return QRectF(QPointF(rear, ground), QPointF(front, bottom)).normalized();
}

/// Between the inner faces of the wheels, both axles.
QRectF inner_box(const CarShape& shape) {
    double half = shape.half_width;
    for (const CarShape::WheelShape& wheel : shape.wheels)
        half = std::max(half, std::abs(wheel.centre.y()) - wheel.width / 2);
    return {QPointF(shape.axle_x[0], -half), QPointF(shape.axle_x[1], half)};
}

QRectF axles_box(const CarShape& shape) {
    const double reach = shape.half_width + shape.head;
    const double half = std::max(shape.shank, 4e-3) / 2;
    return {QPointF(shape.axle_x[0] - half, -reach), QPointF(shape.axle_x[1] + half, reach)};
}

QRectF weights_box(const CarShape& shape) {
    QRectF box;
    for (const CarShape::BallastShape& piece : shape.ballast)
        box |= piece.outline[index(View::side)].boundingRect();
    return box;
}

/// The nose with the height it has over the running surface.
QRectF nose_box(const CarShape& shape) {
    const QRectF wood = shape.wood[index(View::side)].boundingRect();
    constexpr double depth = 12e-3;
    return QRectF(QPointF(wood.right() - depth, shape.ground_at(wood.right())),
                  QPointF(wood.right(), wood.bottom()))
        .normalized();
}

} // namespace

std::optional<PointedOut> find_rule_place(std::string_view code, const CarPlan& plan, const CarShape& shape,
                                          const Figures& figures) {
    const auto at = [&](View view, const QRectF& box) -> std::optional<PointedOut> {
        if (box.isNull()) return std::nullopt;
        return PointedOut{view, box, {}};
    };
    if (code == "max_mass_g") {
        const QPointF centre = to_plane(View::side, figures.centre);
        constexpr double around = 5e-3;
        return at(View::side, QRectF(centre - QPointF(around, around), QSizeF(2 * around, 2 * around)));
    }
    if (code == "max_length_mm") return at(View::side, size_box(shape, View::side));
    if (code == "max_width_mm") return at(View::top, size_box(shape, View::top));
    if (code == "max_height_mm") return at(View::front, size_box(shape, View::front));
    if (code == "min_ground_clearance_mm") return at(View::side, clearance_box(shape));
    if (code == "min_inner_width_mm") return at(View::top, inner_box(shape));
    if (code == "max_nose_height_mm") return at(View::side, nose_box(shape));
    if (code.starts_with("wheelbase")) {
        constexpr double around = 3e-3;
        return at(View::side,
                  QRectF(QPointF(shape.axle_x[0], shape.axle_z[0]), QPointF(shape.axle_x[1], shape.axle_z[1]))
                      .normalized()
                      .adjusted(0, -around, 0, around));
    }
    if (code.starts_with("wheel")) return at(View::side, wheels_box(plan, shape, false));
    if (!code.starts_with("allow/")) return std::nullopt;
    const std::string_view what = code.substr(6);
    if (is_about_weights(what)) return at(View::side, weights_box(shape));
    if (is_about_axles(what)) return at(View::top, axles_box(shape));
    if (is_about_wheels(what)) {
        const QRectF raised = what == "raised_wheel" ? wheels_box(plan, shape, true) : QRectF();
        return at(View::side, raised.isNull() ? wheels_box(plan, shape, false) : raised);
    }
    if (what == "start_device") return at(View::side, nose_box(shape));
    return std::nullopt;
}

void paint_pointed_out(QPainter& painter, const DrawingMap& map, const PointedOut& place) {
    const Theme& t = theme();
    constexpr double room = 5; // px around what is meant
    const QRectF box = map.transform(place.view).mapRect(place.box).adjusted(-room, -room, room, room);
    QPen pen(t.accent, 2);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(box, 4, 4);
    const QFont font = text_font(0.95, true);
    const QFontMetricsF metrics(font);
    const QSizeF size(metrics.horizontalAdvance(place.name) + 14, metrics.height() + 4);
    QPointF corner(box.center().x() - size.width() / 2, box.bottom() + 4);
    // Where the paper ends below, the name stands above.
    if (corner.y() + size.height() > map.paper().bottom()) corner.setY(box.top() - size.height() - 4);
    corner.setX(std::clamp(corner.x(), map.paper().left(),
                           std::max(map.paper().left(), map.paper().right() - size.width())));
    const QRectF label(corner, size);
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.accent);
    painter.drawRoundedRect(label, 4, 4);
    painter.setBrush(Qt::NoBrush);
    painter.setFont(font);
    painter.setPen(t.paper);
    painter.drawText(label, Qt::AlignCenter, place.name);
}

} // namespace rampwright::ui
