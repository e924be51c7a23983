#include "project/edit_helpers.hpp"
#include "project/helpers.hpp"

#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/moisture.hpp>
#include <rampwright/materials/starting_shapes.hpp>
#include <rampwright/project/edits.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

TEST_CASE("an outline that would cross itself is refused, one that does may be mended") {
    const Document d = demo_document();
    const std::string text = to_text(d);
    // The plain block's front bottom corner pulled over its top edge, past the front top corner, onto a side.
    for (const Vec2& to : {Vec2(90, 20), Vec2(-10, 8), Vec2(90, 16)}) {
        INFO(to.transpose());
        const auto problem = problem_of([&] { move_outline_point(d, 0, false, 1, to * mm); });
        REQUIRE(problem);
        CHECK_THAT(problem->wrong(), Contains("cross itself"));
        CHECK(problem->where() == "/cars/0/body/profile_mm");
    }
    CHECK(problem_of([&] { set_value(d, "/cars/0/body/profile_mm/1/1", 20, "x"); }));
    CHECK(problem_of([&] { insert_outline_point(d, 0, true, 1, Vec2(90, 30) * mm, false); }));
    CHECK(to_text(d) == text);
    CHECK_FALSE(problem_of([&] { move_outline_point(d, 0, false, 1, Vec2(170, 8) * mm); }));

    Document bad = d;
    bad.root["cars"][0]["body"]["profile_mm"] = Json::parse("[[0, 0], [178, 16], [178, 0], [0, 16]]");
    CHECK_FALSE(problem_of([&] { move_outline_point(bad, 0, false, 1, Vec2(178, 17) * mm); }));
    CHECK_FALSE(problem_of([&] { remove_outline_point(bad, 0, false, 2); }));
}

TEST_CASE("a starting shape takes the size of the block") {
    Document d = demo_document();
    d.root["cars"][1]["body"]["block_mm"] = {180, 50, 40};
    const StartingShape& shape = starting_shapes().at(3);
    const Edit edit = start_from_shape(d, 1, shape);
    const BodyPlan body = read_project(edit.document).cars.at(1).body;
    REQUIRE(body.profile.size() == shape.profile.size());
    REQUIRE(body.plan.size() == shape.plan.size());
    for (std::size_t i = 0; i < shape.profile.size(); ++i) {
        CHECK(body.profile[i].at.x() == Approx(shape.profile[i].at.x() * 180 * mm).margin(1e-9));
        CHECK(body.profile[i].at.y() == Approx(shape.profile[i].at.y() * 40 * mm).margin(1e-9));
        CHECK(body.profile[i].smooth == shape.profile[i].smooth);
    }
    for (std::size_t i = 0; i < shape.plan.size(); ++i)
        CHECK(body.plan[i].at.y() == Approx(shape.plan[i].at.y() * 50 * mm).margin(1e-9));
    CHECK(edit.keys == std::vector<std::string>{"/cars/1/body/profile_mm", "/cars/1/body/plan_mm"});
}

TEST_CASE("cuts are drawn, doubled and told apart") {
    const Document d = demo_document();
    const CarPlan plan = read_project(d).cars[0];
    CHECK(free_cut_name(plan, "pocket") == "pocket 1");
    CutPlan bore{"bore 1", true, Vec3(100, 0, 17) * mm, Vec3(100, 0, 6) * mm, 8 * mm, true};
    const Edit drawn = add_cut(d, 0, bore);
    CHECK(
        at(drawn, "/cars/0/body/cuts/1").dump() ==
        R"({"name":"bore 1","kind":"bore","from_mm":[100,0,17],"to_mm":[100,0,6],"diameter_mm":8,"end":"point"})");
    const Edit twice = duplicate_cut(drawn.document, 0, 1, Vec3(12, 0, 0) * mm);
    const CutPlan copy = read_project(twice.document).cars[0].body.cuts.at(2);
    CHECK(copy.name == "bore 2");
    CHECK(copy.pointed);
    CHECK(copy.from.isApprox(Vec3(112, 0, 17) * mm));
    CHECK(problem_of([&] { set_cut_diameter(d, 0, 0, 5 * mm); })); // a pocket
    CHECK(problem_of([&] { set_cut_pointed(d, 0, 0, true); }));
}

TEST_CASE("wheels and outlines left to the defaults are written out when one is edited") {
    Document d = demo_document();
    d.root["cars"][0].erase("wheels");
    d.root["cars"][0]["body"].erase("profile_mm");
    const Edit cant = set_cant(d, 0, Corner::front_left, 1 * deg);
    const Project p = read_project(cant.document);
    CHECK(p.cars[0].wheels[2].cant == Approx(1 * deg));
    CHECK(p.cars[0].wheels[0].mass == Approx(2.6 * g));
    const Edit point = move_outline_point(d, 0, false, 2, Vec2(178, 10) * mm);
    CHECK(at(point, "/cars/0/body/profile_mm").dump() == "[[0,0],[178,0],[178,10],[0,32]]");
}

TEST_CASE("a cut that goes lets go of its pieces, one renamed keeps them") {
    const Document d = demo_document();
    CHECK(read_project(remove_cut(d, 0, 0).document).cars[0].ballast[0].in.empty());
    CHECK(read_project(rename_cut(d, 0, 0, "hollow").document).cars[0].ballast[1].in == "hollow");
}

TEST_CASE("another wood brings the table's density, at the water in it") {
    Document d = demo_document();
    const Wood& walnut = woods().back();
    d.root["cars"][0]["body"]["density_kg_m3"] = 500;
    const Edit chosen = set_wood(d, 0, walnut.id);
    const BodyPlan body = read_project(chosen.document).cars[0].body;
    CHECK(body.wood == walnut.id);
    CHECK(body.density == walnut.density.value);
    CHECK(body.density_sigma == walnut.density.sigma);
    CHECK_THROWS_AS(set_wood(d, 0, "unobtainium"), Problem);
    // The handbook's formula (moisture.hpp), whose own checks are in moisture_test.cpp.
    const Document damp = set_value(chosen.document, "/cars/0/body/moisture_pct", 20, "x").document;
    const BodyPlan wet = read_project(damp).cars[0].body;
    CHECK(wet.density == Approx(density_at_moisture(walnut.density.value, 0.12, 0.20)).epsilon(1e-12));
    CHECK(wet.density_sigma / wet.density == Approx(walnut.density.sigma / walnut.density.value));
    // A weighed block has its water in it.
    const Document weighed = set_value(damp, "/cars/0/body/block_mass_g", 110, "x").document;
    CHECK(read_project(weighed).cars[0].body.density == Approx(0.110 / (0.178 * 0.044 * 0.032)));
}
