#pragma once

#include <rampwright/shaded/scene.hpp>

namespace rampwright {

/// A closed profile turned about an axis: points (along the axis, distance from it), in order; seen with the
/// axis to the right and the distance up, clockwise. Ends on the axis close by themselves.
Mesh revolved(const std::vector<Vec2>& profile, const Vec3& origin, const Vec3& axis, int segments);

Mesh box_mesh(const Vec3& centre, const Vec3& size, double turned);
Mesh ball_mesh(const Vec3& centre, double radius, int segments);

} // namespace rampwright
