#pragma once

#include "drawing/paint_context.hpp"

#include <string_view>

namespace rampwright::ui {

/// What a rule of the race is about, on the drawing; nothing where the drawing does not show it (a build
/// date, a lubricant, a rule of the house).
/// @param code the rule's place below `rules` in the file: "max_length_mm", "allow/lead".
std::optional<PointedOut> find_rule_place(std::string_view code, const CarPlan& plan, const CarShape& shape,
                                          const Figures& figures);

/// A frame around what is pointed out, and its name.
void paint_pointed_out(QPainter& painter, const DrawingMap& map, const PointedOut& place);

} // namespace rampwright::ui
