#include "explain/why_button.hpp"

#include "explain/why_popover.hpp"
#include "look/theme.hpp"

#include <QFontMetrics>
#include <QPainter>

namespace rampwright::ui {

WhyButton::WhyButton(Session& session, std::string code, const QString& figure, QWidget* parent)
    : QToolButton(parent), session_(session), code_(std::move(code)) {
    setObjectName(QStringLiteral("why.") + QString::fromStdString(code_));
    setText(QStringLiteral("?"));
    setFont(text_font(0.9, true));
    setAccessibleName(tr("Why? %1").arg(figure));
    const QString tip = tr("Where this number comes from");
    setToolTip(tip);
    setWhatsThis(tip);
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    setAutoRaise(true);
    connect(this, &QToolButton::clicked, this, [this] { ask(); });
}

QSize WhyButton::sizeHint() const {
    const int side = QFontMetrics(font()).height() + 2;
    return {side, side};
}

void WhyButton::paintEvent(QPaintEvent*) {
    const Theme& t = theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = std::min(width(), height()) - 2;
    const QRectF ring(0.5 * (width() - side), 0.5 * (height() - side), side, side);
    const bool hot = isEnabled() && (underMouse() || hasFocus() || isDown());
    painter.setPen(QPen(hot ? t.accent : t.faint_ink, hot ? 1.6 : 1.0));
    painter.setBrush(isDown() ? t.grid : QColor(Qt::transparent));
    painter.drawEllipse(ring);
    painter.setFont(font());
    painter.drawText(ring, Qt::AlignCenter, text());
}

void WhyButton::ask(QWidget* at) {
    (new WhyPopover(session_, code_, window()))->show_below(at ? *at : *this);
}

} // namespace rampwright::ui
