#include "study/changes.hpp"

namespace rampwright {

void set_wheel_mass(HeatCase& c, Corner corner, double mass) {
    Wheel& wheel = c.car.wheels[std::size_t(corner)];
    const double ratio = mass / wheel.mass;
    wheel.spin_inertia *= ratio;
    wheel.cross_inertia *= ratio;
    wheel.mass = mass;
    for (Part& part : c.car.parts)
        if (part.kind == PartKind::wheel && part.corner == corner) {
            part.properties.mass *= ratio;
            part.properties.inertia *= ratio;
        }
}

void add_wheel_mass(HeatCase& c, double amount) {
    for (const Corner corner : all_corners)
        set_wheel_mass(c, corner, c.car.wheels[std::size_t(corner)].mass + amount);
}

void move_balance(HeatCase& c, double amount) {
    AsBuilt& built = c.car.as_built;
    if (built.front_load) {
        // The same weight further forward by `amount`: front load in proportion to the balance.
        const double mass = built.mass.value_or(total(c.car).mass);
        *built.front_load += mass * amount / (c.car.front_x - c.car.rear_x);
        return;
    }
    if (built.balance_ahead_of_rear_axle) {
        *built.balance_ahead_of_rear_axle += amount;
        return;
    }
    double movable = 0;
    for (const Part& part : c.car.parts)
        if (!part.corner) movable += part.properties.mass;
    const double shift = amount * total(c.car).mass / movable;
    for (Part& part : c.car.parts)
        if (!part.corner) part.properties.centre.x() += shift;
}

void add_mass(HeatCase& c, double amount) {
    if (c.car.as_built.mass) {
        *c.car.as_built.mass += amount;
        return;
    }
    MassProperties all = total(c.car);
    Part part;
    part.kind = PartKind::ballast;
    part.properties.mass = amount;
    part.properties.centre = all.centre;
    c.car.parts.push_back(part);
}

void cant_axle(HeatCase& c, bool front, double amount) {
    for (Wheel& wheel : c.car.wheels)
        if (is_front(wheel.corner) == front && wheel.touches) wheel.cant += amount;
}

void steer_front(HeatCase& c, double amount) {
    for (Wheel& wheel : c.car.wheels)
        if (is_front(wheel.corner) && wheel.touches) wheel.toe += wheel.toe < 0 ? -amount : amount;
}

} // namespace rampwright
