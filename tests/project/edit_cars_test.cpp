#include "project/helpers.hpp"

#include <rampwright/project/edits.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::test;

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
