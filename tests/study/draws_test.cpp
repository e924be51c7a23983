#include "support/demo.hpp"

#include <rampwright/study/draws.hpp>
#include <rampwright/study/first_order.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace rampwright;

TEST_CASE("the same seed gives the same draws at any number of threads") {
    const Project project = demo_project();
    DrawSettings one{.draws = 300, .seed = 42, .threads = 1, .keep_going = {}}, four = one;
    four.threads = 4;
    const Draws a = run_draws(project, {0, 2}, one), b = run_draws(project, {0, 2}, four);
    for (std::size_t car = 0; car < 2; ++car) {
        CHECK(a.cars[car].heat == b.cars[car].heat);
        CHECK(a.cars[car].expected == b.cars[car].expected);
    }
    DrawSettings other = one;
    other.seed = 43;
    CHECK(run_draws(project, {0, 2}, other).cars[0].heat != a.cars[0].heat);
}

TEST_CASE("first order agrees with draws where little is bent") {
    Project project = demo_project();
    // The creep stiffness is known to a factor of three, and the time bends along it: not in this test.
    for (CarPlan& car : project.cars) {
        Uncertain& creep = car.model[ModelName::creep_per_rad];
        creep.sigma = creep.value * std::log(1.3);
    }
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const Figures first = compute_figures(project, car);
        const Draws draws =
            run_draws(project, {car}, {.draws = 4000, .seed = 1, .threads = 0, .keep_going = {}});
        const Figures drawn = with_draws(first, draws.cars[0]);
        CAPTURE(first.name, first.heat.sigma, drawn.heat.sigma);
        // A sigma from 4000 draws is known to 1.1 %; inputs multiply each other.
        CHECK(drawn.heat.sigma == Approx(first.heat.sigma).epsilon(0.15));
        double sum = 0;
        for (const Share& share : drawn.shares) {
            CHECK(share.standard_error.has_value());
            sum += share.share;
        }
        // First-order indices add up to one less the interactions.
        CHECK(sum > 0.85);
        CHECK(sum < 1.15);
    }
}

TEST_CASE("twins share what they share and differ in what is their own") {
    Project project = demo_project();
    project.cars.push_back(project.cars[0]);
    const std::size_t twin = project.cars.size() - 1;
    const DrawSettings settings{.draws = 4000, .seed = 9, .threads = 0, .keep_going = {}};
    const Versus versus = compare(project, 0, twin, settings);
    // Chances of one half: standard error 0.5 / sqrt 4000 = 0.008.
    CHECK(versus.first_wins == Approx(0.5).margin(0.032));
    CHECK(versus.first_better == Approx(0.5).margin(0.032));
    CHECK(versus.gap_at_finish == 0);
    // Alone each is much less certain than the gap between the two, which is not certain either.
    const Figures alone = compute_figures(project, 0);
    CHECK(versus.sigma_gap > 0);
    CHECK(versus.sigma_gap < alone.heat.sigma);
}

TEST_CASE("versus is fair: exchanging the cars mirrors the gap") {
    const Project project = demo_project();
    const DrawSettings settings{.draws = 1000, .seed = 3, .threads = 0, .keep_going = {}};
    const Versus ab = compare(project, 0, 2, settings), ba = compare(project, 2, 0, settings);
    CHECK(ab.mean_gap == Approx(-ba.mean_gap).margin(3 * ab.sigma_gap / std::sqrt(1000.0)));
    CHECK(ab.gap_at_finish == -ba.gap_at_finish);
}

TEST_CASE("draws can be cancelled") {
    const Project project = demo_project();
    int asked = 0;
    const Draws draws = run_draws(
        project, {0, 1}, {.draws = 10'000'000 / 100, .seed = 1, .threads = 2, .keep_going = [&](double) {
                              return ++asked < 2;
                          }});
    CHECK(draws.cancelled);
    CHECK(asked >= 2);
}

TEST_CASE("sensitivities agree with differences of whole heats") {
    const Project project = demo_project();
    const HeatCase nominal = make_case(project, 2);
    const double base = clock_time(nominal).value();
    for (const Sensitivity& s : find_sensitivities(nominal)) {
        if (s.key != "journal" && s.key != "drag_coefficient" && s.key != "nose") continue;
        HeatCase varied = nominal;
        if (s.key == "journal") varied.car.model[ModelName::journal].value += 0.01;
        if (s.key == "drag_coefficient") varied.car.drag_coefficient.value += 0.01;
        if (s.key == "nose") varied.car.nose.x() += 1e-3;
        const double whole = (clock_time(varied).value() - base) * 1e3;
        CAPTURE(s.key, s.ms, whole);
        // A forward difference of a nearly linear function: one per cent of curvature, and something to see.
        CHECK(std::abs(s.ms) > 0.01);
        CHECK(s.ms == Approx(whole).epsilon(0.01));
    }
}
