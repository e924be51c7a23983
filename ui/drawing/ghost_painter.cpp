#include "drawing/paint_context.hpp"
#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <QPainter>

#include <algorithm>

namespace rampwright::ui {

void paint_ghost(QPainter& painter, const PaintContext& context, View view) {
    if (!context.ghost) return;
    const auto holder = find_cut(context.plan.body.cuts, context.ghost->in);
    const QTransform transform = context.map.transform(view);
    const QColor accent = theme().accent;
    painter.setBrush(Qt::NoBrush);
    if (holder) {
        painter.setPen(QPen(accent, 2.2));
        painter.drawPath(transform.map(context.shape.cuts[*holder].outline[index(view)]));
    }
    QColor fill = accent;
    fill.setAlpha(70);
    const QPainterPath outline = transform.map(piece_outline(view, *context.ghost));
    painter.fillPath(outline, fill);
    painter.setPen(hidden_pen(accent));
    painter.drawPath(outline);
}

} // namespace rampwright::ui
