#include "body/convex.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::body_detail {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

Vector3d farthest_of(const Block& b, const Vector3d& n) {
    const Vector3d one(b.along.x(), b.along.y(), 0), two(-b.along.y(), b.along.x(), 0);
    return b.centre + std::copysign(b.half.x(), n.dot(one)) * one +
           std::copysign(b.half.y(), n.dot(two)) * two + std::copysign(b.half.z(), n.z()) * Vector3d::UnitZ();
}

Vector3d farthest_of(const Rod& r, const Vector3d& n) {
    const double along = n.dot(r.along);
    const Vector3d across = n - along * r.along;
    const double size = across.norm();
    Vector3d best = r.from + (along > 0 ? r.length : 0) * r.along;
    if (size > 1e-12 * n.norm()) best += r.radius / size * across;
    const Vector3d apex = r.from + (r.length + r.tip) * r.along;
    return r.tip > 0 && n.dot(apex) > n.dot(best) ? apex : best;
}

Vector3d farthest_of(const Ball& b, const Vector3d& n) {
    return b.centre + b.radius * n.normalized();
}

Vector3d nearest_of(const Block& b, const Vector3d& p) {
    const Vector3d one(b.along.x(), b.along.y(), 0), two(-b.along.y(), b.along.x(), 0), d = p - b.centre;
    const Vector3d own(d.dot(one), d.dot(two), d.z()), held = own.cwiseMax(-b.half).cwiseMin(b.half);
    return held == own ? p
                       : Vector3d(b.centre + held.x() * one + held.y() * two + held.z() * Vector3d::UnitZ());
}

Vector3d nearest_of(const Rod& r, const Vector3d& p) {
    const Vector3d d = p - r.from;
    const double t = d.dot(r.along);
    const Vector3d across = d - t * r.along;
    const double rho = across.norm();
    const Vector3d out = rho > 0 ? Vector3d(across / rho) : r.along.unitOrthogonal();
    if (r.tip > 0 && t > r.length) {
        if (rho * r.tip <= (r.length + r.tip - t) * r.radius) return p;
        // On the cone, the wall's rim or the apex: a segment of the half plane through the axis.
        const Vector2d rim(r.radius, r.length), slant(-r.radius, r.tip);
        const double s = std::clamp((Vector2d(rho, t) - rim).dot(slant) / slant.squaredNorm(), 0., 1.);
        const Vector2d q = rim + s * slant;
        return r.from + q.y() * r.along + q.x() * out;
    }
    if (t >= 0 && t <= r.length && rho <= r.radius) return p;
    return r.from + std::clamp(t, 0., r.length) * r.along + std::min(rho, r.radius) * out;
}

Vector3d nearest_of(const Ball& b, const Vector3d& p) {
    const Vector3d d = p - b.centre;
    const double distance = d.norm();
    return distance <= b.radius ? p : Vector3d(b.centre + b.radius / distance * d);
}

} // namespace

Vector3d Convex::farthest(const Vector3d& direction) const {
    return std::visit([&](const auto& s) { return farthest_of(s, direction); }, shape_);
}

Vector3d Convex::nearest(const Vector3d& point) const {
    return std::visit([&](const auto& s) { return nearest_of(s, point); }, shape_);
}

} // namespace rampwright::body_detail
