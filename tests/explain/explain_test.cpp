#include <rampwright/explain/explain.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/study/heat_case.hpp>
#include <rampwright/units/format.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <explain/evaluate.hpp>
#include <fstream>
#include <set>
#include <support/demo.hpp>

using namespace rampwright;
using rampwright::test::evaluate;

namespace {

std::vector<Explanation> explained(const Document& document, std::size_t car) {
    const Project project = read_project(document);
    return explain(project, car, compute_figures(project, car));
}

const Explanation& find(const std::vector<Explanation>& list, std::string_view code) {
    const auto found = std::find_if(list.begin(), list.end(), [&](const auto& e) { return e.code == code; });
    INFO(code);
    REQUIRE(found != list.end());
    return *found;
}

/// The figure of that code as `figures --json` prints it, in SI.
double figure(const Json& json, const std::string& code) {
    Json::json_pointer pointer("/" + [&] {
        std::string path = code;
        std::replace(path.begin(), path.end(), '.', '/');
        return path;
    }());
    const double value = json.at(pointer).get<double>();
    if (code.starts_with("budget_mj") || code.ends_with("_g") || code.ends_with("_mm")) return value * 1e-3;
    return value;
}

std::vector<std::string> headings_of_the_model() {
    std::ifstream page(std::string(RAMPWRIGHT_SOURCE_DIR) + "/docs/model.md");
    std::vector<std::string> headings;
    for (std::string line; std::getline(page, line);)
        if (line.starts_with("## ")) headings.push_back(line.substr(3));
    return headings;
}

/// Seconds in a sentence.
std::string milliseconds(double seconds) {
    return format_milliseconds(seconds, UnitSystem::metric);
}

} // namespace

TEST_CASE("the formula of every figure evaluates to the figure") {
    const Document document = demo_document();
    const Project project = demo_project();
    const std::vector<std::string> headings = headings_of_the_model();
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const Figures figures = compute_figures(project, car);
        const Json json = to_json(figures);
        const std::vector<Explanation> list = explain(project, car, figures);
        std::set<std::string> codes;
        for (const Explanation& e : list) {
            CAPTURE(figures.name, e.code, e.formula, e.result);
            CHECK(codes.insert(e.code).second);
            CHECK(!e.plain.empty());
            CHECK(e.plain.find('{') == std::string::npos);
            CHECK(!e.law.empty());
            CHECK(!e.source.empty());
            CHECK(e.result == Approx(figure(json, e.code)).epsilon(1e-12).margin(1e-15));
            CHECK(std::find(headings.begin(), headings.end(), e.section) != headings.end());
            REQUIRE(!e.formula.empty());
            const std::size_t equals = e.formula.find(" = ");
            REQUIRE(equals != std::string::npos);
            const double left = evaluate(e.formula.substr(0, equals));
            std::string right = e.formula.substr(equals + 3);
            if (!e.unit.empty()) {
                REQUIRE(right.ends_with(" " + e.unit));
                right.resize(right.size() - e.unit.size() - 1);
            }
            // Five digits are printed: half of the last one, and what seven-digit numbers leave.
            // What is summed along the heat is summed on another road than the figure: to a
            // hundred-thousandth.
            CHECK(left == Approx(e.result).epsilon(e.integral ? 1e-5 : 5e-6).margin(1e-12));
            CHECK(evaluate(right) == Approx(e.result).epsilon(5.1e-5).margin(1e-12));
        }
        for (const char* code : {"mass_g",
                                 "balance_ahead_of_rear_axle_mm",
                                 "front_load_g",
                                 "ramp_front_load_g",
                                 "scale.reads_g",
                                 "scale.margin_g",
                                 "heat.time_s",
                                 "heat.sigma_s",
                                 "heat.finish_speed_m_s",
                                 "budget_mj.released",
                                 "heat.top_speed_m_s",
                                 "smallest_front_load_g",
                                 "budget_mj.journal",
                                 "budget_mj.hub",
                                 "budget_mj.rolling",
                                 "budget_mj.rail",
                                 "budget_mj.scrub",
                                 "budget_mj.air",
                                 "air_density_kg_m3",
                                 "steer.guidance_margin",
                                 "steer.ride_probability"})
            CHECK(codes.contains(code));
    }
}

TEST_CASE("an edit changes the sentence and the formula's numbers") {
    const Document before = demo_document();
    const std::vector<Explanation> old = explained(before, 0);
    const auto changes = [&](const Edit& edit, std::initializer_list<const char*> codes) {
        const std::vector<Explanation> now = explained(edit.document, 0);
        for (const char* code : codes) {
            const Explanation &a = find(old, code), &b = find(now, code);
            CAPTURE(code, a.plain, b.plain, a.formula, b.formula);
            CHECK(a.plain != b.plain);
            CHECK(a.formula != b.formula);
            CHECK(evaluate(b.formula.substr(0, b.formula.find(" = "))) ==
                  Approx(b.result).epsilon(5e-6).margin(1e-12));
        }
    };
    changes(set_ballast_mass(before, 0, 0, 0.030),
            {"mass_g", "balance_ahead_of_rear_axle_mm", "front_load_g", "ramp_front_load_g", "scale.reads_g",
             "scale.margin_g", "heat.finish_speed_m_s", "budget_mj.released", "budget_mj.journal",
             "budget_mj.rolling", "steer.guidance_margin"});
    changes(set_value(before, "/model/journal", {{"value", 0.05}, {"sigma", 0.01}}, "Polish the axles"),
            {"budget_mj.journal", "heat.time_s", "heat.sigma_s", "heat.finish_speed_m_s"});
    changes(set_value(before, "/air/temperature_c", 30, "Warmer"), {"air_density_kg_m3", "budget_mj.air"});
    changes(set_value(before, "/model/rolling", {{"value", 0.003}, {"sigma", 0.001}}, "Rougher"),
            {"budget_mj.rolling"});
}

