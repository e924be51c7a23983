#pragma once

#include <rampwright/body/outline.hpp>

#include <Eigen/Core>

#include <vector>

namespace rampwright {

struct Interval {
    double low = 0, high = 0;
    double length() const { return high - low; }
};

/// What lies inside between the places where a line crosses an outline, in any order: every second gap.
std::vector<Interval> between_crossings(std::vector<double> crossings);

/// An outline as straight edges: each curved piece becomes the same number of chords whatever its size, so
/// that every measure taken from it changes smoothly while a point is dragged.
class OutlinePolygon {
public:
    /// 24 chords keep within a thousandth of a piece's own bulge.
    static constexpr int chords = 24;
    explicit OutlinePolygon(const Outline& outline);

    const std::vector<Eigen::Vector2d>& points() const { return points_; }
    Interval along() const { return along_; }   ///< range of x
    Interval across() const { return across_; } ///< range of the second coordinate

    /// The inside at this x, low to high; empty outside of the outline. On a step the far side of it counts.
    std::vector<Interval> section(double x) const;
    /// Range of the second coordinate within [from, to] of x; low > high where there is nothing.
    Interval range_between(double from, double to) const;

private:
    std::vector<Eigen::Vector2d> points_;
    Interval along_, across_;
};

} // namespace rampwright
