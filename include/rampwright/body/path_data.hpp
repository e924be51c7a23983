#pragma once

#include <rampwright/body/outline.hpp>

#include <string_view>
#include <vector>

/// Lines as drawing files have them, in any unit and with y whichever way the file has it.
namespace rampwright {

/// A line drawn in one go: pieces that each begin where the one before ends.
struct DrawnLine {
    std::vector<OutlinePiece> pieces; ///< none has its two ends in one place; `from` counts them
    bool closed = false;              ///< the last ends where the first begins
};

/// The lines of an SVG path's `d` (SVG 1.1, 8.3): every command, absolute and relative. Arcs become cubics
/// within a ten-millionth of their radius. Lines without length are left out.
/// @throws Problem (not_ours) whose `where` is "character N", from 1.
std::vector<DrawnLine> read_path_data(std::string_view data);

/// Numbers in a row, parted by white space or commas, as in `points`, `viewBox` and transforms.
/// @throws Problem as `read_path_data`.
std::vector<double> read_number_list(std::string_view text);

/// A line through points; a closed one comes back to the first.
DrawnLine drawn_polyline(const std::vector<Eigen::Vector2d>& points, bool closed);
/// @param radii of the rounded corners, no more than half the sides; 0 for square ones.
DrawnLine drawn_rectangle(const Eigen::Vector2d& low, const Eigen::Vector2d& size,
                          const Eigen::Vector2d& radii);
DrawnLine drawn_ellipse(const Eigen::Vector2d& centre, const Eigen::Vector2d& radii);

} // namespace rampwright
