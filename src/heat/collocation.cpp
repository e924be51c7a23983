#include "collocation.hpp"

#include <cassert>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

/// Legendre polynomials P_0..P_n at x in [-1, 1].
std::array<long double, Collocation::most + 1> legendre_values(long double x) {
    std::array<long double, Collocation::most + 1> p{};
    p[0] = 1;
    p[1] = x;
    for (std::size_t k = 1; k < Collocation::most; ++k)
        p[k + 1] = ((2 * k + 1) * x * p[k] - k * p[k - 1]) / (k + 1);
    return p;
}

Collocation make_rule(std::size_t n) {
    Collocation rule;
    rule.stages = n;
    std::array<long double, Collocation::most> x{}, w{};
    for (std::size_t i = 0; i < n; ++i) {
        long double root = -std::cos(std::numbers::pi_v<long double> * (i + 0.75L) / (n + 0.5L));
        long double slope = 1;
        for (int iteration = 0; iteration < 30; ++iteration) {
            const auto p = legendre_values(root);
            slope = n * (root * p[n] - p[n - 1]) / (root * root - 1);
            root -= p[n] / slope;
        }
        x[i] = root;
        w[i] = 2 / ((1 - root * root) * slope * slope);
        rule.node[i] = double((root + 1) / 2);
        rule.weight[i] = double(w[i] / 2);
    }
    for (std::size_t k = 0; k < n; ++k)
        for (std::size_t j = 0; j < n; ++j)
            rule.legendre[k][j] = double((2 * k + 1) * legendre_values(x[j])[k] * w[j] / 2);
    // The interpolant is the sum of coefficient times P_k, and P_k integrates to (P_{k+1} - P_{k-1}) / (2k +
    // 1).
    for (std::size_t i = 0; i < n; ++i) {
        const auto p = legendre_values(x[i]);
        for (std::size_t j = 0; j < n; ++j) {
            long double sum = 0;
            for (std::size_t k = 0; k < n; ++k) {
                const long double integral = k == 0 ? x[i] + 1 : (p[k + 1] - p[k - 1]) / (2 * k + 1);
                sum += (2 * k + 1) * legendre_values(x[j])[k] * w[j] / 2 * integral;
            }
            rule.to_node[j][i] = double(sum / 2);
        }
    }
    return rule;
}

} // namespace

const Collocation& Collocation::rule(std::size_t stages) {
    static const std::array<Collocation, most - 1> made = [] {
        std::array<Collocation, most - 1> rules;
        for (std::size_t n = 2; n <= most; ++n)
            rules[n - 2] = make_rule(n);
        return rules;
    }();
    assert(stages >= 2 && stages <= most);
    return made[stages - 2];
}

} // namespace rampwright
