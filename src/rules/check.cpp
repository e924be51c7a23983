#include <rampwright/bench/scale.hpp>
#include <rampwright/rules/check.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Builds the list of results; every rule goes through one of its two doors.
class Judge {
public:
    void at_most(const char* code, Quantity quantity, const std::optional<double>& limit, double measured) {
        if (limit) decide(code, quantity, *limit, measured, *limit - measured);
    }
    void at_least(const char* code, Quantity quantity, const std::optional<double>& limit, double measured) {
        if (limit) decide(code, quantity, *limit, measured, measured - *limit);
    }
    void decide(const char* code, Quantity quantity, double limit, double measured, double margin) {
        // A limit is met at equality; sums of decimal lengths carry rounding of this size.
        const bool pass = margin >= -1e-12;
        results.push_back({code, pass ? Verdict::pass : Verdict::breach, quantity, limit, measured, margin});
    }
    std::vector<RuleResult> results;
};

double inner_width(const CarModel& car, bool front) {
    const Wheel& left = car.wheels[std::size_t(front ? Corner::front_left : Corner::rear_left)];
    const Wheel& right = car.wheels[std::size_t(front ? Corner::front_right : Corner::rear_right)];
    return left.centre.y() - right.centre.y() - 0.5 * (left.width + right.width);
}

} // namespace

std::vector<RuleResult> judge_rules(const Project& project, const CarModel& car, const Figures& figures) {
    const Rules& rules = project.rules;
    Judge judge;
    if (rules.max_mass) {
        const ScaleVerdict scale = weigh(project.scale, figures.mass, *rules.max_mass);
        judge.results.push_back({"max_mass_g", scale.legal ? Verdict::pass : Verdict::breach, Quantity::mass,
                                 rules.max_mass, figures.mass, scale.margin});
    }
    const Vec3 size = car.high - car.low;
    judge.at_most("max_length_mm", Quantity::length, rules.max_length, size.x());
    judge.at_most("max_width_mm", Quantity::length, rules.max_width, size.y());
    judge.at_most("max_height_mm", Quantity::length, rules.max_height, size.z());
    judge.at_least("min_ground_clearance_mm", Quantity::length, rules.min_ground_clearance,
                   car.ground_clearance);
    judge.at_least("min_inner_width_mm", Quantity::length, rules.min_inner_width,
                   std::min(inner_width(car, false), inner_width(car, true)));
    const double wheelbase = car.front_x - car.rear_x;
    judge.at_least("wheelbase_mm/min", Quantity::length, rules.wheelbase.min, wheelbase);
    judge.at_most("wheelbase_mm/max", Quantity::length, rules.wheelbase.max, wheelbase);
    double lightest = car.wheels[0].mass;
    int touching = 0;
    for (const Wheel& wheel : car.wheels) {
        lightest = std::min(lightest, wheel.mass);
        touching += wheel.touches ? 1 : 0;
    }
    judge.at_least("wheel_min_mass_g", Quantity::mass, rules.wheel_min_mass, lightest);
    // So many wheels must touch, at least: more never break the rule.
    if (rules.wheels_touching)
        judge.decide("wheels_touching", Quantity::plain, *rules.wheels_touching, touching,
                     touching - *rules.wheels_touching);
    const auto allowed = [&](const char* key) {
        const auto found = rules.allow.find(key);
        return found == rules.allow.end() || found->second;
    };
    const auto forbid = [&](const char* code, const char* key, bool used) {
        if (!allowed(key)) judge.decide(code, Quantity::plain, 0, used ? 1 : 0, used ? -1 : 0);
    };
    forbid("allow/raised_wheel", "raised_wheel", touching < 4);
    forbid("allow/coned_hubs", "coned_hubs",
           std::any_of(car.wheels.begin(), car.wheels.end(),
                       [](const Wheel& w) { return w.hub == Hub::coned; }));
    forbid("allow/bent_axles", "bent_axles", car.steer.bend.value_or(0) != 0);
    for (const auto& [key, value] : rules.allow)
        if (key != "raised_wheel" && key != "coned_hubs" && key != "bent_axles")
            judge.results.push_back({"allow/" + key, Verdict::look_yourself, Quantity::plain, {}, {}, {}});
    return judge.results;
}

std::vector<Finding> check_rules(const Project& project, const CarModel& car, const Figures& figures) {
    std::vector<Finding> findings;
    for (const RuleResult& rule : judge_rules(project, car, figures)) {
        if (rule.verdict != Verdict::breach) continue;
        const bool mass = rule.quantity == Quantity::mass, length = rule.quantity == Quantity::length;
        const double scale = mass || length ? 1e3 : 1;
        const std::string unit = mass ? "_g" : length ? "_mm" : "";
        findings.push_back(make_finding("rule-breach", Severity::breach, "/rules/" + rule.code, {},
                                        {{"limit" + unit, rule.limit.value_or(0) * scale},
                                         {"measured" + unit, rule.measured.value_or(0) * scale},
                                         {"over" + unit, -rule.margin.value_or(0) * scale}}));
    }
    return findings;
}

} // namespace rampwright
