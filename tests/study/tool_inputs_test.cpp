#include "car/car_fixture.hpp"

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
    const std::vector<Input> inputs = list_inputs(project, make_case(project, 0));
    CHECK(std::none_of(inputs.begin(), inputs.end(),
                       [](const Input& i) { return i.key == "drill/cuts/2"; })); // it ends in the air
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
