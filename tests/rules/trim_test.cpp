#include "car/car_fixture.hpp"

#include <rampwright/results/built.hpp>

#include <catch2/catch.hpp>

#include <numbers>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3, g = 1e-3;
/// Tungsten putty by the table of materials: 10.5 g/cm³.
constexpr double putty_g_mm3 = 10.5e-3;

/// A pocket that its brass bar fills to the last corner, and behind it a hollow of 10 x 20 x 4 mm, open at
/// the top of the block, with 4 g of putty in it: 800 mm³ hold 8.4 g, so 4.4 g have room.
Project packed() {
    Project project = test::plain_project();
    project.scale = {0.1 * g, false, 0};
    project.worse_scale = project.scale;
    CarPlan& car = project.cars[0];
    car.body.cuts[0].to.z() = 30 * mm;
    car.ballast[0].size = {40 * mm, 20 * mm, 16 * mm};
    car.ballast[0].at = {60 * mm, 0, 22 * mm};
    car.ballast[0].in = car.body.cuts[0].name;
    car.ballast[0].fixed = false;
    CutPlan hollow;
    hollow.name = "rear hollow";
    hollow.from = {4 * mm, -10 * mm, 26 * mm};
    hollow.to = {14 * mm, 10 * mm, 40 * mm};
    car.body.cuts.push_back(hollow);
    car.ballast.push_back(test::tungsten_putty(hollow.name, 4 * g));
    return project;
}

CarOnWheels planned_of(Project project) {
    project.cars[0].as_built = {};
    return on_wheels(build_car(project, 0));
}

/// The car weighed that much off its plan, and its balance point that far ahead of the plan's.
Built built_off(Project project, double mass, double balance, double limit_above = 50 * g) {
    const CarOnWheels planned = planned_of(project);
    project.rules.max_mass = planned.mass + limit_above;
    project.cars[0].as_built.mass = planned.mass + mass;
    project.cars[0].as_built.balance_ahead_of_rear_axle = planned.centre.x() + balance;
    return *compare_built(project, build_car(project, 0));
}

/// What the trims take off and put on in all: the car's change, whichever way it is split.
double change_of(const Built& built) {
    double sum = 0;
    for (const Trim& trim : built.trims)
        sum += trim.kind == Trim::Kind::add ? trim.mass : trim.kind == Trim::Kind::take_off ? -trim.mass : 0;
    return sum;
}

bool says(const Built& built, const std::string& words) {
    return std::any_of(built.words.begin(), built.words.end(),
                       [&](const std::string& line) { return line.find(words) != std::string::npos; });
}

} // namespace

TEST_CASE("putty is added as far as its cut has room, by hand 4.4 g", "[built][trim]") {
    const Project project = packed();
    const Built fits = built_off(project, -4 * g, 0);
    REQUIRE(fits.trims.size() >= 1);
    CHECK(fits.trims[0].mass == Approx(4 * g).epsilon(1e-9));
    CHECK(fits.trims[0].piece == "putty");
    CHECK_THAT(fits.trims[0].text, Catch::Matchers::Contains("there is room for 4.4 g"));
    // The hollow's middle is 9 mm from the tail, the rear axle 25 mm.
    CHECK(fits.trims[0].at == Approx(-16 * mm).margin(1e-6));
    // Two grams more than fit: told apart, and told that no cut takes them.
    const Built over = built_off(project, -6.4 * g, 0);
    REQUIRE(over.trims.size() >= 2);
    CHECK(over.trims[0].mass == Approx(800 * putty_g_mm3 * g - 4 * g).epsilon(1e-6));
    CHECK_THAT(over.trims[0].text, Catch::Matchers::Contains("no more fits there"));
    CHECK(over.trims[1].mass == Approx(2 * g).epsilon(1e-6));
    CHECK(over.trims[1].piece.empty());
    CHECK_THAT(over.trims[1].text, Catch::Matchers::Contains("no cut has room"));
    CHECK(change_of(over) == Approx(6.4 * g).epsilon(1e-9));
    CHECK(over.trims[1].mass_after == Approx(planned_of(project).mass).epsilon(1e-12));
}

