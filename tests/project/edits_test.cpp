#include "project/edit_samples.hpp"
#include "project/helpers.hpp"

#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/moisture.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

namespace {

constexpr double mm = 1e-3, g = 1e-3, deg = 0.017453292519943295;

/// The places where two texts differ, by a standard tool of its own kind: the JSON library's patch
/// (RFC 6902). Its operations on the elements of a list that grew or shrank count for the list, which is how
/// `difference` tells them.
std::set<std::string> places_by_patch(const std::string& before, const std::string& after) {
    const Json a = Json::parse(before), b = Json::parse(after);
    std::set<std::string> places;
    for (const Json& step : Json::diff(a, b)) {
        Json::json_pointer place(step.at("path").get<std::string>());
        for (Json::json_pointer up = place; !up.empty(); up.pop_back()) {
            const Json::json_pointer list = up.parent_pointer();
            if (a.contains(list) && b.contains(list) && a[list].is_array() && b[list].is_array() &&
                a[list].size() != b[list].size())
                place = list;
        }
        places.insert(place.to_string());
    }
    return places;
}

Edit checked(const Document& before, const EditSample& sample) {
    const Document copy = before;
    Edit edit = sample.apply(before);
    REQUIRE(before == copy);
    return edit;
}

const Json& at(const Edit& edit, const std::string& pointer) {
    return edit.document.root.at(Json::json_pointer(pointer));
}

} // namespace

TEST_CASE("every edit changes what it says, tells which keys, and leaves the old document alone") {
    for (unsigned n = 0; n < 4; ++n) {
        for (const EditSample& sample : edit_samples(n)) {
            // A fourth and fifth car, so that one may go; and a file with an unknown key beside each value.
            Document before =
                duplicate_car(duplicate_car(demo_document(), 0, "Dunlin").document, 1, "Sanderling").document;
            before.root["cars"][0]["later"] = "kept";
            before.root["cars"][0]["body"]["cuts"].push_back(Json{{"name", "bore"},
                                                                  {"kind", "bore"},
                                                                  {"from_mm", {100, 0, -1}},
                                                                  {"to_mm", {100, 0, 10}},
                                                                  {"diameter_mm", 3}});
            INFO(sample.what << " " << n);
            const std::string text = to_text(before);
            const Edit edit = checked(before, sample);
            CHECK(to_text(before) == text);
            CHECK(!edit.name.empty());
            CHECK(edit.keys == difference(before, edit.document));
            CHECK(std::set<std::string>(edit.keys.begin(), edit.keys.end()) ==
                  places_by_patch(text, to_text(edit.document)));
            CHECK(edit.changed() == (to_text(edit.document) != text));
            // What it made can be saved, loaded and read.
            CHECK(parse_document(to_text(edit.document)) == edit.document);
            CHECK_NOTHROW(read_project(edit.document));
            CHECK_THAT(to_text(edit.document), Contains("\"later\": \"kept\""));
            // And done again it changes no further value, if it sets one.
            if (sample.what.rfind("set_", 0) == 0 || sample.what.rfind("move_", 0) == 0 ||
                sample.what.rfind("rename_", 0) == 0)
                CHECK_FALSE(sample.apply(edit.document).changed());
        }
    }
}

TEST_CASE("undo to the start is the first text, redo to the end the last, over 300 edits at random") {
    for (const unsigned seed : {1u, 2u}) {
        std::mt19937 random(seed);
        std::vector<Document> history{demo_document()};
        std::vector<std::string> texts{to_text(history[0])};
        std::size_t refused = 0;
        while (history.size() <= 300) {
            const auto samples = edit_samples(static_cast<unsigned>(random()));
            const EditSample& sample = samples[random() % samples.size()];
            const Document& now = history.back();
            try {
                Edit edit = sample.apply(now);
                REQUIRE(edit.keys == difference(now, edit.document));
                if (!edit.changed()) continue;
                history.push_back(std::move(edit.document));
                texts.push_back(to_text(history.back()));
            } catch (const Problem&) {
                ++refused; // an edit of what an earlier one took away
                REQUIRE(refused < 100000);
            }
            REQUIRE(to_text(history.back()) == texts.back());
        }
        for (std::size_t i = history.size(); i-- > 0;)
            REQUIRE(to_text(history[i]) == texts[i]);
        CHECK(texts.front() == bytes_of(demo_path()));
        CHECK(texts.front() != texts.back());
        for (std::size_t i = 0; i < history.size(); ++i)
            REQUIRE(to_text(parse_document(texts[i])) == texts[i]);
    }
}

