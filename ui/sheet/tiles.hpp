#pragma once

#include <vector>

namespace rampwright::ui::paper {

/// A stretch of a drawing that one page shows, mm of the drawing.
struct Tile {
    double from = 0, to = 0;
};

/// What neighbouring pages both show.
inline constexpr double tile_overlap = 20;

/// Stretches no longer than `room` that cover `from` to `to` and overlap by 20 mm where there are several; as
/// few as do. Where there is a choice, overlaps keep clear of the places in `whole`.
std::vector<Tile> split_into_tiles(double from, double to, double room,
                                   const std::vector<double>& whole = {});

} // namespace rampwright::ui::paper
