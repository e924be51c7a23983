#include "results/columns.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/results/in_units.hpp>
#include <rampwright/results/next_move.hpp>
#include <rampwright/results/table.hpp>
#include <rampwright/study/names.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>

namespace rampwright {

namespace {

std::string per_cent(double part) {
    return format(part, Quantity::percent, UnitSystem::metric, {.decimals = 1});
}

} // namespace

std::vector<TableRow> table_rows(const Figures& f, UnitSystem units) {
    std::vector<TableRow> rows;
    const auto add = [&](const char* code, const std::string& label, std::string value) {
        rows.push_back({code, label, std::move(value)});
    };
    const auto number = [&](const char* code, const std::string& label, double si, Quantity quantity) {
        add(code, label, format(si, quantity, units));
    };
    number("mass_g", Core::tr("mass"), f.mass, Quantity::mass);
    if (f.scale) {
        number("scale.reads_g", Core::tr("the scale reads"), f.scale->reads, Quantity::mass);
        number("scale.margin_g", Core::tr("room to the limit"), f.scale->margin, Quantity::mass);
    }
    number("balance_ahead_of_rear_axle_mm", Core::tr("balance point ahead of rear axle"),
           f.balance_ahead_of_rear_axle, Quantity::length);
    number("front_load_g", Core::tr("front load"), f.front_load, Quantity::mass);
    number("ramp_front_load_g", Core::tr("front load at the start pin"), f.ramp_front_load, Quantity::mass);
    number("smallest_front_load_g", Core::tr("smallest front load on the way"), f.smallest_front_load,
           Quantity::mass);
    if (f.heat.time) {
        add("heat.time_s", Core::tr("heat time"),
            format_with_sigma(*f.heat.time, f.heat.sigma, Quantity::time, units));
        add("heat.interval95_s", Core::tr("19 heats of 20 between"),
            Core::tr("{low} and {high}",
                     {{"low", format(f.heat.interval95[0], Quantity::time, units, {.with_unit = false})},
                      {"high", format(f.heat.interval95[1], Quantity::time, units)}}));
        number("heat.finish_speed_m_s", Core::tr("speed at the finish"), f.heat.finish_speed,
               Quantity::speed);
    } else {
        add("heat.time_s", Core::tr("heat time"), Core::tr("does not reach the finish"));
        number("heat.reached_mm", Core::tr("stops after"), f.heat.reached, Quantity::length);
    }
    number("heat.top_speed_m_s", Core::tr("greatest speed"), f.heat.top_speed, Quantity::speed);
    const Budget& b = f.budget;
    number("budget_mj.released", Core::tr("energy released"), b.released, Quantity::energy);
    const auto loss = [&](const char* code, const std::string& label, double joules,
                          std::optional<double> seconds = {}) {
        const double part = b.released != 0 ? joules / b.released : 0;
        const std::string time = seconds ? ", " + format_milliseconds(*seconds, units) : "";
        add(code, label, format(joules, Quantity::energy, units) + " (" + per_cent(part) + time + ")");
    };
    const auto regained = [&](double LossTimes::*time) {
        return f.budget_time ? std::optional((*f.budget_time).*time) : std::nullopt;
    };
    loss("budget_mj.forward", Core::tr("  into forward motion"), b.forward);
    loss("budget_mj.spin", Core::tr("  into wheel spin"), b.spin);
    loss("budget_mj.pitch", Core::tr("  into pitching"), b.pitch);
    loss("budget_mj.journal", Core::tr("  to the axles"), b.journal, regained(&LossTimes::journal));
    loss("budget_mj.hub", Core::tr("  to the hubs"), b.hub, regained(&LossTimes::hub));
    loss("budget_mj.rolling", Core::tr("  to rolling"), b.rolling, regained(&LossTimes::rolling));
    if (b.rail)
        loss("budget_mj.rail", Core::tr("  to the guide rail"), *b.rail,
             f.budget_time ? f.budget_time->rail : std::nullopt);
    loss("budget_mj.scrub", Core::tr("  to scrubbing treads"), b.scrub, regained(&LossTimes::scrub));
    loss("budget_mj.air", Core::tr("  to the air"), b.air, regained(&LossTimes::air));
    add("steer.next", Core::tr("next move of tuning"),
        next_move_text(f.steer.next, f.steer.next_turn, f.steer.next_turn_towards_rail, units));
    return rows;
}

std::string to_table(const Figures& figures, UnitSystem units) {
    const std::vector<TableRow> rows = table_rows(figures, units);
    std::size_t wide = 0;
    for (const TableRow& row : rows)
        wide = std::max(wide, width(row.label));
    std::string text = figures.name + "\n";
    for (const TableRow& row : rows)
        text += "  " + padded(row.label, wide) + "  " + row.value + "\n";
    const std::size_t shown = std::min<std::size_t>(figures.sensitivities.size(), 5);
    for (std::size_t n = 0; n < shown; ++n) {
        const Sensitivity& s = figures.sensitivities[n];
        text += "  " + padded(n == 0 ? "what changes the time" : "", wide) + "  " +
                format(s.ms * 1e-3, Quantity::time, units, {.unit = find_unit("ms"), .decimals = 2}) +
                " for " + change_phrase(s.key, s.per, units) + "\n";
    }
    if (figures.steps)
        for (std::size_t n = 0; n < figures.steps->size(); ++n) {
            const BuilderStep& step = (*figures.steps)[n];
            text +=
                "  " + padded(n == 0 ? "what a step brings, effort" : "", wide) + "  " +
                format_with_sigma(step.gain, step.sigma, Quantity::time, units, {.unit = find_unit("ms")}) +
                ", " + std::string(to_string(step.effort)) + ": " + text_of(step, units) + "\n";
        }
    for (const Finding& finding : figures.findings)
        text += "  " + std::string(to_string(finding.severity)) + ": " + text_of(finding, units) + "\n";
    return text;
}

} // namespace rampwright
