#include "car/car_fixture.hpp"
#include "support/demo.hpp"

#include <rampwright/car/car_model.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/project/document.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace rampwright;
using test::plain_project;

namespace {

constexpr double mm = 1e-3;

const Finding* find(const std::vector<Finding>& findings, const std::string& code) {
    for (const Finding& finding : findings)
        if (finding.code == code) return &finding;
    return nullptr;
}

double value(const Finding* finding, const std::string& name) {
    REQUIRE(finding != nullptr);
    for (const auto& [key, number] : finding->values)
        if (key == name) return number;
    FAIL("no value " + name);
    return 0;
}

std::vector<Finding> check(const Project& project) {
    return check_fit(project, build_car(project, 0));
}

} // namespace

// All expected numbers of this file are plain geometry of boxes, worked out beside each check.

TEST_CASE("a car that fits has only a note on its four wheels", "[car][fit]") {
    const auto findings = check(plain_project());
    REQUIRE(findings.size() == 1);
    CHECK(findings[0].code == "loads-idealised");
    CHECK(findings[0].severity == Severity::note);
}

TEST_CASE("a weight dragged through the wall is told with its size", "[car][fit]") {
    Project project = plain_project();
    project.cars[0].ballast[0].at.y() = 4 * mm; // 16 mm wide, pocket to y = 10: 2 mm in the wall
    const auto findings = check(project);
    const Finding* out = find(findings, "ballast-outside-cut");
    CHECK(value(out, "outside_mm") == Approx(2).epsilon(1e-6));
    CHECK(value(out, "outside_mm3") == Approx(2 * 30 * 12).epsilon(1e-6));
    CHECK(out->where == "/cars/0/ballast/0");
    CHECK(find(findings, "ballast-outside-body") == nullptr);
}

TEST_CASE("a weight that stands out of the body is told with its size", "[car][fit]") {
    Project project = plain_project();
    project.cars[0].ballast[0].at.z() = 27 * mm; // 12 mm high, block to z = 30: 3 mm above it, pocket goes on
    const auto findings = check(project);
    const Finding* out = find(findings, "ballast-outside-body");
    CHECK(value(out, "outside_mm") == Approx(3).epsilon(1e-6));
    CHECK(value(out, "outside_mm3") == Approx(3 * 30 * 16).epsilon(1e-6));
    CHECK(find(findings, "ballast-outside-cut") == nullptr);
}

TEST_CASE("a weight in no cut takes the wood's place", "[car][fit]") {
    Project project = plain_project();
    project.cars[0].ballast[0].in.clear();
    project.cars[0].ballast[0].at = {75 * mm, 0, 20 * mm}; // from x = 60 to 90, pocket to 80
    CHECK(value(find(check(project), "ballast-in-wood"), "overlap_mm3") ==
          Approx(10 * 16 * 12).epsilon(1e-6));
}

TEST_CASE("two weights in one place", "[car][fit]") {
    Project project = plain_project();
    project.cars[0].ballast.push_back(project.cars[0].ballast[0]);
    project.cars[0].ballast[0].at.x() = 55 * mm;
    project.cars[0].ballast[1].at.x() = 65 * mm; // 30 long, 10 apart: 20 x 16 x 12 common
    CHECK(value(find(check(project), "ballast-overlap"), "overlap_mm3") ==
          Approx(20 * 16 * 12).epsilon(1e-6));
}

TEST_CASE("thin walls are told with their place", "[car][fit]") {
    Project project = plain_project();
    project.cars[0].body.cuts[0].to.y() = 20.5 * mm; // the block's side is at 22.5
    const auto findings = check(project);
    const Finding* wall = find(findings, "wall-thin");
    CHECK(value(wall, "wall_mm") == Approx(2).margin(0.03));
    CHECK(wall->where == "/cars/0/body/cuts/0");
    REQUIRE(wall->at);
    CHECK(wall->at->y() / mm == Approx(21.5).margin(0.1));
    project.cars[0].body.cuts[0].to.y() = 19 * mm;
    CHECK(find(check(project), "wall-thin") == nullptr);
}

