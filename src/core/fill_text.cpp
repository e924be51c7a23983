#include "core/fill_text.hpp"

#include <array>
#include <charconv>
#include <cmath>

namespace rampwright {

namespace {

/// Decimals by the unit that ends a name: what a builder can measure and a little more.
int decimals_for(std::string_view name) {
    const auto ends = [name](std::string_view suffix) { return name.ends_with(suffix); };
    if (ends("_mm3") || ends("_mm2") || ends("_m3") || ends("_pct") || name == "runs") return 0;
    if (ends("_deg") || ends("_g")) return 2;
    if (ends("_mm") || ends("_ms") || ends("_oz")) return 1;
    return 2;
}

std::string to_text(double value, int decimals) {
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(value * scale) / scale + 0.0; // + 0.0: no "-0"
    std::array<char, 64> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), rounded,
                                   std::chars_format::fixed, decimals);
    return end.ec == std::errc{} ? std::string(buffer.data(), end.ptr) : "?";
}

using Value = std::pair<std::string, double>;

/// The value that a placeholder asks for, as text.
std::string find_value(std::string_view name, const std::vector<Value>& values) {
    const bool with_unit = name.ends_with('*');
    if (with_unit) name.remove_suffix(1);
    for (const auto& [key, value] : values) {
        if (key == name) return to_text(value, decimals_for(key));
        if (with_unit && key.starts_with(name) && key[name.size()] == '_')
            return to_text(value, decimals_for(key)) + " " + key.substr(name.size() + 1);
    }
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

std::string fill_text(std::string_view text, const std::vector<Value>& values) {
    return fill_places(text, [&](std::string_view name) { return find_value(name, values); });
}

} // namespace rampwright
