#include "car/car_fixture.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/rules/inspection.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <functional>
#include <string>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3, g = 1e-3;
/// What nobody can measure, yet a double tells apart from the limit.
constexpr double sliver = 1e-9;

/// The verdict on one rule of a project whose first car is inspected; the heat is not needed for it.
InspectionRow judged(const Project& project, const std::string& code) {
    const CarModel car = build_car(project, 0);
    Figures figures;
    figures.mass = car.as_built.mass.value_or(total(car).mass);
    if (project.rules.max_mass) {
        const ScaleVerdict race = weigh(project.scale, figures.mass, *project.rules.max_mass),
                           worse = weigh(project.worse_scale, figures.mass, *project.rules.max_mass);
        figures.scale.emplace();
        figures.scale->reads = race.reading;
        figures.scale->margin = race.margin;
        figures.scale->worse_reads = worse.reading;
        figures.scale->worse_margin = worse.margin;
    }
    const Inspection inspection = inspect(project, car, figures);
    const auto row = std::find_if(inspection.rows.begin(), inspection.rows.end(),
                                  [&](const InspectionRow& r) { return r.code == code; });
    REQUIRE(row != inspection.rows.end());
    CHECK_FALSE(row->rule.empty());
    CHECK_FALSE(row->inspect.empty());
    return *row;
}

Project tools_project() {
    Project project = test::plain_project();
    project.tools.saw_tolerance = 0.5 * mm;
    project.tools.drill_tolerance = 0.2 * mm;
    project.rules.source = "the race";
    return project;
}

struct LimitCase {
    const char* code;
    double value; ///< of the fixture's car, worked out by hand
    double tolerance;
    bool at_most;
    std::function<void(Rules&, double)> set;
};

// The fixture: a block of 180 x 45 x 30 mm on wheels of 30.2 x 8 mm, 0.8 mm from the wood, axles at 25 and
// 136 mm, 6 mm up, their heads 4.5 mm wide and a fifth of that thick.
const LimitCase limit_cases[] = {
    {"max_length_mm", 180 * mm, 0.5 * mm, true, [](Rules& r, double v) { r.max_length = v; }},
    {"max_width_mm", (45 + 2 * (0.8 + 8 + 0.9)) * mm, 0.5 * mm, true,
     [](Rules& r, double v) { r.max_width = v; }},
    {"max_height_mm", (30 - 6 + 15.1) * mm, 0.5 * mm, true, [](Rules& r, double v) { r.max_height = v; }},
    {"min_ground_clearance_mm", (15.1 - 6) * mm, 0.5 * mm, false,
     [](Rules& r, double v) { r.min_ground_clearance = v; }},
    {"min_inner_width_mm", (45 + 2 * 0.8) * mm, 0.5 * mm, false,
     [](Rules& r, double v) { r.min_inner_width = v; }},
    {"wheelbase_mm/min", 111 * mm, 0.2 * mm, false, [](Rules& r, double v) { r.wheelbase.min = v; }},
    {"wheelbase_mm/max", 111 * mm, 0.2 * mm, true, [](Rules& r, double v) { r.wheelbase.max = v; }},
    {"wheel_min_mass_g", 2.6 * g, 0.1 * g, false, [](Rules& r, double v) { r.wheel_min_mass = v; }},
    {"wheel_diameter_mm/min", 30.2 * mm, 0.05 * mm, false,
     [](Rules& r, double v) { r.wheel_diameter.min = v; }},
    {"wheel_diameter_mm/max", 30.2 * mm, 0.05 * mm, true,
     [](Rules& r, double v) { r.wheel_diameter.max = v; }},
    {"wheel_min_width_mm", 8 * mm, 0.05 * mm, false, [](Rules& r, double v) { r.wheel_min_width = v; }},
    {"max_nose_height_mm", (15.1 - 6) * mm, 0.5 * mm, true,
     [](Rules& r, double v) { r.max_nose_height = v; }},
};

} // namespace

TEST_CASE("every length and mass limit is decided on both sides and at equality", "[rules]") {
    for (const LimitCase& c : limit_cases) {
        const double side = c.at_most ? 1 : -1;
        const struct {
            double room; ///< of the limit beyond the car's value
            Verdict verdict;
        } rows[] = {{-1 * mm, Verdict::breach},
                    {-sliver, Verdict::breach},
                    {0, Verdict::margin},
                    {sliver, Verdict::margin},
                    {c.tolerance - sliver, Verdict::margin},
                    {c.tolerance + sliver, Verdict::pass},
                    {10 * c.tolerance, Verdict::pass}};
        for (const auto& row : rows) {
            const double limit = c.value + side * row.room;
            if (limit <= 0) continue;
            CAPTURE(c.code, row.room);
            Project project = tools_project();
            c.set(project.rules, limit);
            const InspectionRow found = judged(project, c.code);
            CHECK(found.verdict == row.verdict);
            CHECK(*found.limit == limit);
            CHECK(*found.value == Approx(c.value).epsilon(1e-12));
            CHECK(*found.margin == Approx(row.room).margin(1e-12));
            CHECK(found.source == "the race");
            // Where there is little room, the reason is told; a clear case needs none.
            CHECK(found.why.empty() == (row.verdict != Verdict::margin));
        }
    }
}

