#pragma once

#include <rampwright/body/solid.hpp>

#include <Eigen/Core>

#include <array>
#include <cstdint>
#include <vector>

namespace rampwright {

/// A surface of triangles, m. Seen from outside the corners of a triangle run counter-clockwise.
struct Mesh {
    std::vector<Eigen::Vector3d> vertices;
    std::vector<std::array<std::uint32_t, 3>> triangles;
};

/// The finished body's surface for files: closed, each edge between two triangles that run along it opposite
/// ways, no two vertices closer than a micrometre, enclosing the volume that `measure` finds within 1e-3 of
/// it (checked before it is returned).
///
/// The uncut body is a row of convex cells along x, divided where either outline has a corner and so that
/// chords keep within `chord` of curves; each cut is a convex solid with plane faces (a bore's circle a
/// regular polygon of the circle's own area) that divides the cells it meets. Cells share faces and corners,
/// so that cuts may overlap, break out or lie flush with a face. Triangles of one plane are then joined by
/// edge collapses (quadric error: Garland and Heckbert 1997).
/// @param chord m.
/// @throws Problem as `measure` does; and where the wood has no single skin, because two cuts, or a cut and a
///         face, touch along a line; where no wood is left; or where the surface fails the checks above.
Mesh body_mesh(const BodyShape& shape, double chord = 5e-6);

/// The same surface for pictures: quick, neither joined nor checked, curves within `chord`. Empty where it
/// can't be made. @throws Problem as `measure` does.
Mesh body_facets(const BodyShape& shape, double chord);

/// What a closed mesh encloses, m³ (divergence theorem).
double enclosed_volume(const Mesh& mesh);

/// Vertices less edges plus triangles: of one closed skin 2 less twice its through holes.
long euler_characteristic(const Mesh& mesh);

} // namespace rampwright
