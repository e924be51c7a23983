#include "sheet/tiles.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::ui::paper {

namespace {

/// mm that an axle's mark takes to either side of its middle.
constexpr double clear = 5;

/// Where an overlap starts that begins no later than `latest` and has none of these places in it.
double overlap_before(double latest, const std::vector<double>& whole) {
    double start = latest;
    const auto in_the_way = [&](double place) {
        return place > start - clear && place < start + tile_overlap + clear;
    };
    for (auto found = std::find_if(whole.begin(), whole.end(), in_the_way); found != whole.end();
         found = std::find_if(whole.begin(), whole.end(), in_the_way))
        start = *found - tile_overlap - clear;
    return start;
}

} // namespace

std::vector<Tile> split_into_tiles(double from, double to, double room, const std::vector<double>& whole) {
    // A drawing within a hair of the room counts as fitting.
    if (to - from <= room + 1e-9) return {{from, to}};
    const double step = std::max(room - tile_overlap, tile_overlap);
    const auto count = static_cast<int>(std::ceil((to - from - tile_overlap) / step - 1e-9));
    std::vector<Tile> tiles;
    double start = from;
    for (int i = 1; i < count; ++i) {
        // As far along as the room goes, and as far back as the tiles to come still reach the end.
        const double latest = start + step, earliest = to - (count - i) * step - tile_overlap;
        const double next = overlap_before(latest, whole);
        const double chosen = next >= earliest ? next : latest;
        tiles.push_back({start, chosen + tile_overlap});
        start = chosen;
    }
    tiles.push_back({start, to});
    return tiles;
}

} // namespace rampwright::ui::paper
