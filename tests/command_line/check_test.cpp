#include "project/helpers.hpp"
#include "support/program.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/rules/rule_sets.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Matchers::Contains;

TEST_CASE("check prints the inspection of every car, and says who decides", "[check]") {
    const Ran ran = run_program({"check", demo_path()});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    const Project project = demo_project();
    for (std::size_t car = 0; car < project.cars.size(); ++car)
        CHECK_THAT(ran.out, Contains(to_table(inspect(project, car), project.units)));
    CHECK_THAT(ran.out, Contains(std::string(inspector_decides)));
    CHECK_THAT(ran.out, Contains("steps of 0.1 g"));
}

TEST_CASE("check --json is what the core computes", "[check]") {
    const Project project = demo_project();
    const Ran ran = run_program({"check", demo_path(), "--car", "Wagtail", "--json"});
    CHECK(ran.exit == 0);
    const Json json = Json::parse(ran.out);
    CHECK(json["format"] == "rampwright-check");
    CHECK(json["version"] == 1);
    CHECK(json["note"] == inspector_decides);
    REQUIRE(json["cars"].size() == 1);
    Json car = json["cars"][0];
    CHECK(car["scale"]["largest_legal_true_g"].is_number());
    CHECK(car["scale"]["worse"]["margin_g"].is_number());
    CHECK(car["built"].is_null());
    car.erase("scale");
    car.erase("built");
    CHECK(car == to_json(inspect(project, 1)));
}

TEST_CASE("check exits 3 where a rule is broken, names each on standard error, and still prints", "[check]") {
    const TestFolder folder;
    const std::string path = (folder / "broken.ramp.json").string();
    write_file(path, to_text(set_value(demo_document(), "/rules/max_length_mm", 170, "x").document));
    const Ran all = run_program({"check", path});
    CHECK(all.exit == 3);
    CHECK_THAT(all.out, Contains("breaks the rule"));
    CHECK(all.err.starts_with("rampwright: " + path + ": /rules/max_length_mm: "));
    CHECK_THAT(all.err, Contains("; "));
    const Ran json = run_program({"check", path, "--car", "Bittern", "--json"});
    CHECK(json.exit == 3);
    CHECK(Json::parse(json.out)["cars"][0]["broken"] == true);
    // Only the car that was asked for counts.
    const RuleSet& set = *find_rule_set("first-timers");
    write_file(path, to_text(set_rules(demo_document(), set.rules, set.title).document));
    CHECK(run_program({"check", path, "--car", "Swift"}).exit == 3);
}

TEST_CASE("check tells what was built against the plan", "[check]") {
    const TestFolder folder;
    const std::string path = (folder / "built.ramp.json").string();
    write_file(path, to_text(set_readings(demo_document(), 1, {{0.1431, 0.1432}, {0.0303}, {}}).document));
    const Ran ran = run_program({"check", path, "--car", "Wagtail"});
    CHECK(ran.exit == 3);
    CHECK_THAT(ran.out, Contains("As built:") && Contains("Take "));
}

TEST_CASE("a wrong call of check is refused", "[check]") {
    CHECK(run_program({"check"}).exit == 2);
    CHECK(run_program({"check", demo_path(), "--draws", "5"}).exit == 2);
    CHECK(run_program({"check", demo_path(), "--car", "Dodo"}).exit == 1);
    CHECK(run_program({"check", demo_path(), "--help"}).exit == 0);
}
