#pragma once

#include "drawing/car_shape.hpp"

#include <optional>
#include <vector>

namespace rampwright::ui::paper {

/// A face of the block that a tool can come from.
enum class Face { top, bottom, right, left, tail, nose };

/// A cut as the person with the drill needs it: all distances from outer faces of the block, m.
struct CutPlace {
    const CutPlan* cut = nullptr;
    Vec3 low = Vec3::Zero(), high = Vec3::Zero(); ///< the box around it, within the block
    std::optional<Face> opens; ///< the first of top, bottom, right, left, tail, nose that it breaks through
    bool through = false;      ///< it breaks through the opposite face as well
    bool slanted = false;      ///< a bore along none of the axes
    /// From the sawn surface to the floor, where the surface stands lowest and highest above it.
    double least_depth = 0, greatest_depth = 0;
    double depth_from_block = 0; ///< from the block's own face, before sawing
    double left_standing = 0;    ///< least wood between the floor and the face beyond
    double point = 0;            ///< how much deeper a drill's point goes
};

/// The plan's cuts, in its order. Surfaces are those of the side and the top outline, edges not rounded.
std::vector<CutPlace> find_cut_places(const CarPlan& plan, const CarShape& shape);

} // namespace rampwright::ui::paper
