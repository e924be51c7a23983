#include "body/bodies.hpp"
#include "body/modeller.hpp"

#include <rampwright/body/mesh.hpp>
#include <rampwright/core/problem.hpp>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Tool.hxx>
#include <Poly_Triangulation.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS.hxx>
#include <algorithm>
#include <map>

using namespace rampwright;
using Eigen::Vector3d;

namespace {

/// Whether every edge is run along once each way, no triangle is without area, and every vertex is used.
bool closed(const Mesh& mesh) {
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> edges;
    std::vector<char> used(mesh.vertices.size(), 0);
    for (const auto& t : mesh.triangles) {
        const auto &a = mesh.vertices[t[0]], &b = mesh.vertices[t[1]], &c = mesh.vertices[t[2]];
        if (!((b - a).cross(c - a).norm() > 0)) return false;
        for (std::size_t i = 0; i < 3; ++i) {
            used[t[i]] = 1;
            if (++edges[{t[i], t[(i + 1) % 3]}] > 1) return false;
        }
    }
    for (const auto& [edge, count] : edges)
        if (!edges.count({edge.second, edge.first})) return false;
    return std::find(used.begin(), used.end(), 0) == used.end();
}

BodyShape block() {
    return {bodies::corners({{0, 0}, {.18, 0}, {.18, .03}, {0, .03}}),
            bodies::corners({{0, -.022}, {.18, -.022}, {.18, .022}, {0, .022}}),
            0,
            {}};
}

double volume_error(const BodyShape& shape, const Mesh& mesh) {
    return std::abs(enclosed_volume(mesh) / measure(shape).wood.volume - 1);
}

void check_mesh(const BodyShape& shape, long euler) {
    const Mesh mesh = body_mesh(shape);
    CHECK(closed(mesh));
    CHECK(euler_characteristic(mesh) == euler);
    CHECK(volume_error(shape, mesh) < 1e-3);
}

BodyShape random_body(unsigned seed) {
    bodies::Draw u(seed);
    BodyShape shape = bodies::wedge(u, seed % 2 != 0);
    shape.edge_radius = seed % 3 == 0 ? .003 : 0;
    for (unsigned i = 0; i < seed % 8; ++i) {
        if (i % 2 != 0)
            shape.cuts.push_back(bodies::pocket(u));
        else
            shape.cuts.push_back(bodies::bore(u, i % 4 == 2));
    }
    return shape;
}

/// The Euler characteristic of the solid modeller's own triangulation of the same body, its corners joined
/// where they lie within a thousandth of a millimetre of one another.
long modellers_euler(const BodyShape& shape) {
    std::vector<TopoDS_Shape> tools;
    for (const Cut& cut : shape.cuts)
        tools.push_back(modeller::solid(cut));
    const TopoDS_Shape body = modeller::less(modeller::uncut(shape), tools);
    BRepMesh_IncrementalMesh(body, 0.05, false, 0.3);
    std::map<std::array<long, 3>, std::uint32_t> numbers;
    Mesh mesh;
    for (TopExp_Explorer faces(body, TopAbs_FACE); faces.More(); faces.Next()) {
        TopLoc_Location place;
        const auto part = BRep_Tool::Triangulation(TopoDS::Face(faces.Current()), place);
        std::vector<std::uint32_t> names;
        for (int i = 1; i <= part->NbNodes(); ++i) {
            const gp_Pnt p = part->Node(i).Transformed(place.Transformation());
            const std::array<long, 3> key{std::lround(p.X() * 1e3), std::lround(p.Y() * 1e3),
                                          std::lround(p.Z() * 1e3)};
            const auto [at, fresh] = numbers.emplace(key, static_cast<std::uint32_t>(mesh.vertices.size()));
            if (fresh) mesh.vertices.emplace_back(p.X(), p.Y(), p.Z());
            names.push_back(at->second);
        }
        for (int i = 1; i <= part->NbTriangles(); ++i) {
            int a = 0, b = 0, c = 0;
            part->Triangle(i).Get(a, b, c);
            const std::array<std::uint32_t, 3> t{names[std::size_t(a) - 1], names[std::size_t(b) - 1],
                                                 names[std::size_t(c) - 1]};
            if (t[0] != t[1] && t[1] != t[2] && t[2] != t[0]) mesh.triangles.push_back(t);
        }
    }
    return euler_characteristic(mesh);
}

} // namespace

