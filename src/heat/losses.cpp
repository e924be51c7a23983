#include <rampwright/core/constants.hpp>
#include <rampwright/heat/losses.hpp>

#include <cmath>
#include <heat/losses_side.hpp>
#include <numbers>

namespace rampwright {

namespace {

// Cant at which the edge factor has come in by 63 %; it is whole by about one degree.
constexpr double edge_cant = 0.5 * degree;

// Torque coefficient of both faces of a disc turning in still air, laminar (source in the header).
constexpr double disc_coefficient = 3.87;

/// What a wheel pays for toe, corner by corner.
std::array<Toe, 4> paid_toes(const CarOnWheels& car, bool rail) {
    const double align = car.model[ModelName::align_deg].value * degree;
    std::array<Toe, 4> toes{};
    const auto pair = [&](Corner left, Corner right, bool lone_wheel_pays) {
        const auto l = static_cast<std::size_t>(left), r = static_cast<std::size_t>(right);
        const Wheel &on_left = car.wheels[l], &on_right = car.wheels[r];
        if (lone_wheel_pays) {
            // Outward is to the left for the left wheel, to the right for the right one.
            toes[l] = {on_left.toe, align};
            toes[r] = {-on_right.toe, align};
        } else if (on_left.touches && on_right.touches) {
            const Toe each{(on_left.toe - on_right.toe) / 2, align / std::numbers::sqrt2};
            toes[l] = toes[r] = each;
        }
    };
    pair(Corner::rear_left, Corner::rear_right, false);
    pair(Corner::front_left, Corner::front_right, !rail);
    return toes;
}

double edge_share(double cant) {
    return -std::expm1(-(cant / edge_cant) * (cant / edge_cant));
}

} // namespace

double collar_arm(double inner_radius, double outer_radius) {
    // Divided through by r2 - r1, so that a thin ring loses no digits.
    const double sum = inner_radius + outer_radius;
    if (!(sum > 0)) return 0;
    return 2.0 / 3.0 *
           (outer_radius * outer_radius + outer_radius * inner_radius + inner_radius * inner_radius) / sum;
}

std::array<WheelLoss, 4> wheel_losses(const CarOnWheels& car, bool rail, double air_density,
                                      double viscosity) {
    const auto value = [&](ModelName name) { return car.model[name].value; };
    const std::array<Toe, 4> toes = paid_toes(car, rail);
    // rho sqrt(nu) = sqrt(rho * dynamic viscosity), which still stands in a vacuum.
    const double disc = value(ModelName::windage) * disc_coefficient / 2 * std::sqrt(air_density * viscosity);

    std::array<WheelLoss, 4> losses{};
    for (std::size_t i = 0; i < 4; ++i) {
        const Wheel& wheel = car.wheels[i];
        if (!wheel.touches) continue;
        const SideLoad side = mean_side_load(std::sin(wheel.cant), value(ModelName::tread_grip),
                                             value(ModelName::creep_per_rad), toes[i]);
        WheelLoss& loss = losses[i];
        loss.journal_arm = value(ModelName::journal) * wheel.bore_radius;
        loss.hub_arm = value(ModelName::hub_on_head) * collar_arm(wheel.hub_ring.x(), wheel.hub_ring.y()) *
                           side.on_head +
                       value(ModelName::hub_on_wood) * collar_arm(wheel.body_ring.x(), wheel.body_ring.y()) *
                           side.on_wood;
        loss.scrub = side.scrub;
        loss.rolling =
            value(ModelName::rolling) * (1 + (value(ModelName::edge_factor) - 1) * edge_share(wheel.cant));
        const double radius_squared = wheel.radius * wheel.radius;
        loss.windage = disc * radius_squared * radius_squared;
    }
    return losses;
}

} // namespace rampwright
