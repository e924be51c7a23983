#include "car/car_parts.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>

namespace rampwright {

namespace {

Outline outline_of(const std::vector<PlanPoint>& points) {
    Outline outline;
    outline.reserve(points.size());
    for (const PlanPoint& point : points)
        outline.push_back({point.at, point.smooth});
    return outline;
}

Cut cut_of(const CutPlan& plan) {
    if (plan.is_bore) return Bore{plan.from, plan.to, plan.diameter, plan.pointed};
    return Pocket{plan.from.cwiseMin(plan.to), plan.from.cwiseMax(plan.to)};
}

/// How far holes and slots are drawn beyond the wood, so that nothing is left of its skin.
constexpr double beyond = 1 * millimetre;

Cut hole_of(const AxlePlan& axles, double x, double z, double from_y, double to_y, double bottom) {
    if (axles.holes != Holes::slots) return Bore{{x, from_y, z}, {x, to_y, z}, axles.hole_diameter, false};
    const double half = axles.hole_diameter / 2;
    return Pocket{{x - half, from_y, std::min(bottom, z) - beyond}, {x + half, to_y, z + half}};
}

} // namespace

BodyOutlines::BodyOutlines(const BodyPlan& body)
    : profile(outline_of(body.profile)), plan(outline_of(body.plan)) {}

Interval BodyOutlines::along() const {
    return {std::max(profile.along().low, plan.along().low),
            std::min(profile.along().high, plan.along().high)};
}

std::optional<Interval> BodyOutlines::sides(double x) const {
    if (x < along().low || x > along().high) return std::nullopt;
    const std::vector<Interval> section = plan.section(x);
    if (section.empty()) return std::nullopt;
    return Interval{section.front().low, section.back().high};
}

BodyShape body_shape(const CarPlan& plan, const CarModel& car, const BodyOutlines& outlines) {
    BodyShape shape{outline_of(plan.body.profile), outline_of(plan.body.plan), plan.body.edge_radius, {}};
    for (const CutPlan& cut : plan.body.cuts)
        shape.cuts.push_back(cut_of(cut));

    const double right = outlines.plan.across().low - beyond, left = outlines.plan.across().high + beyond;
    const double bottom = outlines.profile.across().low;
    for (const bool front : {false, true}) {
        const Vec3& left_centre =
            car.wheels[static_cast<std::size_t>(front ? Corner::front_left : Corner::rear_left)].centre;
        const Vec3& right_centre =
            car.wheels[static_cast<std::size_t>(front ? Corner::front_right : Corner::rear_right)].centre;
        const double x = front ? car.front_x : car.rear_x;
        if (left_centre.z() == right_centre.z()) {
            shape.cuts.push_back(hole_of(plan.axles, x, left_centre.z(), right, left, bottom));
        } else {
            shape.cuts.push_back(hole_of(plan.axles, x, left_centre.z(), 0, left, bottom));
            shape.cuts.push_back(hole_of(plan.axles, x, right_centre.z(), right, 0, bottom));
        }
    }
    return shape;
}

MassProperties finish_properties(double mass, const BodyOutlines& outlines) {
    const Interval x = outlines.along(), y = outlines.plan.across(), z = outlines.profile.across();
    const Vec3 low(x.low, y.low, z.low), high(x.high, y.high, z.high), size = high - low;
    const Vec3 middle = (low + high) / 2;
    const double surface = 2 * (size.x() * size.y() + size.y() * size.z() + size.z() * size.x());
    std::vector<MassProperties> plates;
    for (int axis = 0; axis < 3; ++axis)
        for (const double end : {low[axis], high[axis]}) {
            Vec3 plate = size, centre = middle;
            plate[axis] = 0;
            centre[axis] = end;
            const double area = size[(axis + 1) % 3] * size[(axis + 2) % 3];
            plates.push_back(box(mass * area / surface, plate, centre));
        }
    return combine(plates);
}

} // namespace rampwright
