#include "run/lane_picture.hpp"

#include "look/theme.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr int lane_samples = 240;
constexpr double board_thickness = 5; // pixels

struct LaneText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Lane)
};

QPolygonF surface_line(const Track& track, const LaneMap& map, double from, double to) {
    QPolygonF line;
    for (int n = 0; n <= lane_samples; ++n)
        line << map.to_pixel(track.point(from + (to - from) * n / lane_samples).at);
    return line;
}

void paint_race_line(QPainter& painter, const Track& track, const LaneMap& map, double s, const QString& word,
                     Qt::Alignment side) {
    const QPointF foot = map.to_pixel(track.point(s).at);
    painter.setPen(QPen(theme().ink, 1.4));
    painter.drawLine(foot, foot - QPointF(0, 22));
    painter.setFont(text_font(0.9));
    const QRectF box(side & Qt::AlignRight ? foot.x() - 124 : foot.x() + 4, foot.y() - 32, 120, 16);
    painter.drawText(box, side | Qt::AlignVCenter, word);
}

/// The car as two wheels and a wedge, to the picture's scale where that can be seen.
void paint_lane_car(QPainter& painter, const LaneMap& map, const CurvePoint& car, double radius) {
    const QPointF rear = map.to_pixel(car.rear_centre), front = map.to_pixel(car.front_centre);
    // A lane of ten metres leaves a car of 18 cm a few pixels: it is drawn at least this long.
    constexpr double least = 26;
    const double length = std::hypot(front.x() - rear.x(), front.y() - rear.y());
    const double larger = length > 0 ? std::max(1.0, least / length) : 1;
    painter.save();
    painter.translate(0.5 * (rear + front));
    painter.rotate(std::atan2(front.y() - rear.y(), front.x() - rear.x()) * 57.29577951308232);
    const double half = 0.5 * length * larger;
    const double wheel = std::max(3.0, radius * map.pixels_per_metre() * larger);
    painter.translate(0, radius * map.pixels_per_metre() - wheel);
    QPolygonF body;
    body << QPointF(-half * 1.35, -wheel * 0.2) << QPointF(-half * 1.35, -wheel * 2.1)
         << QPointF(-half * 0.4, -wheel * 2.0) << QPointF(half * 1.6, -wheel * 0.7)
         << QPointF(half * 1.6, -wheel * 0.2);
    painter.setPen(QPen(theme().wood_ink, 1));
    painter.setBrush(theme().wood);
    painter.drawPolygon(body);
    painter.setPen(QPen(theme().wheel_ink, 1));
    painter.setBrush(theme().wheel);
    painter.drawEllipse(QPointF(-half, 0), wheel, wheel);
    painter.drawEllipse(QPointF(half, 0), wheel, wheel);
    painter.restore();
}

} // namespace

LaneMap::LaneMap(const Track& track, double from, double to, const QRectF& room) {
    double x_low = 1e9, x_high = -1e9, z_low = 1e9, z_high = -1e9;
    for (int n = 0; n <= lane_samples; ++n) {
        const std::complex<double> at = track.point(from + (to - from) * n / lane_samples).at;
        x_low = std::min(x_low, at.real());
        x_high = std::max(x_high, at.real());
        z_low = std::min(z_low, at.imag());
        z_high = std::max(z_high, at.imag());
    }
    const double wide = std::max(0.1, x_high - x_low), high = std::max(0.05, z_high - z_low);
    scale_x_ = room.width() / wide;
    // To one scale if it fits; else lower, never higher.
    scale_z_ = std::min(scale_x_, room.height() / high);
    left_ = room.left();
    bottom_ = room.bottom();
    x0_ = x_low;
    z0_ = z_low;
}

QPointF LaneMap::to_pixel(std::complex<double> at) const {
    return {left_ + (at.real() - x0_) * scale_x_, bottom_ - (at.imag() - z0_) * scale_z_};
}

void paint_lane(QPainter& painter, const Track& track, const LaneMap& map, const LaneMarks& marks) {
    const Theme& t = theme();
    const double from = std::min(0.0, track.start_line()), to = std::max(track.length(), track.finish_line());
    QPolygonF top = surface_line(track, map, from, to);
    QPolygonF board = top;
    for (auto it = top.rbegin(); it != top.rend(); ++it)
        board << *it + QPointF(0, board_thickness);
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.wood);
    painter.drawPolygon(board);
    painter.setPen(QPen(t.wood_ink, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(top);
    if (marks.chosen) {
        painter.setPen(QPen(t.accent, 3.5, Qt::SolidLine, Qt::FlatCap));
        painter.drawPolyline(surface_line(track, map, marks.chosen->first, marks.chosen->second));
    }
    painter.setPen(QPen(t.wood_ink, 1.2));
    for (const double joint : marks.joints) {
        const SurfacePoint point = track.point(joint);
        const QPointF at = map.to_pixel(point.at);
        painter.drawLine(at, at + QPointF(0, board_thickness + 4));
    }
    painter.setPen(QPen(t.accent, 1.4));
    for (const Vec2& point : marks.points) {
        const QPointF at = map.to_pixel(point);
        painter.drawLine(at - QPointF(3, 3), at + QPointF(3, 3));
        painter.drawLine(at + QPointF(-3, 3), at + QPointF(3, -3));
    }
    paint_race_line(painter, track, map, track.start_line(), LaneText::tr("start"), Qt::AlignLeft);
    paint_race_line(painter, track, map, track.finish_line(), LaneText::tr("finish"), Qt::AlignRight);
    if (marks.car) paint_lane_car(painter, map, *marks.car, marks.wheel_radius);
}

std::vector<double> joints_of(const TrackPlan& plan) {
    std::vector<double> joints;
    double s = 0;
    for (const TrackPiece& piece : plan.pieces) {
        joints.push_back(s);
        if (const auto* straight = std::get_if<Straight>(&piece)) {
            s += straight->length;
        } else {
            const Arc& arc = std::get<Arc>(piece);
            s += arc.radius * std::abs(arc.turn) + arc.easing;
        }
    }
    if (!joints.empty()) joints.push_back(s);
    return joints;
}

} // namespace rampwright::ui