TEST_CASE("an axle's hole through a cut, and both through one", "[car][fit]") {
    Project project = plain_project();
    CutPlan& pocket = project.cars[0].body.cuts[0];
    pocket.from = {15 * mm, -10 * mm, -1 * mm};
    pocket.to = {80 * mm, 10 * mm, 10 * mm};
    project.cars[0].ballast.clear();
    auto findings = check(project);
    CHECK(value(find(findings, "axle-through-cut"), "open_mm") == Approx(20).epsilon(1e-9));
    CHECK(value(find(findings, "axle-through-cut"), "front") == 0);
    CHECK(find(findings, "axles-through-cut") == nullptr);
    pocket.to.x() = 150 * mm;
    CHECK(find(check(project), "axles-through-cut") != nullptr);
}

TEST_CASE("an axle through a weight", "[car][fit]") {
    Project project = plain_project();
    project.cars[0].ballast[0].at = {25 * mm, 10 * mm,
                                     6 * mm}; // on the rear left axle, 16 mm of y from 2 to 18
    project.cars[0].ballast[0].in.clear();
    // The shank, 2.2 mm thick, reaches in to 22.5 + 0.8 + 8 - 28 = 3.3 mm from the middle: 14.7 mm of it.
    const double common = std::numbers::pi / 4 * 2.2 * 2.2 * 14.7;
    CHECK(value(find(check(project), "axle-through-ballast"), "overlap_mm3") == Approx(common).epsilon(1e-6));
    project.cars[0].ballast[0].at.z() = (6 + 1.1 + 6 + 0.4) * mm; // 0.4 mm above the shank
    const auto findings = check(project);
    CHECK(find(findings, "axle-through-ballast") == nullptr);
    CHECK(value(find(findings, "ballast-near-axle"), "clearance_mm") == Approx(0.4).margin(0.01));
}

TEST_CASE("a wheel in the wood, an axle hardly held, axles that meet", "[car][fit]") {
    Project project = plain_project();
    CarPlan& plan = project.cars[0];
    // Behind the rear axle the body swells by 3 mm a side: 2.2 mm into the wheel, whose gap is 0.8.
    plan.body.plan = {{{0, -25.5 * mm}},        {{15 * mm, -25.5 * mm}}, {{15 * mm, -22.5 * mm}},
                      {{180 * mm, -22.5 * mm}}, {{180 * mm, 22.5 * mm}}, {{15 * mm, 22.5 * mm}},
                      {{15 * mm, 25.5 * mm}},   {{0, 25.5 * mm}}};
    CHECK(value(find(check(project), "wheel-touches-body"), "overlap_mm") == Approx(2.2).margin(0.001));

    project = plain_project();
    project.cars[0].axles.length = 13.8 * mm; // less the gap and the wheel: 5 mm in the wood
    CHECK(value(find(check(project), "axle-barely-held"), "held_mm") == Approx(5).epsilon(1e-9));
    project.cars[0].axles.length = 33.3 * mm; // 2 mm past the middle from either side
    CHECK(value(find(check(project), "axles-meet"), "overlap_mm") == Approx(4).epsilon(1e-9));
}

TEST_CASE("putty that does not fit", "[car][fit]") {
    Project project = plain_project();
    BallastPlan& putty = project.cars[0].ballast[0];
    putty.shape = PieceShape::putty;
    putty.size = {};
    putty.material = "wood-filler"; // 1500 kg/m³ in the table
    putty.mass = 1500 * 13000e-9;   // the pocket holds 40 x 20 x 16 = 12 800 mm³
    const auto findings = check(project);
    CHECK(value(find(findings, "putty-overflows"), "excess_mm3") == Approx(200).epsilon(1e-6));
    CHECK(value(find(findings, "putty-overflows"), "capacity_mm3") == Approx(12800).epsilon(1e-9));
}

TEST_CASE("a car that tips, and steer away from the raised wheel", "[car][fit]") {
    Project project = plain_project();
    project.track.rail = LaneRail{};
    CarPlan& plan = project.cars[0];
    plan.ballast[0].at.x() = 45 * mm; // on three wheels the balance point has to be in the rear half
    plan.ballast[0].mass = 0.150;
    plan.wheels[2].touches = false; // front left
    plan.wheels[2].raised = 1.5 * mm;
    plan.wheels[3].toe = 1 * degree; // to the left, the raised wheel's side
    CHECK(find(check(project), "steer-from-raised-wheel") == nullptr);
    plan.wheels[3].toe = -1 * degree;
    CHECK(value(find(check(project), "steer-from-raised-wheel"), "steer_deg") == Approx(1).epsilon(1e-9));
    CHECK(find(check(project), "car-tips") == nullptr);
    plan.ballast[0].mass = 5;
    plan.ballast[0].at = {130 * mm, 15 * mm, 20 * mm};
    CHECK(value(find(check(project), "car-tips"), "outside_mm") > 1);
}

