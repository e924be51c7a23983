#include "project/helpers.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/rules/rule_sets.hpp>

#include <catch2/catch.hpp>

#include <set>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// The demo under other rules.
Project demo_under(const Json& rules) {
    Document document = demo_document();
    document.root["rules"] = rules;
    return read_project(document);
}

const InspectionRow& row_of(const Inspection& inspection, const std::string& code) {
    for (const InspectionRow& row : inspection.rows)
        if (row.code == code) return row;
    FAIL("no row " << code);
    return inspection.rows.front();
}

} // namespace

TEST_CASE("no rule is passed unseen", "[rules]") {
    // Every kind of permission withheld: those with a standing reason are left to a person, the others are
    // decided.
    Json rules = Json::object();
    for (const RuleKind& kind : rule_kinds())
        if (kind.id.starts_with("allow/")) rules["allow"][kind.id.substr(6)] = false;
    rules["lubricants"] = {"graphite powder, dry"};
    rules["built_after"] = "2026-09-01";
    rules["house"] = {{{"text", "The driver drew the shape."}}};
    rules["allow"]["wings"] = false;
    rules["max_noise_db"] = 80;
    const Project project = demo_under(rules);
    // Bittern: upright wheels, straight axles, no lead.
    const Inspection inspection = inspect(project, 0);
    const std::set<std::string> decided_here = {"allow/bent_axles", "allow/lead"};
    int looked = 0, decided = 0;
    for (const RuleKind& kind : rule_kinds()) {
        if (!kind.id.starts_with("allow/") && kind.id != "lubricants" && kind.id != "built_after") continue;
        CAPTURE(kind.id);
        const InspectionRow& row = row_of(inspection, kind.id);
        const bool look = !kind.why.empty() && !decided_here.contains(kind.id);
        CHECK((row.verdict == Verdict::look_yourself) == look);
        CHECK(row.why.empty() != look);
        ++(look ? looked : decided);
    }
    CHECK(looked >= 13);
    CHECK(decided >= 5);
    for (const char* code : {"allow/wings", "max_noise_db", "house/0"}) {
        const InspectionRow& row = row_of(inspection, code);
        CHECK(row.verdict == Verdict::look_yourself);
        CHECK_FALSE(row.rule.empty());
        CHECK_FALSE(row.why.empty());
    }
    CHECK(row_of(inspection, "max_noise_db").limit_words == "80");
}

TEST_CASE("every rule with a number is decided for every car of the demo under every set", "[rules]") {
    REQUIRE(rule_sets().size() >= 3);
    for (const RuleSet& set : rule_sets()) {
        const Project project = demo_under(set.rules);
        for (std::size_t car = 0; car < project.cars.size(); ++car) {
            CAPTURE(set.id, project.cars[car].name);
            const Inspection inspection = inspect(project, car);
            CHECK(inspection.rows.size() >= 9);
            for (const InspectionRow& row : inspection.rows) {
                CAPTURE(row.code);
                if (row.limit) {
                    CHECK(row.verdict != Verdict::look_yourself);
                    CHECK(row.value);
                }
                CHECK_FALSE(row.name.empty());
                CHECK_FALSE(row.rule.empty());
                CHECK_FALSE(row.inspect.empty());
                CHECK_FALSE(row.source.empty());
                CHECK_FALSE(limit_text(row, UnitSystem::metric).empty());
            }
        }
    }
}

TEST_CASE("the first-timers' class turns the tuned car away and takes the plain one's axles", "[rules]") {
    const RuleSet* set = find_rule_set("first-timers");
    REQUIRE(set != nullptr);
    const Project project = demo_under(set->rules);
    const Inspection swift = inspect(project, 2);
    CHECK(swift.car == "Swift");
    CHECK(swift.broken());
    CHECK(row_of(swift, "allow/raised_wheel").verdict == Verdict::breach);
    CHECK(row_of(swift, "wheels_touching").verdict == Verdict::breach);
    const Inspection bittern = inspect(project, 0);
    CHECK(row_of(bittern, "allow/raised_wheel").verdict == Verdict::pass);
    CHECK(row_of(bittern, "wheelbase_mm/max").verdict == Verdict::pass);
}

TEST_CASE("a rule set becomes a project's rules, and what it does not know stays", "[rules]") {
    Document document = demo_document();
    document.root["rules"]["later"] = "kept";
    const RuleSet& set = *find_rule_set("free-class");
    const Edit edit = set_rules(document, set.rules, set.title);
    const Project project = read_project(edit.document);
    CHECK(project.rules.set == "free-class");
    CHECK(project.rules.title == set.title);
    CHECK(*project.rules.max_mass == Approx(0.142).epsilon(1e-12));
    CHECK(project.rules.wheels_touching == 3);
    CHECK_FALSE(project.rules.wheel_diameter.max);
    CHECK(project.rules.lubricants->size() == 3);
    CHECK(edit.document.root["rules"]["later"] == "kept");
    // Gone with the old rules.
    CHECK_FALSE(edit.document.root["rules"]["words"].contains("max_length_mm"));
    CHECK_THAT(project.rules.words.at("max_mass_g").source, Catch::Matchers::Contains("invented"));
    CHECK_FALSE(set_rules(edit.document, set.rules, set.title).changed());
}

TEST_CASE("a limit may be stated in any unit of its kind", "[rules]") {
    const RuleSet set = read_rule_set(R"({"format": "rampwright-rules", "version": 1, "id": "x", "title": "X",
        "about": "x", "source": "x", "rules": [{"id": "max_mass_g", "limit": 5, "unit": "oz"},
                                             {"id": "max_length_mm", "limit": 7, "unit": "in"}]})");
    // The international pound and inch, by definition.
    CHECK(set.rules["max_mass_g"].get<double>() == Approx(141.747615625).epsilon(1e-14));
    CHECK(set.rules["max_length_mm"].get<double>() == Approx(177.8).epsilon(1e-14));
}

TEST_CASE("a damaged rule set says where", "[rules]") {
    const auto with = [](const std::string& rules) {
        return R"({"format": "rampwright-rules", "version": 1, "id": "x", "title": "X", "about": "x",
                   "source": "x", "rules": )" +
               rules + "}";
    };
    const struct {
        std::string text;
        std::string where;
    } rows[] = {
        {"{", "/format"},
        {R"({"format": "recipe"})", "/format"},
        {with("3"), "/rules"},
        {with(R"([{"id": "speed", "limit": 3}])"), "/rules/0/id"},
        {with(R"([{"id": "max_mass_g", "unit": "g"}])"), "/rules/0/limit"},
        {with(R"([{"id": "max_mass_g", "limit": 3}])"), "/rules/0/unit"},
        {with(R"([{"id": "max_mass_g", "limit": 3, "unit": "mm"}])"), "/rules/0/unit"},
        {with(R"([{"id": "wheels_touching", "limit": 4}, {"id": "allow/lead"}])"), "/rules/1/allowed"},
        {with(R"([{"id": "wheels_touching", "limit": 4}, {"id": "wheels_touching", "limit": 3}])"),
         "/rules/1/id"},
        {with(R"([{"id": "house"}])"), "/rules/0/text"},
        {with(R"([{"id": "lubricants"}])"), "/rules/0/kinds"},
        {with(R"([{"id": "built_after", "date": 3}])"), "/rules/0/date"},
    };
    for (const auto& row : rows) {
        CAPTURE(row.text);
        const auto problem = problem_of([&] { read_rule_set(row.text); });
        REQUIRE(problem);
        CHECK(problem->where() == row.where);
    }
}
