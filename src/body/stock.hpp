#pragma once

#include "body/convex.hpp"
#include "body/strips.hpp"

namespace rampwright::body_detail {

/// One rectangle of the uncut body's section at an x, its corners rounded by r.
struct Rectangle {
    double y0, y1, z0, z1, r;

    /// As a section, seen from (y, z) in units of `unit`.
    Section section(double y, double z, double unit) const;
};

/// The uncut body: profile and plan in strips, and the edge rounding.
class Stock {
public:
    /// Checks the whole shape, its cuts too: throws Problem as `measure` says.
    explicit Stock(const BodyShape& shape);

    const Strips& profile() const { return profile_; }
    const Strips& plan() const { return plan_; }
    double edge_radius() const { return radius_; }
    /// Every section a rectangle with straight sides that change linearly along x.
    bool straight() const { return profile_.straight() && plan_.straight(); }
    bool rounded() const { return radius_ > 0; }

    /// Its section at x, as rectangles that do not meet; `out` is emptied first.
    void section(double x, std::vector<Rectangle>& out) const;
    /// Ends of the strips, and where rounding meets half a side.
    const std::vector<Event>& events() const { return events_; }
    Moments moments() const;
    /// Whether the box lies in the wood with nothing of the outside in it; may say no where a curve is near.
    bool holds(const Eigen::AlignedBox3d& box) const;

private:
    double radius_;
    Strips profile_, plan_;
    std::vector<Event> events_;
};

} // namespace rampwright::body_detail
