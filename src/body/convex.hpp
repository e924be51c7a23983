#pragma once

#include "body/section.hpp"

#include <rampwright/body/solid.hpp>

#include <Eigen/Geometry>

#include <variant>
#include <vector>

namespace rampwright::body_detail {

/// A place along x where a section changes its kind. `sharp`: there it may grow like a root of the distance,
/// as a disc does that is met at its rim.
struct Event {
    double x;
    bool sharp;
};

/// A box turned about z; `along` is the unit vector of its first side in the x-y plane.
struct Block {
    Eigen::Vector3d centre, half;
    Eigen::Vector2d along{1, 0};
};

/// A round rod, or what a drill leaves: from `from` along the unit vector `along`; a tip of height `tip` and
/// half angle 59° beyond its length, or a flat end.
struct Rod {
    Eigen::Vector3d from, along;
    double length = 0, radius = 0, tip = 0;
};

struct Ball {
    Eigen::Vector3d centre;
    double radius = 0;
};

/// A convex solid that takes part in a measure: a cut, or a piece of ballast. Its sections at constant x are
/// bounded by straight lines and conics.
class Convex {
public:
    Convex(const Block& block) : shape_(block) {}
    Convex(const Rod& rod);
    Convex(const Ball& ball) : shape_(ball) {}
    explicit Convex(const Cut& cut);

    const std::variant<Block, Rod, Ball>& shape() const { return shape_; }
    Eigen::AlignedBox3d bounds() const;
    Section section(double x) const;
    /// Where its own sections change, its ends among them.
    void add_events(std::vector<Event>& events) const;
    Moments moments() const; ///< closed form
    /// Whether every face is flat and upright or level, so that every section is a rectangle.
    bool boxy() const { return std::holds_alternative<Block>(shape_); }
    /// The same solid seen from `origin`, in units of `unit`.
    Convex in_frame(const Eigen::Vector3d& origin, double unit) const;
    /// Its farthest point along a direction.
    Eigen::Vector3d farthest(const Eigen::Vector3d& direction) const;
    /// Its point nearest to another; that point itself where it lies inside.
    Eigen::Vector3d nearest(const Eigen::Vector3d& point) const;

private:
    std::variant<Block, Rod, Ball> shape_;
};

/// Moments about the origin from moments in the frame of `in_frame`.
Moments from_frame(const Moments& local, const Eigen::Vector3d& origin, double unit);

/// Moments about the origin from volume and ∫ ρ ρᵀ dV about the region's own centroid.
Moments about_origin(double volume, const Eigen::Vector3d& centroid, const Eigen::Matrix3d& central);

} // namespace rampwright::body_detail
