#include "car/tool_layers.hpp"

#include "car/fit.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

constexpr double hair = 1e-6; ///< m: a face this near to the block's is the block's
constexpr double inside = 1e-8;

/// A line of wood: from `low` to `high` along one axis through a place, as wide as `width`.
void add_line(Moments& moments, const Vec3& at, int axis, double low, double high, double width) {
    const double length = high - low, mean = (low + high) / 2;
    Vec3 middle = at;
    middle[axis] = mean;
    const double area = length * width;
    moments.volume += area;
    moments.first += area * middle;
    moments.second += area * middle * middle.transpose();
    moments.second(axis, axis) += area * length * length / 12;
}

bool on_block(const BodyPlan& body, const Vec2& p, const Vec2& q, bool of_plan) {
    const auto both = [&](int i, double value) {
        return std::abs(p[i] - value) < hair && std::abs(q[i] - value) < hair;
    };
    const double across = of_plan ? body.block.y() / 2 : body.block.z();
    return both(0, 0) || both(0, body.block.x()) || both(1, across) || both(1, of_plan ? -across : 0);
}

/// Where along an edge cuts may begin or end, by its parameter.
std::vector<double> stations(const Vec2& p, const Vec2& q, std::span<const Cut> cuts, bool of_plan) {
    std::vector<double> at{0, 1};
    const auto add = [&](int axis, double value) {
        const double run = q[axis] - p[axis];
        if (run == 0) return;
        if (const double t = (value - p[axis]) / run; t > 0 && t < 1) at.push_back(t);
    };
    for (const Cut& cut : cuts) {
        const auto* pocket = std::get_if<Pocket>(&cut);
        const auto* bore = std::get_if<Bore>(&cut);
        const Vec3 reach = Vec3::Constant(bore ? bore->diameter / 2 : 0);
        const Vec3 low = pocket ? pocket->low : Vec3(bore->from.cwiseMin(bore->to) - reach);
        const Vec3 high = pocket ? pocket->high : Vec3(bore->from.cwiseMax(bore->to) + reach);
        for (const Vec3& end : {low, high}) {
            add(0, end.x());
            add(1, of_plan ? end.y() : end.z());
        }
    }
    std::sort(at.begin(), at.end());
    return at;
}

/// The wood just behind a face of a pocket, for each metre that the face goes further out.
Moments wood_behind(const BodyOutlines& outlines, std::span<const Cut> others, const Pocket& pocket, int axis,
                    bool high) {
    const int across = axis == 0 ? 1 : 0, along = 3 - axis - across;
    constexpr int lines = 64;
    const double width = (pocket.high[across] - pocket.low[across]) / lines;
    Moments layer;
    Vec3 through = pocket.low;
    through[axis] = high ? pocket.high[axis] + inside : pocket.low[axis] - inside;
    for (int i = 0; i < lines; ++i) {
        through[across] = pocket.low[across] + (i + 0.5) * width;
        for (const WoodStretch& wood : wood_along(outlines, others, through, along)) {
            const double from = std::max(wood.range.low, pocket.low[along]),
                         to = std::min(wood.range.high, pocket.high[along]);
            if (to > from) add_line(layer, through, along, from, to, width);
        }
    }
    return layer;
}

} // namespace

