#include "run/race_view.hpp"

#include "drawing/pens.hpp"
#include "look/theme.hpp"
#include "run/bell_plot.hpp"

#include <QPainter>
#include <QPainterPath>
#include <QtMath>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

/// A car's side view in pixels: wood, wheels, what it carries.
void paint_racer(QPainter& painter, const CarShape& shape, const QTransform& to_pixel, const QColor& line,
                 bool with_ballast) {
    const Theme& t = theme();
    const QPainterPath wood = to_pixel.map(shape.wood[index(View::side)]);
    painter.setPen(outline_pen(line, 1.6));
    painter.setBrush(t.wood);
    painter.drawPath(wood);
    if (with_ballast)
        for (const auto& piece : shape.ballast) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(t.metal);
            painter.drawPath(to_pixel.map(piece.outline[index(View::side)]));
        }
    painter.setPen(outline_pen(line, 1.6));
    painter.setBrush(t.wheel);
    for (const Corner corner : {Corner::rear_right, Corner::front_right}) {
        const auto& wheel = shape.wheels[static_cast<std::size_t>(corner)];
        QPainterPath rim;
        rim.addEllipse(QPointF(wheel.centre.x(), wheel.centre.z()), wheel.radius, wheel.radius);
        painter.drawPath(to_pixel.map(rim));
    }
    painter.setBrush(Qt::NoBrush);
}

/// The surface between two places, in pixels.
QPolygonF surface_line(const Track& track, double from, double to, double step, const QTransform& to_pixel) {
    QPolygonF line;
    for (double s = from; s < to; s += step)
        line << to_pixel.map(QPointF(track.point(s).at.real(), track.point(s).at.imag()));
    line << to_pixel.map(QPointF(track.point(to).at.real(), track.point(to).at.imag()));
    return line;
}

} // namespace

RaceView::RaceView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("race.view"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
}

void RaceView::look(const Race* race, double time) {
    race_ = race;
    time_ = time;
    setAccessibleName(race ? tr("The lane from the side, with %1 and %2").arg(race->name(0), race->name(1))
                           : tr("The lane from the side"));
    update();
}

void RaceView::paintEvent(QPaintEvent*) {
    if (!race_) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(text_font(0.9));
    const QRectF room = QRectF(rect()).adjusted(12, 8, -12, -8);
    const double split = room.top() + 0.46 * room.height();
    paint_lane(painter, QRectF(room.topLeft(), QPointF(room.right(), split - 8)));
    painter.setPen(QPen(theme().paper_edge, 1));
    painter.drawLine(QPointF(room.left(), split), QPointF(room.right(), split));
    paint_camera(painter, QRectF(QPointF(room.left(), split + 1), room.bottomRight()));
}

/// The lane from start to finish at one scale both ways; the cars as pennants at their noses, since to scale
/// they would be specks.
void RaceView::paint_lane(QPainter& painter, const QRectF& room) const {
    const Theme& t = theme();
    const Track& track = race_->track();
    const double from = std::max(0.0, track.start_line() - 0.3),
                 to = std::min(track.length(), track.finish_line() + 0.5);
    const QPolygonF shape = surface_line(track, from, to, 0.02, QTransform());
    const QRectF box = shape.boundingRect();
    const double pennants = 34;
    const double scale =
        std::min(room.width() / box.width(), (room.height() - pennants - 6) / std::max(box.height(), 1e-3));
    QTransform to_pixel;
    to_pixel.translate(room.left() + (room.width() - scale * box.width()) / 2 - scale * box.left(),
                       room.bottom() - 4 + scale * box.top());
    to_pixel.scale(scale, -scale);
    painter.setPen(outline_pen(t.ink, 1.8));
    painter.drawPolyline(to_pixel.map(shape));
    const auto at = [&](double s) {
        const auto point = track.point(s).at;
        return to_pixel.map(QPointF(point.real(), point.imag()));
    };
    painter.setPen(centre_pen(t.faint_ink));
    for (const double line : {track.start_line(), track.finish_line()})
        painter.drawLine(at(line) + QPointF(0, 5), at(line) - QPointF(0, 14));
    const QFontMetricsF metrics(painter.font());
    for (const std::size_t which : {std::size_t(1), std::size_t(0)}) {
        const double reached = track.start_line() + race_->place(which, time_);
        const QPointF foot = at(std::min(reached, to));
        const double high = which == 0 ? 16 : 30;
        const QColor colour = car_colour(which == 0);
        painter.setPen(QPen(colour, 1.8, which == 0 ? Qt::SolidLine : Qt::DashLine));
        painter.drawLine(foot, foot - QPointF(0, high));
        const QString name = race_->name(which);
        const double wide = metrics.horizontalAdvance(name) + 10;
        const double x = foot.x() + wide > room.right() ? foot.x() - wide : foot.x();
        painter.setPen(t.ink);
        painter.drawText(QPointF(x + 5, foot.y() - high + metrics.ascent() / 2 - 1), name);
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawEllipse(foot, 3, 3);
        painter.setBrush(Qt::NoBrush);
    }
}

/// What runs along with them: turned so that the lane lies level, wide enough for both.
void RaceView::paint_camera(QPainter& painter, const QRectF& room) const {
    const Theme& t = theme();
    const Track& track = race_->track();
    painter.save();
    painter.setClipRect(room);
    const double a = race_->place(0, time_), b = race_->place(1, time_);
    const double car = 0.19; // m, about what a car is long
    const double wide = std::max(0.62, std::abs(a - b) + 2.2 * car);
    const double middle = track.start_line() + 0.5 * (a + b) - 0.45 * car;
    const double scale = std::min(room.width() / wide, room.height() / 0.105);
    const double half = 0.5 * room.width() / scale;
    const SurfacePoint centre = track.point(middle);
    const double slope = std::arg(centre.tangent);
    // Rows from the car outward: to the camera's place, level, to pixels.
    const QTransform level =
        QTransform::fromTranslate(-centre.at.real(), -centre.at.imag()) * QTransform().rotateRadians(-slope);
    // The far lane is seen above the near one.
    const double far_lift = 0.30 * room.height();
    for (const std::size_t which : {std::size_t(1), std::size_t(0)}) {
        const double base = room.bottom() - 10 - (which == 1 ? far_lift : 0);
        const QTransform to_pixel =
            level * QTransform::fromScale(scale, -scale) * QTransform::fromTranslate(room.center().x(), base);
        painter.setPen(outline_pen(which == 0 ? t.ink : t.faint_ink, which == 0 ? 1.8 : 1.2));
        painter.drawPolyline(surface_line(track, middle - half, middle + half, 0.01, to_pixel));
        for (const double line : {track.start_line(), track.finish_line()}) {
            if (std::abs(line - middle) > half) continue;
            const auto p = track.point(line).at;
            painter.setPen(centre_pen(t.faint_ink));
            const QPointF foot = to_pixel.map(QPointF(p.real(), p.imag()));
            painter.drawLine(foot, foot - QPointF(0, far_lift));
        }
        paint_racer(painter, race_->shape(which), race_->stand(which, time_) * to_pixel,
                    car_colour(which == 0), true);
    }
    painter.restore();
    painter.setPen(t.faint_ink);
    const double falls = qRadiansToDegrees(-slope);
    painter.drawText(room.adjusted(0, 4, -4, 0), Qt::AlignTop | Qt::AlignRight,
                     std::abs(falls) < 0.05 ? tr("along with them, on the level")
                                            : tr("along with them, %1° downhill").arg(falls, 0, 'f', 1));
}

} // namespace rampwright::ui
