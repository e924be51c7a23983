#include "car/running_surface.hpp"
#include "explain/known.hpp"

#include <rampwright/bench/scale.hpp>

#include <array>
#include <cmath>

namespace rampwright {

namespace {

/// The parts of one kind together.
struct Group {
    double mass = 0, moment = 0; ///< kg, kg m about the rear axle, level frame
};

std::array<Group, 6> group_parts(const CarModel& car) {
    std::array<Group, 6> groups;
    const RunningSurface surface = find_running_surface(car);
    for (const Part& part : car.parts) {
        Group& group = groups[static_cast<std::size_t>(part.kind)];
        group.mass += part.properties.mass;
        group.moment += part.properties.mass * surface.level(part.properties.centre).x();
    }
    return groups;
}

void explain_mass(const Known& known, std::vector<Explanation>& list) {
    std::vector<double> terms;
    double sum = 0;
    for (const Group& group : group_parts(known.heat_case.car)) {
        if (group.mass == 0) continue;
        terms.push_back(group.mass);
        sum += group.mass;
    }
    // What a scale says beyond the parts.
    if (known.heat_case.car.as_built.mass) terms.push_back(known.figures.mass - sum);
    list.push_back(make_explanation("mass_g", {{"mass", known.shown(known.figures.mass, Quantity::mass)}},
                                    formula_sum(terms), known.figures.mass, "kg"));
}

std::string balance_formula(const Known& known) {
    const CarOnWheels& wheels = known.ready.wheels;
    const AsBuilt& built = known.heat_case.car.as_built;
    if (built.front_load)
        return formula_number(*built.front_load) + " × " + formula_number(wheels.wheelbase) + " / " +
               formula_number(wheels.mass);
    std::string moments;
    double mass = 0, moment = 0;
    for (const Group& group : group_parts(known.heat_case.car)) {
        if (group.mass == 0) continue;
        moments += (moments.empty() ? "" : " + ") + formula_number(group.mass) + " × " +
                   formula_number(group.moment / group.mass);
        mass += group.mass;
        moment += group.moment;
    }
    std::string formula = "(" + moments + ") / " + formula_number(mass);
    if (built.balance_ahead_of_rear_axle)
        formula += " + " + formula_number(*built.balance_ahead_of_rear_axle - moment / mass);
    return formula;
}

} // namespace

void explain_standing(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const CarOnWheels& wheels = known.ready.wheels;
    explain_mass(known, list);

    const double balance = f.balance_ahead_of_rear_axle;
    list.push_back(make_explanation("balance_ahead_of_rear_axle_mm",
                                    {{"balance", known.shown(balance, Quantity::length)}},
                                    balance_formula(known), balance, "m"));
    list.push_back(make_explanation("front_load_g", {{"load", known.shown(f.front_load, Quantity::mass)}},
                                    formula_number(wheels.mass) + " × " + formula_number(balance) + " / " +
                                        formula_number(wheels.wheelbase),
                                    f.front_load, "kg"));

    const double slope = std::abs(known.ready.course.start_slope());
    list.push_back(make_explanation(
        "ramp_front_load_g",
        {{"load", known.shown(f.ramp_front_load, Quantity::mass)},
         {"slope", known.shown(slope, Quantity::angle)}},
        formula_number(wheels.mass) + " × (" + formula_number(balance) + " × cos(" + formula_number(slope) +
            ") + (" + formula_number(wheels.centre.z()) + " − " + formula_number(wheels.nose.y()) +
            ") × sin(" + formula_number(slope) + ")) / " + formula_number(wheels.wheelbase),
        f.ramp_front_load, "kg"));
}

void explain_scale(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.scale) return;
    // A scale's steps are small against the car: all the digits of a double that count here.
    constexpr int digits = 11;
    const Scale& scale = known.project.scale;
    const std::string division = formula_number(scale.division, digits);
    const std::string offset = formula_number(scale.offset, digits);
    list.push_back(make_explanation("scale.reads_g",
                                    {{"reads", known.shown(f.scale->reads, Quantity::mass)},
                                     {"division", known.shown(scale.division, Quantity::mass)}},
                                    std::string(scale.rounds_down ? "floor" : "round") + "((" +
                                        formula_number(f.mass, digits) + " + " + offset + ") / " + division +
                                        ") × " + division,
                                    f.scale->reads, "kg"));

    const double limit = *known.project.rules.max_mass, turning = scale.rounds_down ? 1 : 0.5;
    const double steps = std::round((f.scale->largest_legal_true + scale.offset) / scale.division - turning);
    list.push_back(make_explanation("scale.margin_g",
                                    {{"margin", known.shown(f.scale->margin, Quantity::mass)},
                                     {"limit", known.shown(limit, Quantity::mass)},
                                     {"bound", known.shown(f.scale->largest_legal_true, Quantity::mass)}},
                                    division + " × (" + formula_number(steps) + " + " +
                                        formula_number(turning) + ") − " + offset + " − " +
                                        formula_number(f.mass, digits),
                                    f.scale->margin, "kg"));
}

void explain_air(const Known& known, std::vector<Explanation>& list) {
    const AirState& air = known.heat_case.air;
    const MoistAirTerms terms = moist_air_terms(air.temperature, air.pressure, air.humidity);
    list.push_back(make_explanation(
        "air_density_kg_m3",
        {{"density", known.shown(known.figures.air_density, Quantity::density)},
         {"temperature", known.shown(air.temperature, Quantity::temperature)}},
        formula_number(air.pressure, 9) + " × " + formula_number(terms.dry_molar_mass) + " / (" +
            formula_number(terms.compressibility) + " × " + formula_number(terms.gas_constant) + " × " +
            formula_number(air.temperature) + ") × (1 − " + formula_number(terms.vapour_fraction) +
            " × (1 − " + formula_number(terms.water_molar_mass) + " / " +
            formula_number(terms.dry_molar_mass) + "))",
        known.figures.air_density, "kg/m³"));
}

void explain_guide(const Known& known, std::vector<Explanation>& list) {
    const auto &margin = known.figures.steer.guidance_margin, &ride = known.figures.steer.ride_probability;
    if (!known.heat_case.track.rail || !margin || !ride) return;
    const GuideSetup& g = known.ready.guide.setup;
    if (std::isfinite(*margin) && g.grip > 0)
        list.push_back(make_explanation("steer.guidance_margin",
                                        {{"margin", known.shown(*margin, Quantity::plain)},
                                         {"load", known.shown(known.figures.front_load, Quantity::mass)}},
                                        formula_number(g.grip) + " × " + formula_number(g.front_load) +
                                            " × tanh(" + formula_number(g.creep) + " × (" +
                                            formula_number(g.steer) + " − " + formula_number(g.rear_toe) +
                                            ") / " + formula_number(g.grip) + ") × " +
                                            formula_number(g.wheelbase) + " / " + formula_number(g.kick),
                                        *margin, ""));
    const bool smooth = g.hold_width > 0 && std::isfinite(*margin);
    list.push_back(make_explanation(
        "steer.ride_probability", {{"chance", known.shown(*ride, Quantity::percent)}},
        smooth ? "Φ((" + formula_number(*margin) + " − " + formula_number(hold_margin) + ") / √(" +
                     formula_number(g.hold_width) + "^2 + (" + formula_number(g.moment_per_steer()) + " / " +
                     formula_number(g.kick) + ")^2 × (" + formula_number(g.align) + "^2 + " +
                     formula_number(g.need) + "^2)))"
               : "",
        *ride, ""));
}

} // namespace rampwright
