#pragma once

#include <rampwright/body/outline.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright::body_detail {

/// The place on a piece at a parameter from 0 to 1.
inline Eigen::Vector2d point_on(const OutlinePiece& piece, double t) {
    const double s = 1 - t;
    const auto& c = piece.control;
    return s * s * s * c[0] + 3 * s * s * t * c[1] + 3 * s * t * t * c[2] + t * t * t * c[3];
}

/// How many chords keep to a piece within `tolerance` (after Wang's bound for Bézier curves).
inline int chords_for(const OutlinePiece& piece, double tolerance) {
    if (piece.straight) return 1;
    const auto& c = piece.control;
    const double bend = std::max((c[0] - 2 * c[1] + c[2]).norm(), (c[1] - 2 * c[2] + c[3]).norm());
    return static_cast<int>(std::clamp(std::ceil(std::sqrt(0.75 * bend / tolerance)), 1., 1000.));
}

} // namespace rampwright::body_detail