TEST_CASE("as-built values are told apart", "[car][as-built]") {
    Project project = plain_project();
    const CarModel plain = build_car(project, 0);
    const MassProperties computed = total(plain);
    const double ahead = computed.centre.x() - plain.rear_x;
    CHECK(reconcile_as_built(plain).empty());

    // 2 g more: as wood, 2 g over its volume denser.
    AsBuilt& as_built = project.cars[0].as_built;
    as_built.mass = computed.mass + 2e-3;
    auto findings = reconcile_as_built(build_car(project, 0));
    CHECK(value(find(findings, "as-built-heavier"), "difference_g") == Approx(2).epsilon(1e-9));
    CHECK(value(find(findings, "as-built-heavier"), "density_kg_m3") ==
          Approx(400 + 2e-3 / plain.wood_volume).epsilon(1e-9));

    // The weight really sits 3 mm further back: moments about the rear axle give the balance it would show.
    as_built.mass.reset();
    as_built.balance_ahead_of_rear_axle = ahead - 3 * mm * 48.8e-3 / computed.mass;
    findings = reconcile_as_built(build_car(project, 0));
    CHECK(value(find(findings, "as-built-balance-behind"), "ballast_mm") == Approx(3).epsilon(1e-9));
    CHECK(value(find(findings, "as-built-balance-behind"), "ballast_g") == Approx(48.8).epsilon(1e-9));

    // Front load wins; they differ by 1 mm, which is m / L of it at the front.
    as_built.front_load = (*as_built.balance_ahead_of_rear_axle + 1 * mm) * computed.mass / (111 * mm);
    const CarModel both = build_car(project, 0);
    findings = reconcile_as_built(both);
    CHECK(value(find(findings, "as-built-contradiction"), "difference_mm") == Approx(1).epsilon(1e-9));
    CHECK(value(find(findings, "as-built-contradiction"), "difference_g") ==
          Approx(computed.mass * 1e3 / 111).epsilon(1e-9));
    CHECK(on_wheels(both).centre.x() == Approx(*as_built.balance_ahead_of_rear_axle + 1 * mm).epsilon(1e-12));
}

TEST_CASE("as-built values override in their order", "[car][as-built]") {
    Project project = plain_project();
    const CarOnWheels plain = on_wheels(build_car(project, 0));
    AsBuilt& as_built = project.cars[0].as_built;
    as_built = {0.1417, 0.015, 0.050, 0.018, 2.6e-4, 2.7e-4};
    const CarOnWheels car = on_wheels(build_car(project, 0));
    CHECK(car.mass == 0.1417);
    CHECK(stand(car, 0, 9.8).front / 9.8 == Approx(0.015).epsilon(1e-12)); // not what 50 mm would give
    CHECK(car.centre.z() == 0.018);
    CHECK(car.inertia(1, 1) == 2.6e-4);
    CHECK(car.inertia(2, 2) == 2.7e-4);
    CHECK(car.inertia(0, 0) == Approx(plain.inertia(0, 0) * 0.1417 / plain.mass).epsilon(1e-12));
    as_built = {};
    as_built.balance_ahead_of_rear_axle = 0.0213;
    CHECK(on_wheels(build_car(project, 0)).centre.x() == 0.0213);
}

TEST_CASE("a finding's text carries its numbers", "[findings]") {
    const Finding finding = make_finding("ballast-outside-cut", Severity::warning, "/cars/0/ballast/0", {},
                                         {{"outside_mm", 1.26}, {"outside_mm3", 12.4}});
    CHECK(finding.text == "This weight does not fit its cut: it is outside by 1.3 mm (12 mm³).");
    const Finding rule = make_finding("rule-breach", Severity::breach, "/rules/max_mass_g", {},
                                      {{"limit_g", 141.7}, {"measured_g", 142.25}});
    CHECK(rule.text == "A rule of this race is broken: the limit is 141.70 g, the car has 142.25 g.");
    CHECK(find_finding_text("no-such-code").empty());
    CHECK(to_string(Severity::breach) == "breach");
}

