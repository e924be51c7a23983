#include "car/car_parts.hpp"
#include "shaded/revolve.hpp"

#include <rampwright/car/wheel_profile.hpp>
#include <rampwright/shaded/scene.hpp>

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

constexpr int segments = 48;
constexpr double crease = 35 * std::numbers::pi / 180;

const Colour bare_wood{0.87f, 0.72f, 0.53f}, tyre{0.25f, 0.26f, 0.29f}, steel{0.70f, 0.72f, 0.75f};

/// Metals by their look; anything else like putty.
Colour colour_of_material(std::string_view material) {
    struct Look {
        std::string_view word;
        Colour colour;
    };
    static const std::array<Look, 7> looks{{{"putty", {0.45f, 0.46f, 0.44f}},
                                            {"tungsten", {0.50f, 0.52f, 0.55f}},
                                            {"lead", {0.42f, 0.45f, 0.50f}},
                                            {"brass", {0.80f, 0.66f, 0.34f}},
                                            {"copper", {0.75f, 0.48f, 0.34f}},
                                            {"zinc", {0.68f, 0.71f, 0.73f}},
                                            {"steel", steel}}};
    for (const Look& look : looks)
        if (material.find(look.word) != std::string_view::npos) return look.colour;
    return {0.55f, 0.56f, 0.58f};
}

std::shared_ptr<const LitSurface> lit(Mesh mesh) {
    return std::make_shared<const LitSurface>(light_up(std::move(mesh), crease));
}

/// The profile's outline around its bore: tread, web, hub; `out` is the car's outside.
Mesh wheel_mesh(const Wheel& wheel, const WheelProfile& p, const Vec3& out) {
    const double bore = p.bore_diameter / 2, hub = p.hub_diameter / 2, rim = wheel.radius - p.tread_thickness;
    const double half = p.tread_width / 2, hub_half = p.hub_width / 2, web = p.web_thickness / 2;
    const double round =
        std::min(0.07 * p.tread_width, 0.5 * p.tread_thickness); // drawn only: the tread's edge
    std::vector<Vec2> profile{{-hub_half, bore}, {-hub_half, hub}, {-web, hub}, {-web, rim}, {-half, rim}};
    profile.insert(profile.end(), {{-half, wheel.radius - round},
                                   {-half + round, wheel.radius},
                                   {half - round, wheel.radius},
                                   {half, wheel.radius - round}});
    profile.insert(profile.end(), {{half, rim}, {web, rim}, {web, hub}, {hub_half, hub}, {hub_half, bore}});
    // Where the hub meets the tread there is no web.
    profile.erase(std::unique(profile.begin(), profile.end()), profile.end());
    return revolved(profile, wheel.centre, out, segments);
}

Mesh rod_mesh(const Vec3& from, const Vec3& to, double diameter, int around) {
    const double length = (to - from).norm(), radius = diameter / 2;
    return revolved({{0, 0}, {0, radius}, {length, radius}, {length, 0}}, from, (to - from) / length, around);
}

std::optional<Mesh> ballast_mesh(const BallastPlan& piece) {
    switch (piece.shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        return box_mesh(piece.at, {piece.size[0], piece.size[1], piece.size[2]}, piece.turned);
    case PieceShape::cylinder: {
        const Vec3 axis = Eigen::AngleAxisd(piece.turned, Vec3::UnitZ()) * Vec3::Unit(piece.axis);
        const Vec3 half = piece.size[1] / 2 * axis;
        return rod_mesh(piece.at - half, piece.at + half, piece.size[0], segments / 2);
    }
    case PieceShape::sphere:
        return ball_mesh(piece.at, piece.size[0] / 2, segments / 2);
    case PieceShape::putty:
        break;
    }
    return std::nullopt;
}

/// Putty in a pocket is drawn as a block up to its level; in a bore it does not show enough to matter.
std::optional<Mesh> putty_mesh(const BallastPlan& piece, const CarPlan& plan, const BodyOutlines& outlines) {
    for (const CutPlan& cut : plan.body.cuts) {
        if (cut.name != piece.in || cut.is_bore) continue;
        const PuttyFill fill = fill_with_putty(piece, cut, outlines);
        const Vec3 low = cut.from.cwiseMin(cut.to);
        Vec3 high = cut.from.cwiseMax(cut.to);
        high.z() = std::min(high.z(), fill.level);
        if (fill.capacity > 0 && high.z() > low.z()) return box_mesh((low + high) / 2, high - low, 0);
    }
    return std::nullopt;
}

