#pragma once

#include <rampwright/project/project.hpp>

#include <QPainterPath>

#include <utility>
#include <vector>

namespace rampwright::ui {

/// An outline as the wood has it, closed, m; the block's own rectangle where no points are given.
QPainterPath outline_path(const std::vector<PlanPoint>& points, double length, double low, double high);

/// The least and greatest second coordinate of an outline at `x`; both 0 outside it.
std::pair<double, double> span_at(const QPainterPath& outline, double x);

} // namespace rampwright::ui
