#pragma once

#include <rampwright/body/mass_properties.hpp>
#include <rampwright/project/project.hpp>
#include <rampwright/results/finding.hpp>

#include <array>
#include <optional>
#include <string>
#include <vector>

/// A car put together: its parts with their masses and places, its wheels, its outer shape. SI, car
/// frame (x forward from the tail of the block, y left, z up from its bottom face) unless said.
namespace rampwright {

enum class PartKind { body, finish, axle, wheel, ballast, holding };

/// One thing that weighs something.
struct Part {
    PartKind kind = PartKind::body;
    std::string key;              ///< JSON pointer of what it comes from
    std::string name;             ///< for tables: "wood", "axle rear left", the ballast's own name
    std::optional<Corner> corner; ///< axles and wheels
    MassProperties properties;
    double mass_sigma = 0;  ///< kg
    double place_sigma = 0; ///< m, each axis
};

/// A wheel as the loads, the losses and the heat need it.
struct Wheel {
    Corner corner = Corner::rear_left;
    std::size_t row = 0; ///< its place in the file's list
    bool touches = true;
    double mass = 0, radius = 0, bore_radius = 0, width = 0;
    double spin_inertia = 0, cross_inertia = 0; ///< kg m², about its axle and about a diameter
    double cant = 0, toe = 0;
    Hub hub = Hub::flat;
    Vec2 hub_ring = Vec2::Zero(), body_ring = Vec2::Zero();
    double raised = 0, runout = 0;
    Vec3 centre = Vec3::Zero();
};

/// Everything about a car that does not depend on the track, measured once (about a millisecond: the
/// wood's volume); drawn values are varied on it without measuring the wood again.
struct CarModel {
    std::size_t car = 0; ///< its place in the project
    std::string key;     ///< "/cars/N"
    std::vector<Part> parts;
    std::array<Wheel, 4> wheels; ///< by Corner
    double rear_x = 0, front_x = 0, rear_z = 0, front_z = 0;
    Vec3 nose = Vec3::Zero(); ///< the body's most forward point, the lowest where several tie
    Vec3 low = Vec3::Zero(), high = Vec3::Zero(); ///< box around body and wheels
    double ground_clearance = 0; ///< least gap between body (or ballast) and the running surface
    double wood_volume = 0, body_mass = 0;
    double frontal_area = 0; ///< from the front view, shadowed parts counted once, unless given
    double drag_height = 0;  ///< above the running surface
    Uncertain drag_coefficient;
    Model model;
    AsBuilt as_built;
    SteerNote steer;
};

/// Puts a car together.
/// @throws Problem where its shape cannot be measured, `where` the JSON pointer.
CarModel build_car(const Project& project, std::size_t car);

/// Parts summed: mass, centre, inertia about the centre. As-built values are not applied.
MassProperties total(const CarModel& car);

/// The car reduced to what standing and rolling need, as-built values applied. Level frame: x ahead of the
/// rear axle, along a level surface the touching wheels stand on; y left of the centre plane; z above it.
struct CarOnWheels {
    double mass = 0;
    Vec3 centre = Vec3::Zero();                        ///< level frame
    Eigen::Matrix3d inertia = Eigen::Matrix3d::Zero(); ///< about the centre, whole car, wheels not turning
    double wheelbase = 0;                              ///< level
    double rear_radius = 0, front_radius = 0;          ///< of the touching wheels
    Vec2 nose = Vec2::Zero(); ///< (x ahead of rear axle, z above surface), level frame
    double air_area = 0;      ///< drag coefficient times frontal area, m²
    double drag_height = 0;
    std::array<Wheel, 4> wheels; ///< centres in the level frame
    Model model;
};

/// @throws Problem where no front or no rear wheel touches, or the axles are the wrong way round.
CarOnWheels on_wheels(const CarModel& car);

/// What keeps a standing car from rolling down: the start pin at its nose, or its rear wheels held fast.
enum class Held { by_pin, by_rear_wheels };

/// How the car stands on a slope, idealised (three wheels: statics; four: equal stiffness, least norm,
/// a wheel whose load would be negative is in the air and left out).
struct Standing {
    std::array<std::optional<double>, 4>
        loads;                  ///< N, normal to the surface, by Corner; none: raised or lifted
    double front = 0, rear = 0; ///< N, of the axles; one is negative where the car tips over the other
    bool tips = false;          ///< the loads' resultant acts outside the wheels; `loads` are then those of
                                ///< the edge it tips over, as if held from falling
    double tipping_margin = 0;  ///< m from that point to the nearest line between contacts; negative outside
    bool idealised = false;     ///< four wheels: the split left to right is a model
};

/// @param slope rad, negative where the nose points downhill.
/// Held at height h the loads' resultant acts at x_g - (z_g - h) tan(slope), so with the nose downhill and
/// the centre of mass above the pin the front carries more than on the level (moments about the rear
/// contact).
Standing stand(const CarOnWheels& car, double slope, double gravity, Held held = Held::by_pin);

/// What as-built values say against the computed ones, in words and numbers.
std::vector<Finding> reconcile_as_built(const CarModel& car);

/// Fit, overlap, walls, clearances, geometry: what will not go together, with numbers.
std::vector<Finding> check_fit(const Project& project, const CarModel& car);

} // namespace rampwright