TEST_CASE("one odd wheel decides for all four", "[rules]") {
    Project project = tools_project();
    project.rules.wheel_min_mass = 2.0 * g;
    project.rules.wheel_diameter = {29 * mm, 31 * mm};
    project.rules.wheel_min_width = 7 * mm;
    WheelPlan& odd = project.cars[0].wheels[std::size_t(Corner::front_right)];
    odd.mass = 1.9 * g;
    odd.width = 6.9 * mm;
    odd.touches = false;
    odd.raised = 1 * mm;
    odd.outer_diameter = 28 * mm;
    CHECK(judged(project, "wheel_min_mass_g").verdict == Verdict::breach);
    CHECK(judged(project, "wheel_min_width_mm").verdict == Verdict::breach);
    CHECK(judged(project, "wheel_diameter_mm/min").verdict == Verdict::breach);
    CHECK(judged(project, "wheel_diameter_mm/max").verdict == Verdict::pass);
    odd.outer_diameter = 32 * mm;
    CHECK(judged(project, "wheel_diameter_mm/max").verdict == Verdict::breach);
}

TEST_CASE("mass is judged as the scale shows it, narrowly where a worse one would refuse", "[rules]") {
    Project project = tools_project();
    project.rules.max_mass = 141.7 * g;
    project.scale = {0.1 * g, false, 0};
    project.worse_scale = {0.1 * g, false, 0.1 * g};
    // NIST Handbook 44 and OIML R 76, rounding to the nearest division (from memory): reads legal below
    // 141.75 g, and below 141.65 g on the scale that shows 0.1 g too much.
    const struct {
        double mass;
        bool down;
        Verdict verdict;
        double reads;
    } rows[] = {{130.00, false, Verdict::pass, 130.0},    {141.6499, false, Verdict::pass, 141.6},
                {141.65, false, Verdict::margin, 141.7},  {141.7499, false, Verdict::margin, 141.7},
                {141.75, false, Verdict::breach, 141.8},  {143.0, false, Verdict::breach, 143.0},
                {141.6999, true, Verdict::pass, 141.6},   {141.70, true, Verdict::margin, 141.7},
                {141.7999, true, Verdict::margin, 141.7}, {141.80, true, Verdict::breach, 141.8}};
    for (const auto& row : rows) {
        CAPTURE(row.mass, row.down);
        project.scale.rounds_down = project.worse_scale.rounds_down = row.down;
        project.cars[0].as_built.mass = row.mass * g;
        const InspectionRow found = judged(project, "max_mass_g");
        CHECK(found.verdict == row.verdict);
        CHECK(*found.value == Approx(row.reads * g).epsilon(1e-12));
        CHECK(*found.margin == Approx(((row.down ? 141.8 : 141.75) - row.mass) * g).margin(1e-12));
    }
}

TEST_CASE("wheels that touch are counted", "[rules]") {
    for (const int wanted : {3, 4})
        for (const bool raised : {false, true}) {
            CAPTURE(wanted, raised);
            Project project = tools_project();
            project.rules.wheels_touching = wanted;
            if (raised) {
                project.cars[0].wheels[std::size_t(Corner::front_left)].touches = false;
                project.cars[0].wheels[std::size_t(Corner::front_left)].raised = 1 * mm;
            }
            const InspectionRow found = judged(project, "wheels_touching");
            CHECK(found.verdict == (raised && wanted == 4 ? Verdict::breach : Verdict::pass));
            CHECK(*found.value == (raised ? 3 : 4));
        }
}

