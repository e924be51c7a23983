#pragma once

#include <algorithm>
#include <chrono>
#include <ctime>
#include <functional>
#include <string>
#include <vector>

/// The benchmark's frame. A file of this folder measures one subject and announces itself:
///
///     const bench::Registered heats{"heats-per-second", [] { return bench::Result{...}; }};
namespace rampwright::bench {

struct Result {
    double value = 0;
    std::string unit;
    /// What it was measured against in the same run, and the error of both sides.
    std::string against;
};

struct Benchmark {
    std::string name;
    std::function<Result()> run;
};

/// Every benchmark, by name.
std::vector<Benchmark>& registry();

struct Registered {
    Registered(std::string name, std::function<Result()> run) {
        registry().push_back({std::move(name), std::move(run)});
    }
};

/// A number as the benchmark prints it: this many significant digits, no locale.
std::string digits(double value, int significant = 4);

/// Wall-clock seconds one call takes.
template <class Call>
double seconds(Call&& call) {
    const auto start = std::chrono::steady_clock::now();
    call();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// Seconds of the processor one call takes, all threads together: what one core needs for it even while other
/// programs share that core.
template <class Call>
double core_seconds(Call&& call) {
    const std::clock_t start = std::clock();
    call();
    return double(std::clock() - start) / CLOCKS_PER_SEC;
}

/// The least of several measurements: whatever disturbs one can only add to it.
template <class Measure>
double least(int times, Measure&& measure) {
    double result = measure();
    for (int n = 1; n < times; ++n)
        result = std::min(result, measure());
    return result;
}

} // namespace rampwright::bench
