#include "panels/verdict_mark.hpp"

#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <QCoreApplication>
#include <QPainter>

namespace rampwright::ui {

void paint_verdict_mark(QPainter& painter, QPointF c, Verdict verdict) {
    const Theme& t = theme();
    const double r = verdict_mark_radius;
    const auto sign = [&](const QColor& on) {
        QPen pen(contrast(QColor(Qt::white), on) > contrast(QColor(Qt::black), on) ? Qt::white : Qt::black,
                 1.8);
        pen.setCapStyle(Qt::RoundCap);
        pen.setJoinStyle(Qt::RoundJoin);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
    };
    painter.setPen(Qt::NoPen);
    switch (verdict) {
    case Verdict::pass:
        painter.setBrush(t.good);
        painter.drawEllipse(c, r, r);
        sign(t.good);
        painter.drawPolyline(QPolygonF{c + QPointF(-3.6, 0.2), c + QPointF(-1, 3), c + QPointF(3.8, -3)});
        break;
    case Verdict::margin:
        painter.setBrush(t.caution);
        painter.drawPolygon(
            QPolygonF{c + QPointF(0, -r), c + QPointF(r + 1, r - 1), c + QPointF(-r - 1, r - 1)});
        sign(t.caution);
        painter.drawLine(c + QPointF(0, -2.6), c + QPointF(0, 1.8));
        painter.drawPoint(c + QPointF(0, 4.8));
        break;
    case Verdict::breach:
        painter.setBrush(t.breach);
        painter.drawPolygon(QPolygonF{c + QPointF(0, -r - 1), c + QPointF(r + 1, 0), c + QPointF(0, r + 1),
                                      c + QPointF(-r - 1, 0)});
        sign(t.breach);
        painter.drawLine(c + QPointF(-2.6, -2.6), c + QPointF(2.6, 2.6));
        painter.drawLine(c + QPointF(-2.6, 2.6), c + QPointF(2.6, -2.6));
        break;
    case Verdict::look_yourself:
        painter.setPen(QPen(t.accent, 1.6));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(c, r - 0.8, r - 0.8);
        painter.setFont(text_font(0.85, true));
        painter.drawText(QRectF(c - QPointF(r, r), QSizeF(2 * r, 2 * r)), Qt::AlignCenter,
                         QStringLiteral("?"));
        break;
    }
}

QString verdict_text(Verdict verdict) {
    switch (verdict) {
    case Verdict::pass:
        return QCoreApplication::translate("rampwright::ui::Verdicts", "passes");
    case Verdict::margin:
        return QCoreApplication::translate("rampwright::ui::Verdicts", "passes narrowly");
    case Verdict::breach:
        return QCoreApplication::translate("rampwright::ui::Verdicts", "breaks the rule");
    case Verdict::look_yourself:
        break;
    }
    return QCoreApplication::translate("rampwright::ui::Verdicts", "look at it yourself");
}

QString inspector_decides_text() {
    return QCoreApplication::translate(
        "Verdicts", "Local rules and the inspector decide; this list only helps to come prepared.");
}

VerdictMark::VerdictMark(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

void VerdictMark::show(std::optional<Verdict> verdict) {
    if (verdict == verdict_) return;
    verdict_ = verdict;
    update();
}

QSize VerdictMark::sizeHint() const {
    return {22, 22};
}

void VerdictMark::paintEvent(QPaintEvent*) {
    if (!verdict_) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paint_verdict_mark(painter, QRectF(rect()).center(), *verdict_);
}

} // namespace rampwright::ui