/// Places for the number: both sides between the wheels, and on top where the wood is broadest free of cuts.
void add_decals(const CarPlan& plan, const CarModel& car, const BodyShape& shape, Scene& scene) {
    const BodyOutlines outlines(plan.body);
    const double x = (car.rear_x + car.front_x) / 2;
    const auto sides = outlines.sides(x);
    const auto up = outlines.profile.section(x);
    if (sides && !up.empty()) {
        const double low = up.front().low, high = up.back().high;
        const double half = 0.38 * (high - low);
        const double z = (low + high) / 2;
        scene.decals.push_back({{x, sides->low, z}, Vec3::UnitX(), Vec3::UnitZ(), half, half});
        scene.decals.push_back({{x, sides->high, z}, -Vec3::UnitX(), Vec3::UnitZ(), half, half});
    }
    // Along the top, the place whose largest free disc is the largest.
    const Interval along = outlines.along();
    Decal best;
    for (int i = 1; i < 40; ++i) {
        const double at = along.low + along.length() * i / 40;
        const auto across = outlines.sides(at);
        const auto wood = outlines.profile.section(at);
        if (!across || wood.empty()) continue;
        double half = 0.3 * (across->high - across->low);
        half = std::min({half, 0.9 * (at - along.low), 0.9 * (along.high - at)});
        const double middle = (across->low + across->high) / 2, top = wood.back().high;
        for (const Cut& cut : shape.cuts) {
            Eigen::AlignedBox3d box;
            if (const auto* pocket = std::get_if<Pocket>(&cut)) {
                box = {pocket->low, pocket->high};
            } else {
                const Bore& bore = std::get<Bore>(cut);
                const Vec3 r = Vec3::Constant(bore.diameter / 2);
                box = {bore.from.cwiseMin(bore.to) - r, bore.from.cwiseMax(bore.to) + r};
            }
            if (box.max().z() < top - 1e-4) continue;
            const double dx = std::max({box.min().x() - at, at - box.max().x(), 0.});
            const double dy = std::max({box.min().y() - middle, middle - box.max().y(), 0.});
            half = std::min(half, 0.95 * std::hypot(dx, dy));
        }
        if (half > best.half_size + 1e-4 || (half > best.half_size - 1e-4 && at > best.centre.x()))
            best = {{at, middle, top}, -Vec3::UnitY(), Vec3::UnitX(), half, half};
    }
    if (best.half_size > 2e-3) scene.decals.push_back(best);
}

} // namespace

LitSurface light_up(Mesh mesh, double crease_angle) {
    LitSurface lit{std::move(mesh), {}};
    const auto& triangles = lit.mesh.triangles;
    std::vector<Eigen::Vector3f> flat(triangles.size());
    std::vector<float> weight(triangles.size());
    std::vector<std::vector<std::uint32_t>> around(lit.mesh.vertices.size());
    for (std::uint32_t t = 0; t < triangles.size(); ++t) {
        const auto& [a, b, c] = triangles[t];
        const Vec3& p = lit.mesh.vertices[a];
        const Vec3 cross = (lit.mesh.vertices[b] - p).cross(lit.mesh.vertices[c] - p);
        const double size = cross.norm();
        weight[t] = static_cast<float>(size);
        flat[t] = size > 0 ? Eigen::Vector3f((cross / size).cast<float>()) : Eigen::Vector3f::Zero();
        for (const std::uint32_t v : triangles[t])
            around[v].push_back(t);
    }
    const auto least = static_cast<float>(std::cos(crease_angle));
    lit.normals.resize(triangles.size());
    for (std::uint32_t t = 0; t < triangles.size(); ++t)
        for (std::size_t k = 0; k < 3; ++k) {
            Eigen::Vector3f sum = Eigen::Vector3f::Zero();
            for (const std::uint32_t other : around[triangles[t][k]])
                if (flat[other].dot(flat[t]) > least) sum += weight[other] * flat[other];
            lit.normals[t][k] = sum.squaredNorm() > 0 ? Eigen::Vector3f(sum.normalized()) : flat[t];
        }
    return lit;
}

BodyShape finished_body(const CarPlan& plan, const CarModel& car) {
    return body_shape(plan, car, BodyOutlines(plan.body));
}

Scene make_scene(const CarPlan& plan, const CarModel& car, std::shared_ptr<const LitSurface> body) {
    Scene scene;
    scene.solids.push_back({Stuff::body, colour_of(plan.paint).value_or(bare_wood), std::move(body)});
    double ground = std::numeric_limits<double>::infinity();
    for (const Wheel& wheel : car.wheels) {
        const Vec3 out = is_left(wheel.corner) ? Vec3(Vec3::UnitY()) : Vec3(-Vec3::UnitY());
        const AxleShape axle = axle_shape(plan.axles, wheel);
        scene.solids.push_back(
            {Stuff::wheel, tyre,
             lit(wheel_mesh(wheel, profile_of(plan.wheels[static_cast<std::size_t>(wheel.corner)]), out))});
        Mesh rod = rod_mesh(axle.inner, axle.under_head, axle.shank_diameter, segments / 3);
        scene.solids.push_back({Stuff::axle, steel, lit(std::move(rod))});
        if ((axle.head_end - axle.under_head).norm() > 0)
            scene.solids.push_back(
                {Stuff::axle, steel,
                 lit(rod_mesh(axle.under_head, axle.head_end, axle.head_diameter, segments / 2))});
        ground = std::min(ground, wheel.centre.z() - wheel.radius);
    }
    const BodyOutlines outlines(plan.body);
    for (const BallastPlan& piece : plan.ballast) {
        auto mesh =
            piece.shape == PieceShape::putty ? putty_mesh(piece, plan, outlines) : ballast_mesh(piece);
        if (mesh)
            scene.solids.push_back(
                {Stuff::ballast, colour_of_material(piece.material), lit(std::move(*mesh))});
    }
    scene.low = car.low;
    scene.high = car.high;
    scene.ground = ground;
    add_decals(plan, car, finished_body(plan, car), scene);
    return scene;
}

} // namespace rampwright
