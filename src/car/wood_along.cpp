#include "car/fit.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace rampwright {

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

/// Where low <= a + b u <= high, cut out of `u`; false when nothing is left.
bool clip(Interval& u, double a, double b, double low, double high) {
    if (b == 0) return a > low && a < high;
    const double first = (low - a) / b, last = (high - a) / b;
    u.low = std::max(u.low, std::min(first, last));
    u.high = std::min(u.high, std::max(first, last));
    return u.low < u.high;
}

std::vector<Interval> common(const std::vector<Interval>& one, const std::vector<Interval>& other) {
    std::vector<Interval> both;
    for (const Interval& a : one)
        for (const Interval& b : other)
            if (std::max(a.low, b.low) < std::min(a.high, b.high))
                both.push_back({std::max(a.low, b.low), std::min(a.high, b.high)});
    return both;
}

/// Where a polygon is at a given second coordinate: intervals of x.
std::vector<Interval> level_section(const OutlinePolygon& polygon, double level) {
    std::vector<double> crossings;
    const auto& points = polygon.points();
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Vec2 &a = points[i], &b = points[(i + 1) % points.size()];
        if ((a.y() <= level) != (b.y() <= level))
            crossings.push_back(a.x() + (b.x() - a.x()) * (level - a.y()) / (b.y() - a.y()));
    }
    return between_crossings(std::move(crossings));
}

bool contains(const std::vector<Interval>& intervals, double value) {
    return std::any_of(intervals.begin(), intervals.end(),
                       [value](const Interval& i) { return i.low <= value && value <= i.high; });
}

std::vector<Interval> uncut_along(const BodyOutlines& outlines, const Vec3& through, int axis) {
    if (axis == 0)
        return common(level_section(outlines.plan, through.y()),
                      level_section(outlines.profile, through.z()));
    const auto across = outlines.plan.section(through.x()), up = outlines.profile.section(through.x());
    if (axis == 1) return contains(up, through.z()) ? across : std::vector<Interval>{};
    return contains(across, through.y()) ? up : std::vector<Interval>{};
}

} // namespace

std::optional<Interval> inside_cut(const Cut& cut, const Vec3& from, const Vec3& along) {
    Interval u{-infinite, infinite};
    if (const auto* pocket = std::get_if<Pocket>(&cut)) {
        for (int i = 0; i < 3; ++i)
            if (!clip(u, from[i], along[i], pocket->low[i], pocket->high[i])) return std::nullopt;
        return u;
    }
    const Bore& bore = std::get<Bore>(cut);
    const double length = (bore.to - bore.from).norm();
    const Vec3 axis = (bore.to - bore.from) / length, away = from - bore.from;
    if (!clip(u, away.dot(axis), along.dot(axis), 0, length)) return std::nullopt;
    // Distance from the axis: |p + u q|² <= r², p and q the parts of the line square to the axis.
    const Vec3 p = away - away.dot(axis) * axis, q = along - along.dot(axis) * axis;
    const double radius = bore.diameter / 2, square = q.squaredNorm(),
                 room = radius * radius - p.squaredNorm();
    if (square < 1e-24 * along.squaredNorm()) return room > 0 ? std::optional(u) : std::nullopt;
    const double middle = -p.dot(q) / square, half_square = middle * middle + room / square;
    if (half_square <= 0) return std::nullopt;
    const double half = std::sqrt(half_square);
    u = {std::max(u.low, middle - half), std::min(u.high, middle + half)};
    return u.low < u.high ? std::optional(u) : std::nullopt;
}

std::vector<WoodStretch> wood_along(const BodyOutlines& outlines, std::span<const Cut> cuts,
                                    const Vec3& through, int axis) {
    Vec3 from = through;
    from[axis] = 0;
    std::vector<WoodStretch> stretches;
    for (const Interval& uncut : uncut_along(outlines, through, axis))
        stretches.push_back({uncut, -1, -1});
    for (std::size_t i = 0; i < cuts.size() && !stretches.empty(); ++i) {
        const auto open = inside_cut(cuts[i], from, Vec3::Unit(axis));
        if (!open) continue;
        std::vector<WoodStretch> rest;
        for (const WoodStretch& stretch : stretches) {
            if (open->high <= stretch.range.low || open->low >= stretch.range.high) {
                rest.push_back(stretch);
                continue;
            }
            if (open->low > stretch.range.low)
                rest.push_back({{stretch.range.low, open->low}, stretch.low_cut, static_cast<int>(i)});
            if (open->high < stretch.range.high)
                rest.push_back({{open->high, stretch.range.high}, static_cast<int>(i), stretch.high_cut});
        }
        stretches = std::move(rest);
    }
    return stretches;
}

} // namespace rampwright