TEST_CASE("weighed values stand in the formulas as weighed") {
    Document document = demo_document();
    document = set_value(document, "/cars/0/as_built", {{"mass_g", 140.1}, {"front_load_g", 21.5}}, "Weighed")
                   .document;
    const std::vector<Explanation> list = explained(document, 0);
    CHECK(find(list, "mass_g").result == Approx(0.1401));
    CHECK(find(list, "balance_ahead_of_rear_axle_mm").formula.starts_with("0.0215 × "));
    for (const char* code : {"mass_g", "balance_ahead_of_rear_axle_mm", "front_load_g"}) {
        const Explanation& e = find(list, code);
        CHECK(evaluate(e.formula.substr(0, e.formula.find(" = "))) == Approx(e.result).epsilon(5e-6));
    }
}

TEST_CASE("a formula's numbers are the car's own, not worked back from the figure") {
    // Taken apart: the mean load of the treads is what statics and the bend make of it; the legs of the time
    // are the lane's pieces.
    const Project project = demo_project();
    const Figures figures = compute_figures(project, 0);
    const auto list = explain(project, 0, figures);
    const auto left_of = [&](const char* code) {
        const Explanation& e = find(list, code);
        return e.formula.substr(0, e.formula.find(" = "));
    };
    const double rolling = project.cars[0].model[ModelName::rolling].value;
    const HeatCase heat_case = make_case(project, 0);
    const ReadyHeat ready = make_ready(heat_case);
    const double way = ready.course.finish() - ready.course.start();
    const double mean_load = evaluate(left_of("budget_mj.rolling")) / rolling / way;
    // Over 10.8 m: the weight, by the cosine on the ramp, and what turning by 25 degrees at v takes, m v² k.
    const double ramp = 2.523, bend = 0.6236, turn = 25 * 3.14159265358979 / 180;
    const double straightened =
        (ramp * std::cos(turn) + bend * std::cos(turn / 2) + (10.8 - ramp - bend)) / 10.8;
    // Off the ramp's 1.07 m of fall at most at 4.6 m/s, off the whole 1.2 m at most at 4.9.
    const double least = 9.80665 * straightened + 4.3 * 4.3 * turn / 10.8;
    const double most = 9.80665 * straightened + 4.9 * 4.9 * turn / 10.8;
    CHECK(mean_load > least * figures.mass);
    CHECK(mean_load < most * figures.mass);
    const std::string time = left_of("heat.time_s");
    CHECK(std::count(time.begin(), time.end(), '+') == 2); // ramp, bend, level run
    // A loss that is zero by its coefficient still shows the load it would have had.
    Document smooth = demo_document();
    smooth.root["model"]["rolling"] = {{"value", 0}, {"sigma", 0}};
    const auto without = explained(smooth, 0);
    const Explanation& none = find(without, "budget_mj.rolling");
    CHECK(none.result == 0);
    CHECK(none.formula.find("0 × 0.") != std::string::npos);
    CHECK(evaluate(none.formula.substr(0, none.formula.find(" = "))) == 0);
}

TEST_CASE("a loss says what the heat would gain without it") {
    const Project project = demo_project();
    const Figures figures = compute_figures(project, 2);
    const auto list = explain(project, 2, figures);
    REQUIRE(figures.budget_time);
    CHECK(find(list, "budget_mj.journal").plain.find(milliseconds(figures.budget_time->journal)) !=
          std::string::npos);
    CHECK(find(list, "budget_mj.air").plain.find(milliseconds(figures.budget_time->air)) !=
          std::string::npos);
}

TEST_CASE("a rear axle out of line stands in the guide's formulas") {
    const Document document = set_toe(demo_document(), 0, Corner::rear_left, 0.005).document;
    const std::vector<Explanation> list = explained(document, 0);
    for (const char* code : {"steer.guidance_margin", "steer.ride_probability"}) {
        const Explanation& e = find(list, code);
        CAPTURE(e.formula);
        CHECK(evaluate(e.formula.substr(0, e.formula.find(" = "))) == Approx(e.result).epsilon(5e-6));
    }
}

TEST_CASE("what has no value is not explained") {
    Document document = demo_document();
    document = set_value(document, "/track/rail", nullptr, "x").document;
    document.root["track"]["rail"] = nullptr;
    document.root["rules"].erase("max_mass_g");
    const std::vector<Explanation> list = explained(document, 0);
    for (const Explanation& e : list) {
        CHECK(!e.code.starts_with("steer."));
        CHECK(!e.code.starts_with("scale."));
        CHECK(e.code != "budget_mj.rail");
    }
}
