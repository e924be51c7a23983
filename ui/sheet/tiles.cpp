#include "sheet/tiles.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::ui::paper {

std::vector<Tile> split_into_tiles(double from, double to, double room) {
    // A drawing within a hair of the room counts as fitting.
    if (to - from <= room + 1e-9) return {{from, to}};
    const double step = std::max(room - tile_overlap, tile_overlap);
    const auto count = static_cast<int>(std::ceil((to - from - tile_overlap) / step - 1e-9));
    std::vector<Tile> tiles;
    for (int i = 0; i < count; ++i)
        tiles.push_back({from + i * step, std::min(from + i * step + step + tile_overlap, to)});
    return tiles;
}

} // namespace rampwright::ui::paper
