#include "drawing/car_canvas.hpp"

#include "drawing/finding_marks.hpp"
#include "drawing/outline_points.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <QContextMenuEvent>
#include <QMenu>
#include <QPainter>
#include <QPointer>

#include <algorithm>

namespace rampwright::ui {

CarCanvas::CarCanvas(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    setObjectName(QStringLiteral("drawing"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("Drawing of the car"));
    setWhatsThis(
        tr("The car to scale: from the side, from above and from the front. What the step in hand is about "
           "can be "
           "dragged, and nudged with the arrow keys. The wheel zooms, the middle button moves the paper."));
    connect(&session_, &Session::changed, this, &CarCanvas::refresh);
    connect(&session_, &Session::car_chosen, this, [this] {
        grab_.reset();
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
    PaintContext c{
        map_,     shape_, session_.plan(),  session_.project(), session_.figures(), reach_, selected_,
        hovered_, {},     selected_finding_};
    if (grab_ && grab_->moving) c.dragged_in = grab_->view;
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
        paint_limits(painter, c, view);
        paint_car(painter, c, view);
        paint_handles(painter, c, view);
        painter.restore();
    }
    painter.setClipRect(map_.paper());
    paint_marks(painter, c);
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
    reach_ = reach;
    hovered_.reset();
    select({});
    update();
}

void CarCanvas::select(std::optional<Target> target) {
    if (target == selected_) return;
    selected_ = target;
    Q_EMIT selection_changed(selected_);
    update();
}

void CarCanvas::select_finding(std::optional<std::size_t> finding) {
    if (finding == selected_finding_) return;
    selected_finding_ = finding;
    Q_EMIT finding_selected(finding);
    update();
}

template <class MakeEdit>
void CarCanvas::attempt(MakeEdit make_edit, const QString& merge) {
    try {
        session_.apply(make_edit(), merge);
    } catch (const Problem& problem) {
        Q_EMIT hint(problem_text(problem));
    }
}

void CarCanvas::remove_selected() {
    if (!selected_ || grab_) return;
    const QString stuck =
        selected_->kind == TargetKind::piece ? QString() : why_stuck(session_.plan(), *selected_);
    if (!stuck.isEmpty()) {
        Q_EMIT hint(stuck);
        return;
    }
    attempt([&] { return remove_target(session_.document(), session_.car(), *selected_).value_or(Edit{}); });
    select({});
}

void CarCanvas::toggle_smooth() {
    if (!selected_) return;
    const bool plan = selected_->kind == TargetKind::plan_point;
    if (!plan && selected_->kind != TargetKind::profile_point) return;
    const auto& body = session_.plan().body;
    const bool smooth = (plan ? body.plan : body.profile)[selected_->index].smooth;
    attempt([&] {
        return set_outline_smooth(session_.document(), session_.car(), plan, selected_->index, !smooth);
    });
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
    attempt([&] {
        return insert_outline_point(session_.document(), session_.car(), plan, place.before, place.at,
                                    smooth);
    });
    select(Target{any.kind, place.before, 0});
    return true;
}

} // namespace rampwright::ui
