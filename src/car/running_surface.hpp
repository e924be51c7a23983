#pragma once

#include <rampwright/car/car_model.hpp>

namespace rampwright {

/// The level surface a car stands on, as seen from the car: the line below its touching rear and front
/// wheels that touches both (their common tangent in the x-z plane). Where the two wheels of an axle differ
/// in radius the axle's mean counts; the roll that follows (half a millimetre across the track turns the car
/// by half a degree) is left out.
struct RunningSurface {
    Vec3 origin = Vec3::Zero(); ///< the surface's point under the rear axle, car frame, y = 0
    Vec2 along = Vec2::UnitX(); ///< unit (x, z) forward along the surface, car frame
    double wheelbase = 0;       ///< along the surface
    double rear_radius = 0, front_radius = 0;

    /// Height of a point of the car frame above the surface.
    double height(const Vec3& point) const;
    /// A point of the car frame in the level frame.
    Vec3 level(const Vec3& point) const;
    /// The rotation that turns car axes into level axes.
    Eigen::Matrix3d from_car() const;
};

/// @throws Problem where no front or no rear wheel touches, the axles are the wrong way round, or one wheel
///         is so large that no line passes below both.
RunningSurface find_running_surface(const CarModel& car);

} // namespace rampwright
