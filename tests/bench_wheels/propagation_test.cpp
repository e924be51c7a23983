#include <rampwright/bench/pendulum.hpp>
#include <rampwright/bench/spin_down.hpp>
#include <rampwright/bench/weighing.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/steer/tuning_log.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <functional>
#include <numbers>
#include <random>

using namespace rampwright;

// The plus-minus of what the bench measures, against two referees that share no code with the program: the
// partial derivatives of the closed form, taken by hand (law of propagation, JCGM 100:2008, 5.1.2), and draws
// through the closed form written out here (propagation of distributions, JCGM 101:2008, clause 7).

namespace {

constexpr double pi = std::numbers::pi;

struct Drawn {
    double mean = 0, sigma = 0;
};

/// Mean and standard deviation of what `value` gives.
Drawn draw(int draws, const std::function<double()>& value) {
    double sum = 0, squares = 0, first = value();
    for (int i = 0; i < draws; ++i) {
        const double off = value() - first; // so that no digits cancel
        sum += off;
        squares += off * off;
    }
    const double mean = sum / draws;
    return {first + mean, std::sqrt(squares / draws - mean * mean)};
}

class Hand {
public:
    explicit Hand(unsigned seed) : random_(seed) {}
    double operator()(const Measured& m) { return m.value + m.sigma * normal_(random_); }
    double normal() { return normal_(random_); }

private:
    std::mt19937_64 random_;
    std::normal_distribution<double> normal_;
};

/// Within 1 %: 200 000 draws leave 0.16 % of sigma (1 / sqrt(2 n)), the law's first order some tenths.
constexpr int many = 200000;
constexpr double alike = 0.01;

double sum_of_squares(const std::vector<double>& parts) {
    double sum = 0;
    for (const double part : parts)
        sum += part * part;
    return sum;
}

} // namespace

TEST_CASE("plus-minus of two wires: by hand and by draws") {
    // I = m g r² T² / (4 pi² h): dI/I = dm/m, 2 dr/r, -dh/h, 2 dT/T.
    WireBench bench;
    bench.body_mass = {2.6e-3, 0.01e-3};
    bench.radius = {10e-3, 0.05e-3};
    bench.length = {0.5, 0.5e-3};
    bench.period = {1.57, 0.008};
    bench.gravity = standard_gravity;
    const Combined found = measure_inertia(bench);
    const auto closed = [](double m, double r, double h, double t) {
        return m * standard_gravity * r * r * t * t / (4 * pi * pi * h);
    };
    const double inertia = closed(2.6e-3, 10e-3, 0.5, 1.57);
    CHECK(found.value == Approx(inertia).epsilon(1e-12));
    CHECK(found.contributions[0] == Approx(inertia * 0.01 / 2.6).epsilon(1e-9));
    CHECK(found.contributions[1] == 0); // no plate
    CHECK(found.contributions[2] == Approx(inertia * 2 * 0.05 / 10).epsilon(1e-4));
    CHECK(found.contributions[3] == Approx(-inertia * 0.5e-3 / 0.5).epsilon(1e-4));
    CHECK(found.contributions[4] == Approx(inertia * 2 * 0.008 / 1.57).epsilon(1e-4));
    CHECK(found.contributions[5] == 0);
    CHECK(found.sigma == Approx(inertia * std::sqrt(std::pow(0.01 / 2.6, 2) + std::pow(0.1 / 10, 2) +
                                                    std::pow(0.001, 2) + std::pow(0.016 / 1.57, 2)))
                             .epsilon(1e-4));
    Hand hand(11);
    const Drawn drawn = draw(many, [&] {
        return closed(hand(bench.body_mass), hand(bench.radius), hand(bench.length), hand(bench.period));
    });
    CHECK(found.sigma == Approx(drawn.sigma).epsilon(alike));
}

