// What the canvas does with mouse and keys.
#include "drawing/car_canvas.hpp"
#include "drawing/snap.hpp"
#include "text/figure_text.hpp"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <utility>

namespace rampwright::ui {
namespace {

constexpr double drag_threshold = 3; // px

QString drag_hint() {
    return CarCanvas::tr("Ctrl: off the grid.  Shift: straight along or up.  Esc: put it back.");
}

} // namespace

double CarCanvas::grid(Qt::KeyboardModifiers modifiers) const {
    return modifiers & Qt::ControlModifier ? 0 : snap_step(session_.project().units);
}

void CarCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton) {
        panning_from_ = event->position();
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton || grab_ || stroke_ || picture_drag_) return;
    if (tool_ != Tool::pick) {
        if (const auto view = map_.view_at(event->position()))
            press_tool(*view, event->position(), event->modifiers());
        return;
    }
    if (const auto finding = finding_at(event->position())) {
        select_finding(finding);
        return;
    }
    select_finding({});
    const auto view = map_.view_at(event->position());
    if (!view) return;
    const auto target = target_at(event->position());
    last_view_ = *view;
    select(target);
    if (!target) return;
    const QString stuck = why_stuck(session_.plan(), *target);
    if (!stuck.isEmpty()) {
        Q_EMIT hint(stuck);
        return;
    }
    grab_ =
        Grab{*target, *view, event->position(), anchor_of(session_.plan(), *target, *view), session_.plan(),
             false,   {}};
    setCursor(Qt::ClosedHandCursor);
}

void CarCanvas::mouseMoveEvent(QMouseEvent* event) {
    if (panning_from_) {
        pan_ += event->position() - *panning_from_;
        panning_from_ = event->position();
        refit();
        update();
    } else if (grab_) {
        drag_to(event->position(), event->modifiers());
    } else if (stroke_) {
        stroke_to(event->position(), event->modifiers());
    } else if (picture_drag_) {
        drag_picture(event->position(), event->modifiers());
    } else if (measured_from_) {
        hand_ = event->position();
        update();
    } else if (carried_) {
        show_ghost(*carried_, event->position(), event->modifiers());
    } else {
        hover(event->position());
    }
}

void CarCanvas::drag_to(const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    if (!grab_->moving) {
        if (QLineF(pixel, grab_->pressed_at).length() < drag_threshold) return;
        grab_->moving = true;
        session_.begin_gesture();
        Q_EMIT hint(drag_hint());
    }
    const QPointF way =
        map_.to_plane_point(grab_->view, pixel) - map_.to_plane_point(grab_->view, grab_->pressed_at);
    const auto axes = axes_of(grab_->view);
    std::array<double, 2> by{way.x(), way.y()};
    if (modifiers & Qt::ShiftModifier) by[std::abs(by[0]) >= std::abs(by[1]) ? 1 : 0] = 0;
    Vec3 at = grab_->start;
    for (const std::size_t i : {0, 1}) {
        const double to = grab_->start[axes[i]] + by[i];
        const double step = grid(modifiers);
        at[axes[i]] = step > 0 ? snapped(grab_->start[axes[i]], to, step) : to;
    }
    try {
        session_.preview(move_target(session_.gesture_base(), grab_->plan, shape_, session_.car(),
                                     grab_->target, grab_->view, at));
        if (!std::exchange(grab_->refusal, {}).isEmpty()) Q_EMIT hint(drag_hint());
    } catch (const Problem& problem) {
        // What is drawn stays as it last could be.
        grab_->refusal = plain_text(problem);
        Q_EMIT hint(grab_->refusal);
    }
}

void CarCanvas::finish_drag() {
    const Grab done = std::move(*grab_);
    grab_.reset();
    if (done.moving) {
        session_.finish_gesture();
        Q_EMIT hint(done.refusal);
    }
    refit();
    update();
}

void CarCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton) panning_from_.reset();
    if (event->button() == Qt::LeftButton && grab_) finish_drag();
    if (event->button() == Qt::LeftButton && stroke_) finish_stroke();
    if (event->button() == Qt::LeftButton && picture_drag_) finish_picture_drag();
    hover(event->position());
}

void CarCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    const auto view = map_.view_at(event->position());
    if (event->button() != Qt::LeftButton || !view) return;
    if (tool_ != Tool::pick) return mousePressEvent(event);
    const auto target = target_at(event->position());
    if (target && (target->kind == TargetKind::profile_point || target->kind == TargetKind::plan_point)) {
        select(target);
        toggle_smooth();
        return;
    }
    if (!add_point(*view, event->position())) mousePressEvent(event);
}

void CarCanvas::contextMenuEvent(QContextMenuEvent* event) {
    const QPointF pixel = event->pos();
    const auto view = map_.view_at(pixel);
    if (tool_ != Tool::pick) return set_tool(Tool::pick);
    if (!view || grab_) return;
    const auto target = target_at(pixel);
    if (target) select(target);
    QMenu menu(this);
    if (target) {
        const auto kind = target->kind;
        if (kind == TargetKind::profile_point || kind == TargetKind::plan_point) {
            const auto& body = session_.plan().body;
            const bool smooth =
                (kind == TargetKind::plan_point ? body.plan : body.profile)[target->index].smooth;
            menu.addAction(smooth ? tr("Make It a &Corner") : tr("Make It &Smooth"), this,
                           &CarCanvas::toggle_smooth);
            menu.addAction(tr("&Add a Point After It"), this, &CarCanvas::add_point_after_selected);
        }
        if (kind == TargetKind::piece || kind == TargetKind::cut || kind == TargetKind::cut_corner)
            menu.addAction(tr("&Duplicate"), this, &CarCanvas::duplicate_selected);
        if (kind != TargetKind::axle) menu.addAction(tr("&Remove"), this, &CarCanvas::remove_selected);
    } else if (reach_ == Reach::wood && *view != View::front) {
        menu.addAction(tr("&Add a Point Here"), this, [this, pixel, view] {
            if (!add_point(*view, pixel))
                Q_EMIT hint(tr("Point at the outline itself to add a point to it."));
        });
    }
    if (reach_ == Reach::wood) {
        menu.addSeparator();
        menu.addAction(tr("Draw a &Pocket"), this, [this] { set_tool(Tool::pocket); });
        menu.addAction(tr("Draw a &Bore"), this, [this] { set_tool(Tool::bore); });
        menu.addSeparator();
    }
    menu.addAction(tr("Zoom to &Fit"), this, &CarCanvas::zoom_to_fit);
    menu.exec(event->globalPos());
}

void CarCanvas::hover(const QPointF& pixel) {
    if (grab_ || panning_from_ || stroke_ || picture_drag_) return;
    if (tool_ == Tool::move_picture) return setCursor(Qt::SizeAllCursor);
    if (tool_ != Tool::pick) return setCursor(Qt::CrossCursor);
    const auto target = target_at(pixel);
    if (finding_at(pixel))
        setCursor(Qt::PointingHandCursor);
    else if (target)
        setCursor(why_stuck(session_.plan(), *target).isEmpty() ? Qt::OpenHandCursor : Qt::ForbiddenCursor);
    else
        unsetCursor();
    if (target == hovered_) return;
    hovered_ = target;
    Q_EMIT hint(target ? tr("%1: drag to move").arg(name_of(session_.plan(), *target)) : QString());
    update();
}

void CarCanvas::leaveEvent(QEvent*) {
    if (ghost_) {
        ghost_.reset();
        update();
    }
    if (!hovered_ || grab_) return;
    hovered_.reset();
    Q_EMIT hint({});
    update();
}

void CarCanvas::zoom_by(double factor, const QPointF& about) {
    const double zoom = std::clamp(zoom_ * factor, 1.0, 12.0);
    const QPointF middle = map_.paper().center();
    pan_ += (about - middle - pan_) * (1 - zoom / zoom_);
    zoom_ = zoom;
    if (zoom_ == 1) pan_ = {};
    refit();
    update();
}

