#include "core/fill_text.hpp"

#include <rampwright/units/decimal.hpp>
#include <rampwright/units/format.hpp>
#include <rampwright/units/key_unit.hpp>
#include <rampwright/units/reading.hpp>

namespace rampwright {

namespace {

/// Decimals in the unit that ends a name.
int decimals_for(std::string_view name) {
    const auto ends = [name](std::string_view suffix) { return name.ends_with(suffix); };
    if (ends("_mm3") || ends("_mm2") || ends("_m3") || ends("_pct") || name == "runs") return 0;
    if (ends("_deg") || ends("_g")) return 2;
    if (ends("_mm") || ends("_ms") || ends("_oz")) return 1;
    return 2;
}

/// Whether people who read inches and ounces read this in other units than the file's.
bool differs(Quantity quantity) {
    return quantity == Quantity::length || quantity == Quantity::area || quantity == Quantity::volume ||
           quantity == Quantity::mass || quantity == Quantity::density;
}

std::string to_text(std::string_view key, double value, UnitSystem system) {
    const Unit* unit = find_key_unit(key);
    if (!unit) return to_fixed(value, decimals_for(key));
    const double si = to_si(value, *unit);
    const Quantity quantity = unit->quantity;
    if (quantity == Quantity::length || (system == UnitSystem::inch_ounce && quantity == Quantity::mass))
        return format_reading(si, quantity, system);
    if (system == UnitSystem::metric || !differs(quantity))
        return format(si, quantity, system, {.unit = unit, .decimals = decimals_for(key)});
    // 0.0001 in³ is 1.6 mm³.
    constexpr int fine = 4;
    return quantity == Quantity::volume ? format(si, quantity, system, {.decimals = fine})
                                        : format(si, quantity, system);
}

using Value = std::pair<std::string, double>;

/// The value that a placeholder asks for, as text.
std::string find_value(std::string_view name, const std::vector<Value>& values, UnitSystem system) {
    const bool any_unit = name.ends_with('*');
    if (any_unit) name.remove_suffix(1);
    for (const auto& [key, value] : values)
        if (key == name ||
            (any_unit && key.starts_with(name) && key.size() > name.size() && key[name.size()] == '_'))
            return to_text(key, value, system);
    return "?";
}

} // namespace

std::string fill_places(std::string_view text,
                        const std::function<std::string(std::string_view name)>& find) {
    std::string filled;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t open = text.find('{', at);
        filled += text.substr(at, open - at);
        if (open == std::string_view::npos) break;
        const std::size_t close = text.find('}', open);
        filled += find(text.substr(open + 1, close - open - 1));
        at = close + 1;
    }
    return filled;
}

std::string fill_text(std::string_view text, const std::vector<Value>& values, UnitSystem system) {
    return fill_places(text, [&](std::string_view name) { return find_value(name, values, system); });
}

} // namespace rampwright
