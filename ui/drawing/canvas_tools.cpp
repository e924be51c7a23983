// What the canvas does with the tools: cuts drawn in a view, pieces put down from the shelf.
#include "drawing/car_canvas.hpp"
#include "drawing/cut_drawing.hpp"
#include "drawing/snap.hpp"
#include "text/figure_text.hpp"

#include <rampwright/core/constants.hpp>

#include <QDropEvent>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

QString stroke_hint(Tool tool) {
    switch (tool) {
    case Tool::pocket:
        return CarCanvas::tr(
            "Drag the pocket from corner to corner.  Enter: put one in the middle.  Esc: leave it.");
    case Tool::bore:
        return CarCanvas::tr(
            "Drag from where the drill goes in to where it stops, or click for a hole straight "
            "into this view.  Enter: put one in the middle.  Esc: leave it.");
    case Tool::piece:
        return CarCanvas::tr(
            "Click where it should lie.  Enter: put it in the last cut.  Esc: back on the shelf.");
    case Tool::move_picture:
        return CarCanvas::tr(
            "Drag the picture, or move it with the arrow keys.  Shift: straight along or up.  Esc: done.");
    case Tool::measure_picture:
        return CarCanvas::tr(
            "Click the first of two places on the picture whose distance you know.  Esc: leave it.");
    case Tool::pick:
        break;
    }
    return {};
}

} // namespace

double CarCanvas::drill() const {
    if (drill_ > 0) return drill_;
    const auto& bits = session_.project().tools.drill_bits;
    constexpr double usual = 6 * millimetre;
    return bits.empty() ? usual : bits.front();
}

void CarCanvas::set_tool(Tool tool) {
    if (tool == Tool::pocket || tool == Tool::bore) {
        const QString stuck = reach_ == Reach::wood ? why_stuck(session_.plan(), {TargetKind::cut, 0, 0})
                                                    : tr("Cuts are drawn in the step Shape.");
        if (!stuck.isEmpty()) {
            Q_EMIT hint(stuck);
            tool = Tool::pick;
        }
    }
    if ((tool == Tool::move_picture || tool == Tool::measure_picture) && !shown_underlay(View::side) &&
        !shown_underlay(View::top)) {
        Q_EMIT hint(tr("No picture shows under the drawing."));
        tool = Tool::pick;
    }
    measured_view_.reset();
    measured_from_.reset();
    if (tool != Tool::piece) carried_.reset();
    const bool changed = tool != tool_;
    tool_ = tool;
    ghost_.reset();
    if (!changed) return;
    hovered_.reset();
    if (tool == Tool::pick)
        unsetCursor();
    else
        setCursor(Qt::CrossCursor);
    Q_EMIT hint(stroke_hint(tool));
    Q_EMIT tool_changed(tool);
    update();
}

void CarCanvas::carry(std::size_t shelf) {
    if (reach_ != Reach::weight || shelf >= session_.project().shelf.size()) return;
    carried_ = shelf;
    set_tool(Tool::piece);
}

void CarCanvas::use_tool_somewhere() {
    if (stroke_) return;
    const CutHabit habit = CutHabit::of(session_.project().units);
    const CarPlan& plan = session_.plan();
    switch (tool_) {
    case Tool::pocket:
    case Tool::bore: {
        const CutPlan cut = tool_ == Tool::pocket ? usual_pocket(plan, shape_, habit)
                                                  : usual_bore(plan, shape_, habit, drill());
        last_view_ = View::top;
        if (!attempt([&] { return add_cut(session_.document(), session_.car(), cut); })) return;
        set_tool(Tool::pick);
        select(Target{TargetKind::cut, session_.plan().body.cuts.size() - 1, 0});
        break;
    }
    case Tool::piece: {
        const std::size_t shelf = *carried_;
        put_piece(shelf, place_piece_somewhere(session_.project().shelf[shelf], plan, shape_));
        break;
    }
    case Tool::pick:
    case Tool::move_picture:
    case Tool::measure_picture:
        break;
    }
}

QPointF CarCanvas::plane_point(View view, const QPointF& pixel, Qt::KeyboardModifiers modifiers) const {
    QPointF at = map_.to_plane_point(view, pixel);
    if (const double step = grid(modifiers); step > 0)
        at = {std::round(at.x() / step) * step, std::round(at.y() / step) * step};
    return at;
}

std::optional<CutPlan> CarCanvas::cut_between(const CarPlan& plan, View view, QPointF from,
                                              QPointF to) const {
    const CutHabit habit = CutHabit::of(session_.project().units);
    if (tool_ == Tool::pocket) return drawn_pocket(plan, shape_, habit, view, from, to);
    return drawn_bore(plan, shape_, habit, view, from, to, drill());
}

