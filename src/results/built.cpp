#include "core/fill_text.hpp"
#include "results/trim.hpp"

#include <rampwright/bench/weighing.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/format.hpp>

#include <cmath>

namespace rampwright {

namespace {

/// The measured values of a finished car, each with what it is known to.
struct Weighed {
    std::optional<Measured> whole, front, rear;
};

std::optional<Measured> weighed(const std::vector<double>& readings, const std::optional<double>& stated,
                                double division) {
    if (!readings.empty()) {
        Measured mean = mean_of_weighings(readings, division);
        if (stated) mean.value = *stated;
        return mean;
    }
    if (stated) return Measured{*stated, division / std::sqrt(12.0)};
    return std::nullopt;
}

Weighed read_weighed(const Project& project, const CarModel& car) {
    const Readings& readings = project.cars.at(car.car).readings;
    const double division = project.scale.division;
    Weighed w;
    w.whole = weighed(readings.whole, car.as_built.mass, division);
    w.front = weighed(readings.front, car.as_built.front_load, division);
    w.rear = weighed(readings.rear, std::nullopt, division);
    return w;
}

/// The balance point from what was weighed, else from the balance edge.
std::optional<Measured> find_balance(const CarModel& car, const Weighed& w, const PlannedStanding& planned) {
    const Measured wheelbase{planned.wheelbase, 0.3 * millimetre};
    if (w.front) {
        const Measured whole = w.whole.value_or(Measured{planned.mass, 0});
        return balance_from_whole(*w.front, whole, wheelbase);
    }
    // A length measured by hand is known to 0.3 mm, as everywhere.
    if (car.as_built.balance_ahead_of_rear_axle)
        return Measured{*car.as_built.balance_ahead_of_rear_axle, 0.3 * millimetre};
    return std::nullopt;
}

std::string difference_words(const BuiltLine& line, UnitSystem units) {
    const double by = line.difference();
    const std::string amount = format(std::abs(by), line.quantity, units);
    const auto said = [&](std::string_view template_text) {
        return fill_places(template_text, [&](std::string_view name) {
            return name == "what"      ? line.name
                   : name == "found"   ? format(line.built, line.quantity, units)
                   : name == "planned" ? format(line.planned, line.quantity, units)
                                       : amount;
        });
    };
    if (amount == format(0, line.quantity, units))
        return said(Core::tr("{what} {found}, planned {planned}; as planned"));
    std::string text;
    if (line.code == "balance_ahead_of_rear_axle_mm")
        text =
            by > 0
                ? said(Core::tr("{what} {found}, planned {planned}; {amount} further forward than planned"))
                : said(Core::tr("{what} {found}, planned {planned}; {amount} further back than planned"));
    else if (line.code == "centre_height_mm")
        text = by > 0 ? said(Core::tr("{what} {found}, planned {planned}; {amount} higher than planned"))
                      : said(Core::tr("{what} {found}, planned {planned}; {amount} lower than planned"));
    else
        text = by > 0 ? said(Core::tr("{what} {found}, planned {planned}; {amount} more than planned"))
                      : said(Core::tr("{what} {found}, planned {planned}; {amount} less than planned"));
    if (line.sigma > 0 && std::abs(by) < 2 * line.sigma)
        return Core::tr("{difference}, within what the scale can tell", {{"difference", text}});
    return text;
}

} // namespace

std::optional<Built> compare_built(const Project& project, const CarModel& car) {
    const Weighed w = read_weighed(project, car);
    const AsBuilt& as_built = car.as_built;
    if (!w.whole && !w.front && !w.rear && !as_built.balance_ahead_of_rear_axle && !as_built.centre_height)
        return std::nullopt;
    CarModel plan = car;
    plan.as_built = {};
    const CarOnWheels planned = on_wheels(plan);
    const PlannedStanding stands{planned.mass, planned.centre.x(), planned.wheelbase};

    Built built;
    const auto add = [&](const char* code, const std::string& name, Quantity quantity, double expected,
                         const Measured& found) {
        built.lines.push_back({code, name, quantity, expected, found.value, found.sigma});
    };
    const double front = stands.mass * stands.balance / stands.wheelbase;
    if (w.whole) add("mass_g", Core::tr("mass"), Quantity::mass, stands.mass, *w.whole);
    if (w.front) add("front_load_g", Core::tr("front load"), Quantity::mass, front, *w.front);
    if (w.rear) add("rear_load_g", Core::tr("rear load"), Quantity::mass, stands.mass - front, *w.rear);
    const auto balance = find_balance(car, w, stands);
    if (balance)
        add("balance_ahead_of_rear_axle_mm", Core::tr("balance point ahead of the rear axle"),
            Quantity::length, stands.balance, *balance);
    if (as_built.centre_height)
        add("centre_height_mm", Core::tr("centre of mass above the lane"), Quantity::length,
            planned.centre.z(), {*as_built.centre_height, 0.3 * millimetre});
    built.reasons = reconcile_as_built(car);
    if (w.whole && w.front && w.rear) {
        built.closure = w.front->value + w.rear->value - w.whole->value;
        built.closure_sigma = std::hypot(std::hypot(w.front->sigma, w.rear->sigma), w.whole->sigma);
    }
    TrimPlan trimmed = plan_trims(project, car, stands,
                                  {w.whole ? w.whole->value : stands.mass, balance ? balance->value : 0},
                                  w.whole.has_value(), balance.has_value());
    built.trims = std::move(trimmed.trims);

    for (const BuiltLine& line : built.lines)
        built.words.push_back(difference_words(line, project.units) + ".");
    if (built.closure && std::abs(*built.closure) > 2 * built.closure_sigma)
        built.words.push_back(fill_places(
            *built.closure > 0
                ? Core::tr("Front and rear add up to {amount} more than the whole car: the block and "
                           "the scale were not of one height, or a wheel leaned on something. Weigh again.")
                : Core::tr("Front and rear add up to {amount} less than the whole car: the block and "
                           "the scale were not of one height, or a wheel leaned on something. Weigh again."),
            [&](std::string_view) {
                return format(std::abs(*built.closure), Quantity::mass, project.units);
            }));
    for (const Trim& trim : built.trims)
        built.words.push_back(trim.text);
    if (!trimmed.remains.empty()) built.words.push_back(trimmed.remains);
    built.words.insert(built.words.end(), trimmed.held_back.begin(), trimmed.held_back.end());
    return built;
}

} // namespace rampwright
