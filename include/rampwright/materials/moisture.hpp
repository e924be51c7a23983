#pragma once

namespace rampwright {

// Density of wood against its moisture content, the water's mass as a fraction of the oven-dry wood's.
// Formulas of the Wood Handbook (USDA Forest Products Laboratory, FPL-GTR-190, chapter 4; after Simpson,
// FPL-GTR-76); they hold for an average wood to about 3 %. Specific gravity is always oven-dry mass over the
// volume at the moisture named, relative to water of 1000 kg/m³.

/// Above this wood no longer swells.
inline constexpr double fibre_saturation = 0.30;

/// Specific gravity at a moisture content from the basic one (green volume):
/// G_x = G_b / (1 - 0.265 G_b (1 - x / 30 %)), and G_b above fibre saturation.
double specific_gravity_at(double basic_specific_gravity, double moisture);

/// The inverse.
double basic_specific_gravity(double specific_gravity, double moisture);

/// Density in kg/m³ of wood of specific gravity `specific_gravity` at its own moisture content:
/// 1000 G_x (1 + x).
double wood_density(double specific_gravity, double moisture);

/// What wood of `density` at moisture content `from` will have at `to`: a board from a damp shed, weeks later
/// in a warm room. Throws Problem where a moisture content is not between 0 and 200 %, or the density not
/// between 20 and 2000 kg/m³.
double density_at_moisture(double density, double from, double to);

} // namespace rampwright
