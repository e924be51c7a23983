#include "results/scale_figures.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/bench/weighing.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/materials/materials.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright {

double mass_sigma_of(const Project& project, const CarModel& car) {
    if (car.as_built.mass) {
        const auto& whole = project.cars.at(car.car).readings.whole;
        return whole.empty() ? project.scale.division / std::sqrt(12.0)
                             : mean_of_weighings(whole, project.scale.division).sigma;
    }
    double variance = 0;
    for (const Part& part : car.parts)
        variance += part.mass_sigma * part.mass_sigma;
    return std::sqrt(variance);
}

PuttyAmount putty_of(const ScaleFigures& scale, double mass) {
    const double needed = std::max(0.0, mass);
    if (scale.putty_density <= 0) return {needed, 0};
    const double area = std::numbers::pi / 4 * scale.pellet_diameter * scale.pellet_diameter;
    return {needed, needed / (scale.putty_density * area)};
}

std::optional<ScaleFigures> weigh_car(const Project& project, const CarModel& car, double mass) {
    if (!project.rules.max_mass) return std::nullopt;
    const double limit = *project.rules.max_mass;
    const ScaleVerdict race = weigh(project.scale, mass, limit),
                       worse = weigh(project.worse_scale, mass, limit);
    ScaleFigures s;
    s.reads = race.reading;
    s.largest_legal_true = race.bound;
    s.margin = race.margin;
    s.worse_reads = worse.reading;
    s.worse_largest_legal_true = worse.bound;
    s.worse_margin = worse.margin;
    s.mass_sigma = mass_sigma_of(project, car);

    const Material* putty = find_material(project.tools.putty);
    s.putty = putty ? putty->name : project.tools.putty;
    s.putty_density = putty ? putty->density.value : 0;
    s.pellet_diameter = project.tools.pellet_diameter;
    s.take_off = putty_of(s, mass + 2 * s.mass_sigma - std::min(race.bound, worse.bound));
    s.carry = putty_of(s, std::max(race.bound, worse.bound) - (mass - 2 * s.mass_sigma));
    return s;
}

Json to_json(const ScaleFigures& s) {
    const auto putty = [](const PuttyAmount& amount) {
        return Json{{"mass_g", amount.mass / gram}, {"pellet_mm", amount.pellet / millimetre}};
    };
    return {{"reads_g", s.reads / gram},
            {"reads_oz", s.reads / ounce},
            {"largest_legal_true_g", s.largest_legal_true / gram},
            {"margin_g", s.margin / gram},
            {"worse",
             {{"reads_g", s.worse_reads / gram},
              {"largest_legal_true_g", s.worse_largest_legal_true / gram},
              {"margin_g", s.worse_margin / gram}}},
            {"mass_sigma_g", s.mass_sigma / gram},
            {"putty",
             {{"material", s.putty},
              {"density_kg_m3", s.putty_density},
              {"pellet_diameter_mm", s.pellet_diameter / millimetre},
              {"take_off", putty(s.take_off)},
              {"carry", putty(s.carry)}}}};
}

} // namespace rampwright
