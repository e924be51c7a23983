#include "drawing/paint_context.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace rampwright::ui {
namespace {

struct LimitText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Limits)
};

/// The line type for what is not part of the thing drawn: long-dashed double-dotted (ISO 128-2).
QPen limit_pen() {
    QPen pen(theme().faint_ink, 1.0, Qt::CustomDashLine, Qt::FlatCap, Qt::MiterJoin);
    pen.setDashPattern({14, 3, 2, 3, 2, 3});
    return pen;
}

} // namespace

void paint_limits(QPainter& painter, const PaintContext& context, View view) {
    if (context.reach != Reach::nothing && context.reach != Reach::wood) return;
    const Rules& rules = context.project.rules;
    const CarExtent extent = context.shape.extent();
    const double tail = extent.low.x(), ground = context.shape.ground_at(tail);
    const double beyond = 0.003; // m, by which a limit stands out past the car where it is the only one
    const double end = rules.max_length ? tail + *rules.max_length : extent.high.x() + beyond;
    const double half = rules.max_width ? *rules.max_width / 2 : extent.high.y() + beyond;
    const double top = rules.max_height ? ground + *rules.max_height : extent.high.z() + beyond;
    const auto line = [&](const Vec3& from, const Vec3& to, double room = 0) {
        painter.drawLine(context.map.to_pixel(view, from) + QPointF(room, 0), context.map.to_pixel(view, to));
    };
    painter.setPen(limit_pen());
    if (rules.max_length && view == View::side) line({end, 0, ground}, {end, 0, top});
    if (rules.max_length && view == View::top) line({end, -half, 0}, {end, half, 0});
    if (rules.max_width && view != View::side)
        for (const double y : {-half, half})
            // The near line leaves room for the view's name.
            line({view == View::top ? tail : 0, y, ground}, {view == View::top ? end : 0, y, top},
                 view == View::top && y < 0 ? 64 : 0);
    if (rules.max_height && view == View::side) line({tail, 0, top}, {end, 0, top});
    if (rules.max_height && view == View::front) line({0, -half, top}, {0, half, top});
    if (view != View::side || !rules.max_length) return;
    painter.setFont(text_font(0.8));
    const QFontMetricsF metrics(painter.font());
    const QString text = LimitText::tr("allowed: %1")
                             .arg(quantity_text(*rules.max_length, Quantity::length, context.project.units));
    const double width = metrics.horizontalAdvance(text) + 4;
    // High up, where the car is not: the pan with the front load stands below the ground.
    const QPointF corner = context.map.to_pixel(view, {end, 0, top});
    const double highest = context.map.frame(view).top() + sheet::ruler;
    painter.drawText(QPointF(corner.x() - width, std::max(corner.y(), highest) + metrics.ascent() + 3), text);
}

} // namespace rampwright::ui
