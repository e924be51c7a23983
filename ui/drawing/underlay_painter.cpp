#include "drawing/underlay_painter.hpp"

#include <numbers>

namespace rampwright::ui {

QTransform underlay_to_plane(const Underlay& underlay, const QSize& pixels) {
    const double scale = underlay.width / pixels.width();
    QTransform place;
    place.translate(underlay.at.x(), underlay.at.y());
    place.rotate(underlay.turned * 180 / std::numbers::pi);
    place.scale(underlay.mirrored ? -scale : scale, -scale);
    place.translate(-pixels.width() / 2., -pixels.height() / 2.);
    return place;
}

} // namespace rampwright::ui