TEST_CASE("what one cut cannot take goes into another, the nearer first", "[built][trim]") {
    Project project = packed();
    CutPlan second = project.cars[0].body.cuts[1];
    second.name = "front hollow";
    second.from.x() = 150 * mm;
    second.to.x() = 160 * mm;
    project.cars[0].body.cuts.push_back(second);
    // Light and too far forward: it is wanted at the rear. Neither cut takes it all.
    const Built built = built_off(project, -10 * g, 2 * mm);
    REQUIRE(built.trims.size() >= 2);
    CHECK_THAT(built.trims[0].text, Catch::Matchers::Contains("rear hollow"));
    CHECK(built.trims[0].mass == Approx(4.4 * g).epsilon(1e-6));
    CHECK_THAT(built.trims[1].text, Catch::Matchers::Contains("front hollow"));
    CHECK(built.trims[1].mass == Approx(5.6 * g).epsilon(1e-6));
    // Nothing lies there yet, so no piece is named.
    CHECK(built.trims[1].piece.empty());
    // A cut that is enough by itself is taken before one that is nearer and too small.
    const Built one = built_off(project, -6.4 * g, 2 * mm);
    REQUIRE(one.trims.size() >= 1);
    CHECK_THAT(one.trims[0].text, Catch::Matchers::Contains("front hollow"));
    CHECK(one.trims[0].mass == Approx(6.4 * g).epsilon(1e-9));
}

TEST_CASE("a cut that is full, or overflows, takes nothing", "[built][trim]") {
    Project project = packed();
    for (const double lying : {8.4 * g, 9.5 * g}) {
        project.cars[0].ballast[1].mass = lying;
        const Built built = built_off(project, -1 * g, 0);
        REQUIRE(built.trims.size() >= 1);
        CHECK_THAT(built.trims[0].text, Catch::Matchers::Contains("no cut has room"));
        CHECK(built.trims[0].mass == Approx(1 * g).epsilon(1e-9));
    }
}

TEST_CASE("no more putty comes off than there is, and none that is locked or glued", "[built][trim]") {
    Project project = packed();
    const auto limit = [&] { return 0.1 * g * std::ceil(planned_of(project).mass / (0.1 * g)); };
    const auto heavy = [&](double over) {
        const CarOnWheels planned = planned_of(project);
        project.rules.max_mass = limit();
        project.cars[0].as_built.mass = limit() + over;
        project.cars[0].as_built.balance_ahead_of_rear_axle = planned.centre.x();
        return *compare_built(project, build_car(project, 0));
    };
    const Built some = heavy(3.9 * g);
    CHECK(some.trims[0].mass == Approx(3.9 * g).epsilon(1e-9));
    CHECK(some.trims[0].piece == "putty");
    const Built more = heavy(6 * g);
    REQUIRE(more.trims.size() >= 2);
    CHECK(more.trims[0].mass == Approx(4 * g).epsilon(1e-9));
    CHECK_THAT(more.trims[0].text, Catch::Matchers::Contains("all there is"));
    CHECK(more.trims[1].mass == Approx(2 * g).epsilon(1e-9));
    CHECK(more.trims[1].piece.empty());
    CHECK_THAT(more.trims[1].text, Catch::Matchers::StartsWith("Take 2.0 g of wood off"));
    CHECK(more.trims[1].mass_after == Approx(limit()).epsilon(1e-12));
    BallastPlan& putty = project.cars[0].ballast[1];
    putty.fixed = true;
    const Built locked = heavy(1 * g);
    CHECK(locked.trims[0].piece.empty());
    CHECK_THAT(locked.trims[0].text, Catch::Matchers::StartsWith("Take 1.0 g off"));
    putty.fixed = false;
    putty.held = "epoxy";
    CHECK(heavy(1 * g).trims[0].piece.empty());
    putty.held = "tape"; // comes off again
    CHECK(heavy(1 * g).trims[0].piece == "putty");
    // Weights that are glued in stay; putty is what trims a finished car.
    putty.held.clear();
    project.cars[0].done = {"ballasted"};
    CHECK(heavy(1 * g).trims[0].piece == "putty");
}

TEST_CASE("a weight slides as far as its cut lets it, and what stays off is said", "[built][trim]") {
    Project project = packed();
    // The bar fills its pocket: nothing can be done about a balance point 5 mm off.
    const Built stuck = built_off(project, 0, 5 * mm);
    CHECK(stuck.trims.empty());
    CHECK(says(stuck, "stays 5.0 mm further forward"));
    CHECK(says(stuck, "brass bar stays where it is: it can go no further, its cut ends there"));
    CHECK(says(built_off(project, 0, -5 * mm), "stays 5.0 mm further back"));
    // A bar 10 mm shorter, in the middle: 5 mm of way either side.
    BallastPlan& bar = project.cars[0].ballast[0];
    bar.size[0] = 30 * mm;
    const double car = planned_of(project).mass, mass = bar.mass;
    const Built reaches = built_off(project, 0, 1.2 * mm);
    REQUIRE(reaches.trims.size() == 1);
    // Moments: the bar's way times its mass is the car's mass times what it is off.
    CHECK(reaches.trims[0].by == Approx(-1.2 * mm * car / mass).epsilon(1e-9));
    CHECK(std::abs(reaches.trims[0].by) < 5 * mm);
    CHECK_FALSE(says(reaches, "stays"));
    const Built short_of = built_off(project, 0, -6 * mm);
    REQUIRE(short_of.trims.size() == 1);
    CHECK(short_of.trims[0].by == Approx(5 * mm).margin(2e-6));
    CHECK_THAT(short_of.trims[0].text, Catch::Matchers::Contains("5.0 mm forward: it can go no further"));
    CHECK(says(short_of, "further back than planned: no weight can be moved forward"));
    // Half of the pocket belongs to another weight, flush behind it: no way back at all.
    BallastPlan other = bar;
    other.name = "stop";
    other.size = {5 * mm, 20 * mm, 16 * mm};
    other.mass = 13.6 * g;
    other.at.x() = 42.5 * mm;
    other.fixed = true;
    project.cars[0].ballast.push_back(other);
    CHECK(built_off(project, 0, 3 * mm).trims.empty());
}

