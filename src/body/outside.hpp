#pragma once

#include "body/stock.hpp"

#include <optional>

namespace rampwright::body_detail {

/// An outline as chords, for distances.
class Polygon {
public:
    explicit Polygon(const Outline& outline);

    const std::vector<Eigen::Vector2d>& points() const { return points_; } ///< counter-clockwise
    bool inside(const Eigen::Vector2d& p) const;
    Eigen::Vector2d nearest(const Eigen::Vector2d& p) const; ///< on the edge
    double outside(const Eigen::Vector2d& p) const;          ///< distance; zero inside

private:
    std::vector<Eigen::Vector2d> points_;
};

/// A point in the square of side r at a rounded corner of a section.
struct InCorner {
    Eigen::Vector2d arm; ///< (y, z) from the centre of the corner's arc
    double r;
    bool right, top;
};
std::optional<InCorner> in_corner(const Rectangle& rectangle, double y, double z);
std::optional<InCorner> in_corner(const std::vector<Rectangle>& section, double y, double z);

} // namespace rampwright::body_detail
