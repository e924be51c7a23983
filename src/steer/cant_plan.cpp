#include <rampwright/steer/cant_plan.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

double highest_wood(const BodyPlan& body) {
    double highest = 0;
    for (const PlanPoint& point : body.profile)
        highest = std::max(highest, point.at.y());
    return body.profile.empty() ? body.block.z() : highest;
}

std::vector<CantRow> plan_cant(const Project& project, std::size_t car, const CarModel& model) {
    const CarPlan& plan = project.cars.at(car);
    const CarOnWheels wheels = on_wheels(model);
    const double wood = highest_wood(plan.body);
    std::vector<CantRow> rows;
    for (const Wheel& wheel : wheels.wheels) {
        if (!wheel.touches) continue;
        CantRow row;
        row.corner = wheel.corner;
        row.cant = wheel.cant;
        if (wheel.cant != 0) row.bears_on_head = wheel.cant > 0;
        row.edge_lift = wheel.width * std::abs(std::sin(wheel.cant));
        row.bent = bent_axle_of({wheel.toe, wheel.cant});
        // The inner face leans in above the axle where the outer end is higher, and out below it.
        const double lean = std::tan(wheel.cant);
        const double axle = is_front(wheel.corner) ? plan.axles.front_z : plan.axles.rear_z;
        const double up = std::clamp(wood - axle, 0.0, wheel.radius);
        const double down = std::clamp(axle, 0.0, wheel.radius);
        const double gap = plan.wheels[std::size_t(wheel.corner)].gap_to_body;
        row.body_gap = gap - std::max(up * lean, -down * lean);
        if (const auto& rail = project.track.rail) {
            const double level = std::abs(wheel.centre.y()) - 0.5 * wheel.width - 0.5 * rail->width;
            const double at_top = (wheel.radius - std::min(rail->height, wheel.radius)) * lean;
            row.rail_gap = level + std::min(at_top, wheel.radius * lean);
        }
        rows.push_back(row);
    }
    return rows;
}

} // namespace rampwright
