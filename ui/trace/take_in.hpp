#pragma once

#include "trace/svg_file.hpp"

#include <rampwright/project/project.hpp>

namespace rampwright::ui {

/// How a drawn line becomes an outline.
struct TakeIn {
    bool plan = false;     ///< the top view's, else the side view's
    double factor = 1;     ///< of its size as read
    bool mirrored = false; ///< its nose points left
    Vec2 place; ///< m: where its tail and bottom come to lie, or its tail and middle of the top view's
};

/// How far an outline may run from the line it is read from, m.
inline constexpr double outline_tolerance = 0.05e-3;

/// Where the present outline of a car stands, as `TakeIn::place` has it.
Vec2 place_of_outline(const BodyPlan& body, bool plan);

/// The line as the points of an outline, m. @throws Problem where it cannot be followed or crosses itself.
std::vector<PlanPoint> outline_from(const DrawnShape& shape, const TakeIn& how);

} // namespace rampwright::ui