// Euler-Poincaré: V - E + F = 2 (1 - g) for a closed surface of genus g.
TEST_CASE("a drilled block's mesh has as many holes as were drilled through", "[body][mesh]") {
    BodyShape shape = block();
    for (int through = 0; through <= 4; ++through) {
        INFO("through bores " << through);
        check_mesh(shape, 2 - 2 * through);
        const double x = .02 + .035 * through;
        if (through % 2 == 0)
            shape.cuts.push_back(Bore{{x, -.03, .006}, {x, .03, .006}, .0023});
        else
            shape.cuts.push_back(Bore{{x, .005, -.01}, {x, .002, .04}, .008}); // upright, a little tilted
    }
    // Blind cuts add none, crossing through bores join into one pair of tunnels: four mouths, three holes.
    shape.cuts = {Pocket{{.02, -.01, .01}, {.06, .01, .05}}, Bore{{.1, 0, .04}, {.1, 0, .012}, .01, true}};
    check_mesh(shape, 2);
    shape.cuts = {Bore{{.1, -.05, .015}, {.1, .05, .015}, .01}, Bore{{.1, 0, -.01}, {.1, 0, .05}, .008}};
    check_mesh(shape, 2 - 2 * 3);
    // A hollow that is nowhere open is a second skin: two spheres.
    shape.cuts = {Pocket{{.05, -.01, .01}, {.06, .01, .02}}};
    check_mesh(shape, 4);
}

TEST_CASE("cuts flush with faces and with one another leave a closed mesh", "[body][mesh]") {
    BodyShape shape = block();
    const Pocket open{{.02, -.01, .01}, {.06, .01, .03}}; // its lid is the block's top
    SECTION("flush with the top") {
        shape.cuts = {open};
    }
    SECTION("above the top as well") {
        shape.cuts = {open, Pocket{{.02, -.01, .01}, {.06, .01, .05}}};
    }
    SECTION("the same pocket twice") {
        shape.cuts = {open, open, open};
    }
    SECTION("pockets side by side") {
        shape.cuts = {open, Pocket{{.06, -.01, .01}, {.09, .01, .03}}};
    }
    SECTION("a deeper pocket within") {
        shape.cuts = {open, Pocket{{.03, -.01, .005}, {.05, .01, .03}}};
    }
    SECTION("a corner off") {
        shape.cuts = {Pocket{{.15, .01, .02}, {.18, .022, .03}}};
    }
    SECTION("a step across the whole width") {
        shape.cuts = {Pocket{{.15, -.022, .02}, {.18, .022, .03}}};
    }
    SECTION("the same bore twice, once from each end") {
        shape.cuts = {Bore{{.1, 0, .03}, {.1, 0, .01}, .008}, Bore{{.1, 0, .01}, {.1, 0, .03}, .008}};
    }
    SECTION("a bore going on where another ends") {
        shape.cuts = {Bore{{.1, .01, .03}, {.1, .01, .02}, .008}, Bore{{.1, .01, .02}, {.1, .01, .01}, .008}};
    }
    SECTION("a bore along the middle of a face") {
        shape.cuts = {Bore{{-.01, 0, .03}, {.05, 0, .03}, .008}};
    }
    SECTION("a pointed bore that ends in a pocket's floor") {
        shape.cuts = {open, Bore{{.04, 0, .02}, {.04, 0, .01}, .006, true}};
    }
    SECTION("with rounded edges") {
        shape.edge_radius = .004;
        shape.cuts = {Pocket{{.02, -.022, .01}, {.06, .018, .03}},
                      Pocket{{.1, -.018, .026}, {.15, .018, .03}}};
    }
    check_mesh(shape, 2);
}

