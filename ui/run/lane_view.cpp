#include "run/lane_view.hpp"

#include "look/theme.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/format.hpp>

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {

LaneView::LaneView(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    setObjectName(QStringLiteral("lane.view"));
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setWhatsThis(
        tr("The lane in section. Click a piece to choose it; the arrow keys go to the next. Drag the "
           "start or finish line."));
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void LaneView::refresh() {
    try {
        track_ = std::make_shared<const Track>(session_.project().track);
        problem_.clear();
    } catch (const Problem& problem) {
        track_.reset();
        problem_ = problem_text(problem);
    }
    const UnitSystem units = session_.project().units;
    setAccessibleName(
        track_
            ? tr("The lane: %1 from the start line to the finish line, the start line %2 high")
                  .arg(quantity_text(track_->finish_line() - track_->start_line(), Quantity::length, units),
                       quantity_text(track_->start_height(), Quantity::length, units))
            : tr("The lane cannot be drawn: %1").arg(problem_));
    if (piece_ && *piece_ >= session_.project().track.pieces.size()) piece_.reset();
    update();
    Q_EMIT redrawn();
}

void LaneView::choose(std::optional<std::size_t> piece) {
    piece_ = piece;
    update();
}

LaneMap LaneView::map() const {
    return {*track_, 0, std::max(track_->length(), track_->finish_line()),
            QRectF(24, 40, width() - 48, height() - 62)};
}

void LaneView::paintEvent(QPaintEvent*) {
    const Theme& t = theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), t.paper);
    if (!track_) {
        painter.setPen(t.ink);
        painter.drawText(rect().adjusted(20, 10, -20, -10), Qt::AlignCenter | Qt::TextWordWrap, problem_);
    } else {
        const TrackPlan& plan = session_.project().track;
        LaneMarks marks;
        marks.joints = joints_of(plan);
        marks.points = plan.measured;
        if (piece_ && *piece_ + 1 < marks.joints.size())
            marks.chosen = {marks.joints[*piece_], marks.joints[*piece_ + 1]};
        const LaneMap where = map();
        paint_lane(painter, *track_, where, marks);
        if (where.stretch() < 0.98) {
            painter.setPen(t.faint_ink);
            painter.setFont(text_font(0.85));
            painter.drawText(rect().adjusted(0, 4, -8, 0), Qt::AlignRight | Qt::AlignTop,
                             tr("heights × %1")
                                 .arg(QString::fromStdString(format(where.stretch(), Quantity::plain,
                                                                    UnitSystem::metric, {.decimals = 2}))));
        }
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(t.accent, 1.5, Qt::DotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(rect()).adjusted(1, 1, -2, -2));
}

QPoint LaneView::line_place(Line line) const {
    const double s = line == Line::start ? track_->start_line() : track_->finish_line();
    return map().to_pixel(track_->point(s).at).toPoint() - QPoint(0, 12);
}

std::optional<LaneView::Line> LaneView::line_at(QPointF pixel) const {
    constexpr double reach = 7, high = 16;
    for (const Line line : {Line::start, Line::finish}) {
        const QPointF away = pixel - line_place(line);
        if (std::abs(away.x()) <= reach && std::abs(away.y()) <= high) return line;
    }
    return std::nullopt;
}

/// The place along the surface below a pixel, to the millimetre.
double LaneView::place_of(double x) const {
    const LaneMap where = map();
    double low = 0, high = track_->length();
    for (int halving = 0; halving < 50; ++halving) {
        const double middle = 0.5 * (low + high);
        (where.to_pixel(track_->point(middle).at).x() < x ? low : high) = middle;
    }
    return std::floor(low * 1e3) * 1e-3;
}

void LaneView::mouseMoveEvent(QMouseEvent* event) {
    if (!track_) return;
    if (!held_) return setCursor(line_at(event->position()) ? Qt::SizeHorCursor : Qt::ArrowCursor);
    const double place = place_of(event->position().x());
    const TrackPlan& plan = session_.project().track;
    try {
        session_.preview(held_ == Line::start
                             ? set_track_lines(session_.gesture_base(), place, plan.finish_line)
                             : set_track_lines(session_.gesture_base(), plan.start_line, place));
    } catch (const Problem&) {
        // One line would pass the other: it stays where it was.
    }
}

void LaneView::mouseReleaseEvent(QMouseEvent*) {
    if (held_) session_.finish_gesture();
    held_.reset();
}

void LaneView::mousePressEvent(QMouseEvent* event) {
    if (!track_ || event->button() != Qt::LeftButton) return;
    held_ = line_at(event->position());
    if (held_) return session_.begin_gesture();
    const std::vector<double> joints = joints_of(session_.project().track);
    const LaneMap where = map();
    for (std::size_t n = 0; n + 1 < joints.size(); ++n) {
        const double from = where.to_pixel(track_->point(joints[n]).at).x();
        const double to = where.to_pixel(track_->point(joints[n + 1]).at).x();
        if (event->position().x() < from || event->position().x() >= to) continue;
        choose(n);
        Q_EMIT chosen(n);
        return;
    }
}

void LaneView::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && held_) {
        held_.reset();
        return session_.cancel_gesture();
    }
    const std::size_t count = session_.project().track.pieces.size();
    const bool left = event->key() == Qt::Key_Left, right = event->key() == Qt::Key_Right;
    if (count == 0 || (!left && !right)) return QWidget::keyPressEvent(event);
    const std::size_t now = piece_.value_or(right ? count - 1 : 0);
    const std::size_t next = right ? (now + 1) % count : (now + count - 1) % count;
    choose(next);
    Q_EMIT chosen(next);
}

} // namespace rampwright::ui
