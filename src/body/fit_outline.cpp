#include "body/bezier.hpp"

#include <rampwright/body/fit_outline.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace rampwright {

namespace {

using body_detail::chords_for;
using body_detail::point_on;
using Eigen::Vector2d;

constexpr std::size_t most_vertices = 100000;

/// A vertex of the line as it was drawn.
struct Vertex {
    Vector2d at;
    bool inside = false;       ///< of a curve: not an end of a piece
    bool curved_after = false; ///< the chord to the next vertex stands for a curve
};

std::vector<Vertex> vertices_of(const DrawnLine& line, double tolerance) {
    std::vector<Vertex> vertices;
    for (const OutlinePiece& piece : line.pieces) {
        const int n = chords_for(piece, tolerance);
        for (int i = 0; i < n; ++i) {
            const Vector2d p = i == 0 ? piece.control[0] : point_on(piece, double(i) / n);
            if (!vertices.empty() && vertices.back().at == p) continue;
            vertices.push_back({p, i > 0, !piece.straight});
        }
        if (vertices.size() > most_vertices)
            throw Problem(Exit::could_not, "-", Core::tr("the line has too many points to be followed"),
                          Core::tr("simplify it in the drawing program, or check its scale"));
    }
    while (vertices.size() > 1 && vertices.back().at == vertices.front().at)
        vertices.pop_back();
    return vertices;
}

double distance_to(const Vector2d& p, const Vector2d& a, const Vector2d& b) {
    const Vector2d along = b - a;
    const double length2 = along.squaredNorm();
    const double share = length2 > 0 ? std::clamp((p - a).dot(along) / length2, 0., 1.) : 0;
    return (p - a - share * along).norm();
}

double distance_to(const Vector2d& p, const std::vector<Vector2d>& chain) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i + 1 < chain.size(); ++i)
        least = std::min(least, distance_to(p, chain[i], chain[i + 1]));
    return least;
}

/// A choice of the line's vertices as the points of an outline.
class Fit {
public:
    Fit(std::vector<Vertex> vertices, double tolerance) : line_(std::move(vertices)), tolerance_(tolerance) {}

    Outline run() {
        choose_ends_of_pieces();
        refine();
        for (const double share : {1. / 16, 1. / 4, 1.})
            thin_out(share * tolerance_);
        even_out();
        thin_out(tolerance_);
        Outline outline;
        for (const Point& point : points_)
            outline.push_back({line_[point.vertex].at, point.smooth});
        return outline;
    }

private:
    struct Point {
        std::size_t vertex = 0;
        bool smooth = false;
    };

    std::size_t next(std::size_t i, std::size_t by = 1) const { return (i + by) % points_.size(); }
    std::size_t previous(std::size_t i) const { return (i + points_.size() - 1) % points_.size(); }

    bool smooth_at(std::size_t vertex) const {
        const std::size_t n = line_.size();
        const Vertex& before = line_[(vertex + n - 1) % n];
        if (line_[vertex].inside) return true;
        if (!before.curved_after || !line_[vertex].curved_after) return false;
        const Vector2d in = line_[vertex].at - before.at, out = line_[(vertex + 1) % n].at - line_[vertex].at;
        const double turn = std::atan2(in.x() * out.y() - in.y() * out.x(), in.dot(out));
        constexpr double kink = 0.12; // rad, above what the chords of a fine curve turn by
        return std::abs(turn) < kink;
    }

    void choose_ends_of_pieces() {
        for (std::size_t i = 0; i < line_.size(); ++i)
            if (!line_[i].inside) points_.push_back({i, smooth_at(i)});
        // An outline has three points at least.
        for (std::size_t i = 0; points_.size() < 3 && i < line_.size();
             i += std::max<std::size_t>(1, line_.size() / 3))
            if (std::none_of(points_.begin(), points_.end(), [i](const Point& p) { return p.vertex == i; }))
                points_.insert(std::find_if(points_.begin(), points_.end(),
                                            [i](const Point& p) { return p.vertex > i; }),
                               {i, smooth_at(i)});
    }

    std::vector<Vector2d> chain(std::size_t from, std::size_t to) const {
        std::vector<Vector2d> points{line_[from].at};
        for (std::size_t i = from; i != to;) {
            i = (i + 1) % line_.size();
            points.push_back(line_[i].at);
        }
        return points;
    }

