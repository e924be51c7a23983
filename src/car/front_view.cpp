#include "car/outline_polygon.hpp"

#include <rampwright/car/front_view.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <vector>

namespace rampwright {

namespace {

using Eigen::Vector2d;

/// A straight line over a slab of x, by its values at the slab's two ends.
struct Line {
    double start = 0, end = 0;
    double at(double u) const { return start + (end - start) * u; }
    double low() const { return std::min(start, end); }
    double high() const { return std::max(start, end); }
};

struct Strip {
    Line low, high;
};

/// The strips of a polygon between two neighbouring breakpoints.
std::vector<Strip> strips_between(const OutlinePolygon& polygon, double from, double to) {
    const double middle = (from + to) / 2;
    std::vector<std::pair<double, Line>> edges;
    const auto& points = polygon.points();
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Vector2d &a = points[i], &b = points[(i + 1) % points.size()];
        if ((a.x() <= middle) == (b.x() <= middle)) continue;
        const auto at = [&](double x) { return a.y() + (b.y() - a.y()) * ((x - a.x()) / (b.x() - a.x())); };
        edges.emplace_back(at(middle), Line{at(from), at(to)});
    }
    std::sort(edges.begin(), edges.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Strip> strips;
    for (std::size_t i = 0; i + 1 < edges.size(); i += 2)
        strips.push_back({edges[i].second, edges[i + 1].second});
    return strips;
}

/// A cut that may let one see through: what it opens at a height.
struct Opening {
    double from = 0, to = 0; ///< x
    Interval y, z;           ///< a pocket's; a bore's bounds
    bool round = false;
    std::optional<Interval> at(double height) const {
        if (height <= z.low || height >= z.high) return std::nullopt;
        if (!round) return y;
        const double radius = y.length() / 2, up = height - (z.low + z.high) / 2;
        const double half = std::sqrt(std::max(0.0, radius * radius - up * up)),
                     middle = (y.low + y.high) / 2;
        return Interval{middle - half, middle + half};
    }
};

std::optional<Opening> opening_of(const Cut& cut) {
    if (const auto* pocket = std::get_if<Pocket>(&cut)) {
        const Eigen::Vector3d low = pocket->low.cwiseMin(pocket->high),
                              high = pocket->low.cwiseMax(pocket->high);
        return Opening{low.x(), high.x(), {low.y(), high.y()}, {low.z(), high.z()}, false};
    }
    const Bore& bore = std::get<Bore>(cut);
    if (bore.from.y() != bore.to.y() || bore.from.z() != bore.to.z()) return std::nullopt;
    const double radius = bore.diameter / 2;
    return Opening{std::min(bore.from.x(), bore.to.x()),
                   std::max(bore.from.x(), bore.to.x()),
                   {bore.from.y() - radius, bore.from.y() + radius},
                   {bore.from.z() - radius, bore.from.z() + radius},
                   true};
}

/// Disjoint stretches of y that something covers, low to high.
class Cover {
public:
    void clear() { stretches_.clear(); }
    bool contains(const Interval& stretch) const {
        return std::any_of(stretches_.begin(), stretches_.end(),
                           [&](const Interval& s) { return s.low <= stretch.low && stretch.high <= s.high; });
    }
    void add(Interval stretch) {
        if (!(stretch.low < stretch.high)) return;
        auto first = stretches_.begin();
        while (first != stretches_.end() && first->high < stretch.low)
            ++first;
        auto last = first;
        for (; last != stretches_.end() && last->low <= stretch.high; ++last) {
            stretch.low = std::min(stretch.low, last->low);
            stretch.high = std::max(stretch.high, last->high);
        }
        if (first == last) {
            stretches_.insert(first, stretch);
        } else {
            *first = stretch;
            stretches_.erase(first + 1, last);
        }
    }
    double length() const {
        double sum = 0;
        for (const Interval& stretch : stretches_)
            sum += stretch.length();
        return sum;
    }

private:
    std::vector<Interval> stretches_;
};

/// The wood of one slab of x in which all edges are straight.
struct Cell {
    Strip z, y;
    double edge_radius = 0; ///< asked for; a thin section has less
    std::vector<Opening> openings;

    double widest() const { return y.high.high() - y.low.low(); }

    /// How far rounding draws in each side at height `z`, at u of the slab.
    double inset(double u, double height) const {
        const double low = z.low.at(u), high = z.high.at(u);
        const double radius = std::min({edge_radius, (high - low) / 2, (y.high.at(u) - y.low.at(u)) / 2});
        const double depth = radius - std::min(high - height, height - low);
        if (depth <= 0) return 0;
        return radius - std::sqrt(std::max(0.0, radius * radius - depth * depth));
    }