TEST_CASE("a wheel's finding and part point to its row in the file, in whatever order the corners stand",
          "[car][fit]") {
    Document document = load_document(demo_path());
    Json& wheels = document.root["cars"][0]["wheels"];
    std::reverse(wheels.begin(), wheels.end()); // front-right first, rear-left last
    wheels[1]["touches"] = false;               // front-left is raised,
    wheels[0]["toe_deg"] = 1;                   // and the other steers to the left: towards it
    const Project project = read_project(document);
    const CarModel car = build_car(project, 0);
    for (const Part& part : car.parts) {
        if (part.kind != PartKind::wheel) continue;
        const auto row = 3 - static_cast<std::size_t>(*part.corner);
        CHECK(part.key == "/cars/0/wheels/" + std::to_string(row));
        CHECK(document.root.at(Json::json_pointer(part.key)).at("corner") ==
              std::string(to_string(*part.corner)));
    }
    wheels[0]["toe_deg"] = -1; // away from the raised wheel
    const Project turned = read_project(document);
    const auto findings = check_fit(turned, build_car(turned, 0));
    const Finding* steer = find(findings, "steer-from-raised-wheel");
    REQUIRE(steer != nullptr);
    CHECK(steer->where == "/cars/0/wheels/0/toe_deg");
}

TEST_CASE("a hole of a size that no bit of the person's has is noted, with the nearest",
          "[car][fit][tools]") {
    Project project = plain_project(); // axle holes of 2.3 mm
    CutPlan bore;
    bore.is_bore = true;
    bore.name = "wire hole";
    bore.from = {150 * mm, 0, 40 * mm};
    bore.to = {150 * mm, 0, 15 * mm};
    bore.diameter = 6 * mm;
    project.cars[0].body.cuts.push_back(bore);
    CHECK(find(check(project), "bit-not-owned") == nullptr); // nobody said which bits there are
    project.tools.drill_bits = {2.3 * mm, 5 * mm, 6 * mm};
    CHECK(find(check(project), "bit-not-owned") == nullptr);
    project.tools.drill_bits = {2.3 * mm, 5 * mm, 8 * mm};
    const auto missing = check(project);
    const Finding* bit = find(missing, "bit-not-owned");
    CHECK(value(bit, "diameter_mm") == Approx(6));
    CHECK(value(bit, "nearest_mm") == Approx(5));
    CHECK(bit->where == "/cars/0/body/cuts/1");
    CHECK(bit->severity == Severity::note);
    project.tools.drill_bits = {2 * mm, 6 * mm};
    const auto axles = check(project);
    CHECK(find(axles, "bit-not-owned")->where == "/cars/0/axles/hole_diameter_mm");
    project.cars[0].axles.holes = Holes::slots; // a saw's work
    CHECK(find(check(project), "bit-not-owned") == nullptr);
}

TEST_CASE("a saw cannot take off less than its blade, nor saw a narrower slot", "[car][fit][tools]") {
    Project project = plain_project(); // a block of 180 x 45 x 30 mm that is left as it is
    project.tools.saw_kerf = 1.2 * mm;
    CHECK(find(check(project), "offcut-under-kerf") == nullptr);
    for (PlanPoint& point : project.cars[0].body.profile)
        point.at.y() = std::min(point.at.y(), 29 * mm);
    const auto thin = check(project);
    const Finding* strip = find(thin, "offcut-under-kerf");
    CHECK(value(strip, "strip_mm") == Approx(1));
    CHECK(value(strip, "kerf_mm") == Approx(1.2));
    CHECK(strip->severity == Severity::note);
    REQUIRE(strip->at);
    CHECK(strip->at->isApprox(Vec3(90, 0, 29) * mm));
    project.tools.saw_kerf = 0.9 * mm;
    CHECK(find(check(project), "offcut-under-kerf") == nullptr);

    project.cars[0].axles.hole_diameter = 2.3 * mm;
    project.tools.saw_kerf = 2.5 * mm;
    CHECK(find(check(project), "kerf-over-slot") == nullptr); // drilled
    project.cars[0].axles.holes = Holes::slots;
    const auto wide = check(project);
    const Finding* slot = find(wide, "kerf-over-slot");
    CHECK(value(slot, "kerf_mm") == Approx(2.5));
    CHECK(value(slot, "slot_mm") == Approx(2.3));
    CHECK(slot->severity == Severity::warning);
    project.tools.saw_kerf = 2.3 * mm;
    CHECK(find(check(project), "kerf-over-slot") == nullptr);
}
