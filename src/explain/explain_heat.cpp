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

/// What turns while the centre of mass goes at a speed, and the energy in it.
struct Turning {
    double rear_speed = 0, front_speed = 0; ///< m/s, of the treads
    double pitch_speed = 0;                 ///< rad/s
    double spin = 0, pitch = 0;             ///< J
};

Turning turning_at(const HeatCar& car, const Motion& motion, double speed) {
    Turning t;
    t.rear_speed = speed / motion.centre_rate;
    t.front_speed = t.rear_speed * motion.front_rate;
    t.pitch_speed = std::abs(t.rear_speed * motion.pitch_rate);
    t.spin = 0.5 * (car.rear.spin_mass * t.rear_speed * t.rear_speed +
                    car.front.spin_mass * t.front_speed * t.front_speed);
    t.pitch = 0.5 * car.pitch_inertia * t.pitch_speed * t.pitch_speed;
    return t;
}

/// "a × b + ..." over the touching wheels, less those that are zero.
std::string over_wheels(const Known& known, const std::function<std::string(std::size_t)>& term) {
    std::string sum;
    for (std::size_t n = 0; n < known.ready.car.parts.size(); ++n)
        if (known.ready.car.parts[n].touches) sum += (sum.empty() ? "" : " + ") + term(n);
    return "(" + sum + ")";
}

double radius_of(const Known& known, std::size_t wheel) {
    return is_front(Corner(wheel)) ? known.ready.car.front.radius : known.ready.car.rear.radius;
}

/// What a loss costs in time, for the sentence.
std::string regained(const Known& known, double LossTimes::*loss) {
    const auto& times = known.figures.budget_time;
    return times ? format_milliseconds((*times).*loss, known.project.units) : "?";
}

void explain_bearings(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const auto bearing = [&](std::size_t n) { return formula_number(known.along.wheels[n].bearing); };
    const std::string way = formula_number(known.along.way);
    const double friction = known.ready.wheels.model[ModelName::journal].value;
    list.push_back(make_explanation(
        "budget_mj.journal",
        {{"energy", known.shown(f.budget.journal, Quantity::energy)},
         {"time", regained(known, &LossTimes::journal)}},
        formula_number(friction) + " × " +
            over_wheels(known,
                        [&](std::size_t n) {
                            return formula_number(known.ready.wheels.wheels[n].bore_radius) + " / " +
                                   formula_number(radius_of(known, n)) + " × " + bearing(n);
                        }) +
            " × " + way,
        f.budget.journal, "J", true));
    list.push_back(make_explanation(
        "budget_mj.hub",
        {{"energy", known.shown(f.budget.hub, Quantity::energy)}, {"time", regained(known, &LossTimes::hub)}},
        over_wheels(known,
                    [&](std::size_t n) {
                        return formula_number(known.ready.car.parts[n].hub_arm) + " / " +
                               formula_number(radius_of(known, n)) + " × " + bearing(n);
                    }) +
            " × " + way,
        f.budget.hub, "J", true));
}

void explain_treads(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const auto sum = [&](double HeatCar::WheelPart::*coefficient, double AlongHeat::WheelMeans::*load) {
        return over_wheels(known,
                           [&, coefficient, load](std::size_t n) {
                               return formula_number(known.ready.car.parts[n].*coefficient) + " × " +
                                      formula_number(known.along.wheels[n].*load);
                           }) +
               " × " + formula_number(known.along.way);
    };
    list.push_back(make_explanation("budget_mj.rolling",
                                    {{"energy", known.shown(f.budget.rolling, Quantity::energy)},
                                     {"time", regained(known, &LossTimes::rolling)}},
                                    sum(&HeatCar::WheelPart::rolling, &AlongHeat::WheelMeans::tread),
                                    f.budget.rolling, "J", true));
    list.push_back(make_explanation("budget_mj.scrub",
                                    {{"energy", known.shown(f.budget.scrub, Quantity::energy)},
                                     {"time", regained(known, &LossTimes::scrub)}},
                                    sum(&HeatCar::WheelPart::scrub, &AlongHeat::WheelMeans::scrub),
                                    f.budget.scrub, "J", true));
}

void explain_drag(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const HeatCar& car = known.ready.car;
    const auto n = [](double value) { return formula_number(value); };
    list.push_back(make_explanation(
        "budget_mj.air",
        {{"energy", known.shown(f.budget.air, Quantity::energy)},
         {"area", known.shown(f.frontal_area, Quantity::area)},
         {"time", regained(known, &LossTimes::air)}},
        "(0.5 × " + n(f.air_density) + " × " + n(known.heat_case.car.drag_coefficient.value) + " × " +
            n(f.frontal_area) + " × " + n(known.along.speed_squared) + " + " + n(car.rear.windage) + " × " +
            n(known.along.rear_stirring) + " + " + n(car.front.windage) + " × " +
            n(known.along.front_stirring) + ") × " + n(known.along.way),
        f.budget.air, "J", true));
}

void explain_rail(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.budget.rail) return;
    const Guide& guide = known.ready.guide;
    std::string time = "?";
    if (f.budget_time && f.budget_time->rail)
        time = format_milliseconds(*f.budget_time->rail, known.project.units);
    list.push_back(make_explanation(
        "budget_mj.rail", {{"energy", known.shown(*f.budget.rail, Quantity::energy)}, {"time", time}},
        "(" + formula_number(guide.lean_force) + " + " + formula_number(guide.crossing) + " × " +
            formula_number(known.along.crossing) + ") × " + formula_number(known.along.rail_way),
        *f.budget.rail, "J", true));
}

