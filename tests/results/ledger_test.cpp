#include "support/demo.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/results/table.hpp>
#include <rampwright/units/format.hpp>

#include <catch2/catch.hpp>

#include <set>

using namespace rampwright;

namespace {

std::set<std::string> keys_of(const Json& object) {
    std::set<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.insert(key);
    return keys;
}

double time_with(const char* pointer, const Json& value, std::size_t car) {
    const Document document = set_value(demo_document(), pointer, value, "x").document;
    return compute_figures(read_project(document), car).heat.time.value();
}

} // namespace

TEST_CASE("the ledger's milliseconds have the names of its millijoules", "[ledger]") {
    const Json json = to_json(complete_figures(demo_project(), 2));
    std::set<std::string> losses = keys_of(json.at("budget_mj"));
    for (const char* kept : {"released", "forward", "spin", "pitch"})
        losses.erase(kept);
    CHECK(keys_of(json.at("budget_ms")) == losses);
    CHECK(keys_of(json.at("budget_ms_by_wheel")) == keys_of(json.at("budget_by_wheel")));
    for (const auto& [corner, wheel] : json.at("budget_by_wheel").items()) {
        std::set<std::string> contacts = keys_of(wheel);
        contacts.erase("spin");
        CHECK(keys_of(json.at("budget_ms_by_wheel").at(corner)) == contacts);
    }
    REQUIRE(json.at("steps").is_array());
    for (const Json& step : json.at("steps"))
        for (const char* key : {"key", "effort", "gain_ms", "sigma_ms", "values", "text"})
            CHECK(step.contains(key));
    // What a hand does not wait for is null until it is asked for.
    const Json quick = to_json(compute_figures(demo_project(), 2));
    CHECK(quick.at("steps").is_null());
    CHECK(quick.at("budget_ms_by_wheel").is_null());
    CHECK(quick.at("budget_ms") == json.at("budget_ms"));
}

TEST_CASE("time regained without a loss is what the project gives without it", "[ledger]") {
    // By the file's own values: friction set to nothing, against the loss taken out of the equations.
    for (const std::size_t car : {0u, 2u}) {
        const Figures figures = compute_figures(demo_project(), car);
        REQUIRE(figures.budget_time);
        const double time = *figures.heat.time;
        const std::string own = "/cars/" + std::to_string(car);
        const Json none{{"value", 0}, {"sigma", 0}};
        CHECK(figures.budget_time->journal ==
              Approx(time - time_with((own + "/model/journal").c_str(), none, car)).margin(1e-7));
        CHECK(figures.budget_time->rolling ==
              Approx(time - time_with((own + "/model/rolling").c_str(), none, car)).margin(1e-7));
        Document still = set_value(demo_document(), own + "/drag/coefficient", 0, "x").document;
        still = set_value(still, own + "/model/windage", none, "x").document;
        CHECK(figures.budget_time->air ==
              Approx(time - compute_figures(read_project(still), car).heat.time.value()).margin(1e-7));
        for (const double loss :
             {figures.budget_time->journal, figures.budget_time->air, figures.budget_time->rolling,
              figures.budget_time->hub, figures.budget_time->rail.value()})
            CHECK(loss > 0);
    }
}

TEST_CASE("the table tells millijoules, per cent and milliseconds of each loss, and what to do", "[ledger]") {
    const Figures figures = complete_figures(demo_project(), 0);
    std::string axles;
    for (const TableRow& row : table_rows(figures, UnitSystem::metric))
        if (row.code == "budget_mj.journal") axles = row.value;
    CHECK(axles.find(format_milliseconds(figures.budget_time->journal, UnitSystem::metric)) !=
          std::string::npos);
    CHECK(axles.find('%') != std::string::npos);
    const std::string table = to_table(figures, UnitSystem::metric);
    for (const BuilderStep& step : *figures.steps)
        CHECK(table.find(step.text) != std::string::npos);
}

TEST_CASE("a car that stops short has no milliseconds to regain", "[ledger]") {
    Document document = demo_document();
    for (const auto& [name, value] : {std::pair{"rolling", 0.1}, {"journal", 0.8}})
        document = set_value(document, std::string("/cars/0/model/") + name,
                             {{"value", value}, {"sigma", 0.01}}, "x")
                       .document;
    const Figures figures = complete_figures(read_project(document), 0);
    REQUIRE_FALSE(figures.heat.finished);
    CHECK_FALSE(figures.budget_time.has_value());
    CHECK(figures.steps->empty());
    CHECK(to_json(figures).at("budget_ms").is_null());
}
