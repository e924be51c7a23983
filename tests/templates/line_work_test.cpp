#include "car/car_fixture.hpp"

#include <rampwright/templates/line_work.hpp>

#include <catch2/catch.hpp>

#include <algorithm>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3;

LineWork draw(const Project& project, TemplateView view) {
    return draw_template(project.cars[0], build_car(project, 0), view);
}

std::vector<LinePath> named(const LineWork& work, const std::string& name, LineRole role) {
    std::vector<LinePath> found;
    std::copy_if(work.paths.begin(), work.paths.end(), std::back_inserter(found),
                 [&](const LinePath& path) { return path.name == name && path.role == role; });
    return found;
}

Project with_bore(const Vec3& from, const Vec3& to, double diameter, bool pointed) {
    Project project = test::plain_project();
    CutPlan bore;
    bore.name = "bore";
    bore.is_bore = true;
    bore.from = from * mm;
    bore.to = to * mm;
    bore.diameter = diameter * mm;
    bore.pointed = pointed;
    project.cars[0].body.cuts = {bore};
    project.cars[0].ballast.clear();
    return project;
}

bool meets(const LinePath& path, const Vec2& point) {
    const auto points = flatten(path, 1e-7);
    return std::any_of(points.begin(), points.end(),
                       [&](const Vec2& p) { return (p - point * mm).norm() < 1e-7; });
}

} // namespace

TEST_CASE("the side view shows the sawn outline, holes, and an open pocket without a lid", "[templates]") {
    const LineWork side = draw(test::plain_project(), TemplateView::side);
    CHECK((side.low - Vec2(0, 0)).norm() < 1e-12);
    CHECK((side.high - Vec2(180, 30) * mm).norm() < 1e-12);
    REQUIRE(side.paths.front().role == LineRole::outline);
    CHECK(side.paths.front().closed);
    CHECK(side.paths.front().strokes.size() == 4);

    const auto pocket = named(side, "rear pocket", LineRole::cut);
    REQUIRE(pocket.size() == 1);
    CHECK(pocket[0].hidden); // wood on both sides of it
    CHECK_FALSE(pocket[0].closed);
    CHECK(pocket[0].key == "/cars/0/body/cuts/0");
    REQUIRE(pocket[0].strokes.size() == 3);
    for (const Vec2& corner : {Vec2(40, 30), Vec2(40, 14), Vec2(80, 14), Vec2(80, 30)})
        CHECK(meets(pocket[0], corner));

    const auto rear = named(side, "rear axle", LineRole::hole),
               front = named(side, "front axle", LineRole::hole);
    REQUIRE(rear.size() == 1);
    REQUIRE(front.size() == 1);
    REQUIRE(rear[0].circle);
    CHECK((rear[0].circle->centre - Vec2(25, 6) * mm).norm() < 1e-12);
    CHECK(rear[0].circle->radius == Approx(1.15 * mm));
    CHECK_FALSE(rear[0].hidden);
    CHECK((front[0].circle->centre - Vec2(136, 6) * mm).norm() < 1e-12);
}

TEST_CASE("the top view shows a pocket open above, and holes below hidden", "[templates]") {
    const LineWork top = draw(test::plain_project(), TemplateView::top);
    CHECK((top.high - Vec2(180, 22.5) * mm).norm() < 1e-12);
    const auto pocket = named(top, "rear pocket", LineRole::cut);
    REQUIRE(pocket.size() == 1);
    CHECK_FALSE(pocket[0].hidden);
    CHECK(pocket[0].closed);
    for (const auto& hole : named(top, "rear axle", LineRole::hole)) {
        CHECK(hole.hidden);
        CHECK(meets(hole, {23.85, -22.5}) != meets(hole, {26.15, -22.5}));
    }
    CHECK(named(top, "rear axle", LineRole::hole).size() == 2); // its two sides; its mouths have no line
    const auto weight = named(top, "brass bar", LineRole::ballast);
    REQUIRE(weight.size() == 1);
    CHECK(meets(weight[0], {45, -8}));
    CHECK(meets(weight[0], {75, 8}));
}

TEST_CASE("a slot is open below", "[templates]") {
    Project project = test::plain_project();
    project.cars[0].axles.holes = Holes::slots;
    const auto slot = named(draw(project, TemplateView::side), "rear axle", LineRole::hole);
    REQUIRE(slot.size() == 1);
    CHECK_FALSE(slot[0].closed);
    for (const Vec2& corner : {Vec2(23.85, 0), Vec2(23.85, 7.15), Vec2(26.15, 7.15), Vec2(26.15, 0)})
        CHECK(meets(slot[0], corner));
}

TEST_CASE("bores show as circle, as rectangle with a point, and aslant", "[templates]") {
    // Upright, blind from above, with a drill's point: 118 degrees, so 3 / tan 59 degrees = 1.8026 mm deep.
    const Project upright = with_bore({90, 5, 30}, {90, 5, 12}, 6, true);
    const LineWork top = draw(upright, TemplateView::top);
    const auto above = named(top, "bore", LineRole::cut);
    REQUIRE(above.size() == 1);
    REQUIRE(above[0].circle);
    CHECK(above[0].circle->radius == Approx(3 * mm));
    CHECK_FALSE(above[0].hidden);
    const auto beside = named(draw(upright, TemplateView::side), "bore", LineRole::cut);
    REQUIRE(beside.size() == 1);
    CHECK(beside[0].hidden);
    CHECK(meets(beside[0], {87, 12}));
    CHECK(meets(beside[0], {90, 12 - 1.8025818570967837}));

    // Leaning by 3:4 in the side view's plane from above: its mouth is an ellipse of half axes 3 and 2.4.
    const auto aslant =
        named(draw(with_bore({90, 0, 33}, {72, 0, 9}, 6, false), TemplateView::top), "bore", LineRole::cut);
    REQUIRE(aslant.size() == 4);
    double least = 1, most = 0;
    for (const auto& path : aslant)
        for (const Vec2& p : flatten(path, 1e-7)) {
            least = std::min(least, p.x());
            most = std::max(most, p.x());
        }
    CHECK(most == Approx(92.4 * mm).epsilon(1e-6));
    CHECK(least == Approx(69.6 * mm).epsilon(1e-6));
}

TEST_CASE("a smooth outline keeps its curve", "[templates]") {
    Project project = test::plain_project();
    project.cars[0].body.profile = {{{0, 0}}, {{180 * mm, 0}}, {{120 * mm, 20 * mm}, true}, {{0, 30 * mm}}};
    const LineWork side = draw(project, TemplateView::side);
    CHECK(std::count_if(side.paths[0].strokes.begin(), side.paths[0].strokes.end(),
                        [](const Stroke& s) { return !s.straight; }) == 2);
    CHECK(meets(side.paths[0], {120, 20}));
}

TEST_CASE("a cut beside the wood is not drawn", "[templates]") {
    Project project = with_bore({90, 5, 50}, {90, 5, 40}, 6, false);
    CHECK(named(draw(project, TemplateView::top), "bore", LineRole::cut).empty());
}
