#include "shaded/revolve.hpp"

#include <Eigen/Geometry>

#include <cmath>
#include <numbers>

namespace rampwright {

Mesh revolved(const std::vector<Vec2>& profile, const Vec3& origin, const Vec3& axis, int segments) {
    constexpr double on_axis = 1e-9;
    int least = 0;
    axis.cwiseAbs().minCoeff(&least);
    const Vec3 u = Vec3::Unit(least).cross(axis).normalized(), v = axis.cross(u);
    const auto n = static_cast<std::uint32_t>(profile.size()), around = static_cast<std::uint32_t>(segments);
    Mesh mesh;
    for (std::uint32_t k = 0; k < around; ++k) {
        const double angle = 2 * std::numbers::pi * k / around;
        const Vec3 out = std::cos(angle) * u + std::sin(angle) * v;
        for (const Vec2& p : profile)
            mesh.vertices.push_back(origin + p.x() * axis + p.y() * out);
    }
    for (std::uint32_t k = 0; k < around; ++k)
        for (std::uint32_t i = 0; i < n; ++i) {
            const std::uint32_t j = (i + 1) % n, next = (k + 1) % around;
            const std::uint32_t a = k * n + i, b = k * n + j, c = next * n + j, d = next * n + i;
            if (profile[j].y() > on_axis) mesh.triangles.push_back({a, c, b});
            if (profile[i].y() > on_axis) mesh.triangles.push_back({a, d, c});
        }
    return mesh;
}

Mesh box_mesh(const Vec3& centre, const Vec3& size, double turned) {
    const double c = std::cos(turned), s = std::sin(turned);
    Mesh mesh;
    for (int i = 0; i < 8; ++i) {
        const Vec3 half(i & 1 ? size.x() / 2 : -size.x() / 2, i & 2 ? size.y() / 2 : -size.y() / 2,
                        i & 4 ? size.z() / 2 : -size.z() / 2);
        mesh.vertices.push_back(centre +
                                Vec3(c * half.x() - s * half.y(), s * half.x() + c * half.y(), half.z()));
    }
    constexpr std::array<std::array<std::uint32_t, 4>, 6> sides{
        {{0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}}};
    for (const auto& q : sides) {
        mesh.triangles.push_back({q[0], q[1], q[2]});
        mesh.triangles.push_back({q[0], q[2], q[3]});
    }
    return mesh;
}

Mesh ball_mesh(const Vec3& centre, double radius, int segments) {
    std::vector<Vec2> half;
    const int steps = segments / 2;
    for (int i = 0; i <= steps; ++i) {
        const double angle = std::numbers::pi * i / steps;
        half.emplace_back(-radius * std::cos(angle), i == 0 || i == steps ? 0 : radius * std::sin(angle));
    }
    return revolved(half, centre, Vec3::UnitZ(), segments);
}

} // namespace rampwright
