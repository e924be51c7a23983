#include "support/demo.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures.hpp>
#include <rampwright/study/time_curves.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

namespace {

constexpr double deg = 0.017453292519943295;

} // namespace

TEST_CASE("a curve of time against steer passes through what the figures say, and its best is the least") {
    const Project project = demo_project();
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const HeatCase heat_case = make_case(project, car);
        const TimeCurve curve = time_against_steer(heat_case, 3 * deg, 41);
        const Figures figures = compute_figures(project, car);
        CAPTURE(figures.name);
        REQUIRE(curve.today.time);
        CHECK(*curve.today.time == Approx(*figures.heat.time).margin(1e-6));
        REQUIRE(curve.best.time);
        for (const TimeAt& point : curve.points)
            CHECK(*curve.best.time <= point.time.value_or(1e9));
        CHECK(curve.flat_from <= curve.best.at);
        CHECK(curve.best.at <= curve.flat_to);
        // The best steer of the figures, found from the guide's force at one speed, is the heats' own.
        REQUIRE(figures.steer.best_toe);
        CHECK(std::abs(*figures.steer.best_toe) == Approx(std::abs(curve.best.at)).margin(0.1 * deg));
        // Inside the flat range no computed point is worse than it says, outside none as good.
        for (const TimeAt& point : curve.points) {
            const bool inside = point.at > curve.flat_from && point.at < curve.flat_to;
            const double over = *point.time - *curve.best.time;
            if (inside) CHECK(over <= flat_within * 1.001);
        }
    }
}

TEST_CASE("each point of a curve is the heat of the car edited so") {
    // The same change made the long way: an edit of the file, read and computed anew.
    const Document document = demo_document();
    const Project project = demo_project();
    const std::size_t swift = 2;
    const TimeCurve curve = time_against_steer(make_case(project, swift), 2 * deg, 5);
    const bool right_raised = !project.cars[swift].wheels[std::size_t(Corner::front_right)].touches;
    for (const TimeAt& point : curve.points) {
        const Corner corner = right_raised ? Corner::front_left : Corner::front_right;
        const Edit edit = set_toe(document, swift, corner, (right_raised ? -1 : 1) * point.at);
        const Figures figures = compute_figures(read_project(edit.document), swift);
        CHECK(*figures.heat.time == Approx(*point.time).margin(1e-6));
    }
}

TEST_CASE("moving all ballast gives the loads that moments about the rear axle give") {
    const Project project = demo_project();
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const HeatCase heat_case = make_case(project, car);
        const TimeCurve curve = time_against_front_load(heat_case, 0.01, 3);
        double loose = 0;
        for (const Part& part : heat_case.car.parts)
            if (part.kind == PartKind::ballast) loose += part.properties.mass;
        const double wheelbase = on_wheels(heat_case.car).wheelbase;
        const double expected = loose * 0.02 / wheelbase;
        const Figures figures = compute_figures(project, car);
        CHECK(curve.today.at == Approx(figures.front_load).epsilon(1e-9));
        if (curve.points.front().at > 0.03 * figures.front_load)
            CHECK(curve.points.back().at - curve.points.front().at == Approx(expected).epsilon(1e-6));
    }
}
