#pragma once

#include <rampwright/car/car_model.hpp>
#include <rampwright/core/constants.hpp>

#include <random>

/// Cars for the tests of losses and guide.
namespace rampwright::test {

inline Wheel& wheel(CarOnWheels& car, Corner corner) {
    return car.wheels[static_cast<std::size_t>(corner)];
}

inline void set(Model& model, ModelName name, double value) {
    model[name].value = value;
}

/// A usual car: three wheels touch, the left front one is raised, every value a default.
inline CarOnWheels usual_car() {
    CarOnWheels car;
    car.mass = 0.1417;
    car.wheelbase = 0.1111;
    car.rear_radius = car.front_radius = 0.0151;
    car.centre = {0.022, 0, 0.016};
    car.inertia.diagonal() << 2.4e-5, 2.6e-4, 2.7e-4;
    car.nose = {0.1531, 0.012};
    for (Corner corner : all_corners) {
        Wheel& w = wheel(car, corner);
        w.corner = corner;
        w.mass = 0.0026;
        w.radius = 0.0151;
        w.bore_radius = 0.00114;
        w.width = 0.0085;
        w.hub_ring = w.body_ring = {0.00114, 0.003};
        w.centre = {is_front(corner) ? car.wheelbase : 0, is_left(corner) ? 0.027 : -0.027, 0.0151};
    }
    wheel(car, Corner::front_left).touches = false;
    Model& m = car.model;
    set(m, ModelName::journal, 0.10);
    set(m, ModelName::hub_on_head, 0.15);
    set(m, ModelName::hub_on_wood, 0.35);
    set(m, ModelName::rolling, 0.0015);
    set(m, ModelName::edge_factor, 1.0);
    set(m, ModelName::windage, 1.0);
    set(m, ModelName::tread_grip, 0.3);
    set(m, ModelName::creep_per_rad, 10);
    set(m, ModelName::rail, 0.2);
    set(m, ModelName::rail_share, 0.25);
    set(m, ModelName::touch_share, 0.6);
    set(m, ModelName::restitution, 0.5);
    set(m, ModelName::align_deg, 0.4);
    set(m, ModelName::need_deg, 0.4);
    set(m, ModelName::kick_n_mm, 1.4);
    set(m, ModelName::hold_width, 0.35);
    return car;
}

/// A car with everything the losses and the guide read drawn over more than its usual range.
inline CarOnWheels random_car(std::mt19937_64& random) {
    std::normal_distribution<double> normal;
    std::uniform_real_distribution<double> uniform;
    const auto between = [&](double low, double high) { return low + (high - low) * uniform(random); };
    const auto spread = [&](double value, double factor) {
        return value * std::exp(std::log(factor) * normal(random));
    };
    CarOnWheels car = usual_car();
    car.mass = between(0.05, 0.2);
    car.wheelbase = between(0.08, 0.15);
    car.centre.x() = between(0.005, 0.4 * car.wheelbase);
    car.inertia(2, 2) = car.mass * between(0.001, 0.003);
    for (Wheel& w : car.wheels) {
        w.cant = between(-4, 4) * degree;
        w.toe = between(-3, 3) * degree;
        w.radius = between(0.010, 0.017);
        w.bore_radius = between(0.0008, 0.0015);
        w.hub_ring = {w.bore_radius, between(1.05, 4) * w.bore_radius};
        w.body_ring = {w.bore_radius, between(1.05, 4) * w.bore_radius};
    }
    const double which = uniform(random);
    wheel(car, Corner::front_left).touches = which > 0.4;
    wheel(car, Corner::front_right).touches = which <= 0.8;
    if (which <= 0.4) wheel(car, Corner::front_right).touches = true;
    for (auto& named : car.model.values)
        named.value = spread(named.value, 1.4);
    set(car.model, ModelName::creep_per_rad, spread(10, 3));
    set(car.model, ModelName::align_deg, between(0.05, 1.5));
    set(car.model, ModelName::need_deg, between(0.1, 1.0));
    set(car.model, ModelName::restitution, between(0.05, 0.95));
    return car;
}

} // namespace rampwright::test
