#include "drawing/paint_context.hpp"
#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace rampwright::ui {
namespace {

QColor faded(QColor color, int alpha) {
    color.setAlpha(alpha);
    return color;
}

/// Grain along x, at places that depend on the row alone: it must not crawl while the wood is dragged.
void paint_grain(QPainter& painter, const PaintContext& context, View view, const QPainterPath& wood) {
    if (view == View::front) return; // end grain is left plain
    painter.save();
    painter.setClipPath(wood, Qt::IntersectClip);
    painter.setPen(QPen(theme().grain, 1.0));
    const double step = 2.4e-3; // m between lines
    const double reach = view == View::side ? context.shape.height : context.shape.half_width;
    const QRectF box = context.shape.wood[index(view)].boundingRect();
    unsigned row = 17;
    for (double v = view == View::side ? 0.6e-3 : -reach + 0.9e-3; v < reach; v += step) {
        row = row * 1664525u + 1013904223u;
        const double wave = 0.25e-3 + 1e-6 * ((row >> 16) % 500);
        QPainterPath line;
        line.moveTo(context.map.plane_to_pixel(view, {box.left(), v}));
        for (int i = 0; i < 3; ++i) {
            const double u = box.left() + box.width() * i / 3, next = box.left() + box.width() * (i + 1) / 3;
            line.cubicTo(context.map.plane_to_pixel(view, {u + (next - u) / 3, v + wave}),
                         context.map.plane_to_pixel(view, {u + (next - u) * 2 / 3, v - wave}),
                         context.map.plane_to_pixel(view, {next, v}));
        }
        painter.drawPath(line);
    }
    painter.restore();
}

void paint_wood(QPainter& painter, const PaintContext& context, View view) {
    const QPainterPath wood = context.map.transform(view).map(context.shape.wood[index(view)]);
    const bool see_through = context.see_through[index(view)];
    if (!see_through) {
        painter.fillPath(wood, theme().wood);
        paint_grain(painter, context, view, wood);
    }
    for (const auto& cut : context.shape.cuts) {
        const QPainterPath outline = context.map.transform(view).map(cut.outline[index(view)]);
        const bool open = cut.open[index(view)];
        painter.fillPath(outline.intersected(wood), faded(theme().cavity, see_through ? 60
                                                                          : open      ? 255
                                                                                      : 120));
        painter.save();
        painter.setClipPath(wood, Qt::IntersectClip);
        painter.setPen(open ? thin_pen(theme().wood_ink) : hidden_pen(theme().wood_ink));
        painter.drawPath(outline);
        painter.restore();
    }
    painter.setPen(outline_pen(theme().wood_ink));
    painter.drawPath(wood);
}

/// The wheel as seen along its axle.
void paint_wheel_face(QPainter& painter, const PaintContext& context, const CarShape::WheelShape& wheel,
                      bool near) {
    const QPointF centre = context.map.to_pixel(View::side, wheel.centre);
    const double radius = wheel.radius * context.map.pixels_per_metre();
    const Theme& t = theme();
    painter.setBrush(near ? faded(t.wheel, t.appearance == Appearance::dark ? 190 : 60)
                          : QBrush(Qt::NoBrush));
    painter.setPen(near ? outline_pen(t.wheel_ink, 1.8) : hidden_pen(t.faint_ink));
    painter.drawEllipse(centre, radius, radius);
    painter.setBrush(Qt::NoBrush);
    if (!near) return;
    painter.setPen(thin_pen(faded(t.wheel_ink, 150)));
    for (const double ring : {wheel.tread_inner, wheel.hub})
        painter.drawEllipse(centre, ring * context.map.pixels_per_metre(),
                            ring * context.map.pixels_per_metre());
    painter.setBrush(t.axle);
    painter.setPen(thin_pen(t.wheel_ink));
    const double head = std::max(context.shape.head / 2 * context.map.pixels_per_metre(), 2.0);
    painter.drawEllipse(centre, head, head);
    painter.setBrush(Qt::NoBrush);
}

/// The wheel as seen square to its axle, from above or from the front.
void paint_wheel_tread(QPainter& painter, const PaintContext& context, View view,
                       const CarShape::WheelShape& wheel) {
    const Vec3 reach(wheel.radius, wheel.width / 2, wheel.radius);
    const QRectF box = QRectF(context.map.to_pixel(view, wheel.centre - reach),
                              context.map.to_pixel(view, wheel.centre + reach))
                           .normalized();
    const Theme& t = theme();
    const double round = 0.8e-3 * context.map.pixels_per_metre();
    painter.setBrush(faded(t.wheel, t.appearance == Appearance::dark ? 255 : 205));
    painter.setPen(outline_pen(t.wheel_ink, 1.4));
    painter.drawRoundedRect(box, round, round);
    painter.setBrush(Qt::NoBrush);
}

/// Shank and head of each wheel's own axle.
void paint_axles(QPainter& painter, const PaintContext& context, View view) {
    const auto& shape = context.shape;
    const Theme& t = theme();
    for (const auto& wheel : shape.wheels) {
        const double out = is_left(wheel.corner) ? 1 : -1;
        Vec3 under_head = wheel.centre + Vec3(0, out * (wheel.width / 2 + 0.3e-3), 0);
        Vec3 tip = under_head - Vec3(0, out * shape.axle_length, 0);
        const Vec3 half(shape.shank / 2, 0, shape.shank / 2), head_half(shape.head / 2, 0, shape.head / 2);
        const Vec3 head_end = under_head + Vec3(0, out * 1.2e-3, 0);
        const auto box = [&](const Vec3& a, const Vec3& b) {
            return QRectF(context.map.to_pixel(view, a), context.map.to_pixel(view, b)).normalized();
        };
        painter.setBrush(faded(t.axle, 90));
        painter.setPen(hidden_pen(t.wood_ink));
        painter.drawRect(box(tip - half, under_head + half));
        painter.setBrush(t.axle);
        painter.setPen(thin_pen(t.wheel_ink));
        painter.drawRect(box(under_head - head_half, head_end + head_half));
        painter.setBrush(Qt::NoBrush);
    }
}

void paint_ballast(QPainter& painter, const PaintContext& context, View view) {
    const Theme& t = theme();
    for (std::size_t i = 0; i < context.shape.ballast.size(); ++i) {
        const QPainterPath outline =
            context.map.transform(view).map(context.shape.ballast[i].outline[index(view)]);
        painter.fillPath(outline, t.metal);
        painter.setPen(outline_pen(t.metal_ink, 1.3));
        painter.drawPath(outline);
        const Target piece{TargetKind::piece, i, 0};
        const bool selected = context.is_selected(piece), hovered = context.hovered == piece;
        if (selected || hovered) {
            QPen pen(t.accent, selected ? 2.4 : 1.6);
            pen.setJoinStyle(Qt::MiterJoin);
            painter.setPen(pen);
            painter.drawPath(outline);
        }
        if (context.plan.ballast[i].fixed) {
            // A locked piece carries a pin, so that colour alone need not say it.
            const QPointF centre = context.map.to_pixel(view, context.shape.ballast[i].at);
            painter.setPen(outline_pen(t.paper, 1.6));
            painter.drawLine(centre - QPointF(3, 3), centre + QPointF(3, 3));
            painter.drawLine(centre - QPointF(3, -3), centre + QPointF(3, -3));
        }
    }
}

void paint_ground(QPainter& painter, const PaintContext& context, View view) {
    const Theme& t = theme();
    const auto& shape = context.shape;
    const CarExtent extent = shape.extent();
    QPointF a, b;
    if (view == View::side) {
        const double left = extent.low.x() - 6e-3, right = extent.high.x() + 6e-3;
        a = context.map.plane_to_pixel(view, {left, shape.ground_at(left)});
        b = context.map.plane_to_pixel(view, {right, shape.ground_at(right)});
    } else {
        const double z = shape.ground[1].y();
        a = context.map.plane_to_pixel(view, {extent.low.y() - 3e-3, z});
        b = context.map.plane_to_pixel(view, {extent.high.y() + 3e-3, z});
    }
    painter.setPen(outline_pen(t.ink, 1.4));
    painter.drawLine(a, b);
    painter.setPen(thin_pen(faded(t.faint_ink, 130)));
    const int strokes = static_cast<int>((b.x() - a.x()) / 9);
    for (int i = 0; i < strokes; ++i) {
        const QPointF at = a + (b - a) * (i + 0.7) / strokes;
        painter.drawLine(at, at + QPointF(-5, 5));
    }
}

} // namespace

