#include "car/car_parts.hpp"
#include "car/running_surface.hpp"

#include <rampwright/car/wheel_profile.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <numbers>

namespace rampwright {

Wheel make_wheel(const WheelPlan& plan) {
    Wheel wheel;
    wheel.corner = plan.corner;
    wheel.row = plan.row;
    wheel.touches = plan.touches;
    wheel.mass = plan.mass;
    wheel.radius = plan.outer_diameter / 2;
    wheel.bore_radius = plan.bore_diameter / 2;
    wheel.width = plan.width;
    wheel.cant = plan.cant;
    wheel.toe = plan.toe;
    wheel.hub = plan.hub;
    wheel.hub_ring = plan.hub_ring;
    wheel.body_ring = plan.body_ring;
    wheel.raised = plan.touches ? 0 : plan.raised;
    wheel.runout = plan.runout;
    const MassProperties revolved = revolve(profile_of(plan), plan.mass);
    wheel.spin_inertia = plan.spin_inertia.value_or(revolved.inertia(1, 1));
    // Half of the spin inertia is that of the same mass about a diameter of its own plane; the rest comes
    // from the wheel's width and stays as it is when a measured spin inertia moves the mass in or out.
    wheel.cross_inertia = revolved.inertia(0, 0) + (wheel.spin_inertia - revolved.inertia(1, 1)) / 2;
    return wheel;
}

std::string wheel_key(const CarModel& car, const Wheel& wheel) {
    return car.key + "/wheels/" + std::to_string(wheel.row);
}

void place_wheels(const CarPlan& plan, const BodyOutlines& outlines, CarModel& car) {
    for (const Corner corner : all_corners) {
        const auto i = static_cast<std::size_t>(corner);
        Wheel& wheel = car.wheels[i];
        const double x = is_front(corner) ? car.front_x : car.rear_x;
        const auto sides = outlines.sides(x);
        if (!sides)
            throw Problem(Exit::could_not,
                          car.key + (is_front(corner) ? "/axles/front_x_mm" : "/axles/rear_x_mm"),
                          is_front(corner) ? "the front axle is not under the body"
                                           : "the rear axle is not under the body",
                          Core::tr("move it between the ends of the plan outline"));
        const double out = plan.wheels[i].gap_to_body + wheel.width / 2;
        wheel.centre = {x, is_left(corner) ? sides->high + out : sides->low - out,
                        is_front(corner) ? car.front_z : car.rear_z};
    }
    const RunningSurface surface = find_running_surface(car);
    for (Wheel& wheel : car.wheels)
        if (!wheel.touches)
            wheel.centre.z() +=
                (wheel.radius + wheel.raised - surface.height(wheel.centre)) / surface.along.x();
}

MassProperties wheel_properties(const Wheel& wheel) {
    const Eigen::Vector3d inertia(wheel.cross_inertia, wheel.spin_inertia, wheel.cross_inertia);
    return {wheel.mass, wheel.centre, inertia.asDiagonal()};
}

AxleShape axle_shape(const AxlePlan& plan, const Wheel& wheel) {
    const Vec3 outward = is_left(wheel.corner) ? Vec3::UnitY() : Vec3(-Vec3::UnitY());
    AxleShape shape;
    shape.under_head = wheel.centre + wheel.width / 2 * outward;
    shape.inner = shape.under_head - plan.length * outward;
    shape.head_end = shape.under_head + head_thickness_share * plan.head_diameter * outward;
    shape.shank_diameter = plan.shank_diameter;
    shape.head_diameter = plan.head_diameter;
    return shape;
}

MassProperties axle_properties(const AxlePlan& plan, const AxleShape& shape) {
    const double shank = plan.shank_diameter * plan.shank_diameter * plan.length;
    const double head = plan.head_diameter * plan.head_diameter * (shape.head_end - shape.under_head).norm();
    const double shank_mass = plan.mass_each * shank / (shank + head);
    const std::array parts{cylinder(shank_mass, plan.shank_diameter, plan.length, Vec3::UnitY(),
                                    (shape.inner + shape.under_head) / 2),
                           cylinder(plan.mass_each - shank_mass, plan.head_diameter,
                                    (shape.head_end - shape.under_head).norm(), Vec3::UnitY(),
                                    (shape.under_head + shape.head_end) / 2)};
    return combine(parts);
}

} // namespace rampwright
