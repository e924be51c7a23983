#pragma once

#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <array>
#include <span>

namespace rampwright::body_detail {

/// Nodes and weights on [-1, 1].
template <size_t N>
struct Rule {
    std::array<double, N> node{}, weight{};
};

/// The library lists half of a symmetric rule, from the middle outwards.
template <size_t N, class Half>
Rule<N> unfold(const Half& nodes, const Half& weights) {
    Rule<N> rule;
    size_t k = 0;
    for (size_t i = 0; i < nodes.size(); ++i) {
        rule.node[k] = nodes[i];
        rule.weight[k++] = weights[i];
        if (nodes[i] == 0) continue;
        rule.node[k] = -nodes[i];
        rule.weight[k++] = weights[i];
    }
    return rule;
}

/// Gauss-Legendre, exact to degree 2N - 1.
template <size_t N>
const Rule<N>& gauss() {
    using Table = boost::math::quadrature::gauss<double, N>;
    static const Rule<N> rule = unfold<N>(Table::abscissa(), Table::weights());
    return rule;
}

/// Gauss-Kronrod with 15 nodes; `inner` weighs the embedded 7-node Gauss rule, zero elsewhere.
struct Kronrod {
    Rule<15> rule;
    std::array<double, 15> inner{};

    static const Kronrod& table() {
        static const Kronrod table = [] {
            using Full = boost::math::quadrature::gauss_kronrod<double, 15>;
            Kronrod k;
            k.rule = unfold<15>(Full::abscissa(), Full::weights());
            const auto& seven = gauss<7>();
            for (size_t i = 0; i < 15; ++i)
                for (size_t j = 0; j < 7; ++j)
                    if (std::abs(k.rule.node[i] - seven.node[j]) < 1e-9) k.inner[i] = seven.weight[j];
            return k;
        }();
        return table;
    }
};

} // namespace rampwright::body_detail
