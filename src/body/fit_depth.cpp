#include "body/outside.hpp"
#include "body/pieces.hpp"
#include "body/stock.hpp"

#include <rampwright/body/fit_volumes.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

using namespace body_detail;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Keeps whichever sticks out farther.
void keep(Protrusion& worst, double depth, const Vector3d& at, const Vector3d& towards) {
    if (depth > worst.depth) worst = {depth, at, towards};
}

/// How far a solid reaches along a direction past a plane's offset.
void keep_past(Protrusion& worst, const Convex& solid, const Vector3d& direction, double offset) {
    const Vector3d at = solid.farthest(direction);
    keep(worst, direction.dot(at) - offset, at, direction);
}

} // namespace

Protrusion sticking_out(const Piece& piece, const Cut& cavity) {
    const Convex solid = convex(piece), room(cavity);
    Protrusion worst;
    if (const auto* b = std::get_if<Block>(&room.shape())) {
        for (int axis = 0; axis < 3; ++axis)
            for (const double side : {-1., 1.})
                keep_past(worst, solid, side * Vector3d::Unit(axis), side * b->centre[axis] + b->half[axis]);
        return worst;
    }
    const auto& r = std::get<Rod>(room.shape());
    keep_past(worst, solid, -r.along, -r.along.dot(r.from));
    keep_past(worst, solid, r.along, r.along.dot(r.from) + r.length);
    const auto radial = [&](const Vector3d& p) -> Vector3d {
        return p - r.from - r.along.dot(p - r.from) * r.along;
    };
    for (const auto& face : faces(solid)) {
        const auto best = greatest([&](double u, double v) { return radial(face.at(u, v)).norm(); });
        const Vector3d at = face.at(best.u, best.v);
        if (best.value > 0) keep(worst, best.value - r.radius, at, radial(at) / best.value);
    }
    return worst;
}

Protrusion past_body(const Piece& piece, const BodyShape& body) {
    const Convex solid = convex(piece);
    const Stock stock(body);
    if (stock.holds(solid.bounds())) return {};
    const Polygon profile(body.profile), plan(body.plan);
    std::vector<Rectangle> rectangles;
    Protrusion worst;
    const auto side_view = [](const Vector3d& p) { return Vector2d(p.x(), p.z()); };
    const auto top_view = [](const Vector3d& p) { return Vector2d(p.x(), p.y()); };
    for (const auto& face : faces(solid)) {
        auto best = greatest([&](double u, double v) { return profile.outside(side_view(face.at(u, v))); });
        if (best.value > worst.depth) {
            const Vector3d at = face.at(best.u, best.v);
            const Vector2d out = (side_view(at) - profile.nearest(side_view(at))).normalized();
            keep(worst, best.value, at, {out.x(), 0, out.y()});
        }
        best = greatest([&](double u, double v) { return plan.outside(top_view(face.at(u, v))); });
        if (best.value > worst.depth) {
            const Vector3d at = face.at(best.u, best.v);
            const Vector2d out = (top_view(at) - plan.nearest(top_view(at))).normalized();
            keep(worst, best.value, at, {out.x(), out.y(), 0});
        }
        if (!stock.rounded()) continue;
        const auto corner = [&](const Vector3d& p) {
            stock.section(p.x(), rectangles);
            return in_corner(rectangles, p.y(), p.z());
        };
        best = greatest([&](double u, double v) {
            const auto in = corner(face.at(u, v));
            return in ? in->arm.norm() - in->r : 0;
        });
        if (best.value > worst.depth) {
            const Vector3d at = face.at(best.u, best.v);
            const Vector2d out = corner(at)->arm.normalized();
            keep(worst, best.value, at, {0, out.x(), out.y()});
        }
    }
    return worst;
}

} // namespace rampwright
