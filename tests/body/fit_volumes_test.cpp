#include "body/bodies.hpp"
#include "body/modeller.hpp"

#include <rampwright/body/fit_volumes.hpp>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

using namespace rampwright;
using Eigen::Vector3d;

namespace {

Piece draw_piece(bodies::Draw& u, const Vector3d& centre) {
    Piece p;
    p.kind = static_cast<Piece::Kind>(std::min(2, int(u(0, 3))));
    p.centre = centre;
    p.size = Vector3d(u(.004, .02), u(.004, .02), u(.004, .02));
    p.axis = Vector3d::Unit(std::min(2, int(u(0, 3))));
    p.turned = u(-3, 3);
    return p;
}

TopoDS_Shape modelled(const Piece& p) {
    if (p.kind == Piece::Kind::box) return modeller::block(p.centre, p.size, p.turned);
    if (p.kind == Piece::Kind::sphere) return modeller::ball(p.centre, p.size.x());
    const Vector3d axis = Eigen::AngleAxisd(p.turned, Vector3d::UnitZ()) * p.axis;
    return modeller::rod(p.centre, axis, p.size.x(), p.size.y());
}

/// The modeller puts a spline through the curve in which a ball meets a rod, 1e-6 of the piece off; two
/// frames of ours agree to 1e-9 on the same pairs, and closed forms are checked below.
double tolerance(const Piece& one, const Piece& other) {
    const bool ball_and_rod = (one.kind == Piece::Kind::sphere) != (other.kind == Piece::Kind::sphere) &&
                              (one.kind == Piece::Kind::cylinder) != (other.kind == Piece::Kind::cylinder);
    return ball_and_rod ? 1e-5 : 1e-6;
}

Piece turned(Piece p, double angle) {
    p.centre = Eigen::AngleAxisd(angle, Vector3d::UnitZ()) * p.centre;
    p.turned += angle;
    return p;
}

} // namespace

TEST_CASE("turned pieces fit as a solid modeller says", "[body][modeller]") {
    for (unsigned seed = 300; seed < 330; ++seed) {
        INFO("seed " << seed);
        bodies::Draw u(seed);
        auto body = bodies::wedge(u, false);
        for (int i = 0; i < 3; ++i) {
            if (i == 1)
                body.cuts.push_back(bodies::bore(u, false));
            else
                body.cuts.push_back(bodies::pocket(u));
        }
        const auto piece = draw_piece(u, {u(.01, .17), u(-.02, .02), u(0, .03)});
        const auto other = draw_piece(u, piece.centre + Vector3d(u(-.01, .01), u(-.01, .01), u(-.01, .01)));
        const auto own = modelled(piece), hull = modeller::uncut(body);
        std::vector<TopoDS_Shape> tools;
        for (const auto& c : body.cuts)
            tools.push_back(modeller::solid(c));
        const double whole = moments(piece).volume, tol = 1e-6 * whole;
        CHECK(bodies::difference(moments(piece), modeller::moments(own)) <
              1e-8); // closed form; the modeller's sum
        const double ball = piece.kind == Piece::Kind::sphere ? 10 * tol : tol; // beside bores
        CHECK(std::abs(volume_out_of_cuts(piece, body.cuts) -
                       modeller::moments(modeller::less(own, tools)).volume) < ball);
        CHECK(std::abs(volume_out_of_body(piece, body) -
                       modeller::moments(modeller::less(own, {hull})).volume) < tol);
        CHECK(std::abs(volume_in_wood(piece, body) -
                       modeller::moments(modeller::common(own, modeller::less(hull, tools))).volume) < ball);
        const double both = overlap(piece, other);
        CHECK(std::abs(both - modeller::moments(modeller::common(own, modelled(other))).volume) <
              tolerance(piece, other) * whole);
        CHECK(std::abs(both - overlap(other, piece)) < 1e-7 * whole);
        CHECK(std::abs(both - overlap(turned(piece, 0.7), turned(other, 0.7))) < 1e-7 * whole);
    }
}

