#include <rampwright/core/problem.hpp>
#include <rampwright/materials/moisture.hpp>

#include <algorithm>

namespace rampwright {

namespace {

constexpr double water_density = 1000; // kg/m³
constexpr double shrinkage = 0.265;    // volume lost to oven-dry per unit of basic specific gravity

// How far below fibre saturation the wood is, 0 to 1.
double dryness(double moisture) {
    return std::max(0.0, 1 - moisture / fibre_saturation);
}

} // namespace

double specific_gravity_at(double basic_specific_gravity, double moisture) {
    return basic_specific_gravity / (1 - shrinkage * basic_specific_gravity * dryness(moisture));
}

double basic_specific_gravity(double specific_gravity, double moisture) {
    return specific_gravity / (1 + shrinkage * specific_gravity * dryness(moisture));
}

double wood_density(double specific_gravity, double moisture) {
    return water_density * specific_gravity * (1 + moisture);
}

double density_at_moisture(double density, double from, double to) {
    const auto is_moisture = [](double moisture) { return moisture >= 0 && moisture <= 2; };
    if (!is_moisture(from) || !is_moisture(to))
        throw Problem(Exit::could_not, "-", "the wood's moisture content is not between 0 and 200 %",
                      "give the water's mass as a share of the dry wood's");
    if (!(density >= 20 && density <= 2000))
        throw Problem(Exit::could_not, "-", "the wood's density is not between 20 and 2000 kg/m³",
                      "check the number and its unit");
    const double basic = basic_specific_gravity(density / (water_density * (1 + from)), from);
    return wood_density(specific_gravity_at(basic, to), to);
}

} // namespace rampwright