TEST_CASE("weights that are locked, glued or done with are not moved", "[built][trim]") {
    Project project = packed();
    CarPlan& car = project.cars[0];
    BallastPlan& bar = car.ballast[0];
    bar.size[0] = 30 * mm;
    const auto moves = [&] { return built_off(project, 0, 1.2 * mm).trims.size(); };
    CHECK(moves() == 1);
    bar.fixed = true;
    CHECK(moves() == 0);
    bar.fixed = false;
    for (const char* glue : {"epoxy", "cyanoacrylate", "wood-glue", "hot-melt-glue", "plug"}) {
        bar.held = glue;
        CHECK(moves() == 0);
    }
    bar.held.clear();
    car.done = {"ballasted"};
    CHECK(moves() == 0);
    bar.held = "screw"; // the table of holdings: can be opened again on race night
    CHECK(moves() == 1);
}

namespace {

/// A pocket of 40 x 20 x 16 mm, open at the top, in it a bar of 30 x 20 x 8 mm flush with the top, and putty
/// beneath: 40 x 20 x 8 mm have room below the bar, 6400 mm³ or 67.2 g.
Project on_putty(double putty_mass) {
    Project project = packed();
    CarPlan& car = project.cars[0];
    car.ballast[0].size = {30 * mm, 20 * mm, 8 * mm};
    car.ballast[0].at = {60 * mm, 0, 26 * mm};
    car.ballast[0].mass = 80 * g;
    car.ballast[1].mass = putty_mass;
    car.ballast[1].in = car.body.cuts[0].name;
    return project;
}

} // namespace

TEST_CASE("a weight on putty slides, one bedded in it does not", "[built][trim]") {
    const Built free = built_off(on_putty(67 * g), 0, 1.2 * mm);
    REQUIRE(free.trims.size() == 1);
    CHECK(free.trims[0].piece == "brass bar");
    const Built bedded = built_off(on_putty(67.4 * g), 0, 1.2 * mm);
    CHECK(bedded.trims.empty());
    CHECK(says(bedded, "stays 1.2 mm further forward"));
    CHECK(says(bedded, "brass bar stays where it is: it is bedded in putty"));
    // Another weight on the floor, 10 x 20 x 8 mm, takes 1600 mm³ of the room: 50.4 g are left.
    for (const double putty : {50 * g, 50.8 * g}) {
        Project project = on_putty(putty);
        BallastPlan floor = project.cars[0].ballast[0];
        floor.name = "floor";
        floor.size[0] = 10 * mm;
        floor.at = {45 * mm, 0, 18 * mm};
        floor.mass = 12 * g;
        floor.fixed = true;
        project.cars[0].ballast.push_back(floor);
        CAPTURE(putty);
        CHECK(built_off(project, 0, 1.2 * mm).trims.size() == (putty < 50.4 * g ? 1 : 0));
    }
}

TEST_CASE("putty that comes off first frees the weight in it", "[built][trim]") {
    Project project = on_putty(70 * g);
    const CarOnWheels planned = planned_of(project);
    // 5 g too heavy: 65 g of putty are left, below the bar.
    project.rules.max_mass = planned.mass;
    project.cars[0].as_built.mass = planned.mass + 5 * g;
    project.cars[0].as_built.balance_ahead_of_rear_axle = planned.centre.x() + 2 * mm;
    const Built built = *compare_built(project, build_car(project, 0));
    REQUIRE(built.trims.size() == 2);
    CHECK(built.trims[0].kind == Trim::Kind::take_off);
    CHECK(built.trims[1].kind == Trim::Kind::move);
}

