#include "look/icon.hpp"

#include <QPainter>
#include <QPixmap>

namespace rampwright::ui {

QIcon drawn_icon(QSize size, double ratio, const std::function<void(QPainter&)>& draw) {
    QPixmap pixmap(size * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    {
        QPainter painter(&pixmap);
        painter.setRenderHint(QPainter::Antialiasing);
        draw(painter);
    }
    return QIcon(pixmap);
}

} // namespace rampwright::ui
