#pragma once

#include <rampwright/project/project.hpp>

#include <vector>

namespace rampwright {

/// A stretch of surface along which curvature runs linearly from one value to another.
struct CurvatureStretch {
    double length = 0, curvature = 0, curvature_end = 0;
};

/// A smooth surface through measured points: curvature continuous and linear between knots, so the
/// curve is twice continuously differentiable in arc length.
struct MeasuredCurve {
    std::vector<CurvatureStretch> stretches;
    Vec2 start = Vec2::Zero();
    double slope = 0;             ///< at its start, rad
    double rms = 0, greatest = 0; ///< distance of the points from the curve, m
};

/// Fits a surface to points (X, Z) with X rising, by least squares with a penalty on the change of
/// curvature (a smoothing spline in arc length), Gauss-Newton on start height, slope and knot curvatures.
/// @throws Problem where there are fewer than four points or X does not rise.
MeasuredCurve fit_measured(const std::vector<Vec2>& points);

} // namespace rampwright
