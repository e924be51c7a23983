#include "support/demo.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

namespace {

double time_of(const Document& document, std::size_t car) {
    return compute_figures(read_project(document), car).heat.time.value();
}

} // namespace

TEST_CASE("the demo's cars are what a builder expects", "[demo]") {
    const Project project = demo_project();
    REQUIRE(project.cars.size() == 3);
    std::vector<Figures> cars;
    for (std::size_t car = 0; car < 3; ++car)
        cars.push_back(compute_figures(project, car));
    for (const Figures& car : cars) {
        CAPTURE(car.name);
        // 5 oz (definition) is the usual limit (common practice, no source).
        CHECK(car.mass < 5 * ounce);
        CHECK(car.mass > 140 * gram);
        CHECK(*car.heat.time > 2.8);
        CHECK(*car.heat.time < 3.5);
        CHECK(std::abs(car.budget_residual) < 1e-9);
        CHECK(car.heat.sigma > 0.003); // never surer than a run's own scatter
        CHECK(car.front_load > 15 * gram);
        for (const Finding& finding : car.findings)
            CHECK(finding.severity != Severity::breach);
    }
    // Weight in the middle, weight rearward and canted, thin and tuned: each faster by more than ten
    // milliseconds.
    CHECK(*cars[0].heat.time - *cars[1].heat.time > 0.010);
    CHECK(*cars[1].heat.time - *cars[2].heat.time > 0.010);
    CHECK(*cars[0].heat.time - *cars[2].heat.time < 0.2);
    // Balance point 19 to 25 mm ahead of the rear axle, about 15 g on the single front wheel (common
    // practice, no source): the tuned car's front wheelbase is long, so a little more stands in front.
    CHECK(cars[2].balance_ahead_of_rear_axle > 18.5 * millimetre);
    CHECK(cars[2].balance_ahead_of_rear_axle < 25 * millimetre);
    CHECK(cars[2].front_load < 20 * gram);
}

TEST_CASE("weight moved rearward is faster until the front goes light", "[demo]") {
    // Common practice, no source.
    const Document start = demo_document();
    const Vec3 at = read_project(start).cars[0].ballast[0].at;
    const Document rearward = move_ballast(start, 0, 0, at - Vec3(0.012, 0, 0)).document;
    CHECK(time_of(rearward, 0) < time_of(start, 0));
    // The thin car gains as well, down to where its front no longer holds the rail; from there it loses.
    const Project project = demo_project();
    const auto moved_back = [&](double by) {
        Document moved = start;
        for (std::size_t piece = 0; piece < project.cars[2].ballast.size(); ++piece)
            moved =
                move_ballast(moved, 2, piece, project.cars[2].ballast[piece].at - Vec3(by, 0, 0)).document;
        return compute_figures(read_project(moved), 2);
    };
    const Figures here = moved_back(0), further = moved_back(0.012), light = moved_back(0.018);
    CHECK(*further.heat.time < *here.heat.time);
    CHECK(light.front_load < 6 * gram);
    CHECK(*light.steer.ride_probability < 0.5);
    CHECK(*light.heat.time > *further.heat.time);
}

TEST_CASE("what was weighed overrides what was computed, in the heat too", "[demo]") {
    const Document start = demo_document();
    const Figures plan = compute_figures(read_project(start), 1);
    const Document weighed = set_value(start, "/cars/1/as_built/mass_g", 139.5, "Weigh").document;
    const Figures built = compute_figures(read_project(weighed), 1);
    CHECK(built.mass == Approx(139.5 * gram).epsilon(1e-12));
    CHECK(*built.heat.time != *plan.heat.time);
    // Released energy goes with the mass: same drop within what the car's own height changes.
    CHECK(built.budget.released / plan.budget.released == Approx(built.mass / plan.mass).epsilon(1e-3));
    const Document front = set_value(weighed, "/cars/1/as_built/front_load_g", 30.0, "Weigh").document;
    const Figures both = compute_figures(read_project(front), 1);
    CHECK(both.front_load == Approx(30 * gram).epsilon(1e-9));
    const double wheelbase =
        read_project(start).cars[1].axles.front_x - read_project(start).cars[1].axles.rear_x;
    CHECK(both.balance_ahead_of_rear_axle == Approx(30.0 / 139.5 * wheelbase).epsilon(1e-3));
}

TEST_CASE("a saved file carries the figures a script would compute", "[demo]") {
    const Document saved = with_figures(demo_document());
    const Project project = read_project(saved);
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        Json figures = saved.root["cars"][car]["figures"];
        CHECK(figures["program"].get<std::string>().starts_with("rampwright "));
        figures.erase("program");
        CHECK(figures == to_json(complete_figures(project, car)));
    }
    // They are results, not inputs: reading them back changes nothing.
    CHECK(with_figures(saved) == saved);
}
