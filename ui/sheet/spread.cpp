#include "sheet/spread.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>

namespace rampwright::ui::paper {
namespace {

/// A run of labels that touch: `start` is its low end, the mean of where its labels would have it.
struct Run {
    double start = 0, length = 0;
    std::size_t count = 0;
};

void spread_row(const std::vector<Label*>& row, double low, double high, double gap) {
    std::vector<Run> runs;
    for (const Label* label : row) {
        const double size = label->size + gap;
        runs.push_back({label->at - size / 2, size, 1});
        while (runs.size() > 1) {
            Run& a = runs[runs.size() - 2];
            const Run& b = runs.back();
            if (a.start + a.length <= b.start) break;
            // Least squares: each label of b stands a.length further along than it would at the run's start.
            a.start = (double(a.count) * a.start + double(b.count) * (b.start - a.length)) /
                      double(a.count + b.count);
            a.length += b.length;
            a.count += b.count;
            runs.pop_back();
        }
    }
    double least = low - gap / 2;
    for (Run& run : runs) {
        run.start = std::max(run.start, least);
        least = run.start + run.length;
    }
    double most = high + gap / 2;
    for (auto run = runs.rbegin(); run != runs.rend(); ++run) {
        run->start = std::min(run->start, most - run->length);
        most = run->start;
    }
    std::size_t i = 0;
    for (const Run& run : runs) {
        double x = run.start;
        for (std::size_t n = 0; n < run.count; ++n, ++i) {
            row[i]->placed = x + (row[i]->size + gap) / 2;
            x += row[i]->size + gap;
        }
    }
}

} // namespace

int spread(std::vector<Label>& labels, double low, double high, double gap) {
    std::vector<Label*> order;
    double total = 0;
    for (Label& label : labels) {
        order.push_back(&label);
        total += label.size + gap;
    }
    std::stable_sort(order.begin(), order.end(),
                     [](const Label* a, const Label* b) { return a->at < b->at; });
    int rows = std::max(1, static_cast<int>(std::ceil(total / (high - low + gap))));
    // Unequal labels may need one more row than their sum says.
    for (;; ++rows) {
        std::vector<std::vector<Label*>> split(static_cast<std::size_t>(rows));
        for (std::size_t i = 0; i < order.size(); ++i)
            split[i % split.size()].push_back(order[i]);
        const bool fits = std::all_of(split.begin(), split.end(), [&](const std::vector<Label*>& row) {
            return row.size() < 2 ||
                   std::accumulate(row.begin(), row.end(), -gap, [&](double sum, const Label* l) {
                       return sum + l->size + gap;
                   }) <= high - low + 1e-9;
        });
        if (!fits) continue;
        for (std::size_t n = 0; n < split.size(); ++n) {
            for (Label* label : split[n])
                label->row = static_cast<int>(n);
            spread_row(split[n], low, high, gap);
        }
        return rows;
    }
}

} // namespace rampwright::ui::paper
