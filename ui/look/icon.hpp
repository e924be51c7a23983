#pragma once

#include <QIcon>

#include <functional>

class QPainter;

namespace rampwright::ui {

/// An icon drawn as fine as the screen shows it. @param ratio device pixels to one of the window's.
QIcon drawn_icon(QSize size, double ratio, const std::function<void(QPainter&)>& draw);

} // namespace rampwright::ui