TEST_CASE("plus-minus of a plate on three wires: by hand") {
    // I = g r² / (4 pi² h) ((m + p) T² - p U²), U of the plate alone.
    WireBench bench;
    bench.body_mass = {0.1417, 0.0001};
    bench.platform_mass = {0.5, 0.0005};
    bench.radius = {0.07, 0.0003};
    bench.length = {1.2, 0.001};
    bench.period = {1.73, 0.002};
    bench.platform_period = {1.776, 0.002};
    bench.gravity = standard_gravity;
    const Combined found = measure_inertia(bench);
    const double k = standard_gravity * 0.07 * 0.07 / (4 * pi * pi * 1.2), t = 1.73, u = 1.776;
    const double inertia = k * (0.6417 * t * t - 0.5 * u * u);
    const std::vector<double> by_hand{k * t * t * 0.0001,          k * (t * t - u * u) * 0.0005,
                                      2 * inertia / 0.07 * 0.0003, -inertia / 1.2 * 0.001,
                                      k * 0.6417 * 2 * t * 0.002,  -k * 0.5 * 2 * u * 0.002};
    CHECK(found.value == Approx(inertia).epsilon(1e-11));
    for (std::size_t i = 0; i < by_hand.size(); ++i) {
        CAPTURE(i);
        CHECK(found.contributions[i] == Approx(by_hand[i]).epsilon(1e-4));
    }
    CHECK(found.sigma == Approx(std::sqrt(sum_of_squares(by_hand))).epsilon(1e-5));
}

TEST_CASE("plus-minus of a car on a pin: by draws") {
    const Measured period{0.6326, 1e-3}, mass{0.1417, 1e-4}, arm{0.07, 3e-4};
    const Combined found = inertia_from_pin(period, mass, arm, standard_gravity);
    Hand hand(12);
    const Drawn drawn = draw(many, [&] {
        // I = m d (g T² / (4 pi²) - d).
        const double t = hand(period), m = hand(mass), d = hand(arm);
        return m * d * (standard_gravity * t * t / (4 * pi * pi) - d);
    });
    CHECK(found.sigma == Approx(drawn.sigma).epsilon(alike));
}

TEST_CASE("plus-minus of a spin-down without air: by hand and by draws") {
    SpinDown spin;
    constexpr int n = 12;
    spin.time = Eigen::VectorXd::LinSpaced(n, 0, 11);
    spin.inertia = {3.2e-7, 0.1e-7};
    spin.mass = {2.6e-3, 0.02e-3};
    spin.bore_radius = {1.14e-3, 0.02e-3};
    spin.gravity = standard_gravity;
    const double slowing = 0.1 * 2.6e-3 * standard_gravity * 1.14e-3 / 3.2e-7, scatter = 2;
    // Readings whose scatter about the line is known by construction: a pattern that has no mean and no
    // slope (+1 -1 -1 +1, repeated; sums by hand), with n - 2 degrees of freedom.
    const double pattern[] = {1, -1, -1, 1};
    const double size = scatter * std::sqrt((n - 2.0) / n);
    spin.speed.resize(n);
    for (Eigen::Index i = 0; i < n; ++i)
        spin.speed[i] = 200 - slowing * spin.time[i] + size * pattern[i % 4];
    const SpinDownFit fit = fit_spin_down(spin);
    CHECK(fit.journal.value == Approx(0.1).epsilon(1e-9));
    CHECK(fit.scatter == Approx(scatter).epsilon(1e-9));
    // Slope of a line through n readings a second apart: sigma = scatter / sqrt(n (n² - 1) / 12).
    const double slope_sigma = scatter / std::sqrt(n * (n * n - 1.0) / 12);
    const std::vector<double> by_hand{0.1 * slope_sigma / slowing, 0.1 * 0.1 / 3.2, -0.1 * 0.02 / 2.6,
                                      -0.1 * 0.02 / 1.14};
    for (std::size_t i = 0; i < by_hand.size(); ++i) {
        CAPTURE(i);
        CHECK(std::abs(fit.journal.contributions[i]) == Approx(std::abs(by_hand[i])).epsilon(1e-3));
    }
    CHECK(fit.journal.sigma == Approx(std::sqrt(sum_of_squares(by_hand))).epsilon(1e-3));

    Hand hand(13);
    const Drawn drawn = draw(many, [&] {
        double slope = 0; // least squares of noise about the same line
        for (int i = 0; i < n; ++i)
            slope += (i - (n - 1) / 2.0) * (-slowing * i + scatter * hand.normal());
        slope /= n * (n * n - 1.0) / 12;
        return -slope * hand(spin.inertia) / (hand(spin.mass) * standard_gravity * hand(spin.bore_radius));
    });
    CHECK(drawn.mean == Approx(0.1).epsilon(0.002));
    CHECK(fit.journal.sigma == Approx(drawn.sigma).epsilon(alike));
}

