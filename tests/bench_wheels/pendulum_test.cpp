#include <rampwright/bench/pendulum.hpp>
#include <rampwright/core/constants.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace rampwright;

TEST_CASE("periods on two and three wires agree with closed forms") {
    // Closed forms evaluated outside the project (standard formulas, no publication), g = 9.80665.
    // Two wires: rod 0.3 m, 0.2 kg, wires 1 m at 0.1 m; with the rod's own rise at 10 and 30 deg.
    const WirePendulum rod{0.2, 0.1, 1, standard_gravity};
    CHECK(wire_period(rod, 0.0015) == Approx(1.73760142).epsilon(1e-8));
    CHECK(wire_period(rod, 0.0015, 10 * degree) == Approx(1.74099163).epsilon(1e-8));
    CHECK(wire_period(rod, 0.0015, 30 * degree) == Approx(1.76847305).epsilon(1e-8));
    CHECK(wire_period(rod, 0.0015, 1e-4) == Approx(1.73760142).epsilon(1e-8));
    // Three wires: disc 0.5 kg, R 0.08 m, cords 1.2 m at 0.07 m; with a body of 3.5e-4 kg m² and 0.1417 kg.
    CHECK(wire_period({0.5, 0.07, 1.2, standard_gravity}, 0.0016) == Approx(1.77618052).epsilon(1e-8));
    CHECK(wire_period({0.6417, 0.07, 1.2, standard_gravity}, 0.00195) == Approx(1.73086581).epsilon(1e-8));
}

TEST_CASE("inertia comes back from the period, whatever the amplitude") {
    for (double amplitude : {0.0, 5.0, 30.0, 80.0})
        for (double inertia : {2e-7, 3.5e-4, 1.5e-3}) {
            const WirePendulum p{0.2, 0.1, 1, standard_gravity};
            const double period = wire_period(p, inertia, amplitude * degree);
            CHECK(inertia_from_period(p, period, amplitude * degree) == Approx(inertia).epsilon(1e-8));
        }
}

TEST_CASE("a body on a platform is measured with its uncertainty") {
    WireBench bench;
    bench.body_mass = {0.1417, 0.0001};
    bench.platform_mass = {0.5, 0.0005};
    bench.radius = {0.07, 0.0003};
    bench.length = {1.2, 0.001};
    bench.period = {1.73086581, 0.002};
    bench.platform_period = {1.77618052, 0.002};
    bench.gravity = standard_gravity;
    const Combined inertia = measure_inertia(bench);
    CHECK(inertia.value == Approx(3.5e-4).epsilon(1e-5));

    // Referee: draws through the written-out small-swing formula.
    std::mt19937_64 random(1);
    std::normal_distribution<double> normal;
    const auto draw = [&](const Measured& m) { return m.value + m.sigma * normal(random); };
    double sum = 0, squares = 0;
    constexpr int draws = 200000;
    for (int i = 0; i < draws; ++i) {
        const double m = draw(bench.body_mass), p = draw(bench.platform_mass), r = draw(bench.radius),
                     h = draw(bench.length), t = draw(bench.period), t0 = draw(bench.platform_period);
        const double factor = standard_gravity * r * r / (4 * 9.8696044010893586 * h);
        const double value = factor * ((m + p) * t * t - p * t0 * t0) - 3.5e-4;
        sum += value;
        squares += value * value;
    }
    const double sigma = std::sqrt(squares / draws - std::pow(sum / draws, 2));
    CHECK(inertia.sigma == Approx(sigma).epsilon(0.01));
    // The period is what counts most.
    CHECK(std::abs(inertia.contributions[4]) > std::abs(inertia.contributions[3]));
}

TEST_CASE("a car hung on a pin") {
    // Closed form outside the project: I 3.5e-4, m 0.1417, d 0.05: 0.632576467 s; shortest at d =
    // 0.0496991656 m.
    CHECK(pin_period(3.5e-4, 0.1417, 0.05, standard_gravity) == Approx(0.632576467).epsilon(1e-8));
    CHECK(pin_period(3.5e-4, 0.1417, 0.0496991656, standard_gravity) == Approx(0.632570707).epsilon(1e-8));
    // Amplitude factor 2 K / pi at 5 ... 170 deg (elliptic integral, evaluated to 25 digits outside).
    const double whole = pin_period(3.5e-4, 0.1417, 0.05, standard_gravity);
    const std::pair<double, double> factors[] = {
        {5, 1.00047617249},  {10, 1.00190718814}, {20, 1.00766902579},  {30, 1.01740879760},
        {60, 1.07318200715}, {90, 1.18034059902}, {120, 1.37288050062}, {170, 2.43936271967}};
    for (const auto& [amplitude, factor] : factors)
        CHECK(pin_period(3.5e-4, 0.1417, 0.05, standard_gravity, amplitude * degree) / whole ==
              Approx(factor).epsilon(1e-10));
    // OpenStax University Physics, example 15.4: a uniform rod on its end, f 0.50 Hz, g 9.8: L = 1.49 m
    // (seen).
    const double length = 1.489421;
    CHECK(pin_period(length * length / 12, 1, length / 2, 9.8) == Approx(2).epsilon(1e-6));

    const Combined inertia =
        inertia_from_pin({0.632576467, 1e-4}, {0.1417, 1e-4}, {0.05, 1e-4}, standard_gravity);
    CHECK(inertia.value == Approx(3.5e-4).epsilon(1e-7));
    CHECK(inertia.sigma > 0);
    // By hand: dI/dT = 2 m g d T / (4 pi²), dI/dm = I / m, dI/dd = m (g T²/(4 pi²) - 2 d).
    const double root = 0.632576467 / (2 * 3.14159265358979), g = standard_gravity;
    CHECK(inertia.contributions[0] ==
          Approx(2 * 0.1417 * g * 0.05 * root / (2 * 3.14159265358979) * 1e-4).epsilon(1e-6));
    CHECK(inertia.contributions[1] == Approx(3.5e-4 / 0.1417 * 1e-4).epsilon(1e-6));
    CHECK(inertia.contributions[2] == Approx(0.1417 * (g * root * root - 0.1) * 1e-4).margin(1e-10));
}
