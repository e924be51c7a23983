#include "car/car_fixture.hpp"
#include "support/demo.hpp"

#include <rampwright/results/figures.hpp>
#include <rampwright/study/draws.hpp>
#include <rampwright/study/first_order.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3;

/// A body sawn in profile and plan out of a larger block, with a blind pointed bore from above and one across
/// that breaks out, beside the fixture's open pocket.
Project sawn_project() {
    Project project = test::plain_project();
    project.tools = {{}, 1 * mm, 0.5 * mm, 0.2 * mm};
    CarPlan& car = project.cars[0];
    car.body.block = {180 * mm, 50 * mm, 40 * mm};
    car.body.profile = {
        {{0, 0}}, {{180 * mm, 0}}, {{180 * mm, 12 * mm}}, {{110 * mm, 22 * mm}}, {{0, 30 * mm}}};
    CutPlan bore;
    bore.is_bore = true;
    bore.name = "blind";
    bore.from = {150 * mm, 4 * mm, 40 * mm};
    bore.to = {150 * mm, 4 * mm, 9 * mm};
    bore.diameter = 8 * mm;
    bore.pointed = true;
    car.body.cuts.push_back(bore);
    bore.name = "through";
    bore.from = {95 * mm, -40 * mm, 15 * mm};
    bore.to = {95 * mm, 40 * mm, 15 * mm};
    bore.diameter = 6 * mm;
    bore.pointed = false;
    car.body.cuts.push_back(bore);
    return project;
}

const Input& find_input(const std::vector<Input>& inputs, const std::string& key) {
    const auto found =
        std::find_if(inputs.begin(), inputs.end(), [&](const Input& i) { return i.key == key; });
    REQUIRE(found != inputs.end());
    return *found;
}

MassProperties wood_of(const Project& project) {
    return build_car(project, 0).parts.front().properties;
}

/// The wood when the input is at `by`, and that of a body really changed so: its rate by central differences.
void check_rate(const Project& project, const std::string& key, double step,
                const std::function<Project(double by)>& changed) {
    const HeatCase nominal = make_case(project, 0);
    const std::vector<Input> inputs = list_inputs(project, nominal);
    const Input& input = find_input(inputs, key);
    HeatCase varied = nominal;
    input.set(varied, step);
    const MassProperties base = nominal.car.parts.front().properties,
                         with = varied.car.parts.front().properties;
    const MassProperties more = wood_of(changed(step)), less = wood_of(changed(-step));
    INFO(key);
    const double rate = (more.mass - less.mass) / (2 * step);
    CHECK((with.mass - base.mass) / step == Approx(rate).epsilon(0.005));
    const Vec3 moved = (with.mass * with.centre - base.mass * base.centre) / step;
    const Vec3 wanted = (more.mass * more.centre - less.mass * less.centre) / (2 * step);
    CHECK((moved - wanted).norm() < 0.005 * std::abs(rate) * 0.1);
    const Eigen::Matrix3d turned = (with.inertia - base.inertia) / step;
    const Eigen::Matrix3d expected = (more.inertia - less.inertia) / (2 * step);
    CHECK((turned - expected).norm() < 0.02 * expected.norm());
}

} // namespace

// The reference is the measured solid itself, with its outline redrawn or its bore redrilled.
TEST_CASE("what a saw or a drill leaves changes the wood as the redrawn body does", "[study][tools]") {
    const Project project = sawn_project();
    // The sloping top is sawn; bottom, tail and nose are the block's own. Moving both slopes outward by d
    // moves their corner along the bisector, and their ends by d over the cosine of their slope.
    check_rate(project, "saw/profile", 0.01 * mm, [&](double d) {
        Project p = project;
        auto& points = p.cars[0].body.profile;
        const Vec2 front = (points[3].at - points[2].at).normalized(),
                   rear = (points[4].at - points[3].at).normalized();
        const Vec2 n1(front.y(), -front.x()), n2(rear.y(), -rear.x()); // outward of a counter-clockwise ring
        points[2].at.y() += d / n1.y();
        points[4].at.y() += d / n2.y();
        points[3].at += d * (n1 + n2) / (1 + n1.dot(n2));
        return p;
    });
    check_rate(project, "saw/plan", 0.01 * mm, [&](double d) {
        Project p = project;
        for (PlanPoint& point : p.cars[0].body.plan)
            point.at.y() += point.at.y() > 0 ? d : -d;
        for (WheelPlan& wheel : p.cars[0].wheels)
            wheel.gap_to_body -= d; // the wheels stay
        return p;
    });
    check_rate(project, "drill/cuts/1", 0.01 * mm, [&](double d) {
        Project p = project;
        p.cars[0].body.cuts[1].to.z() -= d;
        return p;
    });
    check_rate(project, "drill/cuts/0", 0.01 * mm, [&](double d) {
        Project p = project;
        p.cars[0].body.cuts[0].from.z() -= d; // its floor
        return p;
    });
    const std::vector<Input> inputs = list_inputs(project, make_case(project, 0));
    CHECK(std::none_of(inputs.begin(), inputs.end(),
                       [](const Input& i) { return i.key == "drill/cuts/2"; })); // it ends in the air
}

