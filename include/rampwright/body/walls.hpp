#pragma once

#include <rampwright/body/solid.hpp>

#include <Eigen/Core>

#include <limits>
#include <vector>

namespace rampwright {

/// The least wood left beside a cut.
struct Wall {
    static constexpr int outside = -1, none = -2;
    double thickness = std::numeric_limits<double>::infinity(); ///< m
    int beyond = none; ///< index of the other cut, or the body's outside; none where no wood is beside it
    Eigen::Vector3d at = Eigen::Vector3d::Zero(); ///< on the cut's surface, in the wood
    Eigen::Vector3d to = Eigen::Vector3d::Zero(); ///< the nearest point across the wall
};

/// For each cut the thinnest wall beside it: the least distance from its surface, where it borders on wood,
/// to an outside face of the body that it does not break through, or to another cut that it does not meet. A
/// face it opens into is no wall. Smooth outlines are taken as chords within 0.005 mm; the result is good to
/// 0.02 mm.
std::vector<Wall> walls(const BodyShape& shape);

} // namespace rampwright
