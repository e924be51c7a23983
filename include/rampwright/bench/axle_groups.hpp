#pragma once

#include <rampwright/project/project.hpp>

#include <vector>

namespace rampwright {

/// Axles that can stand for each other: same finish, diameters alike, and straight or not.
struct AxleGroup {
    bool straight = true;
    std::vector<std::size_t> axles; ///< places in the table, least bow first
};

/// A bow that a gauge at the kitchen table still tells from none, and diameters it cannot tell apart, m
/// (ours, no source).
inline constexpr double straight_bow = 0.03e-3, alike_diameter = 0.02e-3;

/// Largest group first among the straight ones, then the bowed. Within a group no two diameters differ by
/// more than `alike_diameter`; axles without a diameter or a bow go by what they have.
std::vector<AxleGroup> group_axles(const std::vector<BenchAxle>& axles);

} // namespace rampwright