/// "√(a^2 + b^2 + ...)" of the strongest inputs, one by one, and of the rest together.
std::string sigma_formula(const FirstOrder& spread) {
    constexpr std::size_t named = 5;
    std::vector<double> worth;
    for (const FirstOrder::Term& term : spread.terms)
        worth.push_back(std::abs(term.per_sigma));
    std::sort(worth.rbegin(), worth.rend());
    std::string sum;
    double rest = 0;
    for (std::size_t n = 0; n < worth.size(); ++n) {
        if (n >= named)
            rest += worth[n] * worth[n];
        else
            sum += (n == 0 ? "" : " + ") + formula_number(worth[n]) + "^2";
    }
    if (rest > 0) sum += " + " + formula_number(std::sqrt(rest)) + "^2";
    return sum.empty() ? "" : "√(" + sum + ")";
}

} // namespace

void explain_time(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.heat.time) return;
    const double offset = known.heat_case.track.clock_offset.value;
    const double way = known.ready.track->finish_line() - known.ready.track->start_line();
    std::string legs;
    for (const AlongHeat::Leg& leg : known.along.legs)
        legs += (legs.empty() ? "" : " + ") + formula_number(leg.time);
    if (offset != 0) legs += (offset < 0 ? " − " : " + ") + formula_number(std::abs(offset));
    list.push_back(make_explanation(
        "heat.time_s",
        {{"time", format_with_sigma(*f.heat.time, f.heat.sigma, Quantity::time, known.project.units)},
         {"way", known.shown(way, Quantity::length)},
         {"speed", known.shown(way / (*f.heat.time - offset), Quantity::speed)}},
        legs, *f.heat.time, "s", true));
    list.push_back(make_explanation("heat.sigma_s",
                                    {{"sigma", known.shown(f.heat.sigma, Quantity::time)},
                                     {"low", known.shown(f.heat.interval95[0], Quantity::time)},
                                     {"high", known.shown(f.heat.interval95[1], Quantity::time)}},
                                    f.drawn ? "" : sigma_formula(known.spread), f.heat.sigma, "s", true));

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

void explain_extremes(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    const ReadyHeat& ready = known.ready;
    const auto n = [](double value) { return formula_number(value, 9); };
    std::string fastest, lightest;
    if (f.heat.finished) {
        const Motion start = motion_at(ready, ready.course.start()),
                     there = motion_at(ready, known.along.fastest.q);
        const Turning turning = turning_at(ready.car, there, f.heat.top_speed);
        fastest = "√(2 × (" + n(ready.car.mass) + " × " + n(ready.course.gravity()) + " × " +
                  n(start.height - there.height) + " − " + n(turning.spin) + " − " + n(turning.pitch) +
                  " − " + n(known.along.fastest.lost) + ") / " + n(ready.car.mass) + ")";
        const AlongHeat::Lightest& l = known.along.lightest;
        if (l.as_if_carrying)
            lightest = "(" + n(l.weight) + " + " + n(l.per_speed2) + " × " + n(l.speed) + "^2 + " +
                       n(l.per_speed15) + " × " + n(std::pow(l.speed, 1.5)) + " + " + n(l.per_guide) + " × " +
                       n(l.guide) + ") / " + n(ready.course.gravity());
    }
    list.push_back(make_explanation("heat.top_speed_m_s",
                                    {{"speed", known.shown(f.heat.top_speed, Quantity::speed)}}, fastest,
                                    f.heat.top_speed, "m/s", true));
    list.push_back(make_explanation("smallest_front_load_g",
                                    {{"load", known.shown(f.smallest_front_load, Quantity::mass)},
                                     {"place", known.shown(f.smallest_front_load_at, Quantity::length)}},
                                    lightest, f.smallest_front_load, "kg", true));
}

void explain_budget(const Known& known, std::vector<Explanation>& list) {
    const Figures& f = known.figures;
    if (!f.heat.finished) return;
    const ReadyHeat& ready = known.ready;
    const HeatCar& car = ready.car;
    const Motion start = motion_at(ready, ready.course.start()),
                 end = motion_at(ready, ready.course.finish());

    const double drop = start.height - end.height;
    list.push_back(make_explanation("budget_mj.released",
                                    {{"energy", known.shown(f.budget.released, Quantity::energy)},
                                     {"drop", known.shown(drop, Quantity::length)}},
                                    formula_number(car.mass) + " × " +
                                        formula_number(ready.course.gravity()) + " × " + formula_number(drop),
                                    f.budget.released, "J"));

    const Turning turning = turning_at(car, end, f.heat.finish_speed);
    list.push_back(make_explanation(
        "budget_mj.forward", {{"energy", known.shown(f.budget.forward, Quantity::energy)}},
        "0.5 × " + formula_number(car.mass) + " × " + formula_number(f.heat.finish_speed) + "^2",
        f.budget.forward, "J"));
    list.push_back(make_explanation(
        "budget_mj.spin", {{"energy", known.shown(f.budget.spin, Quantity::energy)}},
        "0.5 × (" + formula_number(car.rear.spin_mass) + " × " + formula_number(turning.rear_speed) +
            "^2 + " + formula_number(car.front.spin_mass) + " × " + formula_number(turning.front_speed) +
            "^2)",
        f.budget.spin, "J"));
    list.push_back(make_explanation(
        "budget_mj.pitch", {{"energy", known.shown(f.budget.pitch, Quantity::energy)}},
        "0.5 × " + formula_number(car.pitch_inertia) + " × " + formula_number(turning.pitch_speed) + "^2",
        f.budget.pitch, "J"));
    explain_bearings(known, list);
    explain_treads(known, list);
    explain_rail(known, list);
    explain_drag(known, list);
}

} // namespace rampwright
