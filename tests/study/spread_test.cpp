#include <rampwright/study/spread.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <random>

using namespace rampwright;

namespace {

/// The axes of a quantity of standard normal variables, as first order finds them.
template <class Quantity>
std::array<double, 2> interval_of(std::vector<double> log_sigmas, double noise, Quantity&& quantity) {
    const std::size_t count = log_sigmas.size();
    const double nominal = quantity(std::vector<double>(count));
    const Change change = [&](std::span<const Deviation> moved) -> std::optional<double> {
        std::vector<double> z(count);
        for (const Deviation& each : moved)
            z[each.input] = each.z;
        return quantity(z) - nominal;
    };
    std::vector<Axis> axes;
    for (std::size_t n = 0; n < count; ++n) {
        const Deviation low{n, -1}, high{n, 1};
        axes.push_back({*change({&low, 1}), *change({&high, 1}), log_sigmas[n]});
    }
    return curved_interval95(axes, noise, change);
}

constexpr double normal_95 = 1.959963984540054;

} // namespace

TEST_CASE("The interval of a sum of normal variables is the normal one") {
    const auto sum = [](const std::vector<double>& z) { return 3 * z[0] - 4 * z[1]; };
    const auto interval = interval_of({0, 0}, 12, sum);
    CHECK(interval[0] == Approx(-13 * normal_95).epsilon(1e-12));
    CHECK(interval[1] == Approx(13 * normal_95).epsilon(1e-12));
}

// The logarithm of a product of log-normals is normal: closed form.
TEST_CASE("The interval of a product of log-normal variables is the closed form's") {
    const auto product = [](const std::vector<double>& z) { return std::exp(0.3 * z[0] + 0.4 * z[1]); };
    const auto interval = interval_of({0.3, 0.4}, 0, product);
    CHECK(interval[0] == Approx(std::exp(-0.5 * normal_95) - 1).margin(0.01));
    CHECK(interval[1] == Approx(std::exp(0.5 * normal_95) - 1).margin(0.03));
}

// The comparison loss of JCGM 101:2008, 9.4, at a true loss of zero (from memory): the sum of two squares of
// equal normal variables has an exponential distribution, in closed form. First order sees nothing of it.
TEST_CASE("The interval of a sum of squares is the exponential distribution's") {
    const auto squares = [](const std::vector<double>& z) { return z[0] * z[0] + z[1] * z[1]; };
    const auto interval = interval_of({0, 0}, 0, squares);
    CHECK(interval[0] == Approx(-2 * std::log1p(-0.025)).margin(0.01));
    CHECK(interval[1] == Approx(-2 * std::log(0.025)).margin(0.1));
}

// Against draws of the quantity itself by the standard library's generator: what loss times look like, a very
// wide input that saturates among them.
TEST_CASE("The interval of a bent quantity holds 95 per cent of its draws") {
    const auto losses = [](const std::vector<double>& z) {
        const double scrub = 20 * std::tanh(0.8 * std::exp(1.1 * z[0])) * std::exp(0.3 * z[1]);
        const double journal = 60 * std::exp(0.3 * z[2]), rail = 25 * std::exp(0.35 * z[3] + 0.3 * z[1]);
        return scrub + journal + rail + 4 * z[4] - 0.5 * z[5];
    };
    const std::vector<double> log_sigmas{1.1, 0.3, 0.3, 0.35, 0, 0};
    const double nominal = losses(std::vector<double>(log_sigmas.size()));
    const auto interval = interval_of(log_sigmas, 3, losses);
    std::mt19937_64 random(11);
    std::normal_distribution<double> normal;
    constexpr int draws = 40000;
    int below = 0, above = 0;
    for (int n = 0; n < draws; ++n) {
        std::vector<double> z(log_sigmas.size());
        for (double& each : z)
            each = normal(random);
        const double change = losses(z) - nominal + 3 * normal(random);
        below += change < interval[0];
        above += change > interval[1];
    }
    // One in 40 on either side; a fifth of that is left to the surface.
    CHECK(double(below) / draws == Approx(0.025).margin(0.005));
    CHECK(double(above) / draws == Approx(0.025).margin(0.005));
}
