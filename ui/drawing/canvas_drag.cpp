// How the canvas moves what is chosen: by the hand, and by the arrow keys.
#include "drawing/car_canvas.hpp"
#include "drawing/snap.hpp"
#include "text/figure_text.hpp"

#include <QKeyEvent>
#include <QMouseEvent>

#include <cmath>
#include <utility>

namespace rampwright::ui {
namespace {

QString drag_hint() {
    return CarCanvas::tr("Ctrl: off the grid.  Shift: straight along or up.  Esc: put it back.");
}

} // namespace

void CarCanvas::press_target(View view, const Target& target, QMouseEvent* event) {
    const bool more = event->modifiers() & (Qt::ControlModifier | Qt::ShiftModifier);
    const QString stuck = why_stuck(session_.plan(), target);
    Click click = Click::nothing;
    if (more && goes_with_others(target))
        click = Click::toggle; // unless a drag follows, which these keys steer
    else if (selection_.size() > 1 && is_selected(target) && stuck.isEmpty())
        click = Click::alone;
    else
        select(target);
    if (!stuck.isEmpty()) {
        if (click == Click::toggle) toggle(target);
        Q_EMIT hint(stuck);
        return;
    }
    grab_ = Grab{
        target, view, event->position(), anchor_of(session_.plan(), target, view), session_.plan(), false, {},
        click,  {}};
    setCursor(Qt::ClosedHandCursor);
}

void CarCanvas::start_moving() {
    Grab& grab = *grab_;
    if (grab.click == Click::toggle && !is_selected(grab.target)) select(grab.target);
    if (selection_.size() > 1) grab.others = movable(session_.plan(), group());
    grab.moving = true;
    session_.begin_gesture();
}

void CarCanvas::drag_to(const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    if (!grab_->moving) {
        if (!means_to_move(grab_->pressed_at, pixel)) return;
        start_moving();
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
        const Document& base = session_.gesture_base();
        const std::size_t car = session_.car();
        session_.preview(
            grab_->others.size() > 0
                ? move_together(base, grab_->plan, shape_, car, grab_->others, grab_->view, at - grab_->start)
                : move_target(base, grab_->plan, shape_, car, grab_->target, grab_->view, at));
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
        Q_EMIT hint(done.refusal.isEmpty() && done.others.size() > 0 ? what_stays(done.others)
                                                                     : done.refusal);
    } else if (done.click == Click::toggle) {
        toggle(done.target);
    } else if (done.click == Click::alone) {
        select(done.target);
    }
    refit();
    update();
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
    if (selection_.empty()) return false;
    const auto axes = axes_of(last_view_);
    const double step = nudge_step(session_.project().units, event->modifiers());
    Vec3 by = Vec3::Zero();
    by[axes[0]] = across * step;
    by[axes[1]] = up * step;
    QString merge = QStringLiteral("nudge %1").arg(session_.car());
    for (const Target& each : selection_)
        merge +=
            QStringLiteral(" %1 %2 %3").arg(static_cast<int>(each.kind)).arg(each.index).arg(each.corner);
    if (!selected_) {
        attempt_group(
            [&] {
                return move_together(session_.document(), session_.plan(), shape_, session_.car(), group(),
                                     last_view_, by);
            },
            movable(session_.plan(), group()), merge);
        return true;
    }
    const QString stuck = why_stuck(session_.plan(), *selected_);
    if (!stuck.isEmpty()) {
        Q_EMIT hint(stuck);
        return true;
    }
    const Vec3 at = anchor_of(session_.plan(), *selected_, last_view_) + by;
    attempt(
        [&] {
            return move_target(session_.document(), session_.plan(), shape_, session_.car(), *selected_,
                               last_view_, at);
        },
        merge);
    return true;
}

} // namespace rampwright::ui
