#include "car/car_fixture.hpp"

#include <rampwright/body/solid.hpp>
#include <rampwright/car/car_model.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/materials/materials.hpp>

#include <catch2/catch.hpp>

#include <numbers>
#include <random>
#include <support/demo.hpp>

using namespace rampwright;
using test::plain_project;

namespace {

constexpr double mm = 1e-3, gram_ = 1e-3;

const Part& part(const CarModel& car, const std::string& name) {
    for (const Part& p : car.parts)
        if (p.name == name) return p;
    throw std::out_of_range(name);
}

} // namespace

TEST_CASE("a plain car adds up as by hand", "[car]") {
    const CarModel car = build_car(plain_project(), 0);

    // Block 180 x 45 x 30, pocket 40 x 20 from 14 to the top at 30, two holes of 2.3 mm across 45 mm.
    const double hole = std::numbers::pi / 4 * 2.3 * 2.3 * 45;
    const double wood = 180 * 45 * 30 - 40 * 20 * 16 - 2 * hole;
    CHECK(car.wood_volume == Approx(wood * 1e-9).epsilon(1e-9));
    CHECK(car.body_mass == Approx(400 * wood * 1e-9).epsilon(1e-9));

    const MassProperties whole = total(car);
    const double wood_g = 400e-6 * wood, mass_g = wood_g + 4 * 2.6 + 4 * 0.9 + 48.8;
    CHECK(whole.mass / gram_ == Approx(mass_g).epsilon(1e-9));

    // Composite centre, as in Engineering Statics section 7.5: sum of m x over sum of m.
    const double wood_x = 400e-6 * (180.0 * 45 * 30 * 90 - 40 * 20 * 16 * 60 - hole * (25 + 136));
    const double x = (wood_x + 2 * (2.6 + 0.9) * (25 + 136) + 48.8 * 60) / mass_g;
    CHECK(whole.centre.x() / mm == Approx(x).epsilon(1e-9));
    CHECK(whole.centre.y() == Approx(0).margin(1e-12));
    const double wood_z = 400e-6 * (180.0 * 45 * 30 * 15 - 40 * 20 * 16 * 22 - 2 * hole * 6);
    CHECK(whole.centre.z() / mm == Approx((wood_z + 4 * (2.6 + 0.9) * 6 + 48.8 * 20) / mass_g).epsilon(1e-9));

    // Wheels stand beside the wood: half of 45 mm, the gap and half a width.
    CHECK(car.wheels[0].centre.isApprox(Vec3(25, 22.5 + 0.8 + 4, 6) * mm, 1e-12));
    CHECK(car.wheels[3].centre.isApprox(Vec3(136, -(22.5 + 0.8 + 4), 6) * mm, 1e-12));
    // Bottom of the block at 0, axle 6 mm up, wheels of 15.1 mm radius.
    CHECK(car.ground_clearance / mm == Approx(15.1 - 6).epsilon(1e-9));
    CHECK(car.nose.isApprox(Vec3(180, 0, 0) * mm, 1e-12));
    CHECK(car.low.isApprox(Vec3(0, -31.3, -9.1) * mm, 1e-9));
    CHECK(car.high.isApprox(Vec3(180, 31.3, 30) * mm, 1e-9));
}

TEST_CASE("a published composite: block with a heavy plug across it", "[car]") {
    // Closed forms evaluated apart from this program: block 180 x 45 x 30 mm of 400 kg/m³, a cross hole of 10
    // mm and 20 mm long, 60 mm ahead of the middle, filled with 18 000 kg/m³: 124.846015352 g in all, centre
    // 13.2864546491 mm ahead of the middle, inertia 2.4786821441e-5, 3.47562178706e-4, 3.57423424955e-4 kg
    // m².
    Project project = plain_project();
    CarPlan& plan = project.cars[0];
    plan.body.cuts[0].is_bore = true;
    plan.body.cuts[0].from = {150 * mm, -10 * mm, 15 * mm};
    plan.body.cuts[0].to = {150 * mm, 10 * mm, 15 * mm};
    plan.body.cuts[0].diameter = 10 * mm;
    plan.ballast[0].shape = PieceShape::cylinder;
    plan.ballast[0].size = {10 * mm, 20 * mm};
    plan.ballast[0].axis = 1;
    plan.ballast[0].at = {150 * mm, 0, 15 * mm};
    plan.ballast[0].mass = 18000 * std::numbers::pi / 4 * 10e-3 * 10e-3 * 20e-3;
    plan.axles.hole_diameter = 1e-9; // no holes, no running gear: what is left is the published solid
    plan.axles.mass_each = 0;
    for (WheelPlan& wheel : plan.wheels)
        wheel.mass = 0;
    const MassProperties whole = total(build_car(project, 0));
    CHECK(whole.mass == Approx(0.124846015352).epsilon(1e-9));
    CHECK((whole.centre.x() - 90 * mm) / mm == Approx(13.2864546491).epsilon(1e-8));
    CHECK(whole.inertia(0, 0) == Approx(2.4786821441e-5).epsilon(1e-8));
    CHECK(whole.inertia(1, 1) == Approx(3.47562178706e-4).epsilon(1e-8));
    CHECK(whole.inertia(2, 2) == Approx(3.57423424955e-4).epsilon(1e-8));
}

