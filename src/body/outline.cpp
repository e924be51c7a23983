#include "body/bezier.hpp"

#include <rampwright/body/outline.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

using body_detail::chords_for;
using body_detail::point_on;
using Eigen::Vector2d;

/// The listed points less those that repeat the one before; `from` keeps their places in the list.
struct Ring {
    std::vector<Vector2d> at;
    std::vector<bool> smooth;
    std::vector<int> from;

    explicit Ring(const Outline& outline) {
        for (size_t i = 0; i < outline.size(); ++i) {
            if (!at.empty() && outline[i].at == at.back()) continue;
            at.push_back(outline[i].at);
            smooth.push_back(outline[i].smooth);
            from.push_back(static_cast<int>(i));
        }
        while (at.size() > 1 && at.back() == at.front()) {
            at.pop_back();
            smooth.pop_back();
            from.pop_back();
        }
    }
    size_t size() const { return at.size(); }
    size_t next(size_t i) const { return i + 1 == size() ? 0 : i + 1; }
    size_t previous(size_t i) const { return i == 0 ? size() - 1 : i - 1; }
};

/// Tangent at a smooth point, per unit of the centripetal knot.
Vector2d tangent(const Ring& ring, size_t i) {
    const Vector2d &before = ring.at[ring.previous(i)], &here = ring.at[i], &after = ring.at[ring.next(i)];
    const double d1 = std::sqrt((here - before).norm()), d2 = std::sqrt((after - here).norm());
    return (here - before) / d1 - (after - before) / (d1 + d2) + (after - here) / d2;
}

double turn(const Vector2d& a, const Vector2d& b, const Vector2d& c) {
    return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
}

bool within_box(const Vector2d& a, const Vector2d& b, const Vector2d& p) {
    return std::min(a.x(), b.x()) <= p.x() && p.x() <= std::max(a.x(), b.x()) &&
           std::min(a.y(), b.y()) <= p.y() && p.y() <= std::max(a.y(), b.y());
}

bool touch(const Vector2d& a, const Vector2d& b, const Vector2d& c, const Vector2d& d) {
    const double c1 = turn(a, b, c), c2 = turn(a, b, d), d1 = turn(c, d, a), d2 = turn(c, d, b);
    if (((c1 > 0 && c2 < 0) || (c1 < 0 && c2 > 0)) && ((d1 > 0 && d2 < 0) || (d1 < 0 && d2 > 0))) return true;
    return (c1 == 0 && within_box(a, b, c)) || (c2 == 0 && within_box(a, b, d)) ||
           (d1 == 0 && within_box(c, d, a)) || (d2 == 0 && within_box(c, d, b));
}

/// Whether b runs back over a, which ends where b begins.
bool folds_back(const Vector2d& start, const Vector2d& shared, const Vector2d& end) {
    return turn(start, shared, end) == 0 && (shared - start).dot(end - shared) < 0;
}

/// A piece as chords, fine enough to tell whether it crosses another.
struct Chain {
    std::vector<Vector2d> points;
    Eigen::AlignedBox2d box;

    explicit Chain(const OutlinePiece& piece) {
        const int n = piece.straight ? 1 : 24;
        for (int i = 0; i <= n; ++i)
            points.push_back(i == 0   ? piece.control[0]
                             : i == n ? piece.control[3]
                                      : point_on(piece, double(i) / n));
        for (const auto& p : points)
            box.extend(p);
    }
};

bool cross(const Chain& a, const Chain& b, bool b_follows, bool a_follows) {
    if (!a.box.intersects(b.box)) return false;
    const size_t na = a.points.size() - 1, nb = b.points.size() - 1;
    for (size_t i = 0; i < na; ++i)
        for (size_t j = 0; j < nb; ++j) {
            if (b_follows && i + 1 == na && j == 0) {
                if (folds_back(a.points[i], a.points[na], b.points[1])) return true;
            } else if (a_follows && j + 1 == nb && i == 0) {
                if (folds_back(b.points[j], b.points[nb], a.points[1])) return true;
            } else if (touch(a.points[i], a.points[i + 1], b.points[j], b.points[j + 1])) {
                return true;
            }
        }
    return false;
}

} // namespace

std::vector<OutlinePiece> outline_pieces(const Outline& outline) {
    const Ring ring(outline);
    std::vector<OutlinePiece> pieces;
    if (ring.size() < 2) return pieces;
    for (size_t i = 0; i < ring.size(); ++i) {
        const size_t j = ring.next(i);
        const Vector2d &p = ring.at[i], &q = ring.at[j];
        OutlinePiece piece{
            {p, p + (q - p) / 3, q + (p - q) / 3, q}, !(ring.smooth[i] || ring.smooth[j]), ring.from[i]};
        const double knot = std::sqrt((q - p).norm());
        if (ring.smooth[i]) piece.control[1] = p + knot / 3 * tangent(ring, i);
        if (ring.smooth[j]) piece.control[2] = q - knot / 3 * tangent(ring, j);
        // A parabola is the cubic whose inner control points both lie two thirds of the way to one point.
        if (ring.smooth[i] && !ring.smooth[j])
            piece.control[2] = q + 2. / 3 * (p + 1.5 * (piece.control[1] - p) - q);
        if (!ring.smooth[i] && ring.smooth[j])
            piece.control[1] = p + 2. / 3 * (q + 1.5 * (piece.control[2] - q) - p);
        pieces.push_back(piece);
    }
    return pieces;
}

std::vector<Vector2d> flatten(const Outline& outline, double tolerance) {
    std::vector<Vector2d> points;
    for (const auto& piece : outline_pieces(outline)) {
        const int n = chords_for(piece, tolerance);
        for (int i = 0; i < n; ++i)
            points.push_back(i == 0 ? piece.control[0] : point_on(piece, double(i) / n));
    }
    return points;
}

void check_outline(const Outline& outline, const std::string& where) {
    for (size_t i = 0; i < outline.size(); ++i)
        if (!outline[i].at.allFinite())
            throw Problem(Exit::could_not, where + "/" + std::to_string(i),
                          Core::tr("this point is not a number"), Core::tr("give it two finite coordinates"));
    if (Ring(outline).size() < 3)
        throw Problem(Exit::could_not, where,
                      Core::tr("an outline of fewer than three points encloses nothing"),
                      Core::tr("give it at least three different points"));
    const auto pieces = outline_pieces(outline);
    const std::vector<Chain> chains(pieces.begin(), pieces.end());
    const size_t n = pieces.size();
    for (size_t i = 0; i < n; ++i)
        for (size_t j = i + 1; j < n; ++j)
            if (cross(chains[i], chains[j], j == i + 1, i == 0 && j + 1 == n))
                throw Problem(
                    Exit::could_not, where + "/" + std::to_string(pieces[i].from),
                    Core::tr("the outline touches or crosses itself: the stretch from this point meets the "
                             "one from point {what}",
                             {{"what", std::to_string(pieces[j].from)}}),
                    Core::tr("move one of the points so that the outline runs around the wood once"));
}

} // namespace rampwright