TEST_CASE("a pocket's depth goes away from where it is open", "[study][tools]") {
    Project project = sawn_project();
    CutPlan& pocket = project.cars[0].body.cuts[0];
    const double by = 0.01 * mm;
    SECTION("from the left side") {
        pocket.from = {40 * mm, 5 * mm, 12 * mm};
        pocket.to = {80 * mm, 30 * mm, 20 * mm};
        check_rate(project, "drill/cuts/0", by, [&](double d) {
            Project p = project;
            p.cars[0].body.cuts[0].from.y() -= d;
            return p;
        });
    }
    SECTION("from below, over a bore that has taken a part of its floor") {
        pocket.from = {85 * mm, -10 * mm, -1 * mm};
        pocket.to = {105 * mm, 10 * mm, 14 * mm}; // the bore across takes z from 12 to 18, x from 92 to 98
        check_rate(project, "drill/cuts/0", by, [&](double d) {
            Project p = project;
            p.cars[0].body.cuts[0].to.z() += d;
            return p;
        });
    }
    SECTION("from above, under a roof that slopes down into it") {
        // The roof falls from 30 at the tail by 8 in 110: it reaches over the pocket's mouth from 40 to 52.
        pocket.from = {40 * mm, -8 * mm, 12 * mm};
        pocket.to = {80 * mm, 8 * mm, 26.2 * mm};
        check_rate(project, "drill/cuts/0", by, [&](double d) {
            Project p = project;
            p.cars[0].body.cuts[0].from.z() -= d;
            return p;
        });
    }
    SECTION("right through there is none") {
        pocket.from.z() = -1 * mm;
        const std::vector<Input> inputs = list_inputs(project, make_case(project, 0));
        CHECK(std::none_of(inputs.begin(), inputs.end(),
                           [](const Input& i) { return i.key == "drill/cuts/0"; }));
    }
}

TEST_CASE("a looser drill makes the time less sure, by the square of its tolerance", "[study][tools]") {
    Project project = demo_project();
    CutPlan bore;
    bore.is_bore = true;
    bore.name = "blind bore";
    bore.from = {150 * mm, 0, 20 * mm};
    bore.to = {150 * mm, 0, 8 * mm};
    bore.diameter = 10 * mm;
    project.cars[0].body.cuts.push_back(bore);
    const auto variance = [](const Figures& figures, const std::string& key) {
        const auto share = std::find_if(figures.shares.begin(), figures.shares.end(),
                                        [&](const Share& s) { return s.key == key; });
        REQUIRE(share != figures.shares.end());
        return share->share * figures.heat.sigma * figures.heat.sigma;
    };
    project.tools.drill_tolerance = 0.2 * mm;
    const Figures tight = compute_figures(project, 0);
    project.tools.drill_tolerance = 0.6 * mm;
    const Figures loose = compute_figures(project, 0);
    CHECK(loose.heat.sigma > tight.heat.sigma);
    for (const char* key : {"drill/cuts/0", "drill/cuts/1"}) { // a pocket and a bore
        INFO(key);
        CHECK(variance(tight, key) > 0);
        CHECK(variance(loose, key) == Approx(9 * variance(tight, key)).epsilon(0.02));
    }
}

TEST_CASE("a tool's tolerance is a half width: its sigma is that over the root of 3", "[study][tools]") {
    // GUM (JCGM 100:2008) 4.3.7.
    const Project project = sawn_project();
    const std::vector<Input> inputs = list_inputs(project, make_case(project, 0));
    CHECK(find_input(inputs, "saw/profile").sigma == Approx(0.5 * mm / std::sqrt(3.)));
    CHECK(find_input(inputs, "drill/cuts/1").sigma == Approx(0.2 * mm / std::sqrt(3.)));
    for (const char* key : {"rear_x", "rear_z", "front_x", "front_z"})
        CHECK(find_input(inputs, key).sigma == Approx(0.2 * mm / std::sqrt(3.)));
    Project slots = project;
    slots.cars[0].axles.holes = Holes::slots;
    const std::vector<Input> sawn = list_inputs(slots, make_case(slots, 0));
    CHECK(find_input(sawn, "rear_x").sigma == Approx(0.5 * mm / std::sqrt(3.)));
    // A block that is not sawn has no such uncertainty.
    Project plain = test::plain_project();
    plain.tools = project.tools;
    const std::vector<Input> none = list_inputs(plain, make_case(plain, 0));
    CHECK(std::none_of(none.begin(), none.end(), [](const Input& i) { return i.key.starts_with("saw/"); }));
}