TEST_CASE("plus-minus of air taken off a spin-down: by draws of what the air takes") {
    // With drag that hardly changes the speed over the readings the journal's share is what is left at the
    // mean speed: mu = (I a - c w^1.5) / (m g r), so dmu/dc = -w^1.5 / (m g r).
    SpinDown spin;
    spin.time = Eigen::VectorXd::LinSpaced(10, 0, 0.9);
    spin.inertia = {3.2e-7, 0};
    spin.mass = {2.6e-3, 0};
    spin.bore_radius = {1.14e-3, 0};
    spin.windage = {4.7e-10, 1.5e-10};
    spin.gravity = standard_gravity;
    spin.speed = 300 - 9.5 * spin.time.array();
    const SpinDownFit fit = fit_spin_down(spin);
    const double mean_speed = 300 - 9.5 * 0.45;
    CHECK(std::abs(fit.journal.contributions[4]) ==
          Approx(std::pow(mean_speed, 1.5) / (2.6e-3 * standard_gravity * 1.14e-3) * 1.5e-10).epsilon(1e-3));
}

TEST_CASE("plus-minus of weighings: by hand and by draws") {
    const Measured front{28, 0.1}, rear{113.7, 0.15}, whole{141.7, 0.2}, distance{0.1111, 0.0003};
    Hand hand(14);
    const Combined two = balance_on_two_supports(front, rear, distance);
    const Drawn two_drawn = draw(many, [&] {
        const double f = hand(front), r = hand(rear);
        return hand(distance) * f / (f + r);
    });
    CHECK(two.sigma == Approx(two_drawn.sigma).epsilon(alike));

    const Combined one = balance_from_whole(front, whole, distance);
    const double x = 0.1111 * 28 / 141.7;
    CHECK(one.contributions[0] == Approx(x * 0.1 / 28).epsilon(1e-9));
    CHECK(one.contributions[1] == Approx(-x * 0.2 / 141.7).epsilon(1e-5));
    CHECK(one.contributions[2] == Approx(x * 0.0003 / 0.1111).epsilon(1e-9));
    const Drawn one_drawn = draw(many, [&] { return hand(distance) * hand(front) / hand(whole); });
    CHECK(one.sigma == Approx(one_drawn.sigma).epsilon(alike));

    const TiltWeighing tilt{whole, front, {27.2, 0.1}, distance, {20 * degree, 0.2 * degree}, {0.0151, 5e-5}};
    const Combined height = height_from_tilt(tilt);
    const double t = std::tan(20 * degree), rise = 0.1111 * 0.8 / (141.7 * t);
    const std::vector<double> by_hand{-rise * 0.2 / 141.7,
                                      0.1111 / (141.7 * t) * 0.1,
                                      -0.1111 / (141.7 * t) * 0.1,
                                      rise * 0.0003 / 0.1111,
                                      -rise * (1 + t * t) / t * 0.2 * degree,
                                      5e-5};
    for (std::size_t i = 0; i < by_hand.size(); ++i) {
        CAPTURE(i);
        CHECK(height.contributions[i] == Approx(by_hand[i]).epsilon(1e-4));
    }
    const Drawn height_drawn = draw(many, [&] {
        const double w = hand(tilt.whole), level = hand(tilt.level_front), up = hand(tilt.tilted_front);
        const double base = hand(tilt.wheelbase), angle = hand(tilt.tilt);
        return hand(tilt.radius) + base * (level - up) / (w * std::tan(angle));
    });
    CHECK(height.sigma == Approx(height_drawn.sigma).epsilon(alike));
}