    /// How far the outline runs from the line between a point and the next, given the points around.
    double error(const Point& before, const Point& from, const Point& to, const Point& after) const {
        const bool straight = !from.smooth && !to.smooth;
        const std::vector<Vector2d> drawn = chain(from.vertex, to.vertex);
        std::vector<Vector2d> made{drawn.front(), drawn.back()};
        if (!straight) {
            Outline around;
            // What lies before a corner or after one does not bend this stretch, and may not be known.
            if (before.vertex != from.vertex) around.push_back({line_[before.vertex].at, before.smooth});
            const int index = static_cast<int>(around.size());
            around.push_back({drawn.front(), from.smooth});
            around.push_back({drawn.back(), to.smooth});
            if (after.vertex != before.vertex && after.vertex != to.vertex)
                around.push_back({line_[after.vertex].at, after.smooth});
            for (const OutlinePiece& piece : outline_pieces(around)) {
                if (piece.from != index) continue;
                constexpr int chords = 32;
                made.clear();
                for (int i = 0; i <= chords; ++i)
                    made.push_back(point_on(piece, double(i) / chords));
            }
        }
        double worst = 0;
        for (const Vector2d& p : drawn)
            worst = std::max(worst, distance_to(p, made));
        for (const Vector2d& p : made)
            worst = std::max(worst, distance_to(p, drawn));
        return worst;
    }
    double error(std::size_t i) const {
        return error(points_[previous(i)], points_[i], points_[next(i)], points_[next(i, 2)]);
    }

    /// Adds smooth points along the curves until the outline keeps to the line.
    void refine() {
        constexpr int rounds = 24;
        const std::size_t n = line_.size();
        for (int round = 0; round < rounds; ++round) {
            std::vector<Point> more;
            bool enough = true;
            std::vector<std::size_t> too_short;
            for (std::size_t i = 0; i < points_.size(); ++i) {
                more.push_back(points_[i]);
                if (error(i) <= tolerance_ / 2) continue;
                enough = false;
                const std::size_t from = points_[i].vertex, count = (points_[next(i)].vertex + n - from) % n;
                if (count > 1) {
                    const std::size_t middle = (from + count / 2) % n;
                    more.push_back({middle, smooth_at(middle)});
                } else {
                    too_short.insert(too_short.end(), {from, (from + 1) % n});
                }
            }
            if (enough) return;
            for (Point& point : more)
                if (std::find(too_short.begin(), too_short.end(), point.vertex) != too_short.end())
                    point.smooth = false;
            points_ = std::move(more);
        }
    }

    /// Takes out every point without which the outline still keeps to the line.
    void thin_out(double tolerance) {
        for (std::size_t i = 0; i < points_.size() && points_.size() > 3;) {
            const auto around = [&](std::size_t by) {
                return points_[(i + points_.size() + by - 3) % points_.size()];
            };
            const Point a = around(0), b = around(1), c = around(2), d = around(4), e = around(5),
                        f = around(6);
            const bool four = points_.size() < 7; // the neighbours overlap: ask all stretches
            bool keeps = false;
            if (four) {
                const std::vector<Point> saved = points_;
                points_.erase(points_.begin() + static_cast<std::ptrdiff_t>(i));
                keeps = true;
                for (std::size_t j = 0; j < points_.size() && keeps; ++j)
                    keeps = error(j) <= tolerance;
                points_ = saved;
            } else {
                keeps = error(b, c, d, e) <= tolerance && error(a, b, c, d) <= tolerance &&
                        error(c, d, e, f) <= tolerance;
            }
            if (keeps)
                points_.erase(points_.begin() + static_cast<std::ptrdiff_t>(i));
            else
                ++i;
        }
    }

    /// Lays the smooth points between two corners, or all round, where the line bends most, if that takes
    /// fewer.
    void even_out() {
        std::vector<Point> evened;
        const auto corner =
            std::find_if(points_.begin(), points_.end(), [](const Point& p) { return !p.smooth; });
        if (corner == points_.end()) {
            even_loop();
            return;
        }
        std::rotate(points_.begin(), corner, points_.end());
        for (std::size_t i = 0; i < points_.size();) {
            std::size_t j = i + 1;
            while (j < points_.size() && points_[j].smooth)
                ++j;
            evened.push_back(points_[i]);
            const Point end = points_[j % points_.size()];
            std::vector<Point> inside(points_.begin() + static_cast<std::ptrdiff_t>(i) + 1,
                                      points_.begin() + static_cast<std::ptrdiff_t>(j));
            for (std::size_t count = 1; count < inside.size(); ++count) {
                const std::vector<Point> fewer = spread(points_[i].vertex, end.vertex, count);
                if (!keeps(points_[i], fewer, end)) continue;
                inside = fewer;
                break;
            }
            evened.insert(evened.end(), inside.begin(), inside.end());
            i = j;
        }
        // Numbers of vertices run round the line; the list may begin anywhere on it.
        points_ = std::move(evened);
    }

