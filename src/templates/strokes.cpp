#include "templates/strokes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

constexpr double hair = 1e-6; ///< m: a line this close to the outline is the outline

Vec2 point_of(const Stroke& stroke, double t) {
    const double s = 1 - t;
    const auto& c = stroke.control;
    return s * s * s * c[0] + 3 * s * s * t * c[1] + 3 * s * t * t * c[2] + t * t * t * c[3];
}

double cross(const Vec2& a, const Vec2& b) {
    return a.x() * b.y() - a.y() * b.x();
}

bool inside(const std::vector<Vec2>& polygon, const Vec2& p) {
    bool in = false;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec2 &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
        if ((a.y() <= p.y()) == (b.y() <= p.y())) continue;
        if (a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) > p.x()) in = !in;
    }
    return in;
}

double distance(const std::vector<Vec2>& polygon, const Vec2& p) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec2 &a = polygon[i], along = polygon[(i + 1) % polygon.size()] - a;
        const double square = along.squaredNorm();
        const double t = square > 0 ? std::clamp((p - a).dot(along) / square, 0.0, 1.0) : 0;
        least = std::min(least, (a + t * along - p).norm());
    }
    return least;
}

/// Where the line from `a` to `b` meets the polygon's edges, by its parameter: 0, 1 and what lies between.
std::vector<double> meetings(const std::vector<Vec2>& polygon, const Vec2& a, const Vec2& b) {
    std::vector<double> at{0, 1};
    const Vec2 along = b - a;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec2 &p = polygon[i], edge = polygon[(i + 1) % polygon.size()] - p;
        const double turn = cross(along, edge);
        if (std::abs(turn) > 1e-12 * along.norm() * edge.norm()) {
            const double t = cross(p - a, edge) / turn, s = cross(p - a, along) / turn;
            if (t > 0 && t < 1 && s >= 0 && s <= 1) at.push_back(t);
        } else if (const double t = (p - a).dot(along) / along.squaredNorm(); t > 0 && t < 1) {
            at.push_back(t); // alongside: it may leave the edge where the edge ends
        }
    }
    std::sort(at.begin(), at.end());
    return at;
}

} // namespace

Stroke straight_stroke(const Vec2& from, const Vec2& to) {
    return {{from, from + (to - from) / 3, to + (from - to) / 3, to}, true};
}

std::vector<Stroke> straight_strokes(const std::vector<Vec2>& points, bool closed) {
    std::vector<Stroke> strokes;
    for (std::size_t i = 0; i + 1 < points.size() + closed; ++i)
        strokes.push_back(straight_stroke(points[i], points[(i + 1) % points.size()]));
    return strokes;
}

std::vector<Stroke> ellipse_strokes(const Vec2& centre, const Vec2& half_one, const Vec2& half_other) {
    const double pull = 4. / 3 * (std::numbers::sqrt2 - 1); // the usual quarter of a circle as a cubic
    std::vector<Stroke> strokes;
    Vec2 u = half_one, v = half_other;
    for (int quarter = 0; quarter < 4; ++quarter) {
        strokes.push_back({{centre + u, centre + u + pull * v, centre + v + pull * u, centre + v}, false});
        const Vec2 next = -u;
        u = v;
        v = next;
    }
    return strokes;
}

std::vector<Vec2> flatten(const LinePath& path, double tolerance) {
    std::vector<Vec2> points;
    if (path.circle) {
        const double step =
            2 * std::acos(std::max(0., 1 - tolerance / std::max(path.circle->radius, tolerance)));
        const int count = std::clamp(static_cast<int>(std::ceil(2 * std::numbers::pi / step)), 8, 2000);
        for (int i = 0; i < count; ++i) {
            const double angle = 2 * std::numbers::pi * i / count;
            points.push_back(path.circle->centre +
                             path.circle->radius * Vec2(std::cos(angle), std::sin(angle)));
        }
        return points;
    }
    for (const Stroke& stroke : path.strokes) {
        const auto& c = stroke.control;
        // Wang's bound for the distance of a Bézier curve from its chords.
        const double bend = std::max((c[0] - 2 * c[1] + c[2]).norm(), (c[1] - 2 * c[2] + c[3]).norm());
        const int count =
            stroke.straight
                ? 1
                : static_cast<int>(std::clamp(std::ceil(std::sqrt(0.75 * bend / tolerance)), 1., 1000.));
        for (int i = 0; i < count; ++i)
            points.push_back(i == 0 ? c[0] : point_of(stroke, double(i) / count));
    }
    if (!path.closed && !path.strokes.empty()) points.push_back(path.strokes.back().control[3]);
    return points;
}

std::vector<LinePath> clip_to(const std::vector<Vec2>& polygon, const LinePath& path) {
    constexpr double tolerance = 2e-6;
    std::vector<Vec2> points = flatten(path, tolerance);
    const bool closed = path.closed || path.circle;
    if (closed && !points.empty()) points.push_back(points.front());

    // The kept stretches of the path, each a chain of points.
    std::vector<std::vector<Vec2>> chains;
    bool whole = true, joined = false;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const Vec2 &a = points[i], along = points[i + 1] - a;
        if (along.norm() < 1e-12) continue;
        const std::vector<double> at = meetings(polygon, a, points[i + 1]);
        for (std::size_t k = 0; k + 1 < at.size(); ++k) {
            if ((at[k + 1] - at[k]) * along.norm() < 1e-9) continue;
            const Vec2 middle = a + (at[k] + at[k + 1]) / 2 * along;
            if (!inside(polygon, middle) || distance(polygon, middle) < hair) {
                whole = joined = false;
                continue;
            }
            if (!joined) chains.push_back({a + at[k] * along});
            chains.back().push_back(a + at[k + 1] * along);
            joined = true;
        }
    }
    if (whole) return {path};
    // Where a closed path was begun in the middle of a stretch, its last and its first are one.
    if (closed && joined && chains.size() > 1 && (chains.front().front() - points.front()).norm() < 1e-12) {
        chains.back().insert(chains.back().end(), chains.front().begin() + 1, chains.front().end());
        chains.erase(chains.begin());
    }
    std::vector<LinePath> pieces;
    for (std::vector<Vec2>& chain : chains) {
        // Stretches of one straight line are one stroke.
        std::vector<Vec2> kept;
        for (const Vec2& p : chain) {
            while (kept.size() > 1 && std::abs(cross(kept.back() - kept[kept.size() - 2], p - kept.back())) <
                                          1e-12 * (p - kept.back()).norm())
                kept.pop_back();
            kept.push_back(p);
        }
        LinePath piece = path;
        piece.circle.reset();
        piece.closed = false;
        piece.strokes = straight_strokes(kept, false);
        pieces.push_back(std::move(piece));
    }
    return pieces;
}

} // namespace rampwright
