#include <rampwright/results/versus_text.hpp>
#include <rampwright/units/format.hpp>

namespace rampwright {

VersusText to_text(const Versus& versus, UnitSystem units) {
    const FormatOptions ms{.unit = find_unit("ms"), .decimals = 1};
    const auto per_cent = [](double part) {
        return format(part, Quantity::percent, UnitSystem::metric, {.decimals = 1});
    };
    return {format(versus.mean_gap, Quantity::time, units, ms),
            format(versus.sigma_gap, Quantity::time, units, ms),
            format(versus.gap_at_finish, Quantity::length, units), per_cent(versus.first_wins),
            per_cent(versus.first_better)};
}

} // namespace rampwright
