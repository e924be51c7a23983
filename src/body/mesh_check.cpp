#include "body/mesh_parts.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <map>

namespace rampwright::body_detail {

namespace {

using Half = std::array<std::uint32_t, 3>; // from, to, triangle

std::vector<Half> half_edges(const Mesh& mesh) {
    std::vector<Half> halves;
    halves.reserve(3 * mesh.triangles.size());
    for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t)
        for (std::size_t i = 0; i < 3; ++i)
            halves.push_back({mesh.triangles[t][i], mesh.triangles[t][(i + 1) % 3], t});
    std::sort(halves.begin(), halves.end());
    return halves;
}

const Half* find_half(const std::vector<Half>& halves, std::uint32_t from, std::uint32_t to) {
    const auto at = std::lower_bound(halves.begin(), halves.end(), Half{from, to, 0});
    return at != halves.end() && (*at)[0] == from && (*at)[1] == to ? &*at : nullptr;
}

} // namespace

std::optional<Eigen::Vector3d> separate_skins(Mesh& mesh) {
    const std::vector<Half> halves = half_edges(mesh);
    for (std::size_t i = 0; i < halves.size(); ++i) {
        const auto& [from, to, t] = halves[i];
        const bool twice = i + 1 < halves.size() && halves[i + 1][0] == from && halves[i + 1][1] == to;
        if (twice || !find_half(halves, to, from)) return (mesh.vertices[from] + mesh.vertices[to]) / 2;
    }
    // Around each vertex the triangles form rings: the first ring keeps the vertex, others get copies.
    const auto triangles = mesh.triangles; // as the half edges know them
    std::vector<char> placed(3 * mesh.triangles.size(), 0), taken(mesh.vertices.size(), 0);
    for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t)
        for (std::uint32_t k = 0; k < 3; ++k) {
            if (placed[3 * t + k]) continue;
            const std::uint32_t vertex = triangles[t][k];
            std::uint32_t name = vertex;
            if (vertex < taken.size() && taken[vertex]) {
                name = static_cast<std::uint32_t>(mesh.vertices.size());
                mesh.vertices.push_back(Eigen::Vector3d(mesh.vertices[vertex]));
            } else if (vertex < taken.size()) {
                taken[vertex] = 1;
            }
            // Triangles around: from (vertex, next) to the one across (next... vertex).
            std::uint32_t now = t, corner = k;
            std::vector<std::pair<std::uint32_t, std::uint32_t>> ring;
            do {
                ring.emplace_back(now, corner);
                placed[3 * now + corner] = 1;
                const std::uint32_t before = triangles[now][(corner + 2) % 3];
                const Half* across = find_half(halves, vertex, before);
                now = (*across)[2];
                const auto& corners = triangles[now];
                corner = static_cast<std::uint32_t>(std::find(corners.begin(), corners.end(), vertex) -
                                                    corners.begin());
            } while (corner < 3 && !placed[3 * now + corner]);
            if (name != vertex)
                for (const auto& [triangle, at] : ring)
                    mesh.triangles[triangle][at] = name;
        }
    return std::nullopt;
}

bool is_sound(const Mesh& mesh) {
    for (const auto& [a, b, c] : mesh.triangles) {
        const Eigen::Vector3d &p = mesh.vertices[a], &q = mesh.vertices[b], &r = mesh.vertices[c];
        if (!((q - p).cross(r - p).norm() > 0)) return false;
    }
    if (mesh.triangles.empty()) return false;
    const std::vector<Half> halves = half_edges(mesh);
    for (std::size_t i = 0; i < halves.size(); ++i) {
        const auto& [from, to, t] = halves[i];
        if (i + 1 < halves.size() && halves[i + 1][0] == from && halves[i + 1][1] == to) return false;
        if (!find_half(halves, to, from)) return false;
        const Eigen::Vector3f a = (1e3 * mesh.vertices[from]).cast<float>(),
                              b = (1e3 * mesh.vertices[to]).cast<float>();
        if (a == b) return false;
    }
    return true;
}

} // namespace rampwright::body_detail