TEST_CASE("plus-minus of repeated weighings holds the mass as often as it says") {
    // A mass nobody knows, a scale that shows tenths of a gram, a car that scatters as it is put on:
    // Student's interval of 95 % from five readings (JCGM 100:2008, G.3).
    std::mt19937_64 random(15);
    std::uniform_real_distribution<double> mass(140, 142);
    std::normal_distribution<double> scatter(0, 0.3);
    int held = 0;
    constexpr int cars = 4000;
    for (int i = 0; i < cars; ++i) {
        const double truth = mass(random);
        std::vector<double> readings;
        for (int k = 0; k < 5; ++k)
            readings.push_back(std::round((truth + scatter(random)) * 10) / 10);
        const Measured mean = mean_of_weighings(readings, 0.1);
        Combined interval;
        interval.sigma = mean.sigma;
        interval.freedom = mean.freedom;
        held += std::abs(mean.value - truth) < interval.expanded(0.95);
    }
    CHECK(held > 0.94 * cars);  // 95 % less three of its own sigma, 0.35 %
    CHECK(held < 0.985 * cars); // the division's share is a little too careful
}

TEST_CASE("plus-minus of a steer read off a drift: by hand and by draws") {
    // Rear axle watched: steer = atan(2 L d / (s² + d²)) from the circle through the start and the mark.
    constexpr double base = 0.1111, over = 1.2, drift = 0.08;
    const double u = 2 * base * drift / (over * over + drift * drift);
    const double by_hand =
        2 * base * (over * over - drift * drift) / std::pow(over * over + drift * drift, 2) / (1 + u * u);
    CHECK(steer_per_drift(base, drift, over) == Approx(by_hand).epsilon(1e-6));
    Hand hand(16);
    const Measured read{drift, 0.004};
    const Drawn drawn = draw(many, [&] {
        const double d = hand(read);
        return std::atan(2 * base * d / (over * over + d * d));
    });
    CHECK(by_hand * read.sigma == Approx(drawn.sigma).epsilon(alike));
}

TEST_CASE("plus-minus of the drift log: by hand and by weighted draws") {
    TuningPlan plan;
    plan.wheelbase = 0.1111;
    plan.over = 1.2;
    plan.target = 0.08;
    plan.tolerance = 0.006;
    plan.bend = 1.5 * degree;
    plan.bend_sigma = 0.3 * degree;
    plan.turn = 40 * degree;
    plan.turn_sigma = 5 * degree;
    const auto toe = [](double bend, double turn) { return std::atan(std::tan(bend) * std::sin(turn)); };
    const auto drift_of = [&](double steer) { // the circle again: rho = L / tan(steer)
        const double radius = plan.wheelbase / std::tan(steer);
        return radius - std::sqrt(radius * radius - plan.over * plan.over);
    };
    // A roll that shows just what was expected moves nothing, so the sum of the two weights is exact:
    // 1 / sigma² = 1 / before² + 1 / reading².
    const double rolled = drift_of(toe(plan.bend, plan.turn));
    TuningLog log(plan);
    log.add_roll(rolled);
    const double noise = std::hypot(plan.reading_sigma, plan.scatter * rolled);
    const double per_drift = steer_per_drift(plan.wheelbase, rolled, plan.over);
    const double h = std::tan(plan.bend), s = h * std::sin(plan.turn);
    const double per_bend = std::sin(plan.turn) * (1 + h * h) / (1 + s * s),
                 per_turn = h * std::cos(plan.turn) / (1 + s * s);
    const double before = std::hypot(per_bend * plan.bend_sigma, per_turn * plan.turn_sigma),
                 reading = per_drift * noise;
    const double by_hand = 1 / std::sqrt(1 / (before * before) + 1 / (reading * reading));
    CHECK(log.steer_sigma() == Approx(by_hand).epsilon(1e-6));
    CHECK(log.drift_sigma() == Approx(by_hand / per_drift).epsilon(1e-6));

    // Bayes by draws: axles as believed before, each weighed by how well it explains the roll.
    Hand hand(17);
    double weights = 0, sum = 0, squares = 0;
    for (int i = 0; i < many; ++i) {
        const double steer = toe(hand({plan.bend, plan.bend_sigma}), hand({plan.turn, plan.turn_sigma}));
        const double off = (drift_of(steer) - rolled) / noise;
        const double weight = std::exp(-off * off / 2);
        weights += weight;
        sum += weight * steer;
        squares += weight * steer * steer;
    }
    const double mean = sum / weights, sigma = std::sqrt(squares / weights - mean * mean);
    CHECK(log.steer() == Approx(mean).margin(0.1 * sigma));
    CHECK(log.steer_sigma() == Approx(sigma).epsilon(0.03));
}