TEST_CASE("moving a weight moves the centre by its share", "[car]") {
    Project project = plain_project();
    const MassProperties before = total(build_car(project, 0));
    project.cars[0].ballast[0].at.x() -= 4 * mm;
    const MassProperties after = total(build_car(project, 0));
    CHECK((before.centre.x() - after.centre.x()) ==
          Approx(48.8 * gram_ * 4 * mm / before.mass).epsilon(1e-11));
    CHECK(before.mass == Approx(after.mass).epsilon(1e-14));
}

TEST_CASE("mirrored cars mirror", "[car]") {
    Project project = plain_project();
    CarPlan& plan = project.cars[0];
    plan.body.plan[2].at.y() = 18 * mm; // lopsided
    plan.ballast[0].at.y() = 1.5 * mm;
    plan.ballast[0].turned = 0.2;
    plan.wheels[2].touches = false;
    plan.wheels[2].raised = 1.5 * mm;
    const CarModel one = build_car(project, 0), other = build_car(test::mirrored(project), 0);
    const MassProperties a = total(one), b = total(other);
    const Vec3 flip(1, -1, 1);
    CHECK(a.mass == Approx(b.mass).epsilon(1e-12));
    CHECK((a.centre - flip.cwiseProduct(b.centre)).norm() < 1e-12);
    const Eigen::Matrix3d turned = flip.asDiagonal() * b.inertia * flip.asDiagonal();
    CHECK((a.inertia - turned).norm() < 1e-9 * a.inertia.norm());
    CHECK(one.frontal_area == Approx(other.frontal_area).epsilon(1e-9));
    const Standing left = stand(on_wheels(one), 0, 9.8), right = stand(on_wheels(other), 0, 9.8);
    CHECK(*left.loads[0] == Approx(*right.loads[1]).epsilon(1e-9));
    CHECK(*left.loads[3] == Approx(*right.loads[2]).epsilon(1e-9));
}

TEST_CASE("a raised wheel hangs above the surface by its gap", "[car]") {
    Project project = plain_project();
    CarPlan& plan = project.cars[0];
    plan.wheels[3].touches = false;
    plan.wheels[3].raised = 1.5 * mm;
    plan.wheels[2].outer_diameter = 32 * mm; // the body pitches: its front stands higher
    const CarModel car = build_car(project, 0);
    const CarOnWheels level = on_wheels(car);
    CHECK(level.wheels[3].centre.z() - level.wheels[3].radius == Approx(1.5 * mm).epsilon(1e-9));
    for (const std::size_t i : {0u, 1u, 2u}) {
        CAPTURE(i);
        CHECK(level.wheels[i].centre.z() == Approx(level.wheels[i].radius).epsilon(1e-12));
    }
    CHECK(level.wheels[0].centre.x() == Approx(0).margin(1e-15));
    CHECK(level.wheels[2].centre.x() == Approx(level.wheelbase).epsilon(1e-12));
    // Pythagoras: the axles are 111 mm apart, their centres 0.9 mm apart in height when level.
    CHECK(level.wheelbase / mm == Approx(std::sqrt(111.0 * 111 - 0.9 * 0.9)).epsilon(1e-12));
    CHECK(level.rear_radius == Approx(15.1 * mm));
    CHECK(level.front_radius == Approx(16 * mm));
    // A nose-up body: the level frame turns mass and inertia, it does not change them.
    CHECK(level.inertia.trace() == Approx(total(car).inertia.trace()).epsilon(1e-12));
}

