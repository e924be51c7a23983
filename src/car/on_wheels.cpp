#include "car/running_surface.hpp"

#include <rampwright/car/car_model.hpp>
#include <rampwright/core/problem.hpp>

#include <vector>

namespace rampwright {

namespace {

/// What a scale, a balance edge and a pendulum said, in place of what the parts add up to. Mass first; then
/// the front load, which together with the mass fixes the balance point, so that a balance point given as
/// well has nothing left to say (reconcile_as_built tells by how much it disagrees).
void apply(const AsBuilt& as_built, CarOnWheels& car) {
    if (as_built.mass) {
        car.inertia *= *as_built.mass / car.mass;
        car.mass = *as_built.mass;
    }
    if (as_built.front_load)
        car.centre.x() = *as_built.front_load * car.wheelbase / car.mass;
    else if (as_built.balance_ahead_of_rear_axle)
        car.centre.x() = *as_built.balance_ahead_of_rear_axle;
    if (as_built.centre_height) car.centre.z() = *as_built.centre_height;
    if (as_built.pitch_inertia) car.inertia(1, 1) = *as_built.pitch_inertia;
    if (as_built.yaw_inertia) car.inertia(2, 2) = *as_built.yaw_inertia;
}

} // namespace

MassProperties total(const CarModel& car) {
    std::vector<MassProperties> parts;
    parts.reserve(car.parts.size());
    for (const Part& part : car.parts)
        parts.push_back(part.properties);
    return combine(parts);
}

CarOnWheels on_wheels(const CarModel& car) {
    const RunningSurface surface = find_running_surface(car);
    const MassProperties whole = total(car);
    const Eigen::Matrix3d turn = surface.from_car();

    CarOnWheels standing;
    standing.mass = whole.mass;
    standing.centre = surface.level(whole.centre);
    standing.inertia = turn * whole.inertia * turn.transpose();
    standing.wheelbase = surface.wheelbase;
    standing.rear_radius = surface.rear_radius;
    standing.front_radius = surface.front_radius;
    const Vec3 nose = surface.level(car.nose);
    standing.nose = {nose.x(), nose.z()};
    standing.air_area = car.drag_coefficient.value * car.frontal_area;
    standing.drag_height = car.drag_height;
    standing.wheels = car.wheels;
    for (Wheel& wheel : standing.wheels)
        wheel.centre = surface.level(wheel.centre);
    standing.model = car.model;
    apply(car.as_built, standing);
    return standing;
}

} // namespace rampwright
