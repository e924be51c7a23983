#include "drawing/outline_points.hpp"

#include <rampwright/body/outline.hpp>

#include <algorithm>
#include <limits>

namespace rampwright::ui {
namespace {

std::vector<OutlinePiece> pieces_of(const std::vector<PlanPoint>& points) {
    Outline outline;
    for (const auto& each : points)
        outline.push_back({each.at, each.smooth});
    return outline_pieces(outline);
}

} // namespace

OutlinePlace nearest_on_outline(const std::vector<PlanPoint>& points, const Vec2& to) {
    OutlinePlace best;
    best.distance = std::numeric_limits<double>::infinity();
    const auto offer = [&](const Vec2& at, int from) {
        const double distance = (at - to).norm();
        if (distance < best.distance) best = {static_cast<std::size_t>(from) + 1, at, distance};
    };
    for (const OutlinePiece& piece : pieces_of(points)) {
        const auto& c = piece.control;
        if (piece.straight) {
            const Vec2 along = c[3] - c[0];
            const double share = std::clamp((to - c[0]).dot(along) / along.squaredNorm(), 0.0, 1.0);
            offer(c[0] + share * along, piece.from);
            continue;
        }
        // Fine enough for a hand: a curve between two points is a few centimetres long.
        constexpr int steps = 200;
        for (int i = 0; i <= steps; ++i) {
            const double t = double(i) / steps, u = 1 - t;
            offer(u * u * u * c[0] + 3 * u * u * t * c[1] + 3 * u * t * t * c[2] + t * t * t * c[3],
                  piece.from);
        }
    }
    return best;
}

Vec2 middle_of_stretch(const std::vector<PlanPoint>& points, std::size_t from) {
    for (const OutlinePiece& piece : pieces_of(points)) {
        if (piece.from != static_cast<int>(from)) continue;
        const auto& c = piece.control;
        return (c[0] + 3 * c[1] + 3 * c[2] + c[3]) / 8; // a cubic at one half
    }
    return (points[from].at + points[(from + 1) % points.size()].at) / 2;
}

} // namespace rampwright::ui
