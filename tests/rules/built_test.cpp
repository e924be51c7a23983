#include "car/car_fixture.hpp"
#include "support/demo.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/bench/weighing.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3, g = 1e-3;

const BuiltLine& line_of(const Built& built, const std::string& code) {
    for (const BuiltLine& line : built.lines)
        if (line.code == code) return line;
    FAIL("no line " << code);
    return built.lines.front();
}

/// The fixture with a limit above its plan and putty at the rear.
Project puttied() {
    Project project = test::plain_project();
    project.scale = {0.1 * g, false, 0};
    project.worse_scale = {0.1 * g, false, 0.1 * g};
    CutPlan hollow;
    hollow.name = "rear hollow";
    hollow.from = {4 * mm, -10 * mm, 20 * mm};
    hollow.to = {14 * mm, 10 * mm, 40 * mm};
    project.cars[0].body.cuts.push_back(hollow);
    project.cars[0].ballast.push_back(test::tungsten_putty("rear hollow", 4 * g));
    return project;
}

/// Mass and balance point once a weight is taken away (or, negative, put on) at a place: moments about the
/// rear axle.
Vec2 without(const Vec2& car, double mass, double ahead) {
    const double left = car.x() - mass;
    return {left, (car.x() * car.y() - mass * ahead) / left};
}

} // namespace

TEST_CASE("repeat weighings: mean and standard uncertainty", "[bench]") {
    // JCGM 100:2008 (GUM) 4.4.3, Table 1, as quoted in two public test suites: 20 readings, mean 100.145,
    // s / sqrt(n) = 0.333 (unrounded 0.332916). Without a display's division only the spread counts.
    const std::vector<double> temperatures{96.90,  98.18,  98.25,  98.61,  99.03,  99.49,  99.56,
                                           99.74,  99.89,  100.07, 100.33, 100.42, 100.68, 100.95,
                                           101.11, 101.20, 101.57, 101.84, 102.36, 102.72};
    const Measured spread = mean_of_weighings(temperatures, 0);
    CHECK(spread.value == Approx(100.145).epsilon(1e-12));
    CHECK(spread.sigma == Approx(0.332916).epsilon(1e-5));
    CHECK(spread.freedom == Approx(19).epsilon(1e-9));
    CHECK(spread_of_weighings(temperatures) == Approx(102.72 - 96.90).epsilon(1e-12));
    // One reading: the rectangle of one division, division / sqrt 12 (GUM 4.3.7 and F.2.2.1).
    const Measured one = mean_of_weighings({0.1417}, 0.1 * g);
    CHECK(one.value == 0.1417);
    CHECK(one.sigma == Approx(0.1 * g / std::sqrt(12.0)).epsilon(1e-12));
    CHECK(std::isinf(one.freedom));
    // Alike readings are no surer than the display.
    CHECK(mean_of_weighings({0.1417, 0.1417, 0.1417}, 0.1 * g).sigma == one.sigma);
    CHECK(std::isinf(mean_of_weighings({}, 0.1 * g).sigma));
    // 2.5 m of wheelbase, 52 % in front: 1.3 m ahead of the rear axle (OpenStax University Physics 1,
    // example 12.1).
    CHECK(balance_from_whole({0.52, 0}, {1, 0}, {2.5, 0}).value == Approx(1.3).epsilon(1e-12));
}

TEST_CASE("nothing measured, nothing compared", "[built]") {
    const Project project = test::plain_project();
    CHECK_FALSE(compare_built(project, build_car(project, 0)));
}

TEST_CASE("the finished car beside its plan", "[built]") {
    Project project = puttied();
    const CarModel plan = build_car(project, 0);
    const CarOnWheels planned = on_wheels(plan);
    CarPlan& car = project.cars[0];
    car.readings = {{150.0 * g, 150.2 * g}, {30 * g}, {}};
    car.as_built.mass = 150.1 * g;
    car.as_built.front_load = 30 * g;
    const auto built = compare_built(project, build_car(project, 0));
    REQUIRE(built);
    const BuiltLine& mass = line_of(*built, "mass_g");
    CHECK(mass.planned == Approx(planned.mass).epsilon(1e-12));
    CHECK(mass.built == Approx(150.1 * g));
    // Two readings 0.2 g apart: s / sqrt 2 = 0.1 g, and the display's 0.1 g / sqrt 12.
    CHECK(mass.sigma == Approx(std::hypot(0.1 * g, 0.1 * g / std::sqrt(12.0))).epsilon(1e-9));
    const BuiltLine& balance = line_of(*built, "balance_ahead_of_rear_axle_mm");
    CHECK(balance.planned == Approx(planned.centre.x()).epsilon(1e-12));
    CHECK(balance.built == Approx(30.0 / 150.1 * 111 * mm).epsilon(1e-9));
    CHECK(line_of(*built, "front_load_g").planned ==
          Approx(planned.mass * planned.centre.x() / (111 * mm)).epsilon(1e-9));
    CHECK(built->words.size() >= built->lines.size());
    CHECK_THAT(built->words.front(), Catch::Matchers::Contains("planned"));
}

