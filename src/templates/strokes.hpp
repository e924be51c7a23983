#pragma once

#include <rampwright/templates/line_work.hpp>

namespace rampwright {

Stroke straight_stroke(const Vec2& from, const Vec2& to);
/// A polygon's sides; the last joins the first where `closed`.
std::vector<Stroke> straight_strokes(const std::vector<Vec2>& points, bool closed);
/// An ellipse as four cubics: the centre and two half axes at right angles.
std::vector<Stroke> ellipse_strokes(const Vec2& centre, const Vec2& half_one, const Vec2& half_other);

/// What of a path lies inside a polygon and not along its edge: the path itself, its pieces, or nothing.
std::vector<LinePath> clip_to(const std::vector<Vec2>& polygon, const LinePath& path);

} // namespace rampwright
