#include <rampwright/units/key_unit.hpp>

#include <array>

namespace rampwright {

namespace {

struct Ending {
    std::string_view ending;
    std::string_view symbol;
};

constexpr auto endings = std::to_array<Ending>({
    {"_mm", "mm"}, {"_mm2", "mm²"},     {"_mm3", "mm³"},     {"_m", "m"},   {"_g", "g"},       {"_oz", "oz"},
    {"_kg", "kg"}, {"_g_mm2", "g mm²"}, {"_kg_m3", "kg/m³"}, {"_deg", "°"}, {"_rad", "rad"},   {"_s", "s"},
    {"_ms", "ms"}, {"_m_s", "m/s"},     {"_m_s2", "m/s²"},   {"_mn", "mN"}, {"_n_mm", "N mm"}, {"_mj", "mJ"},
    {"_c", "°C"},  {"_k", "K"},         {"_hpa", "hPa"},     {"_pa", "Pa"}, {"_pct", "%"},
});

} // namespace

const Unit* find_key_unit(std::string_view key) {
    const Ending* best = nullptr;
    if (key.find("_per_") != std::string_view::npos) return nullptr; // a rate: "creep_per_rad" is no angle
    for (const Ending& row : endings)
        if (key.size() > row.ending.size() && key.ends_with(row.ending) &&
            (!best || row.ending.size() > best->ending.size()))
            best = &row;
    return best ? find_unit(best->symbol) : nullptr;
}

std::string_view key_ending(const Unit& unit) {
    for (const Ending& row : endings)
        if (row.symbol == unit.symbol) return row.ending;
    return {};
}

} // namespace rampwright
