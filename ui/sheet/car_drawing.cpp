#include "sheet/car_drawing.hpp"

namespace rampwright::ui::paper {
namespace {

void add(Flow& flow, const Placement& placed, const QPainterPath& plane, double width, Stroke stroke,
         std::optional<double> fill = {}) {
    QPainterPath path = placed.on_page(plane);
    if (placed.clip) {
        // What another part of a split drawing shows is left out; the rectangle of a level line has no area.
        const QRectF box = path.boundingRect(), &clip = *placed.clip;
        if (box.right() < clip.left() || box.left() > clip.right() || box.bottom() < clip.top() ||
            box.top() > clip.bottom())
            return;
    }
    flow.page().ink.push_back(PathInk{std::move(path), width, stroke, fill, placed.clip});
}

QPainterPath plane_path(const LinePath& line) {
    const auto point = [](const Vec2& at) { return QPointF(at.x(), at.y()); };
    QPainterPath path;
    if (line.circle) path.addEllipse(point(line.circle->centre), line.circle->radius, line.circle->radius);
    for (const rampwright::Stroke& stroke : line.strokes) {
        if (path.isEmpty()) path.moveTo(point(stroke.control[0]));
        if (stroke.straight)
            path.lineTo(point(stroke.control[3]));
        else
            path.cubicTo(point(stroke.control[1]), point(stroke.control[2]), point(stroke.control[3]));
    }
    if (line.closed) path.closeSubpath();
    return path;
}

} // namespace

QPainterPath Placement::on_page(const QPainterPath& plane) const {
    const double k = 1e3 * scale;
    return QTransform(k, 0, 0, -k, origin.x(), origin.y()).map(plane);
}

QRectF block_box(View view, const CarPlan& plan, const CarShape& shape) {
    const Vec3& block = plan.body.block;
    const QRectF box = view == View::side  ? QRectF(0, 0, block.x(), block.z())
                       : view == View::top ? QRectF(0, -block.y() / 2, block.x(), block.y())
                                           : QRectF(-block.y() / 2, 0, block.y(), block.z());
    return box.united(shape.wood[index(view)].boundingRect());
}

void draw_block(Flow& flow, const Placement& placed, const CarPlan& plan) {
    const Vec3& block = plan.body.block;
    QPainterPath path;
    path.addRect(placed.view == View::side ? QRectF(0, 0, block.x(), block.z())
                                           : QRectF(0, -block.y() / 2, block.x(), block.y()));
    add(flow, placed, path, 0.18, Stroke::phantom);
}

void draw_tint(Flow& flow, const Placement& placed, const CarShape& shape) {
    add(flow, placed, shape.wood[index(placed.view)], 0, Stroke::solid, 0.96);
}

void draw_body(Flow& flow, const Placement& placed, const LineWork& lines) {
    for (const LinePath& path : lines.paths) {
        switch (path.role) {
        case LineRole::outline:
            add(flow, placed, plane_path(path), 0.35, Stroke::solid);
            break;
        case LineRole::cut:
        case LineRole::hole:
            add(flow, placed, plane_path(path), 0.22, path.hidden ? Stroke::hidden : Stroke::solid);
            break;
        case LineRole::centre:
            add(flow, placed, plane_path(path), 0.15, Stroke::centre);
            break;
        case LineRole::ballast:
            break;
        }
    }
}

void draw_ballast(Flow& flow, const Placement& placed, const CarShape& shape) {
    for (const CarShape::BallastShape& piece : shape.ballast)
        add(flow, placed, piece.outline[index(placed.view)], 0.3, Stroke::solid, 0.82);
}

void draw_wheels(Flow& flow, const Placement& placed, const CarShape& shape) {
    for (const CarShape::WheelShape& wheel : shape.wheels) {
        // In the side view the wheels of the far side lie behind the near ones.
        if (placed.view == View::side && is_left(wheel.corner)) continue;
        QPainterPath path;
        const QPointF centre = to_plane(placed.view, wheel.centre);
        if (placed.view == View::side)
            path.addEllipse(centre, wheel.radius, wheel.radius);
        else
            path.addRect(QRectF(centre.x() - wheel.radius, centre.y() - wheel.width / 2, 2 * wheel.radius,
                                wheel.width));
        add(flow, placed, path, 0.2, Stroke::solid);
    }
}

void draw_centre(Flow& flow, QPointF at, double radius) {
    QPainterPath ring;
    ring.addEllipse(at, radius, radius);
    flow.fill(ring, 1, 0.25);
    for (const double from : {0.0, 180.0}) {
        QPainterPath quarter(at);
        quarter.arcTo(QRectF(at.x() - radius, at.y() - radius, 2 * radius, 2 * radius), from, 90);
        quarter.closeSubpath();
        flow.fill(quarter, 0, 0);
    }
}

void draw_dimension(Flow& flow, double from_x, double to_x, double y, const QString& text) {
    constexpr TextStyle style{8, true};
    flow.line({from_x, y}, {to_x, y}, 0.15);
    for (const auto& [x, inward] : {std::pair{from_x, 1.0}, {to_x, -1.0}}) {
        QPainterPath head(QPointF(x, y));
        head.lineTo(x + inward * 2.6, y - 0.45);
        head.lineTo(x + inward * 2.6, y + 0.45);
        head.closeSubpath();
        flow.fill(head, 0, 0);
        flow.line({x, y - 4}, {x, y + 1.5}, 0.13);
    }
    flow.put({(from_x + to_x) / 2, y + ascent_of(style) + 0.8}, text, style, Align::middle, true);
}

} // namespace rampwright::ui::paper
