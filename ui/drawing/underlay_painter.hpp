#pragma once

#include "drawing/drawing_map.hpp"

#include <QTransform>

namespace rampwright::ui {

/// From the pixels of an underlay's picture, y downward, to the plane of its view, m.
QTransform underlay_to_plane(const Underlay& underlay, const QSize& pixels);

} // namespace rampwright::ui