TEST_CASE("edits write the file's units, short") {
    const Document d = demo_document();
    const Edit moved = move_ballast(d, 0, 1, Vec3(0.1 + 0.2, 21.3 * mm, -0.0) * 0.1);
    CHECK(at(moved, "/cars/0/ballast/1/at_mm").dump() == "[30,2.13,0]");
    CHECK(moved.name == "Move ballast: tungsten bar 13");
    CHECK(moved.keys == std::vector<std::string>{"/cars/0/ballast/1/at_mm/0", "/cars/0/ballast/1/at_mm/1",
                                                 "/cars/0/ballast/1/at_mm/2"});
    CHECK(at(set_cant(d, 0, Corner::rear_left, 2.7 * deg), "/cars/0/wheels/0/cant_deg").dump() == "2.7");
    CHECK(at(set_toe(d, 0, Corner::front_right, -0.35 * deg), "/cars/0/wheels/3/toe_deg").dump() == "-0.35");
    CHECK(at(set_wheel_mass(d, 0, Corner::front_left, 2.55 * g), "/cars/0/wheels/2/mass_g").dump() == "2.55");
    CHECK(at(set_ballast_mass(d, 0, 0, 39.6 * g), "/cars/0/ballast/0/mass_g").dump() == "39.6");
    CHECK(at(move_axle(d, 0, true, 134.4 * mm, 5 * mm), "/cars/0/axles/front_x_mm").dump() == "134.4");
    CHECK(
        at(move_outline_point(d, 2, false, 3, Vec2(118.25, 8.1) * mm), "/cars/2/body/profile_mm/3").dump() ==
        R"([118.25,8.1,"smooth"])");
}

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

TEST_CASE("an edit that would leave no readable project is refused") {
    const Document d = demo_document();
    const std::string text = to_text(d);
    const std::pair<const char*, std::function<Edit()>> rows[] = {
        {"no such car", [&] { return set_cant(d, 3, Corner::rear_left, 0); }},
        {"no such ballast piece", [&] { return move_ballast(d, 0, 2, Vec3::Zero()); }},
        {"no such cut", [&] { return remove_cut(d, 0, 1); }},
        {"no such point", [&] { return remove_outline_point(d, 0, false, 4); }},
        {"no such point", [&] { return insert_outline_point(d, 0, false, 5, Vec2::Zero(), false); }},
        {"no such run", [&] { return remove_run(d, 9); }},
        {"no such shelf piece", [&] { return remove_shelf_piece(d, 7); }},
        {"does not touch", [&] { return set_touching(d, 0, Corner::rear_left, false); }},
        {"neither front wheel", [&] { return set_touching(d, 2, Corner::front_left, false); }},
        {"not finite", [&] { return set_cant(d, 0, Corner::rear_left, std::nan("")); }},
        {"out of range", [&] { return set_wheel_mass(d, 0, Corner::rear_left, -1); }},
        {"out of range", [&] { return move_ballast(d, 0, 0, Vec3(5, 0, 0)); }},
        {"two cuts", [&] { return add_cut(d, 0, d.root["cars"][0]["body"]["cuts"][0]); }},
        {"no car has the id",
         [&] {
             return add_run(d, Json{{"car", "ghost"}, {"time_s", 3}});
         }},
        {"two cars have the id", [&] { return set_value(d, "/cars/1/id", "swift", "x"); }},
        {"the text \"x\"", [&] { return set_value(d, "/cars/1/axles/rear_x_mm", "x", "x"); }},
        {"no element", [&] { return set_value(d, "/cars/3/name", "x", "x"); }},
        {"no element", [&] { return set_value(d, "/cars/-/name", "x", "x"); }},
        {"no element", [&] { return set_value(d, "/cars/01x/name", "x", "x"); }},
        {"plain value stands on the way", [&] { return set_value(d, "/title/name", "x", "x"); }},
        {"plain value stands on the way", [&] { return set_value(d, "/title/name/deep", "x", "x"); }},
        {"no JSON pointer", [&] { return set_value(d, "title", "x", "x"); }},
        {"no JSON pointer", [&] { return set_value(d, "/ti~tle", "x", "x"); }},
        {"as a whole", [&] { return set_value(d, "", Json::object(), "x"); }},
        {"left out by itself", [&] { return set_value(d, "/cars/0/ballast/0", nullptr, "x"); }},
        {"not a Rampwright project", [&] { return set_value(d, "/format", nullptr, "x"); }},
        {"newer", [&] { return set_value(d, "/version", 2, "x"); }},
        {"not valid UTF-8", [&] { return rename_car(d, 0, "\xFF"); }},
        {"not finite",
         [&] { return set_value(d, "/unknown", std::numeric_limits<double>::infinity(), "x"); }},
    };
    for (const auto& [wrong, edit] : rows) {
        const auto problem = problem_of(edit);
        INFO(wrong);
        REQUIRE(problem);
        CHECK_THAT(problem->wrong(), Contains(wrong));
        CHECK(to_text(d) == text);
    }
}

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