TEST_CASE("a weighed block gives the density", "[car]") {
    Project project = plain_project();
    const double before = build_car(project, 0).body_mass;
    project.cars[0].body.density = 440; // as the reader resolves a heavier block
    project.cars[0].body.block_mass = 440 * project.cars[0].body.block.prod();
    CHECK(build_car(project, 0).body_mass == Approx(1.1 * before).epsilon(1e-12));
}

TEST_CASE("slots take wood up to half a hole above the axle", "[car]") {
    Project project = plain_project();
    project.cars[0].axles.holes = Holes::slots;
    const double wood = 180 * 45 * 30 - 40 * 20 * 16 - 2 * 2.3 * (6 + 1.15) * 45;
    CHECK(build_car(project, 0).wood_volume == Approx(wood * 1e-9).epsilon(1e-9));
}

TEST_CASE("a measured spin inertia replaces the profile's", "[car]") {
    Project project = plain_project();
    const CarModel profile = build_car(project, 0);
    project.cars[0].wheels[0].spin_inertia = 3.1e-7;
    const CarModel measured = build_car(project, 0);
    CHECK(measured.wheels[0].spin_inertia == 3.1e-7);
    CHECK(part(measured, "wheel rear left").properties.inertia(1, 1) == 3.1e-7);
    const double more = 3.1e-7 - profile.wheels[0].spin_inertia;
    CHECK(measured.wheels[0].cross_inertia - profile.wheels[0].cross_inertia ==
          Approx(more / 2).epsilon(1e-9));
}

TEST_CASE("an axle beside the wood is refused with its place", "[car]") {
    Project project = plain_project();
    project.cars[0].axles.front_x = 200 * mm;
    try {
        build_car(project, 0);
        FAIL("no problem thrown");
    } catch (const Problem& problem) {
        CHECK(problem.where() == "/cars/0/axles/front_x_mm");
        CHECK(problem.exit() == Exit::could_not);
    }
}

TEST_CASE("putty fills its cut from below", "[car][putty]") {
    Project project = plain_project();
    BallastPlan& putty = project.cars[0].ballast[0];
    putty.shape = PieceShape::putty;
    putty.size = {};
    putty.material = "wood-filler"; // 1500 kg/m³ in the table
    putty.mass = 6 * gram_;         // 4 cm³ in a pocket of 40 x 20 mm: 5 mm high
    const CarModel car = build_car(project, 0);
    const MassProperties& filled = part(car, "brass bar").properties;
    CHECK(filled.mass == Approx(6 * gram_).epsilon(1e-12));
    CHECK(filled.centre.isApprox(Vec3(60, 0, 14 + 2.5) * mm, 1e-9));
    CHECK(filled.inertia(0, 0) == Approx(0.006 * (20 * 20 + 5 * 5) * 1e-6 / 12).epsilon(1e-6));
    CHECK(filled.inertia(2, 2) == Approx(0.006 * (40 * 40 + 20 * 20) * 1e-6 / 12).epsilon(1e-6));

    // Half full, a bore along x carries a half cylinder: its centre lies 4 r / (3 pi) below the axis (from
    // memory).
    CutPlan& bore = project.cars[0].body.cuts[0];
    bore.is_bore = true;
    bore.from = {40 * mm, 0, 15 * mm};
    bore.to = {90 * mm, 0, 15 * mm};
    bore.diameter = 12 * mm;
    putty.mass = 1500 * std::numbers::pi / 8 * 12e-3 * 12e-3 * 50e-3;
    const MassProperties half = part(build_car(project, 0), "brass bar").properties;
    CHECK(half.centre.x() / mm == Approx(65).epsilon(1e-9));
    CHECK(half.centre.z() / mm == Approx(15 - 4 * 6 / (3 * std::numbers::pi)).epsilon(2e-3));

    // And an upright one a short cylinder.
    bore.from = {60 * mm, 0, 30 * mm};
    bore.to = {60 * mm, 0, 10 * mm};
    putty.mass = 1500 * std::numbers::pi / 4 * 12e-3 * 12e-3 * 8e-3;
    const MassProperties plug = part(build_car(project, 0), "brass bar").properties;
    CHECK(plug.centre.isApprox(Vec3(60, 0, 14) * mm, 1e-6));
    CHECK(plug.inertia(2, 2) == Approx(plug.mass * 6e-3 * 6e-3 / 2).epsilon(1e-6));
}

