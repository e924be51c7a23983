// What the canvas does with mouse and keys.
#include "drawing/car_canvas.hpp"
#include "drawing/drawing_actions.hpp"
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

double CarCanvas::grid(Qt::KeyboardModifiers modifiers) const {
    return modifiers & Qt::ControlModifier ? 0 : snap_step(session_.project().units);
}

void CarCanvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton) {
        panning_from_ = event->position();
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton || grab_ || stroke_ || picture_drag_ || band_) return;
    if (pointed_out_) {
        pointed_out_.reset();
        update();
    }
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
    const auto target = target_at(event->position());
    if (view) last_view_ = *view;
    if (view && target)
        press_target(*view, *target, event);
    else
        press_paper(event->position(), event->modifiers());
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
    } else if (band_) {
        band_to(event->position());
    } else if (carried_) {
        show_ghost(*carried_, event->position(), event->modifiers());
    } else {
        hover(event->position());
    }
}

void CarCanvas::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton) panning_from_.reset();
    if (event->button() == Qt::LeftButton && grab_) finish_drag();
    if (event->button() == Qt::LeftButton && stroke_) finish_stroke();
    if (event->button() == Qt::LeftButton && picture_drag_) finish_picture_drag();
    if (event->button() == Qt::LeftButton && band_) {
        band_.reset();
        update();
    }
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
    if (target && !is_selected(*target)) select(target);
    QMenu menu(this);
    if (target && !goes_with_others(*target)) {
        const auto kind = target->kind;
        if (kind == TargetKind::profile_point || kind == TargetKind::plan_point) {
            const auto& body = session_.plan().body;
            const bool smooth =
                (kind == TargetKind::plan_point ? body.plan : body.profile)[target->index].smooth;
            QAction* turn = menu.addAction(smooth ? tr("Make It a &Corner") : tr("Make It &Smooth"), this,
                                           &CarCanvas::toggle_smooth);
            turn->setShortcut(Qt::Key_S); // shown; the key itself is the drawing's
            menu.addAction(actions_->add_point);
            menu.addAction(actions_->remove);
            menu.addSeparator();
        }
    } else {
        if (!target && reach_ == Reach::wood && *view != View::front)
            menu.addAction(tr("&Add a Point Here"), this, [this, pixel, view] {
                if (!add_point(*view, pixel))
                    Q_EMIT hint(tr("Point at the outline itself to add a point to it."));
            });
        actions_->fill(menu);
    }
    if (reach_ == Reach::wood) {
        menu.addSeparator();
        menu.addAction(actions_->draw_pocket);
        menu.addAction(actions_->draw_bore);
    }
    menu.addSeparator();
    menu.addAction(tr("Zoom to &Fit"), this, &CarCanvas::zoom_to_fit)->setShortcut(Qt::CTRL | Qt::Key_0);
    menu.exec(event->globalPos());
}

void CarCanvas::hover(const QPointF& pixel) {
    if (grab_ || panning_from_ || stroke_ || picture_drag_ || band_) return;
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
    if (grab_ || stroke_ || picture_drag_ || band_) return;
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

void CarCanvas::cancel() {
    if (grab_ || stroke_ || picture_drag_) {
        const bool moving = grab_ ? grab_->moving : stroke_ ? stroke_->moving : picture_drag_->moving;
        grab_.reset();
        stroke_.reset();
        picture_drag_.reset();
        if (moving) session_.cancel_gesture();
        unsetCursor();
        Q_EMIT hint({});
    } else if (band_) {
        const auto kept = std::exchange(band_, {})->kept;
        select_these(kept);
    } else if (tool_ == Tool::pick) {
        select({});
        select_finding({});
        pointed_out_.reset();
        update();
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
