#include "car/running_surface.hpp"

#include <rampwright/car/car_model.hpp>
#include <rampwright/core/constants.hpp>

#include <cmath>

namespace rampwright {

namespace {

/// Less than this nobody can measure, and nothing is said of it.
constexpr double worth_saying_mass = 0.05 * gram, worth_saying_length = 0.05 * millimetre;

const Part* find_part(const CarModel& car, PartKind kind) {
    for (const Part& part : car.parts)
        if (part.kind == kind) return &part;
    return nullptr;
}

/// The balance point that was measured, ahead of the rear axle, and where it was written down.
struct Measured {
    double ahead = 0;
    std::string key;
};

std::optional<Measured> find_measured_balance(const CarModel& car, double mass, double wheelbase) {
    if (car.as_built.front_load)
        return Measured{*car.as_built.front_load * wheelbase / mass, car.key + "/as_built/front_load_g"};
    if (car.as_built.balance_ahead_of_rear_axle)
        return Measured{*car.as_built.balance_ahead_of_rear_axle,
                        car.key + "/as_built/balance_ahead_of_rear_axle_mm"};
    return std::nullopt;
}

} // namespace

std::vector<Finding> reconcile_as_built(const CarModel& car) {
    std::vector<Finding> findings;
    const AsBuilt& as_built = car.as_built;
    const RunningSurface surface = find_running_surface(car);
    const MassProperties computed = total(car);
    const double mass = as_built.mass.value_or(computed.mass), more = mass - computed.mass;
    const Part* wood = find_part(car, PartKind::body);

    if (wood != nullptr && car.wood_volume > 0 && std::abs(more) > worth_saying_mass)
        findings.push_back(make_finding(more > 0 ? "as-built-heavier" : "as-built-lighter", Severity::note,
                                        car.key + "/as_built/mass_g", wood->properties.centre,
                                        {{"difference_g", std::abs(more) / gram},
                                         {"density_kg_m3", (car.body_mass + more) / car.wood_volume},
                                         {"planned_kg_m3", car.body_mass / car.wood_volume}}));

    // The wood is the part known worst, so it is taken to make up the difference in mass, which moves the
    // balance point by itself; what is left is put down to where the weights sit.
    const double ahead = surface.level(computed.centre).x();
    const double wood_shift =
        wood == nullptr ? 0 : more * (surface.level(wood->properties.centre).x() - ahead) / mass;
    if (const auto measured = find_measured_balance(car, mass, surface.wheelbase)) {
        const double shift = measured->ahead - ahead;
        double weights = 0;
        for (const Part& part : car.parts)
            if (part.kind == PartKind::ballast) weights += part.properties.mass;
        if (std::abs(shift) > worth_saying_length) {
            const double sign = shift > 0 ? 1 : -1;
            std::vector<std::pair<std::string, double>> values{{"shift_mm", std::abs(shift) / millimetre},
                                                               {"wood_mm", sign * wood_shift / millimetre}};
            std::string code = shift > 0 ? "as-built-balance-ahead" : "as-built-balance-behind";
            if (weights > 0) {
                values.emplace_back("ballast_g", weights / gram);
                values.emplace_back("ballast_mm", sign * (shift - wood_shift) * mass / weights / millimetre);
            } else {
                code += "-no-ballast";
            }
            findings.push_back(make_finding(std::move(code), Severity::note, measured->key, computed.centre,
                                            std::move(values)));
        }
    }
    if (as_built.front_load && as_built.balance_ahead_of_rear_axle) {
        const double by_load = *as_built.front_load * surface.wheelbase / mass;
        const double by_edge = *as_built.balance_ahead_of_rear_axle, difference = std::abs(by_load - by_edge);
        if (difference > worth_saying_length)
            findings.push_back(
                make_finding("as-built-contradiction", Severity::warning,
                             car.key + "/as_built/balance_ahead_of_rear_axle_mm", computed.centre,
                             {{"by_load_mm", by_load / millimetre},
                              {"by_edge_mm", by_edge / millimetre},
                              {"difference_mm", difference / millimetre},
                              {"difference_g", difference * mass / surface.wheelbase / gram}}));
    }
    if (as_built.centre_height) {
        const double height = surface.height(computed.centre);
        if (std::abs(*as_built.centre_height - height) > worth_saying_length)
            findings.push_back(make_finding(
                "as-built-height", Severity::note, car.key + "/as_built/centre_height_mm", computed.centre,
                {{"found_mm", *as_built.centre_height / millimetre}, {"computed_mm", height / millimetre}}));
    }
    return findings;
}

} // namespace rampwright
