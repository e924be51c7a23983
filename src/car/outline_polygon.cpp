#include "car/outline_polygon.hpp"

#include <algorithm>
#include <limits>
#include <utility>

namespace rampwright {

using Eigen::Vector2d;

namespace {

constexpr Interval nothing{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

void extend(Interval& interval, double value) {
    interval.low = std::min(interval.low, value);
    interval.high = std::max(interval.high, value);
}

double at(const Vector2d& a, const Vector2d& b, double x) {
    return a.y() + (b.y() - a.y()) * ((x - a.x()) / (b.x() - a.x()));
}

} // namespace

OutlinePolygon::OutlinePolygon(const Outline& outline) : along_(nothing), across_(nothing) {
    for (const OutlinePiece& piece : outline_pieces(outline)) {
        const auto& c = piece.control;
        const int count = piece.straight ? 1 : chords;
        for (int i = 0; i < count; ++i) {
            const double t = static_cast<double>(i) / count, s = 1 - t;
            points_.push_back(s * s * s * c[0] + 3 * s * s * t * c[1] + 3 * s * t * t * c[2] +
                              t * t * t * c[3]);
        }
    }
    for (const Vector2d& point : points_) {
        extend(along_, point.x());
        extend(across_, point.y());
    }
}

std::vector<Interval> between_crossings(std::vector<double> crossings) {
    std::sort(crossings.begin(), crossings.end());
    std::vector<Interval> inside;
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2)
        inside.push_back({crossings[i], crossings[i + 1]});
    return inside;
}

std::vector<Interval> OutlinePolygon::section(double x) const {
    std::vector<double> crossings;
    for (std::size_t i = 0; i < points_.size(); ++i) {
        const Vector2d &a = points_[i], &b = points_[(i + 1) % points_.size()];
        // Half-open, so that a vertex counts once; at the very front the edges that end there count.
        const bool crosses = x < along_.high ? (a.x() <= x) != (b.x() <= x) : (a.x() < x) != (b.x() < x);
        if (crosses) crossings.push_back(at(a, b, x));
    }
    return between_crossings(std::move(crossings));
}

Interval OutlinePolygon::range_between(double from, double to) const {
    Interval range = nothing;
    for (std::size_t i = 0; i < points_.size(); ++i) {
        const Vector2d &a = points_[i], &b = points_[(i + 1) % points_.size()];
        if (a.x() >= from && a.x() <= to) extend(range, a.y());
        for (const double x : {from, to})
            if (std::min(a.x(), b.x()) < x && x < std::max(a.x(), b.x())) extend(range, at(a, b, x));
    }
    return range;
}

} // namespace rampwright
