#include "explain/known.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace rampwright {

namespace {

/// How the wheels move with the one coordinate at a place of the course.
struct Motion {
    double height = 0; ///< m, of the centre of mass
    double centre_rate = 1, front_rate = 1, pitch_rate = 0;
};

Motion motion_at(const ReadyHeat& ready, double q) {
    const Pose pose = ready.course.axles().pose(q);
    const std::complex<double> arm = pose.along * in_axle_frame(ready.car, ready.car.centre);
    const std::complex<double> rate = pose.rear.tangent + pose.pitch_rate * std::complex<double>(0, 1) * arm;
    return {(pose.rear.at + arm).imag(), std::abs(rate), pose.front_rate, pose.pitch_rate};
}

/// "a × b + ..." over the touching wheels, less those that are zero.
std::string over_wheels(const Known& known, const std::function<std::string(std::size_t)>& term) {
    std::string sum;
    for (std::size_t n = 0; n < known.ready.car.parts.size(); ++n)
        if (known.ready.car.parts[n].touches) sum += (sum.empty() ? "" : " + ") + term(n);
    return "(" + sum + ")";
}

/// A wheel's mean of a load along the way: its energy over what one newton would have taken. Where there is
/// no loss to tell it by, the standing load, which then is multiplied by zero.
double mean_load(const Known& known, std::size_t wheel, double energy, double per_newton) {
    if (per_newton > 0) return energy / per_newton;
    return known.ready.level.loads[wheel].value_or(0);
}

double radius_of(const Known& known, std::size_t wheel) {
    return is_front(Corner(wheel)) ? known.ready.car.front.radius : known.ready.car.rear.radius;
}

void explain_bearings(const Known& known, double way, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const auto bearing_load = [&](std::size_t n) {
        // Axle and hub are pressed by the same load.
        const HeatCar::WheelPart& part = known.ready.car.parts[n];
        const WheelBudget& b = f.budget_by_wheel[n];
        return formula_number(mean_load(known, n, b.journal + b.hub,
                                        (part.journal_arm + part.hub_arm) / radius_of(known, n) * way));
    };
    const double friction = known.ready.wheels.model[ModelName::journal].value;
    list.push_back(make_explanation(
        "budget_mj.journal", {{"energy", known.shown(f.budget.journal, Quantity::energy)}},
        formula_number(friction) + " × " +
            over_wheels(known,
                        [&](std::size_t n) {
                            return formula_number(known.ready.wheels.wheels[n].bore_radius) + " / " +
                                   formula_number(radius_of(known, n)) + " × " + bearing_load(n);
                        }) +
            " × " + formula_number(way),
        f.budget.journal, "J", true));
    list.push_back(
        make_explanation("budget_mj.hub", {{"energy", known.shown(f.budget.hub, Quantity::energy)}},
                         over_wheels(known,
                                     [&](std::size_t n) {
                                         return formula_number(known.ready.car.parts[n].hub_arm) + " / " +
                                                formula_number(radius_of(known, n)) + " × " + bearing_load(n);
                                     }) +
                             " × " + formula_number(way),
                         f.budget.hub, "J", true));
}

void explain_treads(const Known& known, double way, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const auto sum = [&](double WheelBudget::*energy, double HeatCar::WheelPart::*coefficient) {
        return over_wheels(known,
                           [&, energy, coefficient](std::size_t n) {
                               const double c = known.ready.car.parts[n].*coefficient;
                               const double load = mean_load(known, n, f.budget_by_wheel[n].*energy, c * way);
                               return formula_number(c) + " × " + formula_number(load);
                           }) +
               " × " + formula_number(way);
    };
    list.push_back(make_explanation(
        "budget_mj.rolling", {{"energy", known.shown(f.budget.rolling, Quantity::energy)}},
        sum(&WheelBudget::rolling, &HeatCar::WheelPart::rolling), f.budget.rolling, "J", true));
    list.push_back(
        make_explanation("budget_mj.scrub", {{"energy", known.shown(f.budget.scrub, Quantity::energy)}},
                         sum(&WheelBudget::scrub, &HeatCar::WheelPart::scrub), f.budget.scrub, "J", true));
}

void explain_drag(const Known& known, double way, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    double windage = 0;
    for (const WheelBudget& wheel : f.budget_by_wheel)
        windage += wheel.windage;
    const double coefficient = known.heat_case.car.drag_coefficient.value;
    const double per_square = 0.5 * f.air_density * coefficient * f.frontal_area * way;
    const double mean_square = per_square > 0 ? (f.budget.air - windage) / per_square : 0;
    list.push_back(make_explanation("budget_mj.air",
                                    {{"energy", known.shown(f.budget.air, Quantity::energy)},
                                     {"area", known.shown(f.frontal_area, Quantity::area)}},
                                    "0.5 × " + formula_number(f.air_density) + " × " +
                                        formula_number(coefficient) + " × " + formula_number(f.frontal_area) +
                                        " × " + formula_number(mean_square) + " × " + formula_number(way) +
                                        " + " + formula_number(windage),
                                    f.budget.air, "J", true));
}

void explain_rail(const Known& known, double way, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.budget.rail) return;
    const Guide& guide = known.ready.guide;
    const double p = guide.ride_probability;
    // What is left for bouncing is told by the energy unless the car always rides.
    constexpr double always = 1 - 1e-9;
    const double bounce =
        p < always ? (*f.budget.rail / way - p * guide.ride_force) / (1 - p) : guide.ride_force;
    list.push_back(make_explanation(
        "budget_mj.rail", {{"energy", known.shown(*f.budget.rail, Quantity::energy)}},
        "(" + formula_number(p) + " × " + formula_number(guide.ride_force) + " + (1 − " + formula_number(p) +
            ") × " + formula_number(bounce) + ") × " + formula_number(way),
        *f.budget.rail, "J", true));
}

