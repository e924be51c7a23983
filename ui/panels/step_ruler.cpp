#include "panels/step_ruler.hpp"

#include "look/theme.hpp"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPainter>

namespace rampwright::ui {
namespace {

constexpr int ruler_height = 40, tick_spacing = 8, mark_room = 20;

} // namespace

StepButton::StepButton(const QString& name, QWidget* parent) : QAbstractButton(parent) {
    setText(name);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setCursor(Qt::PointingHandCursor);
    setAccessibleDescription(tr("open"));
}

void StepButton::set_decided(bool decided) {
    decided_ = decided;
    setAccessibleDescription(decided ? tr("decided") : tr("open"));
    update();
}

QSize StepButton::sizeHint() const {
    const QFontMetrics metrics(text_font(1.05, true));
    return {metrics.horizontalAdvance(text()) + 36 + mark_room, ruler_height};
}

void StepButton::paintEvent(QPaintEvent*) {
    const Theme& t = theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool hot = underMouse();
    const int shown =
        QFontMetrics(text_font(1.05, isChecked())).horizontalAdvance(text().remove(QLatin1Char('&')));
    painter.setPen(QPen(isChecked() ? t.accent : t.faint_ink, isChecked() ? 2.0 : 1.2));
    painter.drawLine(QPointF(12, height() - 1), QPointF(12, height() - (isChecked() ? 24 : 15)));
    painter.setFont(text_font(1.05, isChecked()));
    painter.setPen(isChecked() || hot ? t.ink : t.faint_ink);
    painter.drawText(rect().adjusted(20, 0, 0, -8), Qt::AlignVCenter | Qt::AlignLeft | Qt::TextShowMnemonic,
                     text());
    const QPointF mark(20 + shown + 12, (height() - 8) / 2.0);
    if (decided_) {
        painter.setPen(QPen(t.ink, 2.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(
            QPolygonF{mark + QPointF(-5, 0), mark + QPointF(-1.5, 4), mark + QPointF(5.5, -5)});
    } else {
        painter.setPen(QPen(t.faint_ink, 1.2));
        painter.drawEllipse(mark, 3.5, 3.5);
    }
    if (isChecked()) painter.fillRect(QRectF(12, height() - 3, shown + 16, 3), t.accent);
    if (hasFocus()) {
        painter.setPen(QPen(t.accent, 1.5, Qt::DotLine));
        painter.drawRect(QRectF(16, 3, shown + 9, height() - 13));
    }
}

StepRuler::StepRuler(QWidget* parent) : QFrame(parent), group_(new QButtonGroup(this)) {
    setObjectName(QStringLiteral("steps"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 0, 8, 0);
    row->setSpacing(0);
    connect(group_, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT chosen(static_cast<Step>(id)); });
}

void StepRuler::add(Step step, const QString& name, const QString& why) {
    auto* button = new StepButton(name, this);
    button->setObjectName(QStringLiteral("step.%1").arg(static_cast<int>(step)));
    button->setToolTip(why);
    button->setWhatsThis(why);
    group_->addButton(button, static_cast<int>(step));
    layout()->addWidget(button);
}

void StepRuler::choose(Step step) {
    if (auto* button = group_->button(static_cast<int>(step))) button->setChecked(true);
}

void StepRuler::mark(Step step, bool decided) {
    if (auto* button = static_cast<StepButton*>(group_->button(static_cast<int>(step))))
        button->set_decided(decided);
}

void StepRuler::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    QPainter painter(this);
    painter.setPen(QPen(theme().paper_edge, 1));
    for (int x = 20; x < width() - 8; x += tick_spacing)
        painter.drawLine(x, height() - 1, x, height() - 5);
    painter.setPen(QPen(theme().faint_ink, 1));
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

} // namespace rampwright::ui
