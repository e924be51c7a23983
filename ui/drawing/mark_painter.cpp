#include "drawing/finding_marks.hpp"
#include "drawing/paint_context.hpp"
#include "drawing/pens.hpp"
#include "drawing/rule_place.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

struct MarkText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Marks)
};

/// The quartered circle that marks a centre of mass.
void paint_centre_of_mass(QPainter& painter, QPointF at, double radius) {
    const Theme& t = theme();
    painter.setPen(outline_pen(t.ink, 1.4));
    painter.setBrush(t.paper);
    painter.drawEllipse(at, radius, radius);
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.ink);
    const QRectF box(at - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
    painter.drawPie(box, 0, 90 * 16);
    painter.drawPie(box, 180 * 16, 90 * 16);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(thin_pen(t.ink));
    painter.drawLine(at - QPointF(radius + 4, 0), at + QPointF(radius + 4, 0));
    painter.drawLine(at - QPointF(0, radius + 4), at + QPointF(0, radius + 4));
}

void paint_arrow(QPainter& painter, QPointF tip, QPointF direction) {
    const QPointF across(-direction.y(), direction.x());
    painter.drawPolygon(
        QPolygonF{tip, tip - direction * 9 + across * 2.6, tip - direction * 9 - across * 2.6});
}

/// Words over the drawing, on a patch of paper so that lines do not run through them.
void paint_words(QPainter& painter, QPointF middle, const QString& words, const QFont& font,
                 const QColor& color) {
    const QFontMetricsF metrics(font);
    const QRectF box(middle.x() - metrics.horizontalAdvance(words) / 2, middle.y() - metrics.height() / 2,
                     metrics.horizontalAdvance(words), metrics.height());
    QColor paper = theme().paper;
    paper.setAlpha(225);
    painter.fillRect(box.adjusted(-3, -1, 3, 1), paper);
    painter.setFont(font);
    painter.setPen(color);
    painter.drawText(box, Qt::AlignCenter, words);
}

/// From the rear axle to the balance point, above the side view.
void paint_balance(QPainter& painter, const PaintContext& context) {
    const Theme& t = theme();
    const auto& figures = *context.figures;
    const Vec3 centre = figures.centre;
    const CarExtent extent = context.shape.extent();
    const double line_y = context.map.to_pixel(View::side, extent.high).y() - 20;
    const QPointF axle =
        context.map.plane_to_pixel(View::side, {context.shape.axle_x[0], context.shape.axle_z[0]});
    const double at =
        context.map
            .plane_to_pixel(View::side, {context.shape.axle_x[0] + figures.balance_ahead_of_rear_axle, 0})
            .x();
    const QPointF mass = context.map.to_pixel(View::side, centre);
    const QPointF ground =
        context.map.plane_to_pixel(View::side, {centre.x(), context.shape.ground_at(centre.x())});

    painter.setPen(centre_pen(t.ink));
    painter.drawLine(mass, ground);
    painter.setPen(thin_pen(t.faint_ink));
    painter.drawLine(QPointF(axle.x(), axle.y() - 4), QPointF(axle.x(), line_y - 6));
    painter.drawLine(QPointF(at, mass.y() - 12), QPointF(at, line_y - 6));
    painter.setPen(thin_pen(t.ink));
    painter.drawLine(QPointF(axle.x(), line_y), QPointF(at, line_y));
    painter.setBrush(t.ink);
    painter.setPen(Qt::NoPen);
    const double way = at >= axle.x() ? 1 : -1;
    if (std::abs(at - axle.x()) > 22) {
        paint_arrow(painter, {axle.x(), line_y}, {-way, 0});
        paint_arrow(painter, {at, line_y}, {way, 0});
    }
    painter.setBrush(Qt::NoBrush);
    const QFont font = text_font(1.0, true);
    const QString words =
        quantity_text(figures.balance_ahead_of_rear_axle, Quantity::length, context.project.units);
    const double half = QFontMetricsF(font).horizontalAdvance(words) / 2;
    paint_words(
        painter,
        {std::max((axle.x() + at) / 2, context.map.paper().left() + sheet::ruler + half), line_y - 12}, words,
        font, t.ink);

    // A small nick on the ground, where a knife edge would carry the car.
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.ink);
    painter.drawPolygon(QPolygonF{ground, ground + QPointF(-5, 9), ground + QPointF(5, 9)});
    painter.setBrush(Qt::NoBrush);
}

