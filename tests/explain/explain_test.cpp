#include <rampwright/explain/explain.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/study/heat_case.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <explain/evaluate.hpp>
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

} // namespace

TEST_CASE("the formula of every figure evaluates to the figure") {
    const Document document = demo_document();
    const Project project = demo_project();
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
            CHECK(left == Approx(e.result).epsilon(5e-6).margin(1e-12));
            CHECK(evaluate(right) == Approx(e.result).epsilon(5.1e-5).margin(1e-12));
        }
        for (const char* code :
             {"mass_g", "balance_ahead_of_rear_axle_mm", "front_load_g", "ramp_front_load_g", "scale.reads_g",
              "scale.margin_g", "heat.time_s", "heat.sigma_s", "heat.finish_speed_m_s", "budget_mj.released",
              "budget_mj.journal", "budget_mj.hub", "budget_mj.rolling", "budget_mj.rail", "budget_mj.scrub",
              "budget_mj.air", "air_density_kg_m3", "steer.guidance_margin", "steer.ride_probability"})
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

TEST_CASE("the mean loads in a formula are those along the heat") {
    // From the trace, by trapezoids over the way: another road to the same mean.
    const Project project = demo_project();
    const HeatCase heat_case = make_case(project, 0);
    const ReadyHeat ready = make_ready(heat_case);
    const HeatResult heat = run_heat(ready.course, ready.car, HeatDetail::trace, {.parts = 16});
    double load = 0, square = 0, way = 0;
    for (std::size_t n = 1; n < heat.trace.size(); ++n) {
        const HeatPoint &a = heat.trace[n - 1], &b = heat.trace[n];
        load += 0.5 * (a.rear_load + a.front_load + b.rear_load + b.front_load) * (b.q - a.q);
        square += 0.5 * (a.speed * a.speed + b.speed * b.speed) * (b.q - a.q);
        way += b.q - a.q;
    }
    const double rolling = project.cars[0].model[ModelName::rolling].value;
    CHECK(heat.budget.rolling == Approx(rolling * load).epsilon(2e-3));
    const auto list = explain(project, 0, compute_figures(project, 0));
    const Explanation& air = find(list, "budget_mj.air");
    // "0.5 × density × coefficient × area × mean square × way + windage"
    const double with_mean = evaluate(air.formula.substr(0, air.formula.find(" = ")));
    double windage = 0;
    for (const WheelBudget& wheel : heat.by_wheel)
        windage += wheel.windage;
    CHECK(with_mean - windage ==
          Approx(0.5 * ready.air.density * ready.wheels.air_area * square).epsilon(2e-3));
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
