#include "body/convex_solids.hpp"
#include "body/mesh_parts.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/decimal.hpp>

#include <algorithm>

namespace rampwright {

using namespace body_detail;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// The wood's surface as rings of corners; whatever rounding does, it is closed.
struct Surface {
    std::vector<Vector3d> corners;
    std::vector<std::vector<int>> rings;
};

Surface carve_body(const Stock& stock, const BodyShape& shape, double chord, double hair) {
    const std::vector<Slab> slabs = slabs_of(stock, chord);
    Surface surface;
    if (slabs.empty()) return surface;
    std::vector<double> x;
    for (const Slab& slab : slabs)
        x.push_back(slab.x0);
    x.push_back(slabs.back().x1);
    Eigen::AlignedBox2d around;
    for (const Outline* outline : {&shape.profile, &shape.plan})
        for (const OutlinePiece& piece : outline_pieces(*outline))
            for (const Vector2d& p : piece.control)
                around.extend(Vector2d(p.y(), p.y()));
    constexpr double room = 0.01;
    Cells cells(hair);
    const std::vector<int> boxes =
        cells.stack_boxes(x, around.min() - Vector2d(room, room), around.max() + Vector2d(room, room));
    std::vector<int> wood;
    for (std::size_t i = 0; i < slabs.size(); ++i) {
        std::vector<int> open{boxes[i]};
        for (const ConvexSolid& solid : slabs[i].solids) {
            std::vector<int> rest;
            for (const int cell : open) {
                const int inside = cells.may_meet(cell, solid) ? cells.carve(cell, solid, rest) : Cells::air;
                if (inside != Cells::air)
                    wood.push_back(inside);
                else if (rest.empty() || rest.back() != cell)
                    rest.push_back(cell);
            }
            open = std::move(rest);
        }
        for (const int cell : open)
            cells.give_to_air(cell);
    }
    for (const Cut& cut : shape.cuts) {
        const ConvexSolid solid = solid_of(cut, chord);
        if (solid.empty()) continue;
        std::vector<int> left;
        for (const int cell : wood) {
            if (!cells.may_meet(cell, solid)) {
                left.push_back(cell);
                continue;
            }
            const int inside = cells.carve(cell, solid, left);
            if (inside != Cells::air) cells.give_to_air(inside);
        }
        wood = std::move(left);
    }
    surface.rings = cells.surface();
    surface.corners = cells.corners();
    return surface;
}

/// Height over longest side, which tells needles from good triangles.
double shape_of(const Vector3d& p, const Vector3d& q, const Vector3d& r) {
    const double longest = std::max({(q - p).squaredNorm(), (r - q).squaredNorm(), (p - r).squaredNorm()});
    return longest > 0 ? (q - p).cross(r - p).norm() / longest : 0;
}

/// Cuts a convex ring into triangles so that the worst one is as good as can be (dynamic programming over its
/// diagonals): corners may lie on a straight side, and a careless cut would leave triangles without area.
class RingCutter {
public:
    void cut(const std::vector<Vector3d>& corners, const std::vector<int>& ring, Mesh& mesh) {
        const std::size_t n = ring.size();
        best_.assign(n * n, 1e9);
        by_.assign(n * n, 0);
        const auto at = [&](std::size_t i) -> const Vector3d& {
            return corners[static_cast<std::size_t>(ring[i])];
        };
        for (std::size_t span = 2; span < n; ++span)
            for (std::size_t i = 0; i + span < n; ++i) {
                const std::size_t j = i + span;
                double best = -1;
                for (std::size_t k = i + 1; k < j; ++k) {
                    const double worst = std::min(best_[i * n + k], best_[k * n + j]);
                    if (worst <= best) continue;
                    const double now = std::min(worst, shape_of(at(i), at(k), at(j)));
                    if (now <= best) continue;
                    best = now;
                    by_[i * n + j] = k;
                }
                best_[i * n + j] = best;
            }
        stack_ = {{0, n - 1}};
        while (!stack_.empty()) {
            const auto [i, j] = stack_.back();
            stack_.pop_back();
            if (j - i < 2) continue;
            const std::size_t k = by_[i * n + j];
            mesh.triangles.push_back({static_cast<std::uint32_t>(ring[i]),
                                      static_cast<std::uint32_t>(ring[k]),
                                      static_cast<std::uint32_t>(ring[j])});
            stack_.emplace_back(i, k);
            stack_.emplace_back(k, j);
        }
    }

private:
    std::vector<double> best_;
    std::vector<std::size_t> by_;
    std::vector<std::pair<std::size_t, std::size_t>> stack_;
};

Mesh triangulate(const Surface& surface) {
    Mesh mesh;
    std::vector<int> place(surface.corners.size(), -1);
    std::vector<int> ring;
    std::vector<std::vector<int>> rings;
    for (const std::vector<int>& from : surface.rings) {
        ring.clear();
        for (const int corner : from) {
            int& number = place[static_cast<std::size_t>(corner)];
            if (number < 0) {
                number = static_cast<int>(mesh.vertices.size());
                mesh.vertices.push_back(surface.corners[static_cast<std::size_t>(corner)]);
            }
            ring.push_back(number);
        }
        rings.push_back(ring);
    }
    RingCutter cutter;
    for (const std::vector<int>& each : rings)
        cutter.cut(mesh.vertices, each, mesh);
    return mesh;
}

std::string in_words(const Vector3d& place) {
    std::string text;
    for (const double metres : {place.x(), place.y(), place.z()})
        text += (text.empty() ? "" : ", ") + to_fixed(metres * 1e3, 1);
    return text;
}

/// Distances below which a corner lies on a plane, m, one after the other where rounding made trouble.
constexpr std::array<double, 5> hairs{1e-9, 1e-8, 1e-10, 1e-7, 3e-7};

} // namespace

