#include "project/edit_helpers.hpp"
#include "project/helpers.hpp"

#include <rampwright/materials/materials.hpp>
#include <rampwright/project/edits.hpp>

#include <catch2/catch.hpp>

#include <functional>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

TEST_CASE("a weight moved into another cut is held by it, or by none") {
    const Document d = demo_document();
    const Edit moved = move_ballast(d, 2, 0, Vec3(25, 0, 5) * mm, "mid pocket");
    CHECK(at(moved, "/cars/2/ballast/0/in") == "mid pocket");
    CHECK(at(moved, "/cars/2/ballast/0/at_mm").dump() == "[25,0,5]");
    CHECK(moved.name == "Move ballast: tungsten bar 36");
    const Edit out = move_ballast(d, 2, 0, Vec3(90, 0, 5) * mm, "");
    CHECK_FALSE(out.document.root["cars"][2]["ballast"][0].contains("in"));
    CHECK_THROWS_AS(move_ballast(d, 2, 0, Vec3(25, 0, 5) * mm, "no such pocket"), Problem);
}

TEST_CASE("another holding is not given the mass of the one before") {
    const Document d = set_holding(demo_document(), 0, 1, "epoxy").document;
    CHECK(read_project(d).cars[0].ballast[1].held == "epoxy");
    const Document weighed = set_value(d, "/cars/0/ballast/1/held_g", 0.45, "Weigh").document;
    const Edit screwed = set_holding(weighed, 0, 1, "screw");
    CHECK(screwed.name == "Set what holds tungsten bar 13");
    CHECK(screwed.keys == std::vector<std::string>{"/cars/0/ballast/1/held", "/cars/0/ballast/1/held_g"});
    CHECK_FALSE(read_project(screwed.document).cars[0].ballast[1].held_mass);
    const Edit none = set_holding(weighed, 0, 1, "");
    CHECK(to_text(none.document) == to_text(demo_document()));
    CHECK_THROWS_AS(set_holding(d, 0, 1, "hope"), Problem);
    CHECK_THROWS_AS(set_holding(d, 0, 9, "epoxy"), Problem);
}

TEST_CASE("the shelf gives no more than it has") {
    Document d = demo_document();
    d.root["shelf"][4]["count"] = 2;
    const Placement place{Vec3(90, 0, 6) * mm, 0, {}};
    CHECK(left_on_shelf(read_project(d), 0, 4) == 2);
    Document one = add_from_shelf(d, 0, 4, place).document;
    CHECK(left_on_shelf(read_project(one), 0, 4) == 1);
    CHECK(left_on_shelf(read_project(one), 1, 4) == 2); // another car of the same shelf
    const Document two = duplicate_ballast(one, 0, 2, Vec3(10, 0, 0) * mm).document;
    CHECK(read_project(two).cars[0].ballast.at(3).at.isApprox(Vec3(100, 0, 6) * mm));
    for (const auto& more :
         {std::function<Edit()>([&] { return add_from_shelf(two, 0, 4, place); }),
          std::function<Edit()>([&] { return duplicate_ballast(two, 0, 2, Vec3::Zero()); })}) {
        const auto problem = problem_of(more);
        REQUIRE(problem);
        CHECK_THAT(problem->wrong(), Contains("all 2 of \"steel ball\""));
    }
    one.root["shelf"][4].erase("count");
    CHECK(left_on_shelf(read_project(one), 0, 4) == std::nullopt);
    // What is put in carries the shelf's numbers, and its place and cut.
    const Edit wire = add_from_shelf(d, 0, 3, {Vec3(60, 0, 9.5) * mm, 1, "weight pocket"});
    CHECK(wire.document.root["cars"][0]["ballast"][2].dump() ==
          R"({"piece":"lead wire 20","shape":"cylinder","size_mm":[3,20],"material":"lead","mass_g":1.6,)"
          R"("at_mm":[60,0,9.5],"axis":"y","in":"weight pocket"})");
    // Putty has no place of its own.
    CHECK_FALSE(add_from_shelf(d, 0, 6, {Vec3::Zero(), 0, "weight pocket"})
                    .document.root["cars"][0]["ballast"][2]
                    .contains("at_mm"));
    CHECK(problem_of([&] { add_from_shelf(d, 0, 6, place); }));
}

TEST_CASE("a household piece comes to the shelf once, with its typical mass") {
    const Document d = demo_document();
    const HouseholdPiece& piece = household_pieces().front();
    const Edit added = add_household_piece(d, piece);
    const ShelfPiece shelf = read_project(added.document).shelf.back();
    CHECK(shelf.name == piece.name);
    CHECK(shelf.shape == piece.shape);
    REQUIRE(shelf.size.size() == piece.size.size());
    for (std::size_t i = 0; i < shelf.size.size(); ++i)
        CHECK(shelf.size[i] == Approx(piece.size[i]));
    CHECK(shelf.mass == Approx(piece.mass.value));
    CHECK_FALSE(shelf.counted);
    CHECK_THROWS_AS(add_household_piece(added.document, piece), Problem);
    for (const HouseholdPiece& each : household_pieces())
        CHECK_NOTHROW(add_household_piece(d, each));
}
