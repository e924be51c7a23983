#include <rampwright/body/fit_outline.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/materials/starting_shapes.hpp>

#include <catch2/catch.hpp>

#include <numbers>

using namespace rampwright;
using Eigen::Vector2d;
using std::numbers::pi;

namespace {

constexpr double tolerance = 0.05; // mm

double reach(const std::vector<Vector2d>& from, const std::vector<Vector2d>& to) {
    double worst = 0;
    for (const Vector2d& p : from) {
        double least = 1e9;
        for (std::size_t i = 0; i < to.size(); ++i) {
            const Vector2d &a = to[i], along = to[(i + 1) % to.size()] - a;
            const double share = std::clamp((p - a).dot(along) / along.squaredNorm(), 0., 1.);
            least = std::min(least, (p - a - share * along).norm());
        }
        worst = std::max(worst, least);
    }
    return worst;
}

/// The farthest that either strays from the other.
double apart(const DrawnLine& line, const Outline& outline) {
    const auto drawn = flatten(line, 1e-3), made = flatten(outline, 1e-3);
    return std::max(reach(drawn, made), reach(made, drawn));
}

DrawnLine line_of(const Outline& outline) {
    DrawnLine line{outline_pieces(outline), true};
    return line;
}

} // namespace

TEST_CASE("a circle becomes a few smooth points within the tolerance", "[fit]") {
    // A centripetal spline through points an angle apart strays from a circle by about 0.0234 r angle^4 (its
    // inner control points stand r sin(angle) / 3 out, those of the best cubic 4/3 r tan(angle / 4)).
    for (const double radius : {2., 20., 80.}) {
        const DrawnLine circle = drawn_ellipse({100, 50}, {radius, radius});
        const Outline outline = fit_outline(circle, tolerance);
        CAPTURE(radius, outline.size());
        const double angle = std::pow(tolerance / (0.0234 * radius), 0.25);
        CHECK(static_cast<double>(outline.size()) < 1.35 * 2 * pi / angle + 1);
        CHECK(apart(circle, outline) < tolerance);
        for (const Vector2d& p : flatten(outline, 1e-3))
            CHECK(std::abs((p - Vector2d(100, 50)).norm() - radius) < tolerance);
        CHECK_NOTHROW(check_outline(outline, "circle"));
    }
}

TEST_CASE("straight sides stay straight and corners stay where they are", "[fit]") {
    const DrawnLine wedge = drawn_polyline({{0, 0}, {60, 0}, {120, 0}, {178, 6}, {0, 32}}, true);
    const Outline outline = fit_outline(wedge, tolerance);
    REQUIRE(outline.size() == 4); // the point in the middle of the floor says nothing
    CHECK(apart(wedge, outline) < 1e-9);
    for (const OutlinePoint& point : outline)
        CHECK_FALSE(point.smooth);
    const DrawnLine rounded = drawn_rectangle({0, 0}, {178, 32}, {8, 8});
    const Outline soft = fit_outline(rounded, tolerance);
    CAPTURE(soft.size());
    CHECK(apart(rounded, soft) < tolerance);
    CHECK(soft.size() <= 28);
    CHECK(soft.size() >= 8);
}

TEST_CASE("a line of very many short chords is followed by few points", "[fit]") {
    std::vector<Vector2d> points;
    for (int i = 0; i < 4000; ++i) {
        const double t = 2 * pi * i / 4000;
        points.emplace_back(89 + 89 * std::cos(t), 16 + 16 * std::sin(t) + 1.5 * std::sin(3 * t));
    }
    const DrawnLine line = drawn_polyline(points, true);
    const Outline outline = fit_outline(line, tolerance);
    CAPTURE(outline.size());
    CHECK(outline.size() < 150);
    CHECK(apart(line, outline) < tolerance);
}

TEST_CASE("our own outlines come back as they are", "[fit]") {
    REQUIRE_FALSE(starting_shapes().empty());
    for (const StartingShape& shape : starting_shapes())
        for (const auto& [points, height] : {std::pair{&shape.profile, 32.}, {&shape.plan, 44.}}) {
            Outline drawn;
            for (const PlanPoint& point : *points)
                drawn.push_back({{178 * point.at.x(), height * point.at.y()}, point.smooth});
            const DrawnLine line = line_of(drawn);
            const Outline outline = fit_outline(line, tolerance);
            CAPTURE(shape.name, drawn.size(), outline.size());
            CHECK(outline.size() <= drawn.size());
            CHECK(apart(line, outline) < tolerance);
        }
}

TEST_CASE("what encloses nothing is refused", "[fit]") {
    CHECK_THROWS_AS(fit_outline(drawn_polyline({{0, 0}, {10, 0}, {10, 10}}, false), tolerance), Problem);
    CHECK_THROWS_AS(fit_outline(drawn_polyline({{0, 0}, {10, 0}}, true), tolerance), Problem);
    CHECK_THROWS_AS(fit_outline(DrawnLine{{}, true}, tolerance), Problem);
}
