#include "project/edit_helpers.hpp"
#include "project/edit_samples.hpp"
#include "project/helpers.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <functional>
#include <limits>
#include <random>
#include <set>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

namespace {

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