void CarCanvas::zoom_to_fit() {
    zoom_ = 1;
    pan_ = {};
    refit();
    update();
}

bool CarCanvas::event(QEvent* event) {
    if (event->type() == QEvent::NativeGesture) {
        const auto& gesture = static_cast<QNativeGestureEvent&>(*event);
        if (gesture.gestureType() == Qt::ZoomNativeGesture && !grab_ && !stroke_) {
            zoom_by(1 + gesture.value(), gesture.position());
            return true;
        }
    }
    return QWidget::event(event);
}

void CarCanvas::wheelEvent(QWheelEvent* event) {
    if (grab_ || stroke_ || picture_drag_) return;
    // Two fingers push the paper, and so does a wheel sideways or with Shift; a plain wheel magnifies.
    const bool fingers = event->deviceType() == QInputDevice::DeviceType::TouchPad;
    const bool magnify = event->modifiers() & Qt::ControlModifier;
    const QPoint turned = event->angleDelta();
    if (!magnify && (fingers || event->modifiers() & Qt::ShiftModifier || turned.y() == 0)) {
        pan_ += event->pixelDelta().isNull() ? QPointF(turned) / 4 : QPointF(event->pixelDelta());
        refit();
        update();
    } else if (turned.y() != 0)
        zoom_by(std::pow(1.0015, event->angleDelta().y()), event->position());
    event->accept();
}

bool CarCanvas::nudge(QKeyEvent* event) {
    if (grab_) return false;
    int across = 0, up = 0;
    switch (event->key()) {
    case Qt::Key_Left:
        across = -1;
        break;
    case Qt::Key_Right:
        across = 1;
        break;
    case Qt::Key_Up:
        up = 1;
        break;
    case Qt::Key_Down:
        up = -1;
        break;
    default:
        return false;
    }
    if (tool_ == Tool::move_picture) return nudge_picture(across, up, event->modifiers());
    if (!selected_) return false;
    const QString stuck = why_stuck(session_.plan(), *selected_);
    if (!stuck.isEmpty()) {
        Q_EMIT hint(stuck);
        return true;
    }
    const auto axes = axes_of(last_view_);
    double step = snap_step(session_.project().units);
    if (event->modifiers() & Qt::ShiftModifier) step /= 10;
    if (event->modifiers() & Qt::ControlModifier) step *= 10;
    Vec3 at = anchor_of(session_.plan(), *selected_, last_view_);
    at[axes[0]] += across * step;
    at[axes[1]] += up * step;
    attempt(
        [&] {
            return move_target(session_.document(), session_.plan(), shape_, session_.car(), *selected_,
                               last_view_, at);
        },
        QStringLiteral("nudge %1 %2 %3 %4")
            .arg(session_.car())
            .arg(static_cast<int>(selected_->kind))
            .arg(selected_->index)
            .arg(selected_->corner));
    return true;
}

void CarCanvas::cancel() {
    if (grab_ || stroke_ || picture_drag_) {
        const bool moving = grab_ ? grab_->moving : stroke_ ? stroke_->moving : picture_drag_->moving;
        grab_.reset();
        stroke_.reset();
        picture_drag_.reset();
        if (moving) session_.cancel_gesture();
        unsetCursor();
        Q_EMIT hint({});
    } else if (tool_ == Tool::pick) {
        select({});
        select_finding({});
    }
    set_tool(Tool::pick);
    update();
}

void CarCanvas::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Escape:
        return cancel();
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        return remove_selected();
    case Qt::Key_Insert:
        return add_point_after_selected();
    case Qt::Key_S:
        return toggle_smooth();
    case Qt::Key_PageDown:
    case Qt::Key_PageUp:
        return select_next(event->key() == Qt::Key_PageDown);
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (tool_ != Tool::pick) return use_tool_somewhere();
        break;
    default:
        break;
    }
    if (!nudge(event)) QWidget::keyPressEvent(event);
}

} // namespace rampwright::ui
