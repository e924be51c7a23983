#include "drawing/car_canvas.hpp"

#include "drawing/canvas_access.hpp"
#include "drawing/finding_marks.hpp"
#include "drawing/outline_points.hpp"
#include "drawing/snap.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"
#include "trace/picture_store.hpp"

#include <QContextMenuEvent>
#include <QMenu>
#include <QPainter>
#include <QPointer>

#include <algorithm>

namespace rampwright::ui {

CarCanvas::CarCanvas(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), pictures_(new PictureStore(this)) {
    make_accessible(*this); // before its name is set, which already asks for its place in the tree
    setObjectName(QStringLiteral("drawing"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAcceptDrops(true);
    setAccessibleName(tr("Drawing of the car"));
    setWhatsThis(tr(
        "The car to scale: from the side, from above and from the front. What the step in hand is about can "
        "be dragged, chosen with Page Up and Page Down, and nudged with the arrow keys. Double-click the "
        "outline to add a point to it. The wheel zooms, the middle button moves the paper; on a touchpad two "
        "fingers do both."));
    connect(&session_, &Session::changed, this, &CarCanvas::refresh);
    connect(pictures_, &PictureStore::changed, this, qOverload<>(&CarCanvas::update));
    connect(&session_, &Session::file_changed, pictures_, &PictureStore::clear);
    connect(&session_, &Session::car_chosen, this, [this] {
        grab_.reset();
        picture_drag_.reset();
        set_tool(Tool::pick);
        select({});
        select_finding({});
        zoom_to_fit();
        refresh();
    });
    refresh();
}

void CarCanvas::refresh() {
    shape_ = make_car_shape(session_.plan());
    for (auto* target : {&selected_, &hovered_}) {
        if (!*target) continue;
        const auto all = targets_in(session_.plan(), last_view_, reach_);
        const bool there = std::any_of(all.begin(), all.end(), [&](const Target& each) {
            return each.kind == (*target)->kind && each.index == (*target)->index;
        });
        if (there) continue;
        target->reset();
        if (target == &selected_) Q_EMIT selection_changed({});
    }
    // The paper lies still under a drag.
    if (!session_.in_gesture()) refit();
    update();
}

void CarCanvas::refit() {
    const QRectF paper = QRectF(rect()).adjusted(8, 8, -8, -8);
    map_ = DrawingMap::fit(paper, shape_.extent(), zoom_, pan_);
}

PaintContext CarCanvas::context() const {
    PaintContext c{map_,
                   shape_,
                   session_.plan(),
                   session_.project(),
                   session_.figures(),
                   reach_,
                   selected_,
                   hovered_,
                   {},
                   selected_finding_,
                   ghost_,
                   {}};
    for (const View view : {View::side, View::top})
        c.see_through[index(view)] = shown_underlay(view) != nullptr;
    if (grab_ && grab_->moving) c.dragged_in = grab_->view;
    if (stroke_ && stroke_->moving) c.dragged_in = stroke_->view;
    return c;
}

void CarCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const PaintContext c = context();
    paint_sheet(painter, c);
    for (const View view : all_views) {
        painter.save();
        painter.setClipRect(map_.frame(view).intersected(map_.paper().adjusted(1, 1, -1, -1)));
        paint_picture(painter, view);
        paint_limits(painter, c, view);
        paint_car(painter, c, view);
        paint_handles(painter, c, view);
        paint_ghost(painter, c, view);
        painter.restore();
    }
    painter.setClipRect(map_.paper());
    paint_marks(painter, c);
    paint_measuring(painter);
    if (hasFocus()) {
        painter.setClipping(false);
        painter.setPen(QPen(theme().accent, 1.5));
        painter.drawRect(map_.paper().adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

void CarCanvas::resizeEvent(QResizeEvent*) {
    refit();
}

void CarCanvas::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) update();
    QWidget::changeEvent(event);
}

std::optional<Target> CarCanvas::target_at(const QPointF& pixel) const {
    const auto view = map_.view_at(pixel);
    return view ? pick(session_.plan(), shape_, map_, *view, reach_, pixel) : std::nullopt;
}

std::optional<std::size_t> CarCanvas::finding_at(const QPointF& pixel) const {
    for (const auto& mark : finding_marks(context()))
        if (QLineF(mark.at, pixel).length() <= finding_mark_radius + 2) return mark.number - 1;
    return {};
}

void CarCanvas::set_reach(Reach reach) {
    if (reach == reach_) return;
    set_tool(Tool::pick);
    reach_ = reach;
    hovered_.reset();
    select({});
    update();
}

void CarCanvas::select(std::optional<Target> target) {
    if (target == selected_) return;
    selected_ = target;
    if (target) set_view_of(*target);
    Q_EMIT selection_changed(selected_);
    update();
}

void CarCanvas::select_finding(std::optional<std::size_t> finding) {
    if (finding == selected_finding_) return;
    selected_finding_ = finding;
    Q_EMIT finding_selected(finding);
    update();
}

void CarCanvas::set_view_of(const Target& target) {
    if (target.kind == TargetKind::profile_point) last_view_ = View::side;
    if (target.kind == TargetKind::plan_point) last_view_ = View::top;
    if (target.kind == TargetKind::axle) last_view_ = View::side;
}

void CarCanvas::select_next(bool forward) {
    std::vector<Target> all;
    for (const View view : {View::side, View::top})
        for (const Target& target : targets_in(session_.plan(), view, reach_)) {
            const bool both = target.kind == TargetKind::piece || target.kind == TargetKind::cut;
            if (target.kind != TargetKind::cut_corner && (view == View::side || !both)) all.push_back(target);
        }
    if (all.empty()) return;
    const auto here = selected_ ? std::find(all.begin(), all.end(), *selected_) : all.end();
    const auto count = static_cast<std::ptrdiff_t>(all.size());
    const auto at = here == all.end() ? (forward ? -1 : count) : here - all.begin();
    select(all[static_cast<std::size_t>((at + (forward ? 1 : -1) + count) % count)]);
}

bool CarCanvas::attempt(const std::function<Edit()>& make_edit, const QString& merge) {
    try {
        session_.apply(make_edit(), merge);
        return true;
    } catch (const Problem& problem) {
        Q_EMIT hint(plain_text(problem));
        return false;
    }
}

void CarCanvas::remove_selected() {
    if (!selected_ || grab_) return;
    const Target target = *selected_;
    const bool profile = target.kind == TargetKind::profile_point,
               plan = target.kind == TargetKind::plan_point;
    const QString stuck = target.kind == TargetKind::piece ? QString() : why_stuck(session_.plan(), target);
    const auto& body = session_.plan().body;
    if (!stuck.isEmpty())
        Q_EMIT hint(stuck);
    else if ((profile && body.profile.size() <= 3) || (plan && body.plan.size() <= 3))
        Q_EMIT hint(tr("An outline keeps at least three points."));
    else if (attempt(
                 [&] { return remove_target(session_.document(), session_.car(), target).value_or(Edit{}); }))
        select({});
}

void CarCanvas::duplicate_selected() {
    if (!selected_ || grab_) return;
    const std::size_t car = session_.car(), index = selected_->index;
    // Beside the original, so that both can be seen.
    const Vec3 by(5 * snap_step(session_.project().units), 0, 0);
    if (selected_->kind == TargetKind::piece) {
        if (attempt([&] { return duplicate_ballast(session_.document(), car, index, by); }))
            select(Target{TargetKind::piece, session_.plan().ballast.size() - 1, 0});
    } else if (selected_->kind == TargetKind::cut || selected_->kind == TargetKind::cut_corner) {
        if (attempt([&] { return duplicate_cut(session_.document(), car, index, by); }))
            select(Target{TargetKind::cut, session_.plan().body.cuts.size() - 1, 0});
    }
}

void CarCanvas::toggle_smooth() {
    if (!selected_) return;
    const bool plan = selected_->kind == TargetKind::plan_point;
    if (!plan && selected_->kind != TargetKind::profile_point) return;
    if (const QString stuck = why_stuck(session_.plan(), *selected_); !stuck.isEmpty()) {
        Q_EMIT hint(stuck);
        return;
    }
    const auto& body = session_.plan().body;
    const bool smooth = (plan ? body.plan : body.profile)[selected_->index].smooth;
    attempt([&] {
        return set_outline_smooth(session_.document(), session_.car(), plan, selected_->index, !smooth);
    });
}

void CarCanvas::add_point_after_selected() {
    const bool plan = selected_ && selected_->kind == TargetKind::plan_point;
    if (!plan && !(selected_ && selected_->kind == TargetKind::profile_point)) {
        Q_EMIT hint(tr("Choose a point of the outline first, or double-click the line."));
        return;
    }
    if (const QString stuck = why_stuck(session_.plan(), *selected_); !stuck.isEmpty()) {
        Q_EMIT hint(stuck);
        return;
    }
    const auto& points = plan ? session_.plan().body.plan : session_.plan().body.profile;
    const std::size_t index = selected_->index;
    const Vec2 at = middle_of_stretch(points, index);
    const bool smooth = points[index].smooth && points[(index + 1) % points.size()].smooth;
    const Target added{selected_->kind, index + 1, 0};
    if (attempt([&] {
            return insert_outline_point(session_.document(), session_.car(), plan, index + 1, at, smooth);
        }))
        select(added);
}

bool CarCanvas::add_point(View view, const QPointF& pixel) {
    if (reach_ != Reach::wood || view == View::front) return false;
    const bool plan = view == View::top;
    const auto& points = plan ? session_.plan().body.plan : session_.plan().body.profile;
    const Target any{plan ? TargetKind::plan_point : TargetKind::profile_point, 0, 0};
    if (points.size() < 3 || !why_stuck(session_.plan(), any).isEmpty()) return false;
    const QPointF at = map_.to_plane_point(view, pixel);
    const OutlinePlace place = nearest_on_outline(points, {at.x(), at.y()});
    constexpr double reach = 8; // px
    if (place.distance * map_.pixels_per_metre() > reach) return false;
    const bool smooth = points[place.before - 1].smooth && points[place.before % points.size()].smooth;
    if (attempt([&] {
            return insert_outline_point(session_.document(), session_.car(), plan, place.before, place.at,
                                        smooth);
        }))
        select(Target{any.kind, place.before, 0});
    return true;
}

} // namespace rampwright::ui
