#include "body/convex_solids.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright::body_detail {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double pi = std::numbers::pi;

/// The angle of an arc whose chord leaves it by `chord`.
double arc_step(double radius, double chord) {
    return 2 * std::acos(std::clamp(1 - chord / std::max(radius, chord), 0.0, 1.0));
}

/// How far a curved edge leaves its chord between two x, square to the chord.
double sag(const Edge& edge, double x0, double x1) {
    if (edge.straight) return 0;
    const double y0 = edge.at(x0), slope = (edge.at(x1) - y0) / (x1 - x0);
    double most = 0;
    for (const double part : {0.25, 0.5, 0.75}) {
        const double x = x0 + part * (x1 - x0);
        most = std::max(most, std::abs(edge.at(x) - y0 - slope * (x - x0)));
    }
    return most / std::hypot(1, slope);
}

/// One rectangle of the section, at both ends of a slab.
struct Ends {
    Rectangle back, front;
};

std::vector<Ends> ends_between(const Stock& stock, double x0, double x1) {
    std::vector<Ends> all;
    const double middle = 0.5 * (x0 + x1);
    const auto *p = stock.profile().find(middle), *q = stock.plan().find(middle);
    if (!p || !q) return all;
    const auto at = [](const Strips& strips, int edge, double x) {
        const Edge& e = strips.edges()[static_cast<std::size_t>(edge)];
        return e.at(std::clamp(x, e.x0, e.x1));
    };
    for (const auto& up : p->pairs)
        for (const auto& across : q->pairs) {
            Ends ends{};
            for (const bool front : {false, true}) {
                const double x = front ? x1 : x0;
                Rectangle& r = front ? ends.front : ends.back;
                r = {at(stock.plan(), across[0], x), at(stock.plan(), across[1], x),
                     at(stock.profile(), up[0], x), at(stock.profile(), up[1], x), 0};
                r.r = std::max(0., std::min({stock.edge_radius(), 0.5 * (r.z1 - r.z0), 0.5 * (r.y1 - r.y0)}));
            }
            all.push_back(ends);
        }
    return all;
}

/// The solid between two rectangles with rounded corners. Sides that join them are plane: neighbouring points
/// of a corner's arc differ by a step of one direction at both ends.
ConvexSolid between(const Ends& ends, double x0, double x1, int arc) {
    const bool round = ends.back.r > 0 || ends.front.r > 0;
    const int per_corner = round ? arc + 1 : 1;
    const auto unit = [&](int corner, int step) -> Vector2d {
        if (step == 0 || step == arc) { // along the axes exactly
            const int quarter = (corner + 2 + (step == arc)) % 4;
            return {quarter == 0 ? 1. : quarter == 2 ? -1. : 0., quarter == 1 ? 1. : quarter == 3 ? -1. : 0.};
        }
        const double angle = pi + corner * pi / 2 + step * pi / 2 / arc;
        return {std::cos(angle), std::sin(angle)};
    };
    const auto point = [&](const Rectangle& s, double x, int corner, int step) -> Vector3d {
        const double y = corner == 0 || corner == 3 ? s.y0 + s.r : s.y1 - s.r;
        const double z = corner < 2 ? s.z0 + s.r : s.z1 - s.r;
        if (!round) return {x, y, z};
        const Vector2d yz = Vector2d(y, z) + s.r * unit(corner, step);
        return {x, yz.x(), yz.y()};
    };
    ConvexSolid flat, curved;
    for (int corner = 0; corner < 4; ++corner)
        for (int step = 0; step < per_corner; ++step) {
            const bool last = step + 1 == per_corner;
            Vector2d along;
            if (last)
                along = corner == 0   ? Vector2d(1, 0)
                        : corner == 1 ? Vector2d(0, 1)
                        : corner == 2 ? Vector2d(-1, 0)
                                      : Vector2d(0, -1);
            else
                along = (unit(corner, step + 1) - unit(corner, step)).normalized();
            const Vector3d from = point(ends.back, x0, corner, step),
                           to = point(ends.front, x1, corner, step);
            const Vector3d normal = Vector3d(0, along.x(), along.y()).cross(to - from).normalized();
            (last ? flat : curved).push_back({normal, 0.5 * (normal.dot(from) + normal.dot(to))});
        }
    flat.insert(flat.end(), curved.begin(), curved.end());
    return flat;
}

