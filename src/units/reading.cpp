#include <rampwright/units/format.hpp>
#include <rampwright/units/reading.hpp>

#include <cmath>

namespace rampwright {

int reading_decimals(double si, Quantity quantity, UnitSystem system) {
    const int usual = default_decimals(quantity, system);
    const double number = std::abs(si / default_unit(quantity, system).scale);
    const bool metric = system == UnitSystem::metric;
    if (quantity == Quantity::length && metric) return number < 1000 ? usual : 0;
    if (quantity == Quantity::length) return number < 20 ? usual : number < 200 ? 2 : 1;
    if (quantity == Quantity::mass && !metric && number > 0 && number < 0.01) return usual + 1;
    return usual;
}

std::string format_reading(double si, Quantity quantity, UnitSystem system, bool with_unit) {
    return format(si, quantity, system,
                  {.decimals = reading_decimals(si, quantity, system), .with_unit = with_unit});
}

} // namespace rampwright
