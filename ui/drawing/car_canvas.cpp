#include "drawing/car_canvas.hpp"

#include "drawing/canvas_access.hpp"
#include "drawing/drawing_actions.hpp"
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
        pointed_out_.reset();
        zoom_to_fit();
        refresh();
    });
    refresh();
    actions_ = new DrawingActions(session_, *this);
}

void CarCanvas::refresh() {
    pointed_out_.reset(); // it was a place of the car as it was
    shape_ = make_car_shape(session_.plan());
    const auto all = targets_in(session_.plan(), last_view_, reach_);
    const auto gone = [&](const Target& target) {
        return std::none_of(all.begin(), all.end(), [&](const Target& each) {
            return each.kind == target.kind && each.index == target.index;
        });
    };
    if (hovered_ && gone(*hovered_)) hovered_.reset();
    std::vector<Target> left = selection_;
    std::erase_if(left, gone);
    select_these(std::move(left));
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
                   selection_,
                   hovered_,
                   {},
                   {},
                   selected_finding_,
                   ghost_,
                   {},
                   pointed_out_};
    for (const View view : {View::side, View::top})
        c.see_through[index(view)] = shown_underlay(view) != nullptr;
    if (grab_ && grab_->moving) {
        c.held = grab_->target;
        c.dragged_in = grab_->view;
    }
    if (stroke_ && stroke_->moving) {
        c.held = selected_;
        c.dragged_in = stroke_->view;
    }
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
    if (band_ && band_->moving) {
        QColor fill = theme().accent;
        fill.setAlpha(40);
        painter.setPen(QPen(theme().accent, 1));
        painter.setBrush(fill);
        painter.drawRect(QRectF(band_->pressed_at, band_->at).normalized());
        painter.setBrush(Qt::NoBrush);
    }
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
    Q_EMIT reach_changed();
    update();
}

void CarCanvas::select(std::optional<Target> target) {
    select_these(target ? std::vector{*target} : std::vector<Target>());
}

void CarCanvas::select_these(std::vector<Target> targets) {
    if (targets == selection_) return;
    selection_ = std::move(targets);
    selected_ = selection_.size() == 1 ? std::optional(selection_.front()) : std::nullopt;
    if (selected_) set_view_of(*selected_);
    Q_EMIT selection_changed(selected_);
    update();
}

void CarCanvas::select_finding(std::optional<std::size_t> finding) {
    if (finding == selected_finding_) return;
    selected_finding_ = finding;
    Q_EMIT finding_selected(finding);
    update();
}

void CarCanvas::point_out(const PointedOut& place) {
    pointed_out_ = place;
    zoom_to_fit();
    update();
    Q_EMIT place_shown();
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
