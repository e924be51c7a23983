#pragma once

#include <rampwright/body/mesh.hpp>

#include <optional>

namespace rampwright::body_detail {

/// Joins triangles by edge collapses that keep the surface closed: no vertex moves farther than `tolerance`
/// from the planes around it, and edges shorter than `shortest` go wherever that can be.
void join_triangles(Mesh& mesh, double tolerance, double shortest);

/// Gives each skin a vertex of its own where skins touch at one. @return a place where more than two
/// triangles meet along an edge, or where one lies open: then the surface is no skin.
std::optional<Eigen::Vector3d> separate_skins(Mesh& mesh);

/// Whether the surface is closed and no two corners of a triangle are as good as one, as a file of
/// single-precision millimetres has it.
bool is_sound(const Mesh& mesh);

} // namespace rampwright::body_detail
