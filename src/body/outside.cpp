#include "body/outside.hpp"

#include <algorithm>

namespace rampwright::body_detail {

using Eigen::Vector2d;

Polygon::Polygon(const Outline& outline) : points_(flatten(outline, 2e-5)) {
    double twice = 0;
    for (size_t i = 0; i < points_.size(); ++i) {
        const Vector2d &a = points_[i], &b = points_[(i + 1) % points_.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    if (twice < 0) std::reverse(points_.begin(), points_.end());
}

bool Polygon::inside(const Vector2d& p) const {
    bool in = false;
    for (size_t i = 0, j = points_.size() - 1; i < points_.size(); j = i++) {
        const Vector2d &a = points_[i], &b = points_[j];
        if ((a.y() > p.y()) != (b.y() > p.y()) &&
            p.x() < a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()))
            in = !in;
    }
    return in;
}

Vector2d Polygon::nearest(const Vector2d& p) const {
    Vector2d best = points_[0];
    double least = (p - best).squaredNorm();
    for (size_t i = 0; i < points_.size(); ++i) {
        const Vector2d &a = points_[i], along = points_[(i + 1) % points_.size()] - a;
        const double t = std::clamp((p - a).dot(along) / along.squaredNorm(), 0., 1.);
        const Vector2d q = a + t * along;
        const double d = (p - q).squaredNorm();
        if (d < least) {
            least = d;
            best = q;
        }
    }
    return best;
}

double Polygon::outside(const Vector2d& p) const {
    return inside(p) ? 0 : (p - nearest(p)).norm();
}

std::optional<InCorner> in_corner(const Rectangle& s, double y, double z) {
    if (!(s.r > 0) || y < s.y0 || y > s.y1 || z < s.z0 || z > s.z1) return {};
    const bool right = y > 0.5 * (s.y0 + s.y1), top = z > 0.5 * (s.z0 + s.z1);
    const Vector2d arm(y - (right ? s.y1 - s.r : s.y0 + s.r), z - (top ? s.z1 - s.r : s.z0 + s.r));
    if ((right ? arm.x() : -arm.x()) < 0 || (top ? arm.y() : -arm.y()) < 0) return {};
    return InCorner{arm, s.r, right, top};
}

std::optional<InCorner> in_corner(const std::vector<Rectangle>& section, double y, double z) {
    for (const auto& r : section)
        if (auto found = in_corner(r, y, z)) return found;
    return {};
}

} // namespace rampwright::body_detail
