#pragma once

#include <rampwright/body/mass_properties.hpp>
#include <rampwright/project/project.hpp>

namespace rampwright {

/// A wheel as a solid of revolution about its axle, even about its middle plane: a tread ring, a web disc
/// from the hub to the tread, and a hub sleeve around the bore. Lengths in m.
struct WheelProfile {
    double outer_diameter = 0, tread_width = 0, tread_thickness = 0;
    double web_thickness = 0;
    double hub_diameter = 0, hub_width = 0, bore_diameter = 0;
};

/// The profile taken for a wheel of which only outer diameter, width and bore are known, in the proportions
/// of a plain moulded wheel: tread 1/14 and web 1/10 of the outer radius thick, hub 1/4 of the outer diameter
/// wide (at least 1.5 bores, at most to half way between bore and tread) and as long as the tread is wide.
/// Common practice, no source; its spin inertia comes to between 0.52 and 0.65 of m R² for usual wheels.
/// Weigh the wheel, and time it as a pendulum, to replace it.
WheelProfile usual_profile(double outer_diameter, double width, double bore_diameter);

/// The wheel's profile as far as its file states it, the rest in the usual proportions between what it
/// states.
WheelProfile profile_of(const WheelPlan& plan);

/// Volume of the profile, m³.
double volume(const WheelProfile& profile);

/// The wheel at the origin with its axle along y, of uniform density and the given mass, kg:
/// inertia(1, 1) is the spin inertia, inertia(0, 0) and (2, 2) that about a diameter.
MassProperties revolve(const WheelProfile& profile, double mass);

} // namespace rampwright
