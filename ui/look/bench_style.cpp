#include "look/bench_style.hpp"

#include "look/theme.hpp"

#include <QPainter>
#include <QStyleFactory>
#include <QStyleOption>

namespace rampwright::ui {

BenchStyle::BenchStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

void BenchStyle::drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                               const QWidget* widget) const {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    const bool square = element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck;
    if ((!square && element != PE_IndicatorRadioButton) || !(option->state & State_Enabled)) return;
    painter->save();
    painter->setPen(QPen(theme().faint_ink, 1));
    painter->setBrush(Qt::NoBrush);
    const QRectF frame = QRectF(option->rect).adjusted(0.5, 0.5, -0.5, -0.5);
    if (square) {
        painter->drawRect(frame);
    } else {
        painter->setRenderHint(QPainter::Antialiasing);
        painter->drawEllipse(frame);
    }
    painter->restore();
}

} // namespace rampwright::ui
