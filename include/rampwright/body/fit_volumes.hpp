#pragma once

#include <rampwright/body/solid.hpp>

#include <Eigen/Core>

#include <span>

namespace rampwright {

/// A piece of ballast, or anything convex that has to find its place: by its centre, in the car frame, m.
struct Piece {
    enum class Kind { box, cylinder, sphere };
    Kind kind = Kind::box;
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();
    /// Box: its sides along x, y, z before it is turned. Cylinder: diameter, length. Sphere: diameter.
    Eigen::Vector3d size = Eigen::Vector3d::Zero();
    Eigen::Vector3d axis = Eigen::Vector3d::UnitZ(); ///< of a cylinder, before it is turned
    double turned = 0;                               ///< about z, rad, counter-clockwise seen from above
};

/// Volume integrals of a piece, in closed form.
Moments moments(const Piece& piece);

/// What a piece has in common with something, by volume. Each is good to 1e-7 of the piece or better.
double volume_in_cuts(const Piece& piece, std::span<const Cut> cuts);     ///< with at least one of the cuts
double volume_out_of_cuts(const Piece& piece, std::span<const Cut> cuts); ///< sticking out of its cavity
double volume_in_wood(const Piece& piece, const BodyShape& body);         ///< where wood is still standing
double volume_out_of_body(const Piece& piece, const BodyShape& body);     ///< outside the uncut body
double overlap(const Piece& one, const Piece& other);

/// How far something sticks out, m: zero where it doesn't.
struct Protrusion {
    double depth = 0;
    Eigen::Vector3d at = Eigen::Vector3d::Zero(); ///< its farthest point
    Eigen::Vector3d towards =
        Eigen::Vector3d::Zero(); ///< unit vector, outward; zero where nothing sticks out
};

/// How far a piece sticks out of the cavity that holds it: past the farthest face of a pocket; past a bore's
/// ends or wall (the drill's point does not count as room). What sticks out of an open side counts too.
Protrusion sticking_out(const Piece& piece, const Cut& cavity);

/// How far a piece stands past the surface of the uncut body: its greatest distance from the profile, from
/// the plan or, in a y-z section, from a rounded corner. Smooth outlines are taken as chords within 0.02 mm.
Protrusion past_body(const Piece& piece, const BodyShape& body);

} // namespace rampwright
