#include <rampwright/bench/wheel_choice.hpp>
#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>

#include <chrono>
#include <cmath>
#include <random>

using namespace rampwright;

namespace {

std::vector<MeasuredWheel> drawn_wheels(std::size_t count, std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    std::vector<MeasuredWheel> wheels(count);
    for (MeasuredWheel& wheel : wheels) {
        wheel.mass = 2.6e-3 + 0.05e-3 * normal(random);
        wheel.diameter = 30.1e-3 + 0.04e-3 * normal(random);
        wheel.runout = std::abs(0.05e-3 * normal(random));
    }
    return wheels;
}

WheelWorth usual_worth() {
    WheelWorth worth;
    worth.touching_mass = {4.0, 0.5}; // about 0.4 ms per 0.1 g
    worth.raised_mass = {1.0, 0.2};
    worth.guide_runout = 6;
    worth.rear_runout = 3;
    worth.pair_difference = 5;
    worth.mass_sigma = 0.01e-3;
    return worth;
}

/// Cost of one arrangement, written out.
double rank_of(const std::vector<MeasuredWheel>& w, const WheelWorth& worth, std::size_t guide,
               std::size_t raised, std::size_t a, std::size_t b) {
    return worth.touching_mass.value * (*w[guide].mass + *w[a].mass + *w[b].mass) +
           worth.raised_mass.value * *w[raised].mass + worth.guide_runout * *w[guide].runout +
           worth.rear_runout * (*w[a].runout + *w[b].runout) +
           worth.pair_difference * std::abs(*w[a].diameter - *w[b].diameter);
}

double exhaustive_best(const std::vector<MeasuredWheel>& w, const WheelWorth& worth) {
    double best = 1e9;
    const std::size_t n = w.size();
    for (std::size_t g = 0; g < n; ++g)
        for (std::size_t r = 0; r < n; ++r)
            for (std::size_t a = 0; a < n; ++a)
                for (std::size_t b = a + 1; b < n; ++b)
                    if (g != r && g != a && g != b && r != a && r != b)
                        best = std::min(best, rank_of(w, worth, g, r, a, b));
    return best;
}

} // namespace

TEST_CASE("the choice is the exhaustive search's best") {
    std::mt19937_64 random(21);
    std::uniform_real_distribution<double> uniform(0, 10);
    for (std::size_t count = 4; count <= 12; ++count)
        for (int trial = 0; trial < 60; ++trial) {
            const auto wheels = drawn_wheels(count, random);
            WheelWorth worth = usual_worth();
            if (trial % 3 != 0) {
                worth.touching_mass.value = uniform(random);
                worth.raised_mass.value = uniform(random) - 2; // a heavy raised wheel may even help
                worth.guide_runout = uniform(random);
                worth.rear_runout = uniform(random);
                worth.pair_difference = trial % 3 == 1 ? 50 * uniform(random) : 0;
            }
            const WheelChoice choice = choose_wheels(wheels, worth);
            CAPTURE(count, trial);
            REQUIRE(choice.rank == Approx(exhaustive_best(wheels, worth)).epsilon(1e-12));
            REQUIRE(choice.rank == Approx(rank_of(wheels, worth, choice.guide, choice.raised, choice.rear[0],
                                                  choice.rear[1]))
                                       .epsilon(1e-12));
        }
}

TEST_CASE("choosing grows in step with the table") {
    std::mt19937_64 random(22);
    const auto seconds = [&](std::size_t count) {
        const auto wheels = drawn_wheels(count, random);
        double least = 1;
        for (int trial = 0; trial < 15; ++trial) {
            const auto start = std::chrono::steady_clock::now();
            double sum = 0;
            for (int i = 0; i < 20; ++i)
                sum += choose_wheels(wheels, usual_worth()).rank;
            const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
            least = std::min(least, took.count() / 20 + 0 * sum);
        }
        return least;
    };
    seconds(500);
    const double small = seconds(125), large = seconds(500);
    INFO("125 wheels " << small * 1e6 << " us, 500 wheels " << large * 1e6 << " us");
    // Four times the wheels: four times the time, the sort's logarithm aside; squared growth would be 16.
    CHECK(large / small < 8);
}

TEST_CASE("what the choice saves, and how sure that is") {
    std::mt19937_64 random(23);
    const auto wheels = drawn_wheels(40, random);
    const WheelWorth worth = usual_worth();
    const WheelChoice choice = choose_wheels(wheels, worth);
    CHECK(choice.saved.value > 0);
    CHECK(choice.saved.value < 4 * 3 * 0.2e-3); // at most what the lightest could save
    CHECK(choice.saved.sigma > 0);

    // Referee: the same arrangement under drawn worths and drawn weighings.
    std::normal_distribution<double> normal;
    double mean_mass = 0;
    for (const auto& wheel : wheels)
        mean_mass += *wheel.mass / 40;
    double sum = 0, squares = 0;
    constexpr int draws = 100000;
    for (int i = 0; i < draws; ++i) {
        const double common = normal(random);
        const double touching = worth.touching_mass.value + worth.touching_mass.sigma * common;
        const double raised = worth.raised_mass.value + worth.raised_mass.sigma * common;
        const auto weighed = [&](std::size_t w) {
            return *wheels[w].mass + worth.mass_sigma * normal(random);
        };
        const double saved = touching * (3 * mean_mass - weighed(choice.guide) - weighed(choice.rear[0]) -
                                         weighed(choice.rear[1])) +
                             raised * (mean_mass - weighed(choice.raised));
        sum += saved;
        squares += saved * saved;
    }
    CHECK(choice.saved.value == Approx(sum / draws).epsilon(0.01));
    CHECK(choice.saved.sigma == Approx(std::sqrt(squares / draws - std::pow(sum / draws, 2))).epsilon(0.03));
}

TEST_CASE("wheels without a mass are left out, gaps take the median") {
    std::mt19937_64 random(24);
    auto wheels = drawn_wheels(6, random);
    wheels[0].mass.reset();
    wheels[1].mass.reset();
    wheels[2].runout.reset();
    wheels[3].diameter.reset();
    const WheelChoice choice = choose_wheels(wheels, usual_worth());
    for (std::size_t taken : {choice.guide, choice.raised, choice.rear[0], choice.rear[1]})
        CHECK(taken >= 2);
    wheels[2].mass.reset();
    CHECK_THROWS_AS(choose_wheels(wheels, usual_worth()), Problem);
}
