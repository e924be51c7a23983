#include <rampwright/study/draws.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace rampwright;

TEST_CASE("first-order indices of the Ishigami function") {
    // Ishigami and Homma 1990, a = 7, b = 0.1, three uniform inputs on (-pi, pi): S1 = 0.3139, S2 = 0.4424,
    // S3 = 0 (from the closed forms V1 = (1 + b pi^4 / 5)^2 / 2, V2 = a^2 / 8, V = V1 + V2 + b^2 pi^8 (1/18 -
    // 1/50)).
    const double pi = std::numbers::pi, a = 7, b = 0.1;
    const double v1 = 0.5 * std::pow(1 + b * std::pow(pi, 4) / 5, 2), v2 = a * a / 8;
    const double v = v1 + v2 + b * b * std::pow(pi, 8) * (1.0 / 18 - 1.0 / 50);
    const std::size_t n = 20000;
    std::vector<double> z[3], y;
    for (std::size_t i = 0; i < n; ++i) {
        double x[3];
        for (std::uint64_t k = 0; k < 3; ++k) {
            z[k].push_back(standard_normal(7, i, k));
            x[k] = pi * std::erf(z[k].back() / std::numbers::sqrt2);
        }
        y.push_back(std::sin(x[0]) + a * std::pow(std::sin(x[1]), 2) +
                    b * std::pow(x[2], 4) * std::sin(x[0]));
    }
    const double expected[3] = {v1 / v, v2 / v, 0};
    CHECK(expected[0] == Approx(0.3139).margin(5e-5));
    CHECK(expected[1] == Approx(0.4424).margin(5e-5));
    for (int k = 0; k < 3; ++k) {
        const SobolIndex index = first_order_index(z[k], y);
        CAPTURE(k, index.value, index.standard_error);
        CHECK(index.standard_error > 0);
        CHECK(index.standard_error < 0.02);
        // Three standard errors, and half a per cent that classes of finite width leave out.
        CHECK(std::abs(index.value - expected[k]) < 3 * index.standard_error + 0.005);
    }
}

TEST_CASE("the standard errors of the indices are what their scatter is") {
    std::vector<double> values, errors;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        std::vector<double> z, y;
        for (std::size_t i = 0; i < 4000; ++i) {
            z.push_back(standard_normal(seed, i, 1));
            y.push_back(z.back() + 2 * standard_normal(seed, i, 2));
        }
        const SobolIndex index = first_order_index(z, y);
        values.push_back(index.value);
        errors.push_back(index.standard_error);
    }
    double mean = 0, square = 0, error = 0;
    for (std::size_t n = 0; n < values.size(); ++n) {
        mean += values[n] / double(values.size());
        error += errors[n] / double(values.size());
    }
    for (double value : values)
        square += (value - mean) * (value - mean);
    const double scatter = std::sqrt(square / double(values.size() - 1));
    CHECK(mean == Approx(0.2).margin(0.01)); // 1 / (1 + 4)
    CHECK(error == Approx(scatter).epsilon(
                       0.35)); // a scatter of forty is known to 11 %, a jackknife of ten blocks to 24 %
}

TEST_CASE("drawn numbers are standard normal and independent of order") {
    const std::size_t n = 200000;
    double sum = 0, square = 0, third = 0, fourth = 0, lagged = 0, previous = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double x = standard_normal(3, i, 11);
        sum += x;
        square += x * x;
        third += x * x * x;
        fourth += x * x * x * x;
        lagged += x * previous;
        previous = x;
    }
    // Standard errors: 1/sqrt n, sqrt 2/sqrt n, sqrt 15/sqrt n, sqrt 96/sqrt n; four of each.
    const double root = std::sqrt(double(n));
    CHECK(std::abs(sum / double(n)) < 4 / root);
    CHECK(std::abs(square / double(n) - 1) < 4 * std::sqrt(2.0) / root);
    CHECK(std::abs(third / double(n)) < 4 * std::sqrt(15.0) / root);
    CHECK(std::abs(fourth / double(n) - 3) < 4 * std::sqrt(96.0) / root);
    CHECK(std::abs(lagged / double(n)) < 4 / root);
    CHECK(standard_normal(3, 17, 11) == standard_normal(3, 17, 11));
    CHECK(standard_normal(3, 17, 11) != standard_normal(4, 17, 11));
}