TEST_CASE("what may not be done is decided where a figure tells", "[rules]") {
    const auto with = [](const char* name, bool allowed, const std::function<void(CarPlan&)>& change) {
        Project project = tools_project();
        project.rules.allow[name] = allowed;
        change(project.cars[0]);
        return judged(project, "allow/" + std::string(name));
    };
    const auto wheel = [](CarPlan& car) -> WheelPlan& { return car.wheels[std::size_t(Corner::rear_left)]; };
    const struct {
        const char* name;
        std::function<void(CarPlan&)> use;
        const char* where;
    } rows[] = {{"raised_wheel",
                 [&](CarPlan& car) {
                     car.wheels[std::size_t(Corner::front_right)].touches = false;
                     car.wheels[std::size_t(Corner::front_right)].raised = 1 * mm;
                 },
                 "front right"},
                {"canted_wheels", [&](CarPlan& car) { wheel(car).cant = 1e-6; }, "rear left"},
                {"steered_wheels", [&](CarPlan& car) { wheel(car).toe = -1e-6; }, "rear left"},
                {"coned_hubs", [&](CarPlan& car) { wheel(car).hub = Hub::coned; }, "rear left"},
                {"bent_axles", [&](CarPlan& car) { car.steer.bend = 0.02; }, "bent"},
                {"lead", [&](CarPlan& car) { car.ballast[0].material = "lead"; }, "brass bar"}};
    for (const auto& row : rows) {
        CAPTURE(row.name);
        const InspectionRow clean = with(row.name, false, [](CarPlan&) {});
        CHECK(clean.verdict == Verdict::pass);
        CHECK(clean.value_words == "none");
        const InspectionRow used = with(row.name, false, row.use);
        CHECK(used.verdict == Verdict::breach);
        CHECK(used.value_words == row.where);
        CHECK(used.limit_words == "not allowed");
        CHECK(with(row.name, true, row.use).verdict == Verdict::pass);
    }
    // A leaning wheel may sit on a bent axle or in a slanted hole: the plan must say which.
    const InspectionRow slanted = with("bent_axles", false, [&](CarPlan& car) { wheel(car).cant = 0.02; });
    CHECK(slanted.verdict == Verdict::look_yourself);
    CHECK_FALSE(slanted.why.empty());
    CHECK(with("bent_axles", false, [&](CarPlan& car) {
              wheel(car).cant = 0.02;
              car.steer.bend = 0;
          }).verdict == Verdict::pass);
    // What a weight is made of must be known before lead can be ruled out.
    CHECK(with("lead", false, [](CarPlan& car) { car.ballast[0].material = "whatnot"; }).verdict ==
          Verdict::look_yourself);
}

TEST_CASE("the build date is decided where the file gives one", "[rules]") {
    Project project = tools_project();
    project.rules.built_after = "2026-09-01";
    CHECK(judged(project, "built_after").verdict == Verdict::look_yourself);
    const struct {
        const char* day;
        Verdict verdict;
    } rows[] = {{"2026-08-31", Verdict::breach},
                {"2026-09-01", Verdict::pass},
                {"2026-09-02", Verdict::pass},
                {"2025-12-31", Verdict::breach},
                {"2027-01-01", Verdict::pass}};
    for (const auto& row : rows) {
        CAPTURE(row.day);
        project.cars[0].built_on = row.day;
        CHECK(judged(project, "built_after").verdict == row.verdict);
    }
}

TEST_CASE("a limit is shown with a gauge's digits, rounded to its strict side", "[rules]") {
    InspectionRow row;
    const auto text = [&](Quantity quantity, Bound bound, double limit, UnitSystem units) {
        row.quantity = quantity;
        row.bound = bound;
        row.limit = limit;
        return limit_text(row, units);
    };
    constexpr UnitSystem metric = UnitSystem::metric, inches = UnitSystem::inch_ounce;
    CHECK(text(Quantity::mass, Bound::at_most, 141.747615625 * g, metric) == "at most 141.7 g");
    CHECK(text(Quantity::mass, Bound::at_most, 141.747615625 * g, inches) == "at most 5 oz");
    CHECK(text(Quantity::mass, Bound::at_most, 141.747 * g, inches) == "at most 5 oz");
    CHECK(text(Quantity::mass, Bound::at_least, 2.4 * g, inches) == "at least 0.085 oz");
    CHECK(text(Quantity::length, Bound::at_most, 180 * mm, inches) == "at most 7.086 in");   // 7.0866
    CHECK(text(Quantity::length, Bound::at_least, 95 * mm, inches) == "at least 3.741 in");  // 3.7402
    CHECK(text(Quantity::length, Bound::at_least, 100 * mm, inches) == "at least 3.937 in"); // 3.93701
    CHECK(text(Quantity::length, Bound::at_least, 44.45 * mm, metric) == "at least 44.45 mm");
    CHECK(text(Quantity::length, Bound::at_least, 44.45 * mm, inches) == "at least 1 3/4 in");
    CHECK(text(Quantity::length, Bound::at_least, 9.525 * mm, metric) == "at least 9.53 mm");
    CHECK(text(Quantity::length, Bound::at_most, 9.525 * mm, metric) == "at most 9.52 mm");
    // What keeps the number shown keeps the limit.
    for (int n = 1; n < 2000; ++n) {
        const double limit = n * 0.137 * mm;
        for (const UnitSystem units : {metric, inches})
            for (const Bound bound : {Bound::at_most, Bound::at_least}) {
                const std::string words = text(Quantity::length, bound, limit, units);
                if (words.find('/') != std::string::npos) continue; // the limit itself
                const std::size_t number = words.find_first_of("0123456789");
                const double shown = std::stod(words.substr(number)) * (units == metric ? mm : 25.4 * mm);
                const double room = bound == Bound::at_most ? limit - shown : shown - limit;
                // But for a twentieth of the last digit.
                CHECK(room > -0.051 * (units == metric ? 0.01 * mm : 0.0254 * mm));
                CHECK(room < (units == metric ? 0.01 * mm : 0.0254 * mm));
            }
    }
}
