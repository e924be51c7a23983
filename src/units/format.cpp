#include <rampwright/units/decimal.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace rampwright {

namespace {

constexpr int most_decimals = 15;
constexpr std::string_view nothing = "–";

const Unit& unit_for(Quantity quantity, UnitSystem system, const FormatOptions& options) {
    assert(!options.unit || options.unit->quantity == quantity);
    return options.unit ? *options.unit : default_unit(quantity, system);
}

std::string with_minus(std::string number, bool ascii) {
    if (!ascii && number.starts_with('-')) number.replace(0, 1, "−");
    return number;
}

std::string with_unit(std::string number, const Unit& unit) {
    if (unit.symbol.empty()) return number;
    const bool mark = unit.symbol == "°" || unit.symbol == "′" || unit.symbol == "″";
    return number + (mark ? "" : " ") + std::string(unit.symbol);
}

void trim_zeros(std::string& number) {
    if (number.find('.') == std::string::npos) return;
    number.erase(number.find_last_not_of('0') + 1);
    if (number.back() == '.') number.pop_back();
}

// "4 3/8" for 4.375; empty where the number is no 64th. A file keeps millimetres to 15 digits, so what was
// typed as a fraction comes back within far less than the tolerance.
std::string as_fraction(double number) {
    constexpr double tolerance = 1e-9;
    constexpr double greatest = 1e6;
    const double sixty_fourths = number * 64;
    const double nearest = std::round(sixty_fourths);
    if (std::abs(number) > greatest || std::abs(sixty_fourths - nearest) > 64 * tolerance) return {};
    const long count = std::abs(std::lround(nearest));
    const long whole = count / 64, rest = count % 64, divisor = std::gcd(rest, 64L);
    std::string text = nearest < 0 ? "-" : "";
    if (whole != 0 || rest == 0) text += std::to_string(whole);
    if (whole != 0 && rest != 0) text += ' ';
    if (rest != 0) text += std::to_string(rest / divisor) + '/' + std::to_string(64 / divisor);
    return text;
}

int significant_decimals(double number, int digits) {
    return digits - 1 - decimal_exponent(number);
}

// Decimals that show two digits of sigma: 0.0996 becomes 0.10, not 0.100.
int sigma_decimals(double sigma) {
    const int decimals = significant_decimals(sigma, 2);
    const double rounded = round_to_significant(sigma, 2);
    return decimals - (decimal_exponent(rounded) > decimal_exponent(sigma) ? 1 : 0);
}

double round_sigma(double sigma, int decimals) {
    constexpr double tolerated_understatement = 0.01;
    const double step = std::pow(10.0, -decimals);
    const double nearest = std::round(sigma / step) * step;
    return nearest < sigma * (1 - tolerated_understatement) ? std::ceil(sigma / step) * step : nearest;
}

} // namespace

std::string format(double si, Quantity quantity, UnitSystem system, const FormatOptions& options) {
    if (!std::isfinite(si)) return std::string(nothing);
    const Unit& unit = unit_for(quantity, system, options);
    const double number = (si - unit.offset) / unit.scale;

    std::string text;
    if (options.fractions && unit.symbol == "in") text = as_fraction(number);
    if (text.empty()) {
        int decimals = options.decimals.value_or(default_decimals(quantity, system));
        if (options.significant)
            decimals = significant_decimals(round_to_significant(number, *options.significant),
                                            *options.significant);
        text = to_fixed(number, std::min(decimals, most_decimals));
        if (options.trim) trim_zeros(text);
    }
    text = with_minus(std::move(text), options.ascii);
    return options.with_unit ? with_unit(std::move(text), unit) : text;
}

std::string format_entry(double si, Quantity quantity, UnitSystem system) {
    FormatOptions options;
    options.trim = options.fractions = true;
    options.decimals = default_decimals(quantity, system) + 2;
    if (std::isfinite(si)) {
        const double number = from_si(si, default_unit(quantity, system));
        options.decimals = std::max(*options.decimals, significant_decimals(number, 4));
    }
    return format(si, quantity, system, options);
}

std::string format_with_sigma(double si, double sigma, Quantity quantity, UnitSystem system,
                              const FormatOptions& options) {
    const Unit& unit = unit_for(quantity, system, options);
    const double number_sigma = std::abs(sigma) / unit.scale;
    if (!std::isfinite(si) || !std::isfinite(number_sigma) || number_sigma == 0)
        return format(si, quantity, system, options);

    const int decimals = std::min(sigma_decimals(number_sigma), most_decimals);
    const std::string value = to_fixed((si - unit.offset) / unit.scale, decimals);
    const std::string spread = to_fixed(round_sigma(number_sigma, decimals), decimals);
    std::string text = with_minus(value, options.ascii) + (options.ascii ? " +- " : " ± ") + spread;
    return options.with_unit ? with_unit(std::move(text), unit) : text;
}

std::string format_milliseconds(double seconds, UnitSystem system, int decimals) {
    return format(seconds, Quantity::time, system, {.unit = find_unit("ms"), .decimals = decimals});
}

} // namespace rampwright
