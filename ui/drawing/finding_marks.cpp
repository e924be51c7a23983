#include "drawing/finding_marks.hpp"

#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <QPainter>

namespace rampwright::ui {

std::vector<FindingMark> finding_marks(const PaintContext& context) {
    std::vector<FindingMark> marks;
    if (!context.figures) return marks;
    const auto& findings = context.figures->findings;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        if (!findings[i].at) continue;
        for (const View view : {View::side, View::top}) {
            QPointF at = context.map.to_pixel(view, *findings[i].at);
            // Several at one place stand side by side.
            for (const auto& other : marks)
                if (QLineF(at, other.at).length() < 2 * finding_mark_radius)
                    at.rx() += 2 * finding_mark_radius + 2;
            marks.push_back({at, i + 1, findings[i].severity, view});
        }
    }
    return marks;
}

void paint_finding_mark(QPainter& painter, QPointF at, std::size_t number, Severity severity, bool chosen) {
    const Theme& t = theme();
    const double r = finding_mark_radius;
    const QColor color = severity == Severity::breach    ? t.breach
                         : severity == Severity::warning ? t.caution
                                                         : t.accent;
    painter.setPen(outline_pen(chosen ? t.ink : t.paper, chosen ? 2.2 : 1.2));
    painter.setBrush(color);
    QPointF text = at;
    switch (severity) {
    case Severity::note:
        painter.drawEllipse(at, r, r);
        break;
    case Severity::warning:
        painter.drawPolygon(
            QPolygonF{at + QPointF(0, -r - 3), at + QPointF(r + 3, r), at + QPointF(-r - 3, r)});
        text += QPointF(0, 2);
        break;
    case Severity::breach:
        painter.drawPolygon(QPolygonF{at + QPointF(0, -r - 3), at + QPointF(r + 3, 0), at + QPointF(0, r + 3),
                                      at + QPointF(-r - 3, 0)});
        break;
    }
    painter.setBrush(Qt::NoBrush);
    painter.setFont(text_font(0.8, true));
    painter.setPen(contrast(QColor(Qt::white), color) > contrast(QColor(Qt::black), color) ? Qt::white
                                                                                           : Qt::black);
    painter.drawText(QRectF(text - QPointF(r, r), QSizeF(2 * r, 2 * r)), Qt::AlignCenter,
                     QString::number(number));
}

} // namespace rampwright::ui
