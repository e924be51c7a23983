#pragma once

#include <rampwright/body/mesh.hpp>

#include <string>
#include <string_view>

namespace rampwright {

/// A binary STL file, mm: 80 bytes of title, the number of triangles, then each triangle's normal, its
/// corners and two bytes of nothing; all little-endian, single precision (3D Systems, 1988; from memory).
std::string to_stl(const Mesh& mesh, std::string_view title);

} // namespace rampwright
