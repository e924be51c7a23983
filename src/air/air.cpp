#include <rampwright/air/air.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <cmath>
#include <string>

namespace rampwright {

namespace {

constexpr double ice_point = 273.15; // K

[[noreturn]] void refuse(const char* where, const std::string& wrong, const std::string& remedy) {
    throw Problem(Exit::could_not, where, wrong, remedy);
}

// Written so that a NaN is refused too.
bool between(double low, double value, double high) {
    return value >= low && value <= high;
}

// CIPM-2007, equation (A1.3): how much wetter saturated air is than saturated vapour alone.
double enhancement_factor(double celsius, double pressure) {
    return 1.00062 + 3.14e-8 * pressure + 5.6e-7 * celsius * celsius;
}

// CIPM-2007, equation (A1.4).
double compressibility(double temperature, double pressure, double vapour_fraction) {
    const double t = temperature - ice_point, x = vapour_fraction, p_over_t = pressure / temperature;
    const double first = 1.58123e-6 + t * (-2.9331e-8 + t * 1.1043e-10) + (5.707e-6 - 2.051e-8 * t) * x +
                         (1.9898e-4 - 2.376e-6 * t) * x * x;
    const double second = 1.83e-11 - 0.765e-8 * x * x;
    return 1 - p_over_t * first + p_over_t * p_over_t * second;
}

} // namespace

double saturation_vapour_pressure(double temperature) {
    return std::exp(temperature * (1.2378847e-5 * temperature - 1.9121316e-2) + 33.93711047 -
                    6.3431645e3 / temperature);
}

double dynamic_viscosity(double temperature) {
    return 1.458e-6 * temperature * std::sqrt(temperature) / (temperature + 110.4);
}

bool in_cipm_range(double temperature, double pressure) {
    return between(ice_point + 15, temperature, ice_point + 27) && between(60e3, pressure, 110e3);
}

MoistAirTerms moist_air_terms(double temperature, double pressure, double relative_humidity) {
    if (!between(ice_point - 20, temperature, ice_point + 60))
        refuse("/air/temperature_c", Core::tr("the air's temperature is not between -20 and 60 °C"),
               Core::tr("check the unit and the number"));
    if (!between(50e3, pressure, 120e3))
        refuse("/air/pressure_hpa", Core::tr("the air's pressure is not between 500 and 1200 hPa"),
               Core::tr("give the station's own pressure, in hPa"));
    if (!between(0, relative_humidity, 1))
        refuse("/air/humidity_pct", Core::tr("the relative humidity is not between 0 and 100 %"),
               Core::tr("check the number"));

    constexpr double gas_constant = 8.314472;      // J/(mol K), CODATA 2006 as CIPM-2007 uses it
    constexpr double dry_molar_mass = 28.96546e-3; // kg/mol, at 400 µmol/mol of CO2
    constexpr double water_molar_mass = 18.01528e-3;
    const double vapour_fraction = relative_humidity * enhancement_factor(temperature - ice_point, pressure) *
                                   saturation_vapour_pressure(temperature) / pressure;
    const double z = compressibility(temperature, pressure, vapour_fraction);
    const double density = pressure * dry_molar_mass / (z * gas_constant * temperature) *
                           (1 - vapour_fraction * (1 - water_molar_mass / dry_molar_mass));
    return {vapour_fraction, z, dry_molar_mass, water_molar_mass, gas_constant, density};
}

Air moist_air(double temperature, double pressure, double relative_humidity) {
    return {moist_air_terms(temperature, pressure, relative_humidity).density,
            dynamic_viscosity(temperature)};
}

double geopotential_altitude(double geometric_altitude) {
    constexpr double earth_radius = 6356766; // m, as the 1976 text has it
    return earth_radius * geometric_altitude / (earth_radius + geometric_altitude);
}

StandardAir standard_atmosphere(double altitude) {
    constexpr double lapse_rate = 6.5e-3; // K/m
    constexpr double sea_level_temperature = 288.15, sea_level_pressure = 101325;
    constexpr double specific_gas_constant = 8.31432 / 28.9644e-3; // J/(kg K), the 1976 values
    const double height = geopotential_altitude(altitude);
    if (!between(-5000, altitude, 20000) || height > 11000)
        refuse("/air/altitude_m", Core::tr("the altitude is not between -5000 and 11 000 m"),
               Core::tr("check the unit and the number"));
    const double temperature = sea_level_temperature - lapse_rate * height;
    const double pressure =
        sea_level_pressure * std::pow(temperature / sea_level_temperature,
                                      standard_gravity / (specific_gas_constant * lapse_rate));
    return {temperature, pressure, pressure / (specific_gas_constant * temperature)};
}

Air standard_air(double altitude) {
    const StandardAir air = standard_atmosphere(altitude);
    return {air.density, dynamic_viscosity(air.temperature)};
}

double normal_gravity(double latitude) {
    constexpr double at_equator = 9.7803253359, k = 0.00193185265241, e2 = 0.00669437999014;
    if (!between(-90 * degree, latitude, 90 * degree))
        refuse("/track/latitude_deg", Core::tr("the latitude is not between -90 and 90 degrees"),
               Core::tr("check the number"));
    const double sine2 = std::sin(latitude) * std::sin(latitude);
    return at_equator * (1 + k * sine2) / std::sqrt(1 - e2 * sine2);
}

} // namespace rampwright