Moments sawn_layer(const BodyPlan& body, const BodyOutlines& outlines, std::span<const Cut> cuts,
                   bool of_plan) {
    const OutlinePolygon& outline = of_plan ? outlines.plan : outlines.profile;
    const Interval other = of_plan ? outlines.profile.along() : outlines.plan.along();
    const auto& points = outline.points();
    double twice_area = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Vec2 &p = points[i], &q = points[(i + 1) % points.size()];
        twice_area += p.x() * q.y() - p.y() * q.x();
    }
    const double sense = twice_area > 0 ? 1 : -1;

    Moments layer;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Vec2 &p = points[i], &q = points[(i + 1) % points.size()];
        const double length = (q - p).norm();
        if (!(length > 0) || on_block(body, p, q, of_plan)) continue;
        // An end that both outlines share is one cut of the saw: it counts with the profile.
        const bool end = std::abs(q.x() - p.x()) < hair;
        if (of_plan && end && (std::abs(p.x() - other.low) < hair || std::abs(p.x() - other.high) < hair))
            continue;
        const Vec2 inward = sense * inside * Vec2(-(q - p).y(), (q - p).x()) / length;
        const std::vector<double> at = stations(p, q, cuts, of_plan);
        for (std::size_t k = 0; k + 1 < at.size(); ++k) {
            const double part = at[k + 1] - at[k];
            const int steps = std::clamp(static_cast<int>(std::ceil(part * length / 2e-3)), 1, 8);
            for (int s = 0; s < steps; ++s) {
                const Vec2 place = p + (at[k] + part * (s + 0.5) / steps) * (q - p) + inward;
                const Vec3 through = of_plan ? Vec3(place.x(), place.y(), 0) : Vec3(place.x(), 0, place.y());
                const int axis = of_plan ? 2 : 1;
                for (const WoodStretch& wood : wood_along(outlines, cuts, through, axis))
                    add_line(layer, through, axis, wood.range.low, wood.range.high, part * length / steps);
            }
        }
    }
    return layer;
}

Moments floor_layer(const BodyOutlines& outlines, std::span<const Cut> cuts, std::size_t number) {
    const Pocket& pocket = std::get<Pocket>(cuts[number]);
    std::vector<Cut> others(cuts.begin(), cuts.end());
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(number));
    for (const int axis : {2, 1, 0}) {
        const Moments low = wood_behind(outlines, others, pocket, axis, false),
                      high = wood_behind(outlines, others, pocket, axis, true);
        if (low.volume <= 0 && high.volume <= 0) return {}; // right through
        // A sloped roof may reach over a part of the mouth.
        Vec3 size = pocket.high - pocket.low;
        size[axis] = 1;
        const double half_the_face = size.prod() / 2;
        if (high.volume < half_the_face && high.volume < low.volume) return low;
        if (low.volume < half_the_face && low.volume < high.volume) return high;
    }
    return {};
}

Moments bored_layer(const BodyOutlines& outlines, std::span<const Cut> cuts, std::size_t number) {
    const Bore& bore = std::get<Bore>(cuts[number]);
    const Vec3 axis = (bore.to - bore.from).normalized();
    int least = 0;
    axis.cwiseAbs().minCoeff(&least);
    const Vec3 u = Vec3::Unit(least).cross(axis).normalized(), v = axis.cross(u);
    std::vector<Cut> others(cuts.begin(), cuts.end());
    others.erase(others.begin() + static_cast<std::ptrdiff_t>(number));

    constexpr int rings = 8, around = 24;
    const double radius = bore.diameter / 2, patch = std::numbers::pi * radius * radius / (rings * around);
    Moments layer;
    for (int ring = 0; ring < rings; ++ring)
        for (int k = 0; k < around; ++k) {
            // Rings of equal area.
            const double r = radius * std::sqrt((ring + 0.5) / rings),
                         angle = 2 * std::numbers::pi * k / around;
            Vec3 at = bore.to + r * (std::cos(angle) * u + std::sin(angle) * v) + inside * axis;
            if (bore.pointed) at += (radius - r) / std::tan(drill_point_angle / 2) * axis;
            const auto wood = wood_along(outlines, others, at, 2);
            const bool stands = std::any_of(wood.begin(), wood.end(), [&](const WoodStretch& stretch) {
                return stretch.range.low <= at.z() && at.z() <= stretch.range.high;
            });
            if (!stands) continue;
            layer.volume += patch;
            layer.first += patch * at;
            layer.second += patch * at * at.transpose();
        }
    return layer;
}

} // namespace rampwright
