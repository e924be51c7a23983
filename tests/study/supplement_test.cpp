#include <rampwright/study/draws.hpp>
#include <rampwright/study/first_order.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace rampwright;

// The examples of JCGM 101:2008 (GUM Supplement 1). Its printed numbers are from memory, not read there;
// beside them stand values computed apart: closed forms, the exact law of a sum of rectangular variables
// (Irwin-Hall), and four million draws of the mass calibration by another program.
namespace {

constexpr std::size_t trials = 200000;

/// A rectangular variable of mean 0 and sigma 1 from a normal one.
double rectangular(double z) {
    return std::sqrt(3.0) * std::erf(z / std::numbers::sqrt2);
}

/// By the program's own draws, and its own reading of them.
template <class Model>
DrawnHeat draw(std::size_t inputs, Model&& model, CarDraws& draws) {
    draws.heat.resize(trials);
    std::vector<double> z(inputs);
    for (std::size_t n = 0; n < trials; ++n) {
        for (std::size_t k = 0; k < inputs; ++k)
            z[k] = standard_normal(101, n, k);
        draws.heat[n] = model(z);
    }
    return summarise(draws);
}

double sum(const std::vector<double>& z) {
    return z[0] + z[1] + z[2] + z[3];
}

} // namespace

TEST_CASE("The additive model of the GUM supplement, normal inputs") {
    CarDraws draws;
    const DrawnHeat y = draw(4, sum, draws);
    CHECK(y.sigma == Approx(2.0).margin(0.01)); // 9.2.2; exact
    CHECK(y.interval95[0] == Approx(-3.92).margin(0.03));
    CHECK(y.interval95[1] == Approx(3.92).margin(0.03));
    const FirstOrder linear = propagate({"a", "b", "c", "d"}, [](std::size_t, double z) { return z; });
    CHECK(linear.sigma == Approx(2.0).epsilon(1e-15));
}

TEST_CASE("The additive model of the GUM supplement, rectangular inputs") {
    CarDraws draws;
    const auto rectangles = [](const std::vector<double>& z) {
        return rectangular(z[0]) + rectangular(z[1]) + rectangular(z[2]) + rectangular(z[3]);
    };
    const DrawnHeat y = draw(4, rectangles, draws);
    CHECK(y.sigma == Approx(2.0).margin(0.01));                 // 9.2.3
    CHECK(y.interval95[0] == Approx(-3.87940674).margin(0.03)); // Irwin-Hall; printed 3.88
    CHECK(y.interval95[1] == Approx(3.87940674).margin(0.03));
    // 9.2.4: one input ten times as wide. The linear model with a normal law says 19.9, the draws 17.0.
    const auto one_wide = [&](const std::vector<double>& z) {
        return rectangular(z[0]) + rectangular(z[1]) + rectangular(z[2]) + 10 * rectangular(z[3]);
    };
    const DrawnHeat wide = draw(4, one_wide, draws);
    CHECK(wide.sigma == Approx(std::sqrt(103)).margin(0.04)); // printed 10.1
    CHECK(wide.interval95[0] == Approx(-17.01581).margin(0.06));
    CHECK(wide.interval95[1] == Approx(17.01581).margin(0.06));
    std::vector<double> z;
    for (std::size_t n = 0; n < trials; ++n)
        z.push_back(standard_normal(101, n, 3));
    CHECK(first_order_index(z, draws.heat).value == Approx(100.0 / 103).margin(0.005)); // the share, exact
}

TEST_CASE("The mass calibration of the GUM supplement, where the linear model falls short") {
    // m_R + δ against a conventional mass in air: kilograms in the core, milligrams here as printed.
    const auto deviation = [](double mass_r, double delta, double air, double w, double r) {
        return (mass_r + delta) * (1 + (air - 1.2) * (1 / w - 1 / r)) - 100000;
    };
    const auto at = [&](const std::vector<double>& z) {
        return deviation(
            100000 + 0.050 * z[0], 1.234 + 0.020 * z[1], 1.2 + 0.1 / std::sqrt(3.0) * rectangular(z[2]),
            8000 + 1000 / std::sqrt(3.0) * rectangular(z[3]), 8000 + 50 / std::sqrt(3.0) * rectangular(z[4]));
    };
    CarDraws draws;
    const DrawnHeat y = draw(5, at, draws);
    CHECK(y.mean == Approx(1.2341).margin(0.001));   // 9.3, printed
    CHECK(y.sigma == Approx(0.0754).margin(0.0005)); // printed; computed apart 0.07553
    CHECK(y.interval95[0] == Approx(1.0834).margin(0.004));
    CHECK(y.interval95[1] == Approx(1.3825).margin(0.004));
    // First order misses the product of the two densities' spreads: 0.0539 as printed.
    const double nominal[] = {100000, 1.234, 1.2, 8000, 8000};
    const double sigma[] = {0.050, 0.020, 0.1 / std::sqrt(3.0), 1000 / std::sqrt(3.0), 50 / std::sqrt(3.0)};
    const FirstOrder linear = propagate({"m", "delta", "air", "w", "r"}, [&](std::size_t n, double z) {
        double x[5];
        for (std::size_t k = 0; k < 5; ++k)
            x[k] = nominal[k] + (k == n ? z * sigma[k] : 0);
        return deviation(x[0], x[1], x[2], x[3], x[4]);
    });
    CHECK(linear.sigma == Approx(0.0539).margin(5e-5));
    CHECK(linear.sigma == Approx(std::hypot(0.050, 0.020)).margin(1e-6));
    CHECK(linear.sigma < 0.75 * y.sigma);
}
