#include "support/demo.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures.hpp>
#include <rampwright/study/wheel_worth.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;

TEST_CASE("the worth of a wheel's mass is what editing the wheels gives") {
    // The long way: the file edited, everything computed anew.
    const Document document = demo_document();
    for (const std::size_t car : {std::size_t(0), std::size_t(2)}) {
        const Project project = demo_project();
        const WheelWorth worth = wheel_worth(make_case(project, car));
        const auto time_with = [&](bool touching, double change) {
            Document now = document;
            for (const Corner corner : all_corners) {
                const WheelPlan& wheel = project.cars[car].wheels[std::size_t(corner)];
                if (wheel.touches == touching)
                    now = set_wheel_mass(now, car, corner, wheel.mass + change).document;
            }
            return *compute_figures(read_project(now), car).heat.time;
        };
        int touching = 0;
        for (const WheelPlan& wheel : project.cars[car].wheels)
            touching += wheel.touches ? 1 : 0;
        const double step = 0.0001;
        const double expected = (time_with(true, step) - time_with(true, -step)) / (2 * step * touching);
        CHECK(worth.touching_mass.value == Approx(expected).epsilon(0.02));
        CHECK(worth.touching_mass.sigma > 0);
        if (touching == 4) CHECK(worth.raised_mass.value == 0);
        // A raised wheel does not spin: its mass costs less than a touching wheel's.
        if (touching == 3) CHECK(worth.raised_mass.value < worth.touching_mass.value);
    }
}