TEST_CASE("overlaps have their closed forms", "[body]") {
    // Steinmetz solid: two equal cylinders at right angles share 16 r³ / 3 (closed form, Archimedes).
    const double r = 0.005;
    Piece a{Piece::Kind::cylinder, {.01, .02, .03}, {2 * r, .04, 0}, Vector3d::UnitX(), 0};
    Piece b = a;
    b.axis = Vector3d::UnitY();
    CHECK(overlap(a, b) == Approx(16 * r * r * r / 3).epsilon(1e-8));
    b.axis = Vector3d::UnitZ();
    CHECK(overlap(a, b) == Approx(16 * r * r * r / 3).epsilon(1e-8));
    a.turned = 0.4; // about z, square to b's axis still
    CHECK(overlap(a, b) == Approx(16 * r * r * r / 3).epsilon(1e-8));
    // Napkin ring: a ball less a hole of length h through its middle leaves π h³ / 6 (closed form).
    const Piece ball{Piece::Kind::sphere, {.01, .02, .03}, {2 * r, 0, 0}, Vector3d::UnitZ(), 0};
    const double h = 0.006, hole = std::sqrt(r * r - h * h / 4);
    const Piece drill{
        Piece::Kind::cylinder, ball.centre, {2 * hole, .04, 0}, Vector3d(1, 2, -1).normalized(), 0};
    const double left = moments(ball).volume - overlap(ball, drill);
    CHECK(left == Approx(std::numbers::pi * h * h * h / 6).epsilon(1e-7));
    // A box turned by 45° in a pocket as wide as its own side: each corner that sticks out is a triangle.
    const double side = 0.02, reach = side * (std::sqrt(0.5) - 0.5);
    const Piece box{Piece::Kind::box, {0, 0, 0}, {side, side, .01}, Vector3d::UnitZ(), std::numbers::pi / 4};
    const std::array<Cut, 1> room{Pocket{{-side / 2, -side / 2, -.005}, {side / 2, side / 2, .005}}};
    CHECK(volume_out_of_cuts(box, room) == Approx(4 * reach * reach * .01).epsilon(1e-9));
}

TEST_CASE("a piece that sticks out says how far", "[body]") {
    const Piece box{Piece::Kind::box, {.05, 0, .01}, {.02, .01, .01}, Vector3d::UnitZ(), 0};
    const auto out = sticking_out(box, Pocket{{.03, -.004, 0}, {.058, .01, .02}});
    CHECK(out.depth == Approx(.002).epsilon(1e-9)); // the front end: 60 past 58 mm; the side only 1 mm
    CHECK(out.towards == Vector3d::UnitX());
    CHECK(sticking_out(box, Pocket{{.03, -.01, 0}, {.07, .01, .02}}).depth == 0);

    // A rod in its bore: 3 mm too far out, and 0.5 mm too thick.
    const Bore bore{{.05, -.02, .01}, {.05, .01, .01}, .01, false};
    Piece rod{Piece::Kind::cylinder, {.05, -.013, .01}, {.01, .02, 0}, Vector3d::UnitY(), 0};
    CHECK(sticking_out(rod, bore).depth == Approx(.003).epsilon(1e-6));
    CHECK(sticking_out(rod, bore).towards.y() == Approx(-1));
    rod.centre.y() = 0;
    rod.size.x() = .011;
    CHECK(sticking_out(rod, bore).depth == Approx(.0005).epsilon(1e-6));

    BodyShape body;
    body.profile = bodies::corners({{0, 0}, {.18, 0}, {.18, .01}, {0, .03}}); // top falls by 1 in 9
    body.plan = bodies::corners({{0, -.022}, {.18, -.022}, {.18, .022}, {0, .022}});
    CHECK(past_body(box, body).depth == 0);
    const auto low =
        past_body({Piece::Kind::box, {.05, 0, .003}, {.02, .01, .01}, Vector3d::UnitZ(), 0}, body);
    CHECK(low.depth == Approx(.002).epsilon(1e-6));
    CHECK(low.towards.z() == Approx(-1));
    // A ball of 8 mm, 3 mm of its radius above the slope: measured square to the slope.
    const Vector3d normal = Vector3d(1, 0, 9).normalized();
    const Vector3d foot(.09, 0, .02);
    const auto ball =
        past_body({Piece::Kind::sphere, foot - .001 * normal, {.008, 0, 0}, Vector3d::UnitZ(), 0}, body);
    CHECK(ball.depth == Approx(.003).epsilon(1e-5));
    CHECK((ball.towards - normal).norm() < 1e-4);
    // Under a rounded edge: a square bar flush with bottom and side stands out past the corner's arc by
    // (√2 - 1) r.
    body.edge_radius = .003;
    const auto bar =
        past_body({Piece::Kind::box, {.05, .018, .004}, {.02, .008, .008}, Vector3d::UnitZ(), 0}, body);
    CHECK(bar.depth == Approx((std::sqrt(2.) - 1) * .003).epsilon(1e-6));
}