TEST_CASE("front and rear that do not add up to the whole are told", "[built]") {
    Project project = puttied();
    CarPlan& car = project.cars[0];
    car.readings = {{141.0 * g}, {30 * g}, {113 * g}};
    car.as_built.mass = 141 * g;
    car.as_built.front_load = 30 * g;
    auto built = compare_built(project, build_car(project, 0));
    CHECK(*built->closure == Approx(2 * g).margin(1e-12));
    const auto weigh_again = [&] {
        for (const std::string& line : built->words)
            if (line.find("Weigh again") != std::string::npos) return true;
        return false;
    };
    CHECK(weigh_again());
    car.readings.rear = {111 * g};
    built = compare_built(project, build_car(project, 0));
    CHECK(*built->closure == Approx(0).margin(1e-12));
    CHECK_FALSE(weigh_again());
}

TEST_CASE("what is too heavy comes off where the balance point wants it, from the putty there is",
          "[built]") {
    Project project = puttied();
    const CarOnWheels planned = on_wheels(build_car(project, 0));
    // The limit is what the plan weighs, on the next division: legal below half a division more.
    const double limit = 0.1 * g * std::ceil(planned.mass / (0.1 * g));
    project.rules.max_mass = limit;
    // 1.4 g too much, all of it at the rear.
    CarPlan& car = project.cars[0];
    const double putty_at = on_wheels(build_car(project, 0)).centre.x() * 0 + (9 - 25) * mm;
    const Vec2 found =
        without({planned.mass, planned.centre.x()}, -(limit + 1.4 * g - planned.mass), putty_at);
    car.as_built.mass = found.x();
    car.as_built.front_load = found.x() * found.y() / (111 * mm);
    const auto built = compare_built(project, build_car(project, 0));
    REQUIRE(built);
    REQUIRE(built->trims.size() == 1);
    const Trim& trim = built->trims[0];
    CHECK(trim.kind == Trim::Kind::take_off);
    // Down to the middle of the last legal division, which is the limit itself.
    CHECK(trim.mass == Approx(1.4 * g).epsilon(1e-9));
    CHECK(trim.piece == "putty");
    CHECK(trim.at == Approx(putty_at).margin(0.1 * mm));
    CHECK(trim.mass_after == Approx(limit).epsilon(1e-12));
    const Vec2 after = without(found, trim.mass, trim.at);
    CHECK(trim.balance_after == Approx(after.y()).epsilon(1e-9));
    CHECK(trim.front_load_after == Approx(after.x() * after.y() / (111 * mm)).epsilon(1e-9));
    CHECK_THAT(trim.text, Catch::Matchers::StartsWith("Take 1.4 g of putty off, from the rear"));
    CHECK(weigh(project.scale, trim.mass_after, limit).legal);
}

TEST_CASE("what is too light gets putty, and what still is off balance is moved", "[built]") {
    Project project = puttied();
    CarPlan& car = project.cars[0];
    const CarOnWheels planned = on_wheels(build_car(project, 0));
    project.rules.max_mass = planned.mass + 5 * g;
    // 2 g light, and 6 mm too far forward: more than 2 g can mend.
    car.as_built.mass = planned.mass - 2 * g;
    car.as_built.balance_ahead_of_rear_axle = planned.centre.x() + 6 * mm;
    const auto built = compare_built(project, build_car(project, 0));
    REQUIRE(built->trims.size() == 2);
    const Trim &add = built->trims[0], &move = built->trims[1];
    CHECK(add.kind == Trim::Kind::add);
    CHECK(add.mass == Approx(2 * g).epsilon(1e-9));
    // In the hollow that has room: its middle is 9 mm from the tail, the rear axle 25 mm.
    CHECK(add.at == Approx(-16 * mm).margin(1e-6));
    const Vec2 after =
        without({*car.as_built.mass, *car.as_built.balance_ahead_of_rear_axle}, -add.mass, add.at);
    CHECK(add.balance_after == Approx(after.y()).epsilon(1e-9));
    CHECK(move.kind == Trim::Kind::move);
    CHECK(move.piece == "brass bar");
    // The bar is 30 mm long in the middle of a pocket of 40 mm: 5 mm is all it can go, which is less than
    // moments ask for, and what remains is said.
    CHECK(move.by == Approx(-5 * mm).margin(2e-6));
    CHECK(move.balance_after == Approx(after.y() + 48.8 * g * move.by / after.x()).epsilon(1e-9));
    CHECK_THAT(built->words.back(), Catch::Matchers::Contains("further forward than planned"));
    // A bar that is locked stays: then only the putty is advised.
    car.ballast[0].fixed = true;
    CHECK(compare_built(project, build_car(project, 0))->trims.size() == 1);
}

