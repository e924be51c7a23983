#include "drawing/paint_context.hpp"
#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <QPainter>

namespace rampwright::ui {

void paint_handles(QPainter& painter, const PaintContext& context, View view) {
    const Theme& t = theme();
    for (const Target& target : targets_in(context.plan, view, context.reach)) {
        const bool selected = context.is_selected(target), hovered = context.hovered == target;
        if (target.kind == TargetKind::piece) continue;
        if (target.kind == TargetKind::cut) {
            if (!selected && !hovered) continue;
            painter.setPen(QPen(t.accent, selected ? 2.2 : 1.5));
            painter.setBrush(Qt::NoBrush);
            painter.drawPath(
                context.map.transform(view).map(context.shape.cuts[target.index].outline[index(view)]));
            continue;
        }
        // The handles of a cut come out when one turns to it; those of the outline are always there.
        if (target.kind == TargetKind::cut_corner) {
            const auto about = [&](const Target& other) {
                return other.index == target.index &&
                       (other.kind == TargetKind::cut || other.kind == TargetKind::cut_corner);
            };
            // Several cuts are moved as they are.
            const bool chosen = context.selection.size() == 1 && about(context.selection.front());
            if (!chosen && !(context.hovered && about(*context.hovered))) continue;
        }
        const QPointF at = context.map.to_pixel(view, anchor_of(context.plan, target, view));
        const double r = target.kind == TargetKind::axle ? 8 : selected || hovered ? 5 : 4;
        painter.setPen(outline_pen(t.accent, selected ? 2.2 : 1.5));
        painter.setBrush(selected ? t.accent : t.paper);
        const bool smooth =
            (target.kind == TargetKind::profile_point && context.plan.body.profile[target.index].smooth) ||
            (target.kind == TargetKind::plan_point && context.plan.body.plan[target.index].smooth);
        if (target.kind == TargetKind::axle) painter.setBrush(Qt::NoBrush);
        if (smooth || target.kind == TargetKind::axle)
            painter.drawEllipse(at, r, r);
        else
            painter.drawRect(QRectF(at - QPointF(r, r), QSizeF(2 * r, 2 * r)));
    }
    painter.setBrush(Qt::NoBrush);
}

} // namespace rampwright::ui
