#pragma once

namespace rampwright {

/// The air a heat is run in.
struct Air {
    double density;           ///< kg/m³
    double dynamic_viscosity; ///< Pa s
};

/// Density of moist air by CIPM-2007 (Picard, Davis, Gläser, Fujii, Metrologia 45 (2008) 149) for 400
/// µmol/mol of carbon dioxide, and its viscosity (dry, by Sutherland: humidity changes it by less than 1 %).
///
/// `temperature` in K, station `pressure` in Pa (not reduced to sea level), `relative_humidity` 0 to 1.
/// The formula is stated for 15 to 27 °C and 600 to 1100 hPa; beyond, its error grows slowly, so -20 to 60 °C
/// and 500 to 1200 hPa are taken. Throws Problem outside these, or if the humidity is none.
Air moist_air(double temperature, double pressure, double relative_humidity);

/// What the formula goes by on the way to the density.
struct MoistAirTerms {
    double vapour_fraction; ///< of the molecules
    double compressibility;
    double dry_molar_mass, water_molar_mass, gas_constant; ///< kg/mol, J/(mol K), as CIPM-2007 has them
    double density;                                        ///< kg/m³
};
MoistAirTerms moist_air_terms(double temperature, double pressure, double relative_humidity);

/// Whether the formula's own range holds (its relative uncertainty is then 2.2e-5).
bool in_cipm_range(double temperature, double pressure);

/// Saturation vapour pressure over water, Pa, at `temperature` in K, as CIPM-2007 has it.
double saturation_vapour_pressure(double temperature);

/// Sutherland's law as in the U.S. Standard Atmosphere, 1976: Pa s, from `temperature` in K.
double dynamic_viscosity(double temperature);

/// Temperature (K), pressure (Pa) and density (kg/m³) of still, dry, standard air.
struct StandardAir {
    double temperature;
    double pressure;
    double density;
};

/// U.S. Standard Atmosphere, 1976, at a geometric altitude in m above sea level, -5 km to the end of the
/// first layer (11 km geopotential, 11 019 m). Throws Problem beyond.
StandardAir standard_atmosphere(double altitude);

/// The altitude by which gravity's fall with height is taken into account: r z / (r + z), in m.
double geopotential_altitude(double geometric_altitude);

/// Air where only the altitude is known: the standard atmosphere's, dry.
Air standard_air(double altitude);

/// Normal gravity on the WGS 84 ellipsoid, m/s², at a geodetic `latitude` in rad (Somigliana's formula; NGA
/// Technical Report 8350.2). At sea level; 0.0003 m/s² less for every 100 m of height.
double normal_gravity(double latitude);

} // namespace rampwright