    /// At least this much is drawn in at that height, anywhere in the slab.
    double least_inset(double height) const {
        const double room = std::min(z.high.high() - height, height - z.low.low());
        const double least_radius =
            std::min({edge_radius, (z.high.start - z.low.start) / 2, (z.high.end - z.low.end) / 2,
                      (y.high.start - y.low.start) / 2, (y.high.end - y.low.end) / 2});
        const double depth = least_radius - room;
        if (depth <= 0) return 0;
        return least_radius - std::sqrt(std::max(0.0, least_radius * least_radius - depth * depth));
    }

    /// Where in the slab the section reaches this height: [u, u] or nothing.
    std::optional<Interval> reach(double height) const {
        Interval u{0, 1};
        const auto keep_where_positive = [&u](double start, double end) { // of a linear function of u
            if (start < 0 && end < 0)
                u = {1, 0};
            else if (start < 0)
                u.low = std::max(u.low, start / (start - end));
            else if (end < 0)
                u.high = std::min(u.high, start / (start - end));
        };
        keep_where_positive(height - z.low.start, height - z.low.end);
        keep_where_positive(z.high.start - height, z.high.end - height);
        if (u.low > u.high) return std::nullopt;
        return u;
    }

    void cover(double height, Cover& cover) const {
        if (height <= z.low.low() || height >= z.high.high()) return;
        Interval seen{y.low.low(), y.high.high()};
        if (edge_radius > 0) {
            const double drawn_in = least_inset(height);
            seen = {seen.low + drawn_in, seen.high - drawn_in};
        }
        if (cover.contains(seen)) return;
        const auto u = reach(height);
        if (!u) return;
        seen = {y.low.at(u->low), y.high.at(u->low)};
        if (edge_radius <= 0) {
            seen.low = std::min(seen.low, y.low.at(u->high));
            seen.high = std::max(seen.high, y.high.at(u->high));
        } else {
            seen = {1, -1};
            bool any = false;
            const auto look = [&](double at) {
                if (at < u->low || at > u->high) return;
                const double drawn_in = inset(at, height);
                const Interval here{y.low.at(at) + drawn_in, y.high.at(at) - drawn_in};
                seen = any ? Interval{std::min(seen.low, here.low), std::max(seen.high, here.high)} : here;
                any = true;
            };
            constexpr int looks = 8;
            for (int i = 0; i <= looks; ++i)
                look(u->low + (u->high - u->low) * i / looks);
            // Where a full-sized rounding begins the inset has its kink, often the widest place.
            for (const auto& [start, end] : {std::pair{z.high.start - height, z.high.end - height},
                                             std::pair{height - z.low.start, height - z.low.end}})
                if (start != end) look((start - edge_radius) / (start - end));
        }
        if (openings.empty()) {
            cover.add(seen);
            return;
        }
        std::vector<Interval> left{seen};
        for (const Opening& opening : openings) {
            const auto open = opening.at(height);
            if (!open) continue;
            std::vector<Interval> rest;
            for (const Interval& piece : left) {
                rest.push_back({piece.low, std::min(piece.high, open->low)});
                rest.push_back({std::max(piece.low, open->high), piece.high});
            }
            left = std::move(rest);
        }
        for (const Interval& piece : left)
            cover.add(piece);
    }
};

std::vector<Cell> cells_of(const BodyShape& body, const std::vector<Opening>& openings) {
    const OutlinePolygon profile(body.profile), plan(body.plan);
    const double from = std::max(profile.along().low, plan.along().low);
    const double to = std::min(profile.along().high, plan.along().high);
    std::vector<double> breaks{from, to};
    const auto add = [&](double x) {
        if (x > from && x < to) breaks.push_back(x);
    };
    for (const Vector2d& point : profile.points())
        add(point.x());
    for (const Vector2d& point : plan.points())
        add(point.x());
    for (const Opening& opening : openings) {
        add(opening.from);
        add(opening.to);
    }
    std::sort(breaks.begin(), breaks.end());

    std::vector<Cell> cells;
    for (std::size_t i = 0; i + 1 < breaks.size(); ++i) {
        const double low = breaks[i], high = breaks[i + 1];
        if (high - low < 1e-9) continue; // a step, or points that differ by rounding
        const std::vector<Strip> across = strips_between(plan, low, high);
        for (const Strip& up : strips_between(profile, low, high))
            for (const Strip& side : across) {
                Cell cell{up, side, body.edge_radius, {}};
                for (const Opening& opening : openings)
                    if (opening.from <= low && opening.to >= high) cell.openings.push_back(opening);
                cells.push_back(std::move(cell));
            }
    }
    // The widest first: then most of the others are soon seen to be covered.
    std::sort(cells.begin(), cells.end(),
              [](const Cell& a, const Cell& b) { return a.widest() > b.widest(); });
    return cells;
}

Interval height_of(const ViewShape& shape) {
    if (const auto* rectangle = std::get_if<ViewRectangle>(&shape))
        return {rectangle->low.y(), rectangle->high.y()};
    const ViewDisc& disc = std::get<ViewDisc>(shape);
    return {disc.centre.y() - disc.radius, disc.centre.y() + disc.radius};
}

void cover_with(const ViewShape& shape, double height, Cover& cover) {
    const Interval range = height_of(shape);
    if (height <= range.low || height >= range.high) return;
    if (const auto* rectangle = std::get_if<ViewRectangle>(&shape)) {
        cover.add({rectangle->low.x(), rectangle->high.x()});
        return;
    }
    const ViewDisc& disc = std::get<ViewDisc>(shape);
    const double up = height - disc.centre.y();
    const double half = std::sqrt(std::max(0.0, disc.radius * disc.radius - up * up));
    cover.add({disc.centre.x() - half, disc.centre.x() + half});
}

/// Heights between which the covered width changes smoothly, as far as corners of the drawing tell.
std::vector<double> heights_of(const BodyShape& body, const std::vector<Opening>& openings,
                               const std::vector<Cell>& cells, std::span<const ViewShape> others) {
    std::vector<double> heights;
    for (const Cell& cell : cells) {
        heights.push_back(cell.z.low.low());
        heights.push_back(cell.z.high.high());
    }
    for (const ViewShape& shape : others) {
        heights.push_back(height_of(shape).low);
        heights.push_back(height_of(shape).high);
    }
    if (heights.empty()) return heights;
    const auto [low, high] = std::minmax_element(heights.begin(), heights.end());
    const Interval range{*low, *high};
    heights.resize(0);
    // Evenly spaced ones besides, always as many, so that the result stays continuous.
    constexpr int even = 16;
    for (int i = 0; i <= even; ++i)
        heights.push_back(range.low + range.length() * i / even);
    const auto add = [&](double z) {
        if (z > range.low && z < range.high) heights.push_back(z);
    };
    for (const OutlinePoint& point : body.profile)
        for (const double offset : {0.0, body.edge_radius, -body.edge_radius})
            add(point.at.y() + offset);
    for (const Opening& opening : openings) {
        add(opening.z.low);
        add(opening.z.high);
    }
    for (const ViewShape& shape : others) {
        add(height_of(shape).low);
        add(height_of(shape).high);
    }
    std::sort(heights.begin(), heights.end());
    return heights;
}

} // namespace

FrontView measure_front_view(const BodyShape& body, std::span<const ViewShape> others) {
    std::vector<Opening> openings;
    for (const Cut& cut : body.cuts)
        if (const auto opening = opening_of(cut)) openings.push_back(*opening);
    const std::vector<Cell> cells = cells_of(body, openings);
    const std::vector<double> heights = heights_of(body, openings, cells, others);

    // Gauss and Legendre's four points between neighbouring heights (Abramowitz and Stegun, table 25.4).
    constexpr std::array<double, 2> node{0.339981043584856, 0.861136311594053};
    constexpr std::array<double, 2> weight{0.652145154862546, 0.347854845137454};
    double area = 0, moment = 0;
    Cover cover;
    for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
        const double middle = (heights[i] + heights[i + 1]) / 2, half = (heights[i + 1] - heights[i]) / 2;
        if (half < 1e-12) continue;
        for (std::size_t k = 0; k < 4; ++k) {
            const double z = middle + (k < 2 ? half : -half) * node[k % 2];
            cover.clear();
            for (const ViewShape& shape : others)
                cover_with(shape, z, cover);
            for (const Cell& cell : cells)
                cell.cover(z, cover);
            const double strip = cover.length() * weight[k % 2] * half;
            area += strip;
            moment += strip * z;
        }
    }
    return {area, area > 0 ? moment / area : 0};
}

} // namespace rampwright
