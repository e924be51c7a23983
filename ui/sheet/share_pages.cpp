#include "sheet/share_pages.hpp"

#include <algorithm>
#include <numeric>

namespace rampwright::ui::paper {
namespace {

constexpr double little = 0.4; // of a page, as for a section's drawing

} // namespace

std::vector<std::size_t> fill_pages(const std::vector<double>& heights, double first, double room) {
    std::vector<std::size_t> counts;
    double left = first;
    std::size_t count = 0;
    for (const double height : heights) {
        if (height > left && count > 0) {
            counts.push_back(count);
            count = 0;
            left = room;
        }
        left -= height;
        ++count;
    }
    if (count > 0) counts.push_back(count);
    return counts;
}

std::vector<std::size_t> share_pages(const std::vector<double>& heights, double first, double room) {
    const std::vector<std::size_t> filled = fill_pages(heights, first, room);
    if (filled.size() < 2) return filled;
    const auto on_last = static_cast<std::ptrdiff_t>(filled.back());
    if (std::accumulate(heights.end() - on_last, heights.end(), 0.0) >= little * room) return filled;
    // The most that every page may leave free at its end while there are no more pages.
    double none = 0, much = std::min(first, room);
    for (int i = 0; i < 30; ++i) {
        const double free = (none + much) / 2;
        (fill_pages(heights, first - free, room - free).size() <= filled.size() ? none : much) = free;
    }
    return fill_pages(heights, first - none, room - none);
}

} // namespace rampwright::ui::paper
