#pragma once

#include <rampwright/body/solid.hpp>

#include <Eigen/Core>

#include <span>
#include <variant>

namespace rampwright {

/// A thing beside the body as seen from the front, (y, z): a wheel or an axle is a rectangle, a ball a disc.
struct ViewRectangle {
    Eigen::Vector2d low, high;
};
struct ViewDisc {
    Eigen::Vector2d centre;
    double radius = 0;
};
using ViewShape = std::variant<ViewRectangle, ViewDisc>;

/// What the air meets.
struct FrontView {
    double area = 0;   ///< m²
    double height = 0; ///< of the area's centroid, m, car frame
};

/// Area of the car's outline seen along the body's x axis: everything in front of or behind something else
/// counts once. The body shows the union of its y-z sections, rounded edges included; a pocket or a bore
/// along x lets one see through only where nothing else stands before or behind it (bores in other directions
/// are taken as closed). Accurate to about 1e-4, and continuous in every measure but for such a view through.
FrontView measure_front_view(const BodyShape& body, std::span<const ViewShape> others);

} // namespace rampwright
