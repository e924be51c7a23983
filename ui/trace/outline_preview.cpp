#include "trace/outline_preview.hpp"

#include "drawing/outline.hpp"
#include "drawing/pens.hpp"
#include "look/theme.hpp"

#include <QPainter>

#include <algorithm>

namespace rampwright::ui {

OutlinePreview::OutlinePreview(std::vector<PlanPoint> present, QWidget* parent)
    : QWidget(parent), present_(std::move(present)) {
    setMinimumSize(420, 170);
    setAccessibleName(tr("The outline that is read, over the present one"));
}

void OutlinePreview::show_points(std::vector<PlanPoint> points) {
    points_ = std::move(points);
    update();
}

void OutlinePreview::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), theme().paper);
    const QPainterPath now = outline_path(present_, 0, 0, 0);
    const QPainterPath read = points_.size() < 3 ? QPainterPath() : outline_path(points_, 0, 0, 0);
    const QRectF box = now.boundingRect().united(read.boundingRect());
    if (box.isEmpty()) return;
    constexpr double margin = 14;
    const double scale =
        std::min((width() - 2 * margin) / box.width(), (height() - 2 * margin) / box.height());
    QTransform place;
    place.translate(width() / 2., height() / 2.);
    place.scale(scale, -scale);
    place.translate(-box.center().x(), -box.center().y());
    painter.setPen(hidden_pen(theme().faint_ink));
    painter.drawPath(place.map(now));
    if (read.isEmpty()) return;
    painter.setPen(outline_pen(theme().wood_ink));
    painter.setBrush(theme().wood);
    painter.drawPath(place.map(read));
    painter.setBrush(theme().paper);
    painter.setPen(outline_pen(theme().accent, 1.2));
    for (const PlanPoint& point : points_) {
        const QPointF at = place.map(QPointF(point.at.x(), point.at.y()));
        if (point.smooth)
            painter.drawEllipse(at, 2.5, 2.5);
        else
            painter.drawRect(QRectF(at - QPointF(2.5, 2.5), QSizeF(5, 5)));
    }
}

} // namespace rampwright::ui
