#pragma once

#include <rampwright/materials/materials.hpp>

#include <string_view>
#include <vector>

namespace rampwright {

/// A shape to start cutting from, of our own design: both outlines as shares of the block. Profile (x, z): of
/// its length and height, 0 to 1; plan (x, y): of its length, 0 to 1, and of its width, -1/2 to 1/2.
struct StartingShape : SourcedRow {
    std::vector<PlanPoint> profile, plan;
};

const std::vector<StartingShape>& starting_shapes();

/// The reader behind the table. Throws Problem, with the row's JSON pointer, where an outline has fewer than
/// three points or one outside the block, or where `read_woods` would.
std::vector<StartingShape> read_starting_shapes(std::string_view json);

} // namespace rampwright