TEST_CASE("wood in two pieces, on a notched and a pointed outline, is meshed as it is", "[body][mesh]") {
    BodyShape shape = block();
    shape.cuts = {Pocket{{.08, -.03, -.01}, {.1, .03, .04}}};
    check_mesh(shape, 4);
    shape = block();
    shape.profile = bodies::corners({{0, 0}, {.18, 0}, {0, .03}}); // ends in an edge
    check_mesh(shape, 2);
    shape.edge_radius = .003; // the rounding shrinks with the section, to nothing at the point
    check_mesh(shape, 2);
    shape = block();
    shape.plan = bodies::corners(
        {{0, -.022}, {.18, -.022}, {.18, -.01}, {.1, -.01}, {.1, .012}, {.18, .012}, {.18, .022}, {0, .022}});
    check_mesh(shape, 2); // a fork
    shape.edge_radius = .002;
    check_mesh(shape, 2);
}

TEST_CASE("a mesh's box is the body's", "[body][mesh]") {
    BodyShape shape = block();
    shape.cuts = {Pocket{{.02, -.03, -.01}, {.06, .01, .01}}, Pocket{{.1, -.01, .02}, {.15, .01, .05}}};
    for (const double radius : {0., .004}) {
        shape.edge_radius = radius;
        const Mesh mesh = body_mesh(shape);
        Eigen::AlignedBox3d box;
        for (const auto& v : mesh.vertices)
            box.extend(v);
        CHECK((box.min() - Vector3d(0, -.022, 0)).norm() < 1e-9);
        CHECK((box.max() - Vector3d(.18, .022, .03)).norm() < 1e-9);
    }
}

TEST_CASE("any overlapping cuts leave a closed mesh of the measured volume", "[body][mesh]") {
    for (unsigned seed = 1; seed <= 24; ++seed) {
        INFO("seed " << seed);
        const BodyShape shape = random_body(seed);
        const Mesh mesh = body_mesh(shape);
        CHECK(closed(mesh));
        CHECK(volume_error(shape, mesh) < 1e-3);
    }
}

TEST_CASE("a mesh has the holes and pieces that a solid modeller finds", "[body][mesh]") {
    int other_than_a_ball = 0;
    for (unsigned seed = 1; seed <= 23; ++seed) {
        BodyShape shape = random_body(seed);
        if (shape.edge_radius > 0 || shape.cuts.empty()) continue;
        INFO("seed " << seed);
        const long euler = modellers_euler(shape);
        CHECK(euler_characteristic(body_mesh(shape)) == euler);
        other_than_a_ball += euler != 2;
    }
    CHECK(other_than_a_ball >= 4);
}

TEST_CASE("where wood touches along a line only, the mesh is refused", "[body][mesh]") {
    BodyShape shape = block();
    // Two pockets that share an upright edge: across it the wood touches itself.
    shape.cuts = {Pocket{{.02, -.01, .01}, {.04, 0, .05}}, Pocket{{.04, 0, .01}, {.06, .01, .05}}};
    CHECK_THROWS_WITH(body_mesh(shape),
                      Catch::Contains("touches wood along a line") && Catch::Contains("(40.0, 0.0,"));
    shape.cuts = {Pocket{{-.1, -.1, -.1}, {.3, .1, .1}}};
    CHECK_THROWS_WITH(body_mesh(shape), Catch::Contains("leave no wood"));
    CHECK(body_facets(shape, 1e-4).triangles.empty());
}

TEST_CASE("a mesh for pictures is closed as well", "[body][mesh]") {
    for (unsigned seed = 1; seed <= 12; ++seed) {
        INFO("seed " << seed);
        const BodyShape shape = random_body(seed);
        CHECK(volume_error(shape, body_facets(shape, 1e-4)) < 0.01);
    }
}