void CarCanvas::press_tool(View view, const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    if (tool_ == Tool::move_picture || tool_ == Tool::measure_picture) return press_picture(view, pixel);
    last_view_ = view;
    if (carried_) {
        drop_piece(*carried_, view, pixel, modifiers);
        return;
    }
    select({});
    stroke_ = Stroke{view, pixel, plane_point(view, pixel, modifiers), session_.plan(), false, false};
}

void CarCanvas::stroke_to(const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    if (!stroke_->moving) {
        if (!means_to_move(stroke_->pressed_at, pixel)) return;
        stroke_->moving = true;
        session_.begin_gesture();
    }
    QPointF to = plane_point(stroke_->view, pixel, modifiers);
    // A bore is held straight along or up.
    if (tool_ == Tool::bore && modifiers & Qt::ShiftModifier) {
        const QPointF way = to - stroke_->from;
        if (std::abs(way.x()) >= std::abs(way.y()))
            to.setY(stroke_->from.y());
        else
            to.setX(stroke_->from.x());
    }
    if (tool_ == Tool::bore && to == stroke_->from) return;
    const auto cut = cut_between(stroke_->plan, stroke_->view, stroke_->from, to);
    if (!cut) return;
    try {
        session_.preview(add_cut(session_.gesture_base(), session_.car(), *cut));
        stroke_->drawn = true;
        select(Target{TargetKind::cut, stroke_->plan.body.cuts.size(), 0});
    } catch (const Problem& problem) {
        Q_EMIT hint(plain_text(problem));
    }
}

void CarCanvas::finish_stroke() {
    const Stroke done = *stroke_;
    stroke_.reset();
    const Target added{TargetKind::cut, done.plan.body.cuts.size(), 0};
    bool made = done.drawn;
    if (done.drawn) {
        session_.finish_gesture();
    } else {
        if (done.moving) session_.cancel_gesture();
        const auto cut =
            tool_ == Tool::bore ? cut_between(done.plan, done.view, done.from, done.from) : std::nullopt;
        if (cut)
            made = attempt([&] { return add_cut(session_.document(), session_.car(), *cut); });
        else
            Q_EMIT hint(stroke_hint(tool_));
    }
    if (made) {
        set_tool(Tool::pick);
        select(added);
    }
    refit();
    update();
}

bool CarCanvas::put_piece(std::size_t shelf, const Placement& placement) {
    const ShelfPiece& piece = session_.project().shelf.at(shelf);
    if (piece.shape == PieceShape::putty && placement.in.empty()) {
        Q_EMIT hint(tr("Putty takes the shape of what it fills: let go of it over a pocket or a bore."));
        return false;
    }
    if (!attempt([&] { return add_from_shelf(session_.document(), session_.car(), shelf, placement); }))
        return false;
    set_tool(Tool::pick);
    select(Target{TargetKind::piece, session_.plan().ballast.size() - 1, 0});
    return true;
}

bool CarCanvas::drop_piece(std::size_t shelf, View view, const QPointF& pixel,
                           Qt::KeyboardModifiers modifiers) {
    if (reach_ != Reach::weight || shelf >= session_.project().shelf.size()) return false;
    last_view_ = view;
    return put_piece(shelf, place_piece(session_.project().shelf[shelf], session_.plan(), shape_, map_, view,
                                        pixel, grid(modifiers)));
}

void CarCanvas::show_ghost(std::size_t shelf, const QPointF& pixel, Qt::KeyboardModifiers modifiers) {
    const auto view = map_.view_at(pixel);
    const auto& pieces = session_.project().shelf;
    ghost_.reset();
    if (view && shelf < pieces.size())
        ghost_ = ghost_of(pieces[shelf], place_piece(pieces[shelf], session_.plan(), shape_, map_, *view,
                                                     pixel, grid(modifiers)));
    update();
}

void CarCanvas::dragEnterEvent(QDragEnterEvent* event) {
    if (reach_ == Reach::weight && shelf_piece_in(event->mimeData())) event->acceptProposedAction();
}

void CarCanvas::dragMoveEvent(QDragMoveEvent* event) {
    const auto shelf = shelf_piece_in(event->mimeData());
    if (!shelf || !map_.view_at(event->position())) return event->ignore();
    show_ghost(*shelf, event->position(), event->modifiers());
    event->acceptProposedAction();
}

void CarCanvas::dragLeaveEvent(QDragLeaveEvent*) {
    ghost_.reset();
    update();
}

void CarCanvas::dropEvent(QDropEvent* event) {
    const auto shelf = shelf_piece_in(event->mimeData());
    const auto view = map_.view_at(event->position());
    ghost_.reset();
    update();
    if (shelf && view && drop_piece(*shelf, *view, event->position(), event->modifiers())) {
        event->acceptProposedAction();
        setFocus();
    } else {
        event->ignore();
    }
}

} // namespace rampwright::ui
