#pragma once

#include <array>

namespace rampwright {

/// Gauss-Legendre collocation on [0, 1]: nodes, weights, the integrals of the Lagrange polynomials up to each
/// node, and the Legendre coefficients of a function known at the nodes. Order 2 * stages.
/// Source: Hairer, Norsett, Wanner, Solving Ordinary Differential Equations I, II.7 (from memory); nodes
/// computed here.
struct Collocation {
    static constexpr std::size_t most = 8;
    using Row = std::array<double, most>;
    std::size_t stages = most;
    Row node{}, weight{};
    std::array<Row, most> to_node{};  ///< [j][i]: integral of the j-th Lagrange polynomial from 0 to node i
    std::array<Row, most> legendre{}; ///< [k][j]: weight of the value at node j in the k-th coefficient

    /// At each node, `start` plus the integral of `rates` from 0. Rows are padded with zeros, so that the
    /// loops have a fixed length.
    Row integrals(const Row& start, const Row& rates) const {
        Row result = start;
        for (std::size_t j = 0; j < stages; ++j)
            for (std::size_t i = 0; i < most; ++i)
                result[i] += to_node[j][i] * rates[j];
        return result;
    }

    /// @param stages 2 to `most`.
    static const Collocation& rule(std::size_t stages);
};

} // namespace rampwright
