#include <rampwright/study/draws.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rampwright {

namespace {

/// The index from a sample already sorted by the input.
double index_of_sorted(const std::vector<double>& y, std::size_t classes) {
    const std::size_t n = y.size();
    double mean = 0;
    for (double value : y)
        mean += value;
    mean /= double(n);
    double between = 0, whole = 0;
    for (double value : y)
        whole += (value - mean) * (value - mean);
    for (std::size_t c = 0; c < classes; ++c) {
        const std::size_t from = c * n / classes, to = (c + 1) * n / classes;
        double sum = 0;
        for (std::size_t i = from; i < to; ++i)
            sum += y[i] - mean;
        between += sum * sum / double(to - from);
    }
    if (!(whole > 0)) return 0;
    // Of an input without influence the classes still take their degrees of freedom: omega squared.
    const double within = (whole - between) / double(n - classes);
    return (between - double(classes - 1) * within) / (whole + within);
}

} // namespace

SobolIndex first_order_index(const std::vector<double>& z, const std::vector<double>& y) {
    const std::size_t n = y.size();
    if (n < 64) return {};
    const std::size_t classes = std::clamp<std::size_t>(n / 100, 4, 64);
    std::vector<std::size_t> order(n);
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return z[a] < z[b]; });
    std::vector<double> sorted(n);
    for (std::size_t i = 0; i < n; ++i)
        sorted[i] = y[order[i]];
    SobolIndex index;
    index.value = index_of_sorted(sorted, classes);

    // Delete-a-block jackknife: every tenth value left out in turn.
    constexpr std::size_t blocks = 10;
    double sum = 0, squares = 0;
    for (std::size_t block = 0; block < blocks; ++block) {
        std::vector<double> rest;
        rest.reserve(n);
        for (std::size_t i = 0; i < n; ++i)
            if (order[i] % blocks != block) rest.push_back(sorted[i]);
        const double part = index_of_sorted(rest, classes);
        sum += part;
        squares += part * part;
    }
    const double spread = squares / blocks - (sum / blocks) * (sum / blocks);
    index.standard_error = std::sqrt(std::max(0.0, spread) * (blocks - 1));
    return index;
}

} // namespace rampwright
