#pragma once

#include <rampwright/car/car_model.hpp>
#include <rampwright/results/figures.hpp>

namespace rampwright {

/// How a rule stands for a car.
enum class Verdict { pass, breach, look_yourself };

/// One rule against one car. `limit` and `measured` are SI, in the unit of `quantity`; absent where a person
/// must look.
struct RuleResult {
    std::string code; ///< the key in the file's rules, e.g. "max_mass_g"
    Verdict verdict = Verdict::look_yourself;
    Quantity quantity = Quantity::plain;
    std::optional<double> limit, measured;
    std::optional<double> margin; ///< room left; negative in breach
};

/// Every rule the project states, decided where the model computes the quantity. Mass is judged as the
/// project's scale reads it.
std::vector<RuleResult> judge_rules(const Project& project, const CarModel& car, const Figures& figures);

/// The breaches as findings.
std::vector<Finding> check_rules(const Project& project, const CarModel& car, const Figures& figures);

} // namespace rampwright