TEST_CASE("what holds a weight weighs too, in its middle") {
    Project project = plain_project();
    const MassProperties before = total(build_car(project, 0));
    const Holding& epoxy = *find_holding("epoxy");
    REQUIRE(epoxy.mass.value > 0);
    project.cars[0].ballast[0].held = "epoxy";
    const CarModel car = build_car(project, 0);
    const MassProperties after = total(car);
    CHECK(after.mass - before.mass == Approx(epoxy.mass.value).epsilon(1e-9));
    // Moments: the centre moves towards the weight by its part of the whole.
    const Vec3 moved = after.centre * after.mass - before.centre * before.mass;
    CHECK(moved.isApprox(epoxy.mass.value * project.cars[0].ballast[0].at, 1e-6));
    CHECK(car.parts.back().kind == PartKind::holding);
    CHECK(car.parts.back().mass_sigma == epoxy.mass.sigma);
    // Pressed in, nothing is added.
    project.cars[0].ballast[0].held = "press-fit";
    CHECK(total(build_car(project, 0)).mass == Approx(before.mass).epsilon(1e-12));
}

TEST_CASE("a weighed holding counts instead of the typical one, known to two readings of the scale") {
    Project project = plain_project();
    const double before = total(build_car(project, 0)).mass;
    BallastPlan& piece = project.cars[0].ballast[0];
    project.scale.division = 0.1e-3;
    piece.held = "screw";
    piece.held_mass = 1.3e-3;
    const CarModel car = build_car(project, 0);
    CHECK(total(car).mass - before == Approx(1.3e-3).epsilon(1e-9));
    const Part& screw = car.parts.back();
    CHECK(screw.key == "/cars/0/ballast/0/held");
    // After less before, each to a division over the root of 12 (GUM, JCGM 100:2008, F.2.2.1).
    CHECK(screw.mass_sigma == Approx(std::sqrt(2 * 0.1e-3 * 0.1e-3 / 12)).epsilon(1e-9));
    CHECK(screw.properties.centre == piece.at);
    // Weighed without saying what it is; weighed and found to be nothing.
    piece.held.clear();
    CHECK(total(build_car(project, 0)).mass - before == Approx(1.3e-3).epsilon(1e-9));
    piece.held = "screw";
    piece.held_mass = 0;
    CHECK(total(build_car(project, 0)).mass == Approx(before).epsilon(1e-12));
}

TEST_CASE("a household piece with its typical mass is as unsure as its kind; a weighed one is not") {
    Project project = plain_project();
    const HouseholdPiece& kind = household_pieces().back();
    BallastPlan& piece = project.cars[0].ballast[0];
    const auto sigma = [&] {
        for (const Part& part : build_car(project, 0).parts)
            if (part.kind == PartKind::ballast) return part.mass_sigma;
        return -1.;
    };
    piece.name = kind.name;
    piece.mass = kind.mass.value;
    CHECK(sigma() == kind.mass.sigma);
    piece.mass += 0.02e-3;
    CHECK(sigma() == Approx(0.1e-3)); // a kitchen scale's
    piece.mass = kind.mass.value;
    piece.name = "something else";
    CHECK(sigma() == Approx(0.1e-3));
}

// The annulus of any table of solids (from memory): m (r1² + r2²) / 2 about its axle.
TEST_CASE("a wheel's stated section is the one that is revolved", "[car][wheel]") {
    Document document = demo_document();
    Json& wheels = document.root["cars"][0]["wheels"];
    wheels = Json::array();
    for (const char* corner : {"rear-left", "rear-right", "front-left", "front-right"})
        wheels.push_back({{"corner", corner},
                          {"mass_g", 2.6},
                          {"outer_diameter_mm", 30},
                          {"bore_diameter_mm", 2.4},
                          {"width_mm", 8},
                          {"web_thickness_mm", 8}});
    const auto spin = [&] { return build_car(read_project(document), 0).wheels[0].spin_inertia; };
    CHECK(spin() == Approx(2.6e-3 * (0.0012 * 0.0012 + 0.015 * 0.015) / 2).epsilon(1e-12));
    // A thin web leaves the mass in the rim, a thin rim brings it to the hub.
    wheels[0]["web_thickness_mm"] = 0.5;
    const double rim = spin();
    wheels[0]["tread_thickness_mm"] = 0.3;
    CHECK(spin() < rim);
    wheels[0]["tread_thickness_mm"] = 14;
    CHECK_THROWS_AS(spin(), Problem);
    wheels[0]["tread_thickness_mm"] = 1;
    wheels[0]["hub_diameter_mm"] = 29;
    CHECK_THROWS_AS(spin(), Problem);
}
