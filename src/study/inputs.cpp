#include "study/changes.hpp"
#include "study/tool_inputs.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/study/inputs.hpp>
#include <rampwright/track/vary.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

constexpr double length_sigma = 0.3e-3;          ///< a length that nobody measured
constexpr double measured_length_sigma = 0.1e-3; ///< one read off a rule (common practice, no source)

/// Names of the model that each car has for itself; the others belong to lane, air and materials.
bool is_own(ModelName name) {
    return name == ModelName::align_deg;
}

/// Values that may not change their sign.
Input positive(std::string key, double value, double sigma, Scope scope,
               std::function<void(HeatCase&, double)> set) {
    Input input{std::move(key), value, sigma, Spread::log_normal, 0, scope, std::move(set)};
    // The logarithm's sigma that gives this relative sigma to the value itself.
    const double relative = sigma / value;
    input.log_sigma = std::sqrt(std::log1p(relative * relative));
    return input;
}

Input plain(std::string key, double value, double sigma, Scope scope,
            std::function<void(HeatCase&, double)> set) {
    return {std::move(key), value, sigma, Spread::normal, 0, scope, std::move(set)};
}

void add_model(std::vector<Input>& inputs, const HeatCase& heat_case) {
    for (std::size_t n = 0; n < model_name_count; ++n) {
        const auto name = ModelName(n);
        const Uncertain& u = heat_case.car.model[name];
        if (!(u.sigma > 0)) continue;
        const Scope scope = is_own(name) ? Scope::own : Scope::shared;
        auto set = [name](HeatCase& c, double value) { c.car.model[name].value = value; };
        if (u.value > 0) {
            inputs.push_back(positive(std::string(to_string(name)), u.value, u.sigma, scope, set));
            // Creep stiffness is known to a factor, and its sigma is stored as value times the factor's
            // logarithm.
            if (name == ModelName::creep_per_rad) inputs.back().log_sigma = u.sigma / u.value;
        } else {
            inputs.push_back(plain(std::string(to_string(name)), u.value, u.sigma, scope, set));
        }
    }
}

/// Sets a part's mass, its inertia about its own centre in proportion.
void set_part_mass(Part& part, double mass) {
    if (part.properties.mass > 0) part.properties.inertia *= mass / part.properties.mass;
    part.properties.mass = mass;
}

/// Moves a weight along an axis of the car; the glue, screw or plug that holds it goes along, wherever it is.
void set_piece(HeatCase& c, std::size_t piece, std::optional<std::size_t> held, int axis, double to) {
    const double shift = to - c.car.parts[piece].properties.centre[axis];
    c.car.parts[piece].properties.centre[axis] = to;
    if (held) c.car.parts[*held].properties.centre[axis] += shift;
}

/// What holds a weight, by its place among the parts.
std::optional<std::size_t> find_holding_of(const CarModel& car, const Part& piece) {
    for (std::size_t n = 0; n < car.parts.size(); ++n)
        if (car.parts[n].kind == PartKind::holding && car.parts[n].key == piece.key + "/held") return n;
    return std::nullopt;
}

void add_parts(std::vector<Input>& inputs, const HeatCase& heat_case) {
    for (std::size_t n = 0; n < heat_case.car.parts.size(); ++n) {
        const Part& part = heat_case.car.parts[n];
        const std::string suffix = part.key.substr(std::min(part.key.size(), heat_case.car.key.size()));
        if (part.mass_sigma > 0 && part.properties.mass > 0)
            inputs.push_back(positive("mass" + suffix, part.properties.mass, part.mass_sigma, Scope::own,
                                      [n](HeatCase& c, double mass) {
                                          Part& p = c.car.parts[n];
                                          if (p.kind == PartKind::wheel && p.corner)
                                              set_wheel_mass(c, *p.corner, mass);
                                          else
                                              set_part_mass(p, mass);
                                      }));
        if (part.place_sigma > 0 && part.kind == PartKind::ballast) {
            // One place for both: what holds a piece lies where the piece does, so they are off together.
            const auto held = find_holding_of(heat_case.car, part);
            const auto add = [&](const char* key, int axis) {
                inputs.push_back(
                    plain(key + suffix, part.properties.centre[axis], part.place_sigma, Scope::own,
                          [n, held, axis](HeatCase& c, double to) { set_piece(c, n, held, axis, to); }));
            };
            add("place-x", 0);
            add("place-z", 2);
        }
    }
}

/// Moves an axle with its wheels along an axis of the car; their parts' masses go along.
void set_axle(HeatCase& c, bool front, int axis, double to) {
    double& axle =
        axis == 0 ? (front ? c.car.front_x : c.car.rear_x) : (front ? c.car.front_z : c.car.rear_z);
    const double shift = to - axle;
    axle = to;
    for (Wheel& wheel : c.car.wheels)
        if (is_front(wheel.corner) == front) wheel.centre[axis] += shift;
    for (Part& part : c.car.parts)
        if (part.corner && is_front(*part.corner) == front) part.properties.centre[axis] += shift;
}