void paint_car(QPainter& painter, const PaintContext& context, View view) {
    const auto& wheels = context.shape.wheels;
    const auto wheel = [&](Corner corner) -> const CarShape::WheelShape& {
        return wheels[static_cast<std::size_t>(corner)];
    };
    if (view != View::top) paint_ground(painter, context, view);
    switch (view) {
    case View::side:
        paint_wood(painter, context, view);
        paint_ballast(painter, context, view);
        // The view is from the car's right: its left wheels are hidden.
        for (const Corner corner : {Corner::rear_left, Corner::front_left})
            paint_wheel_face(painter, context, wheel(corner), false);
        for (const Corner corner : {Corner::rear_right, Corner::front_right})
            paint_wheel_face(painter, context, wheel(corner), true);
        break;
    case View::top:
        paint_wood(painter, context, view);
        paint_axles(painter, context, view);
        paint_ballast(painter, context, view);
        for (const auto& each : wheels)
            paint_wheel_tread(painter, context, view, each);
        break;
    case View::front:
        for (const Corner corner : {Corner::rear_left, Corner::rear_right})
            paint_wheel_tread(painter, context, view, wheel(corner));
        paint_wood(painter, context, view);
        paint_ballast(painter, context, view);
        for (const Corner corner : {Corner::front_left, Corner::front_right})
            paint_wheel_tread(painter, context, view, wheel(corner));
        break;
    }
}

} // namespace rampwright::ui
