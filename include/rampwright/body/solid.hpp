#pragma once

#include <rampwright/body/mass_properties.hpp>
#include <rampwright/body/outline.hpp>

#include <Eigen/Core>

#include <array>
#include <numbers>
#include <variant>
#include <vector>

namespace rampwright {

/// A pocket: an axis-aligned box between opposite corners, m; it may reach outside the wood.
struct Pocket {
    Eigen::Vector3d low = Eigen::Vector3d::Zero(), high = Eigen::Vector3d::Zero();
};

/// A bore of full diameter from one centre to another, in any direction, m. A pointed bore goes deeper than
/// `to` by what the drill's point leaves: a cone of 118° (`drill_point_angle`), diameter / (2 tan 59°) long.
struct Bore {
    Eigen::Vector3d from = Eigen::Vector3d::Zero(), to = Eigen::Vector3d::Zero();
    double diameter = 0;
    bool pointed = false;
};

/// Included angle of a standard twist drill's point, rad (118°, DIN 1412 form A: from memory).
inline constexpr double drill_point_angle = 118 * std::numbers::pi / 180;

using Cut = std::variant<Pocket, Bore>;

/// A wooden body: what a saw, sandpaper and drills leave of a block. Car frame, m.
///
/// The uncut body is the solid common to `profile` (x, z) extruded across y and `plan` (x, y) extruded along
/// z. Where the body is sanded, each y-z section of it (a rectangle, or several) has its corners rounded to
/// `edge_radius`, or to half its smaller side where that is less. The cuts take away from it: they may
/// overlap one another, break through any face and reach outside; wood is never removed twice.
struct BodyShape {
    Outline profile;
    Outline plan;
    double edge_radius = 0;
    std::vector<Cut> cuts;
};

/// Volume integrals of a body about the car's origin.
struct BodyMeasure {
    Moments wood;                 ///< what is left
    Moments uncut;                ///< before any cut
    std::vector<Moments> removed; ///< per cut, what it alone takes out of the uncut body
};

/// Measures a body. Throws Problem where it can't be: an outline that crosses itself ("profile_mm/3"), that
/// is missing ("plan_mm"), a number that isn't finite, a negative radius or diameter ("cuts/2").
///
/// The section at each x is integrated exactly: its edges are straight or arcs of conics, found by their
/// intersections. Along x it is integrated by Gauss-Legendre quadrature between the places where the section
/// changes its kind: exactly for flat faces, adaptively otherwise: to about 1e-9 of a cut by itself,
/// to 1e-7 of it where curved cuts run into one another.
BodyMeasure measure(const BodyShape& shape);

/// The wood of the vertical line through (x, y), from below: [low, high] in m. For pictures and for checks.
std::vector<std::array<double, 2>> z_intervals(const BodyShape& shape, double x, double y);

} // namespace rampwright
