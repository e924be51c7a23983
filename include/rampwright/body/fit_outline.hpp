#pragma once

#include <rampwright/body/path_data.hpp>

namespace rampwright {

/// An outline of few points that runs within `tolerance` of a closed line, both ways. Kinks of the line
/// become corners, or nothing where they are smaller than the tolerance; along curves lie smooth points.
/// @param line, tolerance in one unit; the points are in it too.
/// @throws Problem (could_not) where the line is not closed, encloses nothing, or is too fine to be followed.
Outline fit_outline(const DrawnLine& line, double tolerance);

/// The line as a closed polygon within `tolerance`; the first point is not repeated.
std::vector<Eigen::Vector2d> flatten(const DrawnLine& line, double tolerance);

} // namespace rampwright
