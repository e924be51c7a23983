#include "body/bodies.hpp"

#include <rampwright/body/walls.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using Eigen::Vector3d;

namespace {

BodyShape sloped(std::vector<Cut> cuts) {
    return {bodies::corners({{0, 0}, {.18, 0}, {.18, .01}, {.1, .03}, {0, .03}}),
            bodies::corners({{0, -.022}, {.18, -.022}, {.18, .022}, {0, .022}}), 0, std::move(cuts)};
}

} // namespace

// Every value here follows from plane geometry, worked by hand.

TEST_CASE("walls are as thick as geometry says", "[body]") {
    const auto w =
        walls(sloped({Pocket{{.02, -.015, -.001}, {.05, .015, .02}},          // open below
                      Bore{{.06, -.03, .005}, {.06, .03, .005}, .003, false}, // across, through both sides
                      Bore{{.12, 0, -.001}, {.12, 0, .015}, .008, true}}));   // from below, pointed
    CHECK(w[0].thickness == Approx(.007).margin(2e-5));
    CHECK(w[0].beyond == Wall::outside);
    CHECK(std::abs(std::abs(w[0].to.y()) - .022) < 1e-9);
    CHECK(w[1].thickness == Approx(.0035).margin(2e-5)); // to the bottom
    CHECK(w[1].to.z() == Approx(0).margin(1e-9));
    // The point's tip is at 15 + 4 / tan 59° mm; above it the top is at 25 mm and falls by 1 in 4.
    const double above = .025 - (.015 + .004 / std::tan(drill_point_angle / 2));
    CHECK(w[2].thickness == Approx(above * 4 / std::sqrt(17.)).margin(2e-5));
}

TEST_CASE("the wall between two cuts is found", "[body]") {
    // Two bores that cross at different heights: axes 12 mm apart, radii 4 and 3 mm: 5 mm between.
    auto w = walls(sloped({Bore{{.05, -.03, .008}, {.05, .03, .008}, .008, false},
                           Bore{{-.01, 0, .02}, {.09, 0, .02}, .006, false}}));
    CHECK(w[0].thickness == Approx(.004).margin(2e-5)); // it is nearer to the bottom
    CHECK(w[1].thickness == Approx(.005).margin(2e-5));
    CHECK(w[1].beyond == 0);
    // A pocket beside a bore: 1.5 mm.
    w = walls(sloped(
        {Pocket{{.02, -.01, .012}, {.05, .01, .04}}, Bore{{.0565, 0, -.01}, {.0565, 0, .02}, .01, false}}));
    CHECK(w[0].thickness == Approx(.0015).margin(2e-5));
    CHECK(w[1].thickness == Approx(.0015).margin(2e-5));
    CHECK(w[0].beyond == 1);
    CHECK(w[1].beyond == 0);
    CHECK(w[0].at.x() == Approx(.05).margin(1e-5));
    // Cuts that meet have no wall between them; the bottom is then what is left.
    w = walls(sloped(
        {Pocket{{.02, -.01, .012}, {.05, .01, .04}}, Bore{{.05, 0, .005}, {.05, 0, .02}, .01, false}}));
    CHECK(w[0].thickness == Approx(.012).margin(2e-5));
    CHECK(w[1].thickness == Approx(.005).margin(2e-5));
}

TEST_CASE("a rounded edge thins the wall beside it", "[body]") {
    // A bore along the body, radius 2, with its axis 4 mm from bottom and side; the edge is rounded by 6 mm.
    auto shape = sloped({Bore{{.02, .018, .004}, {.06, .018, .004}, .004, false}});
    CHECK(walls(shape)[0].thickness == Approx(.002).margin(2e-5));
    shape.edge_radius = .006;
    // From the arc's centre, 6 mm in from both, the axis is 2√2 mm out: 6 - 2√2 - 2 mm are left.
    CHECK(walls(shape)[0].thickness == Approx(.004 - std::sqrt(8.) * 1e-3).margin(2e-5));
}