double enclosed_volume(const Mesh& mesh) {
    double six = 0;
    for (const auto& [a, b, c] : mesh.triangles)
        six += mesh.vertices[a].dot(mesh.vertices[b].cross(mesh.vertices[c]));
    return six / 6;
}

long euler_characteristic(const Mesh& mesh) {
    std::vector<std::uint64_t> edges;
    for (const auto& t : mesh.triangles)
        for (std::size_t i = 0; i < 3; ++i) {
            const std::uint64_t a = t[i], b = t[(i + 1) % 3];
            edges.push_back(std::min(a, b) << 32 | std::max(a, b));
        }
    std::sort(edges.begin(), edges.end());
    const auto count = std::unique(edges.begin(), edges.end()) - edges.begin();
    return static_cast<long>(mesh.vertices.size()) - static_cast<long>(count) +
           static_cast<long>(mesh.triangles.size());
}

Mesh body_facets(const BodyShape& shape, double chord) {
    const Stock stock(shape);
    for (const double hair : hairs) {
        try {
            return triangulate(carve_body(stock, shape, chord, hair));
        } catch (const CellTrouble&) {
        }
    }
    return {};
}

Mesh body_mesh(const BodyShape& shape, double chord) {
    const Stock stock(shape);
    const double volume = measure(shape).wood.volume;
    std::optional<Vector3d> touching;
    for (const double hair : hairs) {
        try {
            Mesh mesh = triangulate(carve_body(stock, shape, chord, hair));
            if (mesh.triangles.empty())
                throw Problem(Exit::could_not, "cuts", Core::tr("the cuts leave no wood"),
                              Core::tr("make them smaller"));
            touching = separate_skins(mesh);
            if (touching) continue;
            constexpr double tolerance = 2e-7, shortest = 2e-6;
            join_triangles(mesh, tolerance, shortest);
            if (is_sound(mesh) && std::abs(enclosed_volume(mesh) - volume) < 1e-3 * volume) return mesh;
        } catch (const CellTrouble&) {
        }
    }
    if (touching)
        throw Problem(Exit::could_not, "cuts",
                      Core::tr("wood touches wood along a line only, near ({what}) mm: there the surface has "
                               "no inside and outside",
                               {{"what", in_words(*touching)}}),
                      Core::tr("move a cut there by a tenth of a millimetre"));
    throw Problem(Exit::could_not, "cuts", Core::tr("the body's surface could not be closed"),
                  Core::tr("move the cuts that nearly touch one another by a tenth of a millimetre"));
}

} // namespace rampwright