/// How well the axles' places are known: to what drill or saw leave where the file says what that is.
double axle_sigma(const Project& project, const HeatCase& heat_case) {
    const bool sawn = project.cars.at(heat_case.car.car).axles.holes == Holes::slots;
    const std::string key = sawn ? "/tools/saw_tolerance_mm" : "/tools/drill_tolerance_mm";
    const bool assumed = std::any_of(project.assumed.begin(), project.assumed.end(),
                                     [&](const Assumed& each) { return each.key == key; });
    const double tolerance = sawn ? project.tools.saw_tolerance : project.tools.drill_tolerance;
    return assumed || !(tolerance > 0) ? length_sigma : tool_sigma(tolerance);
}

void add_lengths(std::vector<Input>& inputs, const Project& project, const HeatCase& heat_case) {
    const CarModel& car = heat_case.car;
    const double axle = axle_sigma(project, heat_case);
    for (const bool front : {false, true}) {
        const std::string name = front ? "front" : "rear";
        inputs.push_back(plain(name + "_x", front ? car.front_x : car.rear_x, axle, Scope::own,
                               [front](HeatCase& c, double x) { set_axle(c, front, 0, x); }));
        inputs.push_back(plain(name + "_z", front ? car.front_z : car.rear_z, axle, Scope::own,
                               [front](HeatCase& c, double z) { set_axle(c, front, 2, z); }));
    }
    inputs.push_back(plain("nose_x", car.nose.x(), length_sigma, Scope::own,
                           [](HeatCase& c, double x) { c.car.nose.x() = x; }));
    // A wheel's diameter is known to 0.3 mm, so its radius to half of that; left and right come off one
    // machine.
    for (const bool front : {false, true}) {
        const Wheel& wheel = car.wheels[std::size_t(front ? Corner::front_left : Corner::rear_left)];
        inputs.push_back(positive(front ? "front_wheel_radius" : "rear_wheel_radius", wheel.radius,
                                  length_sigma / 2, Scope::own, [front](HeatCase& c, double radius) {
                                      for (Wheel& w : c.car.wheels)
                                          if (is_front(w.corner) == front) {
                                              const double ratio = radius / w.radius;
                                              w.spin_inertia *= ratio * ratio;
                                              w.radius = radius;
                                          }
                                  }));
    }
    // A bore is drilled by the wheel's maker: 0.05 mm (common practice, no source).
    const Wheel& any = car.wheels[0];
    inputs.push_back(
        positive("bore_radius", any.bore_radius, 0.025e-3, Scope::own, [](HeatCase& c, double radius) {
            const double ratio = radius / c.car.wheels[0].bore_radius;
            for (Wheel& w : c.car.wheels)
                w.bore_radius *= ratio;
        }));
}

void add_as_built(std::vector<Input>& inputs, const Project& project, const HeatCase& heat_case) {
    // A reading of a digital scale is known to its division over sqrt 12 (GUM F.2.2.1).
    const double weighed = project.scale.division / std::sqrt(12.0);
    const AsBuilt& built = heat_case.car.as_built;
    const auto add = [&](const char* key, std::optional<double> AsBuilt::*member, double sigma) {
        if (const auto& value = built.*member)
            inputs.push_back(positive(std::string("as_built/") + key, *value, sigma, Scope::own,
                                      [member](HeatCase& c, double v) { c.car.as_built.*member = v; }));
    };
    add("mass", &AsBuilt::mass, weighed);
    add("front_load", &AsBuilt::front_load, weighed);
    if (!built.front_load)
        add("balance_ahead_of_rear_axle", &AsBuilt::balance_ahead_of_rear_axle, measured_length_sigma);
    add("centre_height", &AsBuilt::centre_height, measured_length_sigma);
}

/// A lane that is known only so well: cars that race on it share it.
void add_lane(std::vector<Input>& inputs, const HeatCase& heat_case) {
    const TrackPlan& plan = heat_case.track;
    const auto add = [&](const char* key, double value, double sigma, void (*set)(TrackPlan&, double)) {
        if (!(sigma > 0) || !(value > 0)) return;
        inputs.push_back(
            positive(key, value, sigma, Scope::shared, [set](HeatCase& c, double to) { set(c.track, to); }));
        inputs.back().changes_track = true;
    };
    if (plan.drop_sigma > 0) add("lane_drop", find_drop(plan), plan.drop_sigma, set_drop);
    add("lane_way", plan.finish_line - plan.start_line, plan.way_sigma, set_way);
}

} // namespace

double Input::at(double z) const {
    return spread == Spread::log_normal ? value * std::exp(log_sigma * z) : value + sigma * z;
}

std::vector<Input> list_inputs(const Project& project, const HeatCase& heat_case) {
    std::vector<Input> inputs;
    add_model(inputs, heat_case);
    const Uncertain& drag = heat_case.car.drag_coefficient;
    if (drag.sigma > 0 && drag.value > 0)
        inputs.push_back(positive("drag_coefficient", drag.value, drag.sigma, Scope::shared,
                                  [](HeatCase& c, double v) { c.car.drag_coefficient.value = v; }));
    add_parts(inputs, heat_case);
    add_tools(inputs, project, heat_case);
    add_lengths(inputs, project, heat_case);
    add_as_built(inputs, project, heat_case);
    add_lane(inputs, heat_case);
    return inputs;
}

} // namespace rampwright
