#pragma once

#include <rampwright/study/curves.hpp>
#include <rampwright/track/track.hpp>

#include <QRectF>

#include <optional>
#include <vector>

class QPainter;

namespace rampwright::ui {

/// Where the lane lies on a picture: downhill to the right, X and Z to one scale where that fits, Z stretched
/// where the lane is too long for its height.
class LaneMap {
public:
    /// @param room in pixels, for the lane between `from` and `to`, m along the surface.
    LaneMap(const Track& track, double from, double to, const QRectF& room);
    QPointF to_pixel(std::complex<double> at) const;
    QPointF to_pixel(const Vec2& at) const { return to_pixel(std::complex<double>(at.x(), at.y())); }
    double pixels_per_metre() const { return scale_x_; }
    double stretch() const { return scale_z_ / scale_x_; }

private:
    double left_ = 0, bottom_ = 0, x0_ = 0, z0_ = 0, scale_x_ = 1, scale_z_ = 1;
};

/// What is drawn on the lane.
struct LaneMarks {
    std::vector<double> joints;                      ///< m along the surface: where pieces meet
    std::optional<std::pair<double, double>> chosen; ///< a piece, from and to
    std::vector<Vec2> points;                        ///< measured, m
    std::optional<CurvePoint> car;                   ///< where it is
    double wheel_radius = 0.015;
};

/// The surface in section, its start and finish lines with words, and the marks.
void paint_lane(QPainter& painter, const Track& track, const LaneMap& map, const LaneMarks& marks);

/// Where the pieces of a plan meet, m along the surface; empty for a measured one.
std::vector<double> joints_of(const TrackPlan& plan);

} // namespace rampwright::ui
