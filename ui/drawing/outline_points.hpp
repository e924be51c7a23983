#pragma once

#include <rampwright/project/project.hpp>

#include <cstddef>
#include <vector>

namespace rampwright::ui {

/// Where a new point of an outline would go: before which listed point, and how far the outline is away.
struct OutlinePlace {
    std::size_t before = 0;
    Vec2 at = Vec2::Zero(); ///< the nearest place on the outline
    double distance = 0;    ///< m
};

/// The place on an outline nearest to a point, m.
OutlinePlace nearest_on_outline(const std::vector<PlanPoint>& points, const Vec2& to);

/// The middle of the stretch from a listed point to the next.
Vec2 middle_of_stretch(const std::vector<PlanPoint>& points, std::size_t from);

} // namespace rampwright::ui
