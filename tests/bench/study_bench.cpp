#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures_again.hpp>
#include <rampwright/study/draws.hpp>

#include <bench/bench.hpp>
#include <cmath>
#include <support/demo.hpp>

using namespace rampwright;

namespace {

constexpr std::size_t bench_draws = 10000;

double draw_seconds(const Project& project, unsigned threads) {
    return bench::seconds([&] {
        (void)run_draws(project, {0, 1}, {.draws = bench_draws, .threads = threads});
    });
}

/// The window's own work for one step of a drag, but for the painting: the edit, the project read anew, all
/// figures.
bench::Result drag_step() {
    const Document document = demo_document();
    const Vec3 there = read_project(document).cars[0].ballast.at(0).at;
    constexpr int steps = 500;
    std::vector<double> times;
    WoodMemo memo;
    double sum = 0;
    for (int n = 0; n < steps; ++n) {
        const Vec3 at = there + Vec3(1e-5 * n, 0, 0);
        times.push_back(bench::core_seconds([&] {
            const Edit edit = move_ballast(document, 0, 0, at);
            sum += compute_figures(read_project(edit.document), 0, memo).heat.sigma;
        }));
    }
    // The first step has everything to do; it is one of the 500.
    const double first = times.front();
    std::sort(times.begin(), times.end());
    // What the memo changes must be nothing.
    const Project last =
        read_project(move_ballast(document, 0, 0, there + Vec3(1e-5 * (steps - 1), 0, 0)).document);
    const double apart =
        std::abs(*compute_figures(last, 0, memo).heat.time - *compute_figures(last, 0).heat.time);
    return {
        times[std::size_t(0.99 * steps)] * 1e3, "ms",
        "99th percentile of 500 steps of a dragged weight in the demo: edit, reading, every figure; median " +
            bench::digits(times[steps / 2] * 1e3, 3) + " ms, first " + bench::digits(first * 1e3, 3) +
            " ms; heat time with and without what was kept: " + bench::digits(apart * 1e9, 2) + " ns apart"};
}

bench::Result draws() {
    const Project project = read_project(demo_document());
    const double seconds = bench::least(3, [&] { return draw_seconds(project, 2); });
    const Versus few = compare(project, 0, 1, {.draws = 1000}),
                 many = compare(project, 0, 1, {.draws = bench_draws});
    return {seconds, "s",
            "10 000 draws of two cars of the demo with shares, two threads, " +
                bench::digits(seconds / 2 / bench_draws * 1e6, 3) + " us a drawn heat; chance of winning " +
                bench::digits(many.first_wins, 3) + ", from the first 1000 " +
                bench::digits(few.first_wins, 3) + " (standard error of the latter " +
                bench::digits(std::sqrt(many.first_wins * (1 - many.first_wins) / 1000), 1) + ")"};
}

/// One thread against two in turn, so that other programs disturb both alike; the median of the ratios.
bench::Result two_cores() {
    const Project project = read_project(demo_document());
    std::vector<double> ratios;
    for (int n = 0; n < 5; ++n) {
        const double one = draw_seconds(project, 1), two = draw_seconds(project, 2);
        ratios.push_back(one / two);
    }
    std::sort(ratios.begin(), ratios.end());
    const auto same = [&](unsigned threads) {
        return compare(project, 0, 1, {.draws = 500, .threads = threads}).mean_gap;
    };
    return {ratios[2], "times",
            "10 000 draws of two cars on one thread over on two, median of five pairs (" +
                bench::digits(ratios.front(), 3) + " to " + bench::digits(ratios.back(), 3) +
                "); results on one and two threads differ by " +
                bench::digits(std::abs(same(1) - same(2)), 2) + " s"};
}

const bench::Registered drag_bench{"drag-step-p99", drag_step};
const bench::Registered draws_bench{"draws-10000", draws};
const bench::Registered core_bench{"draws-two-core-speedup", two_cores};

} // namespace
