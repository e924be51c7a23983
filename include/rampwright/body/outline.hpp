#pragma once

#include <Eigen/Core>

#include <array>
#include <string>
#include <vector>

namespace rampwright {

/// A point of an outline, m: a corner, or a point that the outline passes smoothly.
struct OutlinePoint {
    Eigen::Vector2d at = Eigen::Vector2d::Zero();
    bool smooth = false;
};

/// A closed outline, listed either way round; the last point joins the first. Two points alike in a row count
/// as one.
using Outline = std::vector<OutlinePoint>;

/// One stretch of an outline, from a listed point to the next: a cubic Bézier curve, or a straight line.
struct OutlinePiece {
    std::array<Eigen::Vector2d, 4> control; ///< first and last lie on the outline; of a line, at its thirds
    bool straight = true;
    int from = 0; ///< index of the listed point it starts at
};

/// The outline as exact pieces.
///
/// Through smooth points runs a centripetal Catmull-Rom spline (Catmull and Rom 1974; knots at the square
/// root of the chord, Yuksel, Schaefer and Keyser 2011, which excludes loops and cusps within a piece): the
/// tangent at a smooth point is that of the parabola through it and its two neighbours over those knots.
/// Between two corners the outline is straight; between a corner and a smooth point it is a parabola, the one
/// that leaves the smooth point along its tangent.
std::vector<OutlinePiece> outline_pieces(const Outline& outline);

/// The outline as a closed polygon within `tolerance` (m) of the exact one, for drawing; the first point is
/// not repeated at the end.
std::vector<Eigen::Vector2d> flatten(const Outline& outline, double tolerance);

/// Throws Problem where the outline bounds no area: fewer than three points that differ, or pieces that touch
/// or cross. `where` names it ("profile_mm"); the Problem's own is "profile_mm/3", the point from which the
/// first piece that crosses another starts.
void check_outline(const Outline& outline, const std::string& where);

} // namespace rampwright