/// 0, n/2, n/4, 3n/4, ...: each next one halves what the ones before left.
std::vector<int> coarse_first(int n) {
    std::vector<int> order;
    std::vector<char> taken(static_cast<std::size_t>(n), 0);
    for (int parts = 4;; parts *= 2) {
        for (int k = 0; k < parts; ++k) {
            const int i = static_cast<int>(static_cast<long>(k) * n / parts);
            if (taken[static_cast<std::size_t>(i)]) continue;
            taken[static_cast<std::size_t>(i)] = 1;
            order.push_back(i);
        }
        if (static_cast<int>(order.size()) == n) return order;
    }
}

ConvexSolid solid_of_pocket(const Pocket& pocket) {
    ConvexSolid solid;
    if ((pocket.high - pocket.low).minCoeff() <= 0) return solid;
    for (int axis = 0; axis < 3; ++axis) {
        solid.push_back({Vector3d::Unit(axis), pocket.high[axis]});
        solid.push_back({-Vector3d::Unit(axis), -pocket.low[axis]});
    }
    return solid;
}

ConvexSolid solid_of_bore(const Bore& bore, double chord) {
    const double radius = bore.diameter / 2, length = (bore.to - bore.from).norm();
    if (!(radius > 0) || !(length > 0)) return {};
    const Vector3d axis = (bore.to - bore.from) / length;
    // Directions across that do not depend on which end comes first: bores of one axis have the same facets.
    int least = 0;
    axis.cwiseAbs().minCoeff(&least);
    const Vector3d u = Vector3d::Unit(least).cross(axis).normalized(), v = axis.cross(u);
    const int quarter = std::clamp(static_cast<int>(std::ceil(pi / 2 / arc_step(radius, chord))), 3, 40);
    const int n = 4 * quarter;
    // The polygon has the circle's area: it lies as much inside as outside.
    const double reach = radius * std::sqrt(pi / (n * std::tan(pi / n)));
    const double point = bore.pointed ? radius / std::tan(drill_point_angle / 2) : 0;

    ConvexSolid solid{{-axis, -axis.dot(bore.from)}}, tip;
    if (!bore.pointed) solid.push_back({axis, axis.dot(bore.to)});
    for (const int k : coarse_first(n)) {
        const double angle = 2 * pi * k / n;
        const Vector3d out = std::cos(angle) * u + std::sin(angle) * v;
        solid.push_back({out, out.dot(bore.from) + reach});
        if (!bore.pointed) continue;
        const Vector3d normal = (point * out + reach * axis).normalized();
        tip.push_back({normal, normal.dot(bore.to + point * axis)});
    }
    solid.insert(solid.end(), tip.begin(), tip.end());
    return solid;
}

} // namespace

std::vector<Slab> slabs_of(const Stock& stock, double chord) {
    std::vector<double> x;
    for (const Event& event : stock.events())
        x.push_back(event.x);
    std::sort(x.begin(), x.end());
    constexpr double same = 1e-9;
    x.erase(std::unique(x.begin(), x.end(), [](double a, double b) { return b - a < same; }), x.end());

    const double low = std::max(stock.profile().strips().front().x0, stock.plan().strips().front().x0);
    const double high = std::min(stock.profile().strips().back().x1, stock.plan().strips().back().x1);
    const int arc =
        static_cast<int>(std::clamp(std::ceil(pi / 2 / arc_step(stock.edge_radius(), chord)), 2., 24.));
    std::vector<Slab> slabs;
    const auto add = [&](auto&& self, double x0, double x1, int depth) -> void {
        const double middle = 0.5 * (x0 + x1);
        double most = 0;
        for (const Strips* strips : {&stock.profile(), &stock.plan()})
            if (const auto* strip = strips->find(middle))
                for (const auto& pair : strip->pairs)
                    for (const int edge : pair)
                        most = std::max(most, sag(strips->edges()[static_cast<std::size_t>(edge)], x0, x1));
        if (most > chord && depth < 16) {
            self(self, x0, middle, depth + 1);
            self(self, middle, x1, depth + 1);
            return;
        }
        Slab slab{x0, x1, {}};
        for (const Ends& ends : ends_between(stock, x0, x1)) {
            const auto open = [](const Rectangle& r) { return r.y1 - r.y0 > same && r.z1 - r.z0 > same; };
            if (open(ends.back) || open(ends.front)) slab.solids.push_back(between(ends, x0, x1, arc));
        }
        slabs.push_back(std::move(slab));
    };
    for (std::size_t i = 0; i + 1 < x.size(); ++i)
        if (x[i] >= low - same && x[i + 1] <= high + same) add(add, x[i], x[i + 1], 0);
    return slabs;
}

ConvexSolid solid_of(const Cut& cut, double chord) {
    if (const auto* pocket = std::get_if<Pocket>(&cut)) return solid_of_pocket(*pocket);
    return solid_of_bore(std::get<Bore>(cut), chord);
}

} // namespace rampwright::body_detail