    void even_loop() {
        const std::vector<Point> before = points_;
        const std::size_t start = before.front().vertex;
        for (std::size_t count = 3; count < before.size(); ++count) {
            points_ = spread(start, start, count - 1);
            points_.insert(points_.begin(), {start, true});
            bool good = points_.size() == count;
            for (std::size_t i = 0; i < points_.size() && good; ++i)
                good = error(i) <= tolerance_;
            if (good) return;
        }
        points_ = before;
    }

    /// So many vertices between two, nearer to each other where the line bends more; all the way round from a
    /// vertex to itself.
    std::vector<Point> spread(std::size_t from, std::size_t to, std::size_t count) const {
        const std::size_t n = line_.size(), steps = from == to ? n : (to + n - from) % n;
        double length = 0;
        for (std::size_t k = 0; k < steps; ++k)
            length += (line_[(from + k + 1) % n].at - line_[(from + k) % n].at).norm();
        std::vector<double> weight(steps + 1, 0);
        for (std::size_t k = 0; k < steps; ++k) {
            const Vector2d &a = line_[(from + k + n - 1) % n].at, &b = line_[(from + k) % n].at,
                           &c = line_[(from + k + 1) % n].at;
            const Vector2d in = b - a, out = c - b;
            // At a corner the line begins anew.
            const double turn =
                k == 0 ? 0 : std::abs(std::atan2(in.x() * out.y() - in.y() * out.x(), in.dot(out)));
            // A spline through points h apart strays from a circle by h^4 over the cube of its radius.
            const double bend = turn / out.norm() + 0.5 / length;
            weight[k + 1] = weight[k] + out.norm() * std::pow(bend, 0.75);
        }
        std::vector<Point> points;
        std::size_t last = 0;
        for (std::size_t i = 1; i <= count; ++i) {
            const double share = weight.back() * double(i) / double(count + 1);
            const auto at = static_cast<std::size_t>(std::lower_bound(weight.begin(), weight.end(), share) -
                                                     weight.begin());
            if (at <= last || at >= steps) continue;
            last = at;
            points.push_back({(from + at) % n, true});
        }
        return points;
    }

    /// Whether smooth points between two corners keep to the line.
    bool keeps(const Point& from, const std::vector<Point>& inside, const Point& to) const {
        std::vector<Point> run{from, from};
        run.insert(run.end(), inside.begin(), inside.end());
        run.insert(run.end(), {to, to});
        for (std::size_t i = 1; i + 2 < run.size(); ++i)
            if (error(run[i - 1], run[i], run[i + 1], run[i + 2]) > tolerance_) return false;
        return true;
    }

    std::vector<Vertex> line_;
    double tolerance_;
    std::vector<Point> points_;
};

} // namespace

std::vector<Vector2d> flatten(const DrawnLine& line, double tolerance) {
    std::vector<Vector2d> points;
    for (const Vertex& vertex : vertices_of(line, tolerance))
        points.push_back(vertex.at);
    return points;
}

Outline fit_outline(const DrawnLine& line, double tolerance) {
    if (!line.closed)
        throw Problem(Exit::could_not, "-", Core::tr("the line is not closed"),
                      Core::tr("join its ends in the drawing program"));
    // What the chords leave out comes on top of what the fit does; they are short, so that points can be
    // spread evenly.
    constexpr double chords_share = 0.002;
    std::vector<Vertex> vertices = vertices_of(line, chords_share * tolerance);
    if (vertices.size() < 3)
        throw Problem(Exit::could_not, "-", Core::tr("the line encloses nothing"),
                      Core::tr("choose another"));
    return Fit(std::move(vertices), (1 - chords_share) * tolerance).run();
}

} // namespace rampwright