TEST_CASE("within what the scale shows nothing is advised", "[built]") {
    Project project = puttied();
    const CarOnWheels planned = on_wheels(build_car(project, 0));
    project.rules.max_mass = planned.mass + 5 * g;
    project.cars[0].as_built.mass = planned.mass - 0.04 * g;
    project.cars[0].as_built.balance_ahead_of_rear_axle = planned.centre.x() + 0.9 * mm;
    CHECK(compare_built(project, build_car(project, 0))->trims.empty());
    // Heavier than planned and legal is no fault.
    project.cars[0].as_built.mass = planned.mass + 3 * g;
    project.cars[0].as_built.balance_ahead_of_rear_axle = planned.centre.x();
    CHECK(compare_built(project, build_car(project, 0))->trims.empty());
    // Where only the whole car was weighed, no place can be told.
    project.cars[0].as_built = {};
    project.cars[0].as_built.mass = planned.mass + 6 * g;
    const auto built = compare_built(project, build_car(project, 0));
    REQUIRE(built->trims.size() == 1);
    CHECK_FALSE(built->trims[0].placed);
    CHECK_THAT(built->trims[0].text, Catch::Matchers::Contains("Weigh the front"));
}

TEST_CASE("weighings taken through the edit are the measured car, in the file too", "[built]") {
    const Document before = demo_document();
    const Edit edit = set_readings(before, 1, {{141.9 * g, 142.0 * g, 142.1 * g}, {30.0 * g, 30.2 * g}, {}});
    const Project project = read_project(edit.document);
    CHECK(*project.cars[1].as_built.mass == Approx(142.0 * g).epsilon(1e-9));
    CHECK(*project.cars[1].as_built.front_load == Approx(30.1 * g).epsilon(1e-9));
    CHECK(project.cars[1].readings.whole.size() == 3);
    CHECK(edit.document.root["cars"][1]["as_built"]["readings"]["whole_g"] == Json({141.9, 142, 142.1}));
    const Json saved = with_figures(edit.document).root["cars"][1]["figures"]["built"];
    CHECK(saved["lines"][0]["built"] == 142.0);
    CHECK(saved["words"].size() >= 3);
    // Front and rear make the whole, whole and rear the front.
    const auto two = read_project(set_readings(before, 1, {{}, {30 * g}, {111 * g}}).document);
    CHECK(*two.cars[1].as_built.mass == Approx(141 * g).epsilon(1e-9));
    const auto rest = read_project(set_readings(before, 1, {{141 * g}, {}, {111 * g}}).document);
    CHECK(*rest.cars[1].as_built.front_load == Approx(30 * g).epsilon(1e-9));
    // Taken back, the car is the plan again.
    CHECK(set_readings(edit.document, 1, {}).document == before);
}

TEST_CASE("putty to take off and to carry", "[rules]") {
    Project project = demo_project();
    project.rules.max_mass = 141.7 * g;
    project.scale = {0.1 * g, false, 0};
    project.worse_scale = {0.1 * g, false, 0.1 * g};
    project.cars[0].as_built.mass = 141.70 * g;
    const Figures figures = compute_figures(project, 0);
    REQUIRE(figures.scale);
    const ScaleFigures& s = *figures.scale;
    CHECK(s.largest_legal_true == Approx(141.75 * g).epsilon(1e-12));
    CHECK(s.worse_largest_legal_true == Approx(141.65 * g).epsilon(1e-12));
    CHECK(s.worse_reads == Approx(141.8 * g).epsilon(1e-12));
    // One weighing on steps of 0.1 g.
    const double sigma = 0.1 * g / std::sqrt(12.0);
    CHECK(s.mass_sigma == Approx(sigma).epsilon(1e-12));
    CHECK(s.take_off.mass == Approx(0.05 * g + 2 * sigma).epsilon(1e-9));
    CHECK(s.carry.mass == Approx(0.05 * g + 2 * sigma).epsilon(1e-9));
    // A 5 mm roll of tungsten putty, 10.5 g/cm3 from the table: 1 mm of it weighs pi/4 25 mm2 x 10.5 mg/mm3 =
    // 0.2062 g.
    CHECK(s.pellet_diameter == Approx(5 * mm));
    CHECK(s.take_off.pellet / (1 * mm) == Approx(s.take_off.mass / (0.20616701789 * g)).epsilon(1e-9));
    // Told where the worse scale would refuse it.
    bool told = false;
    for (const Finding& finding : figures.findings)
        told = told || finding.code == "scale-worse-reads-over";
    CHECK(told);
}
