#pragma once

#include "car/outline_polygon.hpp"

#include <rampwright/body/solid.hpp>
#include <rampwright/car/car_model.hpp>
#include <rampwright/car/front_view.hpp>

#include <Eigen/Geometry>

/// The pieces of build_car, each small enough to test: from what the project says to solids in their places.
namespace rampwright {

/// The body's two outlines as polygons, measured once for a car.
struct BodyOutlines {
    OutlinePolygon profile, plan;
    explicit BodyOutlines(const BodyPlan& body);

    /// Range of x that both have.
    Interval along() const;
    /// The body's sides at x: its least and greatest y, from the plan outline.
    std::optional<Interval> sides(double x) const;
};

/// An axle: a shank with its inner end in the wood and a head that keeps the wheel on. It runs level across
/// the car; what cant and toe move it by (a quarter of a millimetre at 3 degrees) is left out.
struct AxleShape {
    Vec3 inner = Vec3::Zero(), under_head = Vec3::Zero(), head_end = Vec3::Zero();
    double shank_diameter = 0, head_diameter = 0;
};

/// The head of an axle is taken to be a fifth of its diameter thick (a nail's; common practice, no source).
inline constexpr double head_thickness_share = 0.2;

/// The wheel's numbers, without its place.
Wheel make_wheel(const WheelPlan& plan);
/// Puts the wheels beside the body, and a raised one above the running surface that the others define.
/// @throws Problem where an axle lies ahead of or behind the wood.
void place_wheels(const CarPlan& plan, const BodyOutlines& outlines, CarModel& car);
MassProperties wheel_properties(const Wheel& wheel);
/// JSON pointer of a wheel in the file.
std::string wheel_key(const CarModel& car, const Wheel& wheel);

AxleShape axle_shape(const AxlePlan& plan, const Wheel& wheel);
MassProperties axle_properties(const AxlePlan& plan, const AxleShape& shape);

/// The body with its cuts in the project's order, followed by the axles' holes.
///
/// A hole is a bore across the car at the axle's place; above it where a wheel is raised, on that wheel's
/// side. A slot is open at the bottom: a pocket as wide as the hole from below the wood to half a hole above
/// the axle's centre, so that the axle lies against its end.
BodyShape body_shape(const CarPlan& plan, const CarModel& car, const BodyOutlines& outlines);

/// Paint and decals as six thin plates, the faces of the box around the outlines: right in its centre and
/// within a tenth or two in its inertia for usual bodies, of a part that weighs a gram.
MassProperties finish_properties(double mass, const BodyOutlines& outlines);

/// A ballast piece in its place. Putty lies in its cut up to a level.
/// @param cuts the body's cuts, among them the one that holds putty.
MassProperties ballast_properties(const BallastPlan& piece, const std::vector<CutPlan>& cuts,
                                  const BodyOutlines& outlines);

/// What a piece shows to the front, and how low it reaches, m, car frame (putty: nothing).
std::optional<ViewShape> front_of(const BallastPlan& piece);
/// The box around a piece, turned as it is (putty: empty).
std::optional<Eigen::AlignedBox3d> box_around(const BallastPlan& piece);

/// kg/m³ of a putty; that of tungsten putty where the material is not in the table.
double putty_density(std::string_view material);

/// Putty in its cut: how far it fills it.
struct PuttyFill {
    MassProperties properties;
    double volume = 0;   ///< of the putty, m³
    double capacity = 0; ///< of the cut within the wood's outlines, m³
    double level = 0;    ///< z of its surface, m
};
PuttyFill fill_with_putty(const BallastPlan& putty, const CutPlan& cut, const BodyOutlines& outlines);

} // namespace rampwright
