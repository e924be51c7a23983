#include "body/bodies.hpp"

#include <rampwright/body/outline.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using Eigen::Vector2d;

TEST_CASE("corners are joined by straight lines", "[body]") {
    const auto outline = bodies::corners({{0, 0}, {2, 0}, {2, 1}, {0, 1}});
    for (const auto& piece : outline_pieces(outline))
        CHECK(piece.straight);
    CHECK(flatten(outline, 1e-3).size() == 4);
}

TEST_CASE("a smooth outline passes its points with one tangent", "[body]") {
    auto outline = bodies::corners({{0, 0}, {3, -.2}, {4, 1}, {2.5, 2}, {.3, 1.4}});
    for (auto& p : outline)
        p.smooth = true;
    const auto pieces = outline_pieces(outline);
    REQUIRE(pieces.size() == 5);
    for (size_t i = 0; i < 5; ++i) {
        const auto &here = pieces[i], &next = pieces[(i + 1) % 5];
        CHECK(here.control[3] == outline[(i + 1) % 5].at);
        const Vector2d in = here.control[3] - here.control[2], out = next.control[1] - next.control[0];
        CHECK(std::abs(in.x() * out.y() - in.y() * out.x()) < 1e-12);
        CHECK(in.dot(out) > 0);
    }
}

TEST_CASE("a spline through evenly spaced points has Catmull and Rom's tangents", "[body]") {
    // With equal chords the centripetal spline is the uniform one: the tangent is half the step from the
    // neighbour before to the one after (Catmull and Rom 1974), a sixth of it to the Bézier point.
    auto outline = bodies::corners({{1, 0}, {0, 1}, {-1, 0}, {0, -1}});
    for (auto& p : outline)
        p.smooth = true;
    const auto pieces = outline_pieces(outline);
    const Vector2d expected = outline[1].at + (outline[2].at - outline[0].at) / 6;
    CHECK((pieces[1].control[1] - expected).norm() < 1e-14);
}

TEST_CASE("flattened chords stay within their tolerance", "[body]") {
    auto outline = bodies::corners({{0, 0}, {3, 0}, {4, 1}, {2.5, 2}, {.3, 1.4}});
    outline[2].smooth = outline[3].smooth = true;
    for (const double tolerance : {1e-2, 1e-4}) {
        const auto chords = flatten(outline, tolerance);
        double worst = 0;
        for (const auto& piece : outline_pieces(outline))
            for (int k = 0; k <= 500; ++k) {
                const double t = k / 500., s = 1 - t;
                const Vector2d p = s * s * s * piece.control[0] + 3 * s * s * t * piece.control[1] +
                                   3 * s * t * t * piece.control[2] + t * t * t * piece.control[3];
                double least = 1e9;
                for (size_t i = 0; i < chords.size(); ++i) {
                    const Vector2d a = chords[i], along = chords[(i + 1) % chords.size()] - a;
                    const double u = std::clamp((p - a).dot(along) / along.squaredNorm(), 0., 1.);
                    least = std::min(least, (p - a - u * along).norm());
                }
                worst = std::max(worst, least);
            }
        CHECK(worst < tolerance);
        CHECK(worst > tolerance / 100); // and not finer than need be
    }
}

TEST_CASE("points twice in a row count once", "[body]") {
    const auto once = bodies::corners({{0, 0}, {2, 0}, {2, 1}, {0, 1}});
    auto twice = bodies::corners({{0, 0}, {2, 0}, {2, 0}, {2, 1}, {0, 1}, {0, 0}});
    CHECK(outline_pieces(twice).size() == 4);
    CHECK_NOTHROW(check_outline(twice, "profile_mm"));
    twice[1].smooth = twice[2].smooth = true;
    for (const auto& piece : outline_pieces(twice))
        CHECK(piece.control[1].allFinite());
}
