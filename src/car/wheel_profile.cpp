#include <rampwright/car/wheel_profile.hpp>

#include <algorithm>
#include <array>
#include <numbers>

namespace rampwright {

namespace {

struct Ring {
    double inner = 0, outer = 0, width = 0;
    double volume() const { return std::numbers::pi / 4 * (outer * outer - inner * inner) * width; }
};

std::array<Ring, 3> rings_of(const WheelProfile& p) {
    const double tread_inner = p.outer_diameter - 2 * p.tread_thickness;
    return {Ring{tread_inner, p.outer_diameter, p.tread_width},
            Ring{p.hub_diameter, tread_inner, p.web_thickness},
            Ring{p.bore_diameter, p.hub_diameter, p.hub_width}};
}

} // namespace

WheelProfile usual_profile(double outer_diameter, double width, double bore_diameter) {
    WheelProfile profile;
    profile.outer_diameter = outer_diameter;
    profile.tread_width = profile.hub_width = width;
    profile.bore_diameter = bore_diameter;
    profile.tread_thickness = std::min(outer_diameter / 28, (outer_diameter - bore_diameter) / 8);
    profile.web_thickness = std::min(outer_diameter / 20, width);
    const double tread_inner = outer_diameter - 2 * profile.tread_thickness;
    profile.hub_diameter =
        std::min(std::max(outer_diameter / 4, 1.5 * bore_diameter), (bore_diameter + tread_inner) / 2);
    return profile;
}

WheelProfile profile_of(const WheelPlan& plan) {
    WheelProfile profile = usual_profile(plan.outer_diameter, plan.width, plan.bore_diameter);
    profile.web_thickness = plan.web_thickness.value_or(profile.web_thickness);
    profile.hub_diameter = plan.hub_diameter.value_or(profile.hub_diameter);
    // What nobody measured gives way to what was: a hub ends at the tread, a tread at the hub.
    profile.tread_thickness = plan.tread_thickness.value_or(
        std::min(profile.tread_thickness, (plan.outer_diameter - profile.hub_diameter) / 2));
    profile.hub_diameter = std::min(profile.hub_diameter, plan.outer_diameter - 2 * profile.tread_thickness);
    return profile;
}

double volume(const WheelProfile& profile) {
    double sum = 0;
    for (const Ring& ring : rings_of(profile))
        sum += ring.volume();
    return sum;
}

MassProperties revolve(const WheelProfile& profile, double mass) {
    const double density = mass / volume(profile);
    std::array<MassProperties, 3> parts;
    const std::array<Ring, 3> rings = rings_of(profile);
    for (std::size_t i = 0; i < rings.size(); ++i)
        parts[i] = tube(density * rings[i].volume(), rings[i].inner, rings[i].outer, rings[i].width,
                        Eigen::Vector3d::UnitY(), Eigen::Vector3d::Zero());
    return combine(parts);
}

} // namespace rampwright
