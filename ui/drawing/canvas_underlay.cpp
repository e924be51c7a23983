// What the canvas does with the pictures under the drawing.
#include "drawing/car_canvas.hpp"
#include "drawing/pens.hpp"
#include "drawing/snap.hpp"
#include "drawing/underlay_painter.hpp"
#include "look/theme.hpp"
#include "trace/picture_store.hpp"

#include <QPainter>

#include <cmath>

namespace rampwright::ui {
namespace {

constexpr double places_apart = 6; // px

/// Side view and top view have one each.
std::size_t picture_slot(View view) {
    return view == View::top ? 1 : 0;
}

} // namespace

const Underlay* CarCanvas::shown_underlay(View view) const {
    if (reach_ != Reach::wood || view == View::front) return nullptr;
    const auto& underlay = session_.plan().underlays[picture_slot(view)];
    if (!underlay || underlay->hidden) return nullptr;
    return pictures_->picture(QString::fromStdString(underlay->picture)).image.isNull() ? nullptr
                                                                                        : &*underlay;
}

void CarCanvas::paint_picture(QPainter& painter, View view) {
    const Underlay* underlay = shown_underlay(view);
    if (!underlay) return;
    const QImage& image = pictures_->picture(QString::fromStdString(underlay->picture)).image;
    const QTransform place = underlay_to_plane(*underlay, image.size()) * map_.transform(view);
    const QRect frame = map_.frame(view).toAlignedRect();
    PictureCache& cache = picture_caches_[picture_slot(view)];
    if (cache.place != place || cache.image != image.cacheKey() || cache.frame != frame ||
        cache.pixel_ratio != devicePixelRatioF()) {
        cache = {place, image.cacheKey(), frame, devicePixelRatioF(), {}};
        cache.pixels = QPixmap((QSizeF(frame.size()) * cache.pixel_ratio).toSize());
        cache.pixels.setDevicePixelRatio(cache.pixel_ratio);
        cache.pixels.fill(Qt::transparent);
        QPainter once(&cache.pixels);
        once.setRenderHint(QPainter::SmoothPixmapTransform);
        once.translate(-frame.topLeft());
        once.setTransform(place, true);
        once.drawImage(0, 0, image);
    }
    painter.save();
    // The rulers stay readable.
    painter.setClipRect(map_.paper().adjusted(sheet::ruler, sheet::ruler, -1, -1), Qt::IntersectClip);
    painter.setOpacity(underlay->opacity);
    painter.drawPixmap(frame.topLeft(), cache.pixels);
    painter.restore();
}

void CarCanvas::press_picture(View view, const QPointF& pixel) {
    const Underlay* underlay = shown_underlay(view);
    if (!underlay) {
        Q_EMIT hint(tr("No picture shows under this view."));
        return;
    }
    if (tool_ == Tool::move_picture) {
        picture_drag_ = PictureDrag{view, pixel, *underlay, false};
        return;
    }
    if (!measured_from_ || measured_view_ != view) {
        measured_view_ = view;
        measured_from_ = map_.to_plane_point(view, pixel);
        hand_ = pixel;
        Q_EMIT hint(tr("Now click the second place.  The wheel zooms.  Esc: leave it."));
        update();
        return;
    }
    if (QLineF(map_.plane_to_pixel(view, *measured_from_), pixel).length() < places_apart) {
        Q_EMIT hint(tr("That is the first place: click another, well away from it."));
        return;
    }
    const QPointF one = *measured_from_, other = map_.to_plane_point(view, pixel);
    set_tool(Tool::pick);
    Q_EMIT picture_measured(view == View::top, one, other);
}

void CarCanvas::drag_picture(const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    PictureDrag& drag = *picture_drag_;
    if (!drag.moving) {
        if (!means_to_move(drag.pressed_at, pixel)) return;
        drag.moving = true;
        session_.begin_gesture();
    }
    QPointF way = map_.to_plane_point(drag.view, pixel) - map_.to_plane_point(drag.view, drag.pressed_at);
    if (modifiers & Qt::ShiftModifier) (std::abs(way.x()) >= std::abs(way.y()) ? way.ry() : way.rx()) = 0;
    Underlay moved = drag.start;
    moved.at += Vec2(way.x(), way.y());
    try {
        session_.preview(set_underlay(session_.gesture_base(), session_.car(), drag.view == View::top, moved,
                                      tr("Move picture").toStdString()));
    } catch (const Problem&) {
        // Beyond all size: it stays where it could be.
    }
}

void CarCanvas::finish_picture_drag() {
    const bool moving = picture_drag_->moving;
    picture_drag_.reset();
    if (moving) session_.finish_gesture();
}

bool CarCanvas::nudge_picture(int across, int up, Qt::KeyboardModifiers modifiers) {
    const View view = shown_underlay(last_view_)   ? last_view_
                      : shown_underlay(View::side) ? View::side
                                                   : View::top;
    const Underlay* underlay = shown_underlay(view);
    if (!underlay) return false;
    const double step = nudge_step(session_.project().units, modifiers);
    Underlay moved = *underlay;
    moved.at += step * Vec2(across, up);
    attempt(
        [&] {
            return set_underlay(session_.document(), session_.car(), view == View::top, moved,
                                tr("Move picture").toStdString());
        },
        QStringLiteral("nudge picture %1 %2").arg(session_.car()).arg(picture_slot(view)));
    return true;
}

void CarCanvas::paint_measuring(QPainter& painter) const {
    if (!measured_from_ || !measured_view_) return;
    const QPointF from = map_.plane_to_pixel(*measured_view_, *measured_from_);
    painter.save();
    painter.setPen(outline_pen(theme().accent, 1.5));
    constexpr double arm = 7;
    for (const QPointF& at : {from, hand_}) {
        painter.drawLine(at - QPointF(arm, 0), at + QPointF(arm, 0));
        painter.drawLine(at - QPointF(0, arm), at + QPointF(0, arm));
    }
    painter.setPen(thin_pen(theme().accent));
    painter.drawLine(from, hand_);
    painter.restore();
}

} // namespace rampwright::ui