TEST_CASE("setting a value makes objects on the way; null takes it away and leaves the default") {
    const Document d = demo_document();
    const Edit made = set_value(d, "/cars/0/model/journal/value", 0.12, "Set journal");
    CHECK(made.keys == std::vector<std::string>{"/cars/0/model"});
    CHECK(read_project(made.document).cars[0].model[ModelName::journal].value == 0.12);
    const Edit gone = set_value(d, "/air/temperature_c", nullptr, "Usual air");
    CHECK(gone.keys == std::vector<std::string>{"/air/temperature_c"});
    CHECK_FALSE(gone.document.root["air"].contains("temperature_c"));
    CHECK_FALSE(set_value(d, "/cars/0/as_built/mass_g", nullptr, "x").changed());
    CHECK(set_value(d, "/odd~1key", 1, "x").keys == std::vector<std::string>{"/odd~1key"});
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

TEST_CASE("cars come and go with their runs and keep their ids") {
    const Document d = demo_document();
    const Edit removed = remove_car(d, 1);
    const Project p = read_project(removed.document);
    CHECK(p.cars.size() == 2);
    CHECK(p.runs.size() == 6);
    CHECK(removed.name == "Remove car: Wagtail");

    const Edit copy = duplicate_car(d, 2, "Swift");
    CHECK(read_project(copy.document).cars[3].id == "swift-2");
    CHECK(copy.keys == std::vector<std::string>{"/cars"});
    CHECK(read_project(duplicate_car(d, 0, "\xC3\x84sche / 7").document).cars[3].id == "sche-7");

    Document nameless = d;
    for (Json& car : nameless.root["cars"])
        car.erase("id");
    nameless.root["runs"] = Json::array({Json{{"car", "car-3"}, {"time_s", 3}}});
    const Project q = read_project(remove_car(nameless, 0).document);
    CHECK(q.cars[1].id == "car-3");
    CHECK(q.cars[1].name == "Swift");
    CHECK(q.runs.size() == 1);
}

TEST_CASE("units switched a hundred times leave every number as it was") {
    Document d = demo_document();
    const std::string text = to_text(d);
    for (int i = 0; i < 100; ++i)
        d = set_units(d, i % 2 == 0 ? UnitSystem::inch_ounce : UnitSystem::metric).document;
    CHECK(to_text(d) == text);
}

TEST_CASE("differences are told leaf by leaf") {
    const auto differ = [](const char* a, const char* b) {
        return difference({Json::parse(a)}, {Json::parse(b)});
    };
    using Keys = std::vector<std::string>;
    CHECK(differ(R"({"a": 1})", R"({"a": 1.0})") == Keys{});
    CHECK(differ(R"({"a": 1, "b": 2})", R"({"b": 2, "a": 1})") == Keys{});
    CHECK(differ(R"({"a": 1})", R"({"a": "1"})") == Keys{"/a"});
    CHECK(differ(R"({"a": {"b": [1, 2]}})", R"({"a": {"b": [1, 3]}})") == Keys{"/a/b/1"});
    CHECK(differ(R"({"a": [1, 2]})", R"({"a": [1]})") == Keys{"/a"});
    CHECK(differ(R"({"a": 1})", R"({"c/d": 1})") == Keys{"/a", "/c~1d"});
    CHECK(differ(R"({"a": {}})", R"({"a": []})") == Keys{"/a"});
    CHECK(differ("[1]", "[2]") == Keys{"/0"});
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

TEST_CASE("what was typed of a wheel's swings and spin-down is kept with it, in the file's units") {
    Document document = demo_document();
    PendulumReadings swings;
    swings.wires = 3;
    swings.wheel = Uncertain{2.6e-3, 0.01e-3};
    swings.time = Uncertain{31.4, 0.1};
    document = set_pendulum(document, 2, swings).document;
    SpinDownReadings spin;
    spin.bore = Uncertain{2.6e-3, 0};
    spin.readings = {{0, 200}, {1.5, 190}};
    document = set_spin_down(document, 2, spin).document;
    document = set_spin_down(document, std::nullopt, spin).document;
    const Json& row = document.root["bench"]["wheels"][2];
    CHECK(row["pendulum"]["wheel_g"] == Json{{"value", 2.6}, {"sigma", 0.01}});
    CHECK(row["spin_down"]["speed_in"] == "turns_per_minute");
    // 200 rad/s are 200 / (2 pi) * 60 turns a minute.
    CHECK(row["spin_down"]["readings"][0][1].get<double>() == Approx(1909.859317));

    // Keys that this version does not know stay: in the readings, in the row, and when rows come and go.
    document.root["bench"]["wheels"][2]["pendulum"]["hung_by"] = "silk";
    document.root["bench"]["wheels"][2]["box"] = 7;
    swings.time = Uncertain{31.5, 0.1};
    document = set_pendulum(document, 2, swings).document;
    std::vector<BenchWheel> wheels = read_project(document).bench_wheels;
    wheels[2].name = "third";
    wheels[2].mass.reset();
    document = set_bench_wheels(document, wheels).document;
    wheels.erase(wheels.begin());
    document = set_bench_wheels(document, wheels).document;
    const Json& moved = document.root["bench"]["wheels"][1];
    CHECK(moved["name"] == "third");
    CHECK_FALSE(moved.contains("mass_g"));
    CHECK(moved["box"] == 7);
    CHECK(moved["pendulum"]["hung_by"] == "silk");
    CHECK(moved["pendulum"]["time_s"]["value"] == 31.5);

    const Project project = read_project(document);
    const auto& back = project.bench_wheels[1].pendulum;
    REQUIRE(back);
    CHECK(back->wires == 3);
    CHECK(back->wheel->sigma == Approx(0.01e-3));
    CHECK_FALSE(back->plate);
    REQUIRE(project.spin_down);
    REQUIRE(project.spin_down->readings.size() == 2);
    CHECK(project.spin_down->readings[0].y() == Approx(200).epsilon(1e-9));
    CHECK_FALSE(project.bench_wheels[0].pendulum);
    // Nothing of it is a default that was taken.
    for (const Assumed& assumed : project.assumed)
        CHECK(assumed.key.find("/bench") == std::string::npos);

    spin.readings = {{1, 200}, {1, 190}};
    CHECK_THROWS_AS(set_spin_down(document, std::nullopt, spin), Problem);
    CHECK_THROWS_AS(set_pendulum(document, 99, swings), Problem);
}