TEST_CASE("a weight moves before putty is added to its cut", "[built][trim]") {
    Project project = packed();
    CarPlan& car = project.cars[0];
    car.body.cuts.pop_back();
    car.ballast.pop_back();
    car.ballast[0].size[0] = 30 * mm;
    const Built built = built_off(project, -4 * g, 2 * mm);
    REQUIRE(built.trims.size() == 2);
    CHECK(built.trims[0].kind == Trim::Kind::add);
    CHECK(built.trims[1].kind == Trim::Kind::move);
    CHECK_THAT(built.trims[1].text, Catch::Matchers::Contains("before the putty goes in"));
}

TEST_CASE("a weight stops at an axle's bore", "[built][trim]") {
    Project project = packed();
    CarPlan& car = project.cars[0];
    car.body.cuts.resize(1);
    car.ballast.resize(1);
    // Level with the axles, which lie at x = 25 mm, z = 6 mm and reach to within 4 mm of the middle.
    car.body.cuts[0].from = {10 * mm, -10 * mm, 2 * mm};
    car.body.cuts[0].to = {80 * mm, 10 * mm, 40 * mm};
    car.ballast[0].size = {20 * mm, 20 * mm, 10 * mm};
    car.ballast[0].at = {60 * mm, 0, 7 * mm};
    const Built built = built_off(project, 0, 12 * mm);
    REQUIRE(built.trims.size() == 1);
    // By hand: its rear face at 50 mm, the bore's wall at 25 + 2.3 / 2; 0.01 mm³ in common count as none.
    CHECK(built.trims[0].by == Approx(-(50 - 25 - 1.15) * mm).margin(0.02 * mm));
    CHECK_THAT(built.trims[0].text, Catch::Matchers::Contains("an axle is in the way"));
    CHECK(says(built, "further forward than planned"));
    // Above the axles it passes over them.
    car.body.cuts[0].from.z() = 8 * mm;
    car.ballast[0].at.z() = 13 * mm;
    const Built above = built_off(project, 0, 10 * mm);
    REQUIRE(above.trims.size() == 1);
    CHECK(std::abs(above.trims[0].by) > 25 * mm);
}

TEST_CASE("a weight stops at the body's end where its cut is open, and at another weight", "[built][trim]") {
    Project project = packed();
    CarPlan& car = project.cars[0];
    car.body.cuts.resize(1);
    car.ballast.resize(1);
    car.body.cuts[0].from.x() = -20 * mm;
    car.ballast[0].size[0] = 30 * mm;
    car.ballast[0].at.x() = 40 * mm;
    const Built out = built_off(project, 0, 12 * mm);
    REQUIRE(out.trims.size() == 1);
    CHECK(out.trims[0].by == Approx(-25 * mm).margin(0.01 * mm)); // its rear face at 25 mm, the tail at 0
    CHECK_THAT(out.trims[0].text, Catch::Matchers::Contains("standing out of the body"));
    BallastPlan stop = car.ballast[0];
    stop.name = "stop";
    stop.size[0] = 5 * mm;
    stop.at.x() = 12.5 * mm;
    stop.mass = 8 * g;
    stop.fixed = true;
    car.ballast.push_back(stop);
    const Built stopped = built_off(project, 0, 12 * mm);
    REQUIRE(stopped.trims.size() == 1);
    CHECK(stopped.trims[0].by == Approx(-10 * mm).margin(0.01 * mm)); // from 25 mm to the stop's face at 15
    CHECK_THAT(stopped.trims[0].text, Catch::Matchers::Contains("stop is in the way"));
    CHECK(says(stopped, "stop stays where it is: it is glued or locked"));
}

TEST_CASE("an axle that crosses a cut takes of its room", "[built][trim]") {
    Project project = test::plain_project();
    project.scale = project.worse_scale = {0.1 * g, false, 0};
    CarPlan& car = project.cars[0];
    car.ballast.clear();
    car.body.cuts[0].from = {20 * mm, -10 * mm, 2 * mm};
    car.body.cuts[0].to = {30 * mm, 10 * mm, 12 * mm};
    // By hand: the wheel's outer face is at 22.5 + 0.8 + 8 = 31.3 mm, so the shank's end lies 3.3 mm from the
    // middle; 6.7 mm of each shank, 2.2 mm thick, cross the pocket of 10 x 20 x 10 mm.
    const double room = 2000 - 2 * 6.7 * std::numbers::pi * 1.1 * 1.1;
    const Built built = built_off(project, -30 * g, 0, 0.05 * g);
    REQUIRE(!built.trims.empty());
    CHECK(built.trims[0].mass / g == Approx(room * putty_g_mm3).epsilon(1e-6));
}
