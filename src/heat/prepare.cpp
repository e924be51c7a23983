#include <rampwright/heat/heat.hpp>

#include <cmath>

namespace rampwright {

HeatCar prepare(const CarOnWheels& car, const std::array<WheelLoss, 4>& losses, const Standing& level,
                double air_density, const Guide& guide) {
    HeatCar heat;
    heat.mass = car.mass;
    heat.wheelbase = car.wheelbase;
    heat.centre = {car.centre.x(), car.centre.z()};
    heat.nose = car.nose;
    heat.air_area = car.air_area;
    heat.air_density = air_density;
    heat.drag_height = car.drag_height;
    heat.guide = guide;
    heat.pitch_inertia = car.inertia(1, 1);
    heat.rear.radius = car.rear_radius;
    heat.front.radius = car.front_radius;
    for (Corner corner : all_corners) {
        const Wheel& wheel = car.wheels[std::size_t(corner)];
        if (!wheel.touches) continue;
        const WheelLoss& loss = losses[std::size_t(corner)];
        HeatAxle& axle = is_front(corner) ? heat.front : heat.rear;
        HeatCar::WheelPart& part = heat.parts[std::size_t(corner)];
        const double load = is_front(corner) ? level.front : level.rear;
        part.touches = true;
        part.load_share = load > 0 ? level.loads[std::size_t(corner)].value_or(0) / load : 0;
        part.mass = wheel.mass;
        part.spin_mass = wheel.spin_inertia / (axle.radius * axle.radius);
        part.journal_arm = loss.journal_arm;
        part.hub_arm = loss.hub_arm;
        part.rolling = loss.rolling;
        part.scrub = loss.scrub;
        part.windage = loss.windage / std::pow(axle.radius, 2.5);
        heat.pitch_inertia -= wheel.spin_inertia;
        axle.wheel_mass += part.mass;
        axle.spin_mass += part.spin_mass;
        axle.journal += part.load_share * part.journal_arm / axle.radius;
        axle.hub += part.load_share * part.hub_arm / axle.radius;
        axle.journal_wheel += part.mass * part.journal_arm / axle.radius;
        axle.hub_wheel += part.mass * part.hub_arm / axle.radius;
        axle.rolling += part.load_share * part.rolling;
        axle.scrub += part.load_share * part.scrub;
        axle.windage += part.windage;
    }
    return heat;
}

} // namespace rampwright