/// "√(a^2 + b^2 + ...)" of the strongest inputs and of the rest together.
std::string sigma_formula(const Figures& f) {
    constexpr std::size_t named = 5;
    std::string sum;
    double rest = 0;
    for (std::size_t n = 0; n < f.shares.size(); ++n) {
        if (n >= named) {
            rest += f.shares[n].share;
            continue;
        }
        sum += (n == 0 ? "" : " + ") + formula_number(f.heat.sigma * std::sqrt(f.shares[n].share)) + "^2";
    }
    if (rest > 0) sum += " + " + formula_number(f.heat.sigma * std::sqrt(rest)) + "^2";
    return sum.empty() ? "" : "√(" + sum + ")";
}

} // namespace

void explain_time(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.heat.time) return;
    const double offset = known.heat_case.track.clock_offset.value;
    const double way = known.ready.track->finish_line() - known.ready.track->start_line();
    const double mean = way / (*f.heat.time - offset);
    list.push_back(make_explanation(
        "heat.time_s",
        {{"time", format_with_sigma(*f.heat.time, f.heat.sigma, Quantity::time, known.project.units)},
         {"way", known.shown(way, Quantity::length)},
         {"speed", known.shown(mean, Quantity::speed)}},
        formula_number(way) + " / " + formula_number(mean) + " + " + formula_number(offset), *f.heat.time,
        "s", true));
    list.push_back(make_explanation("heat.sigma_s",
                                    {{"sigma", known.shown(f.heat.sigma, Quantity::time)},
                                     {"low", known.shown(f.heat.interval95[0], Quantity::time)},
                                     {"high", known.shown(f.heat.interval95[1], Quantity::time)}},
                                    f.drawn ? "" : sigma_formula(f), f.heat.sigma, "s", true));

    const Budget& b = f.budget;
    list.push_back(make_explanation("heat.finish_speed_m_s",
                                    {{"speed", known.shown(f.heat.finish_speed, Quantity::speed)}},
                                    "√(2 × (" +
                                        formula_sum({b.released, -b.spin, -b.pitch, -b.journal, -b.hub,
                                                     -b.rolling, -b.rail.value_or(0), -b.scrub, -b.air},
                                                    9) +
                                        ") / " + formula_number(known.ready.car.mass) + ")",
                                    f.heat.finish_speed, "m/s", true));
}

void explain_budget(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.heat.finished) return;
    const ReadyHeat& ready = known.ready;
    const HeatCar& car = ready.car;
    const double way = ready.course.finish() - ready.course.start();
    const Motion start = motion_at(ready, ready.course.start()),
                 end = motion_at(ready, ready.course.finish());

    const double drop = start.height - end.height;
    list.push_back(make_explanation("budget_mj.released",
                                    {{"energy", known.shown(f.budget.released, Quantity::energy)},
                                     {"drop", known.shown(drop, Quantity::length)}},
                                    formula_number(car.mass) + " × " +
                                        formula_number(ready.course.gravity()) + " × " + formula_number(drop),
                                    f.budget.released, "J"));

    const double rear_speed = f.heat.finish_speed / end.centre_rate;
    list.push_back(make_explanation(
        "budget_mj.forward", {{"energy", known.shown(f.budget.forward, Quantity::energy)}},
        "0.5 × " + formula_number(car.mass) + " × " + formula_number(f.heat.finish_speed) + "^2",
        f.budget.forward, "J"));
    list.push_back(make_explanation(
        "budget_mj.spin", {{"energy", known.shown(f.budget.spin, Quantity::energy)}},
        "0.5 × (" + formula_number(car.rear.spin_mass) + " × " + formula_number(rear_speed) + "^2 + " +
            formula_number(car.front.spin_mass) + " × " + formula_number(rear_speed * end.front_rate) + "^2)",
        f.budget.spin, "J"));
    list.push_back(make_explanation("budget_mj.pitch",
                                    {{"energy", known.shown(f.budget.pitch, Quantity::energy)}},
                                    "0.5 × " + formula_number(car.pitch_inertia) + " × " +
                                        formula_number(std::abs(rear_speed * end.pitch_rate)) + "^2",
                                    f.budget.pitch, "J"));
    explain_bearings(known, way, list);
    explain_treads(known, way, list);
    explain_rail(known, way, list);
    explain_drag(known, way, list);
}

} // namespace rampwright