/// What a balance under the front wheels would show.
void paint_scale_pan(QPainter& painter, const PaintContext& context) {
    const Theme& t = theme();
    const auto& figures = *context.figures;
    const QPointF foot =
        context.map.plane_to_pixel(View::side, {context.shape.ground[1].x(), context.shape.ground[1].y()});
    const QString words = quantity_text(figures.front_load, Quantity::mass, context.project.units);
    const QFont font = text_font(1.1, true), small = text_font(0.85);
    const QFontMetricsF metrics(font), small_metrics(small);
    const double width = std::max(metrics.horizontalAdvance(words) + 26, 78.0);
    QRectF pan(foot.x() - width * 0.36, foot.y() + 1, width * 0.72, 4);
    QRectF body(foot.x() - width / 2, foot.y() + 10, width, metrics.height() + 8);
    painter.setPen(thin_pen(t.ink));
    painter.setBrush(t.axle);
    painter.drawRoundedRect(pan, 2, 2);
    painter.drawRect(QRectF(foot.x() - 3, pan.bottom(), 6, body.top() - pan.bottom()));
    painter.setBrush(t.paper);
    painter.setPen(outline_pen(t.ink, 1.3));
    painter.drawRoundedRect(body, 4, 4);
    painter.setFont(font);
    painter.setPen(t.ink);
    painter.drawText(body, Qt::AlignCenter, words);
    painter.setBrush(Qt::NoBrush);
    painter.setFont(small);
    painter.setPen(t.faint_ink);
    const QString label = MarkText::tr("front load");
    painter.drawText(QPointF(foot.x() - small_metrics.horizontalAdvance(label) / 2,
                             body.bottom() + small_metrics.ascent() + 2),
                     label);
}

void paint_axes(QPainter& painter, const PaintContext& context) {
    const Theme& t = theme();
    const auto& shape = context.shape;
    const CarExtent extent = shape.extent();
    const auto line = [&](View view, const Vec3& a, const Vec3& b, double over) {
        const QPointF p = context.map.to_pixel(view, a), q = context.map.to_pixel(view, b);
        const double length = std::hypot(q.x() - p.x(), q.y() - p.y());
        const QPointF step = length > 0 ? (q - p) / length * over : QPointF();
        painter.drawLine(p - step, q + step);
    };
    painter.setPen(centre_pen(t.faint_ink));
    line(View::top, {extent.low.x(), 0, 0}, {extent.high.x(), 0, 0}, 10);
    line(View::front, {0, 0, extent.low.z()}, {0, 0, extent.high.z()}, 10);
    for (const std::size_t end : {0, 1}) {
        const double x = shape.axle_x[end], z = shape.axle_z[end];
        line(View::top, {x, extent.low.y(), z}, {x, extent.high.y(), z}, 8);
        const double reach = shape.wheels[end * 2].radius;
        line(View::side, {x - reach, 0, z}, {x + reach, 0, z}, 7);
        line(View::side, {x, 0, z - reach}, {x, 0, z + reach}, 7);
    }
}

/// Where the thing in hand is, beside it, with lines to the rulers.
void paint_drag_readout(QPainter& painter, const PaintContext& context) {
    if (!context.dragged_in || !context.held) return;
    const View view = *context.dragged_in;
    const Vec3 at = anchor_of(context.plan, *context.held, view);
    const Theme& t = theme();
    static constexpr std::array<char, 3> names{'x', 'y', 'z'};
    QStringList parts;
    for (const int axis : axes_of(view))
        parts << QStringLiteral("%1 %2")
                     .arg(QLatin1Char(names[static_cast<std::size_t>(axis)]))
                     .arg(quantity_text(at[axis], Quantity::length, context.project.units));
    const QString words = parts.join(QStringLiteral("   "));

    const QPointF centre = context.map.to_pixel(view, at);
    QColor line = t.accent;
    line.setAlpha(120);
    painter.setPen(thin_pen(line));
    if (view != View::front) painter.drawLine(QPointF(centre.x(), context.map.paper().top() + 10), centre);
    painter.drawLine(QPointF(context.map.paper().left() + 10, centre.y()), centre);
    QRectF outline(centre - QPointF(6, 6), QSizeF(12, 12));
    if (context.held->kind == TargetKind::piece)
        outline = context.map.transform(view).mapRect(
            context.shape.ballast[context.held->index].outline[index(view)].boundingRect());
    const QFont font = text_font(0.9, true);
    const QFontMetricsF metrics(font);
    const QSizeF size(metrics.horizontalAdvance(words) + 16, metrics.height() + 6);
    QRectF pill(QPointF(centre.x() - size.width() / 2, outline.top() - size.height() - 8), size);
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.accent);
    painter.drawRoundedRect(pill, size.height() / 2, size.height() / 2);
    painter.setBrush(Qt::NoBrush);
    painter.setFont(font);
    painter.setPen(t.paper);
    painter.drawText(pill, Qt::AlignCenter, words);
}

} // namespace

void paint_marks(QPainter& painter, const PaintContext& context) {
    paint_axes(painter, context);
    if (context.figures) {
        paint_balance(painter, context);
        for (const View view : {View::top, View::front})
            paint_centre_of_mass(painter, context.map.to_pixel(view, context.figures->centre), 5);
        paint_centre_of_mass(painter, context.map.to_pixel(View::side, context.figures->centre), 8);
        paint_scale_pan(painter, context);
        for (const auto& mark : finding_marks(context))
            paint_finding_mark(painter, mark.at, mark.number, mark.severity,
                               context.selected_finding == mark.number - 1);
    }
    if (context.pointed_out) paint_pointed_out(painter, context.map, *context.pointed_out);
    paint_drag_readout(painter, context);
}

} // namespace rampwright::ui
