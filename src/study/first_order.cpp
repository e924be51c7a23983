#include "study/changes.hpp"
#include "study/moved_inputs.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/study/first_order.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

FirstOrder propagate(const std::vector<std::string>& keys,
                     const std::function<std::optional<double>(std::size_t, double)>& at) {
    FirstOrder result;
    double variance = 0;
    for (std::size_t n = 0; n < keys.size(); ++n) {
        const std::optional<double> high = at(n, 1), low = at(n, -1);
        if (!high || !low) continue;
        result.terms.push_back({keys[n], 0.5 * (*high - *low), *low, *high, n});
        variance += result.terms.back().per_sigma * result.terms.back().per_sigma;
    }
    result.sigma = std::sqrt(variance);
    return result;
}

namespace {

/// Within one sigma of an input this narrow, relative to its value, the time is a straight line but for a few
/// hundredths of what the input is worth: one heat tells it instead of two.
constexpr double narrow = 0.05;

bool is_narrow(const Input& input) {
    return std::abs(input.at(1) - input.value) <= narrow * std::abs(input.value);
}

} // namespace

FirstOrder propagate(MovedInputs& moved, const TrackPlan& track) {
    const std::vector<Input>& inputs = moved.inputs();
    std::vector<std::string> keys;
    for (const Input& input : inputs)
        keys.push_back(input.key);
    const std::optional<double>& nominal = moved.nominal();
    std::optional<double> high;
    FirstOrder result = propagate(keys, [&](std::size_t n, double z) -> std::optional<double> {
        if (z < 0 && nominal && high && is_narrow(inputs[n]) && !inputs[n].changes_track)
            return 2 * *nominal - *high;
        const Deviation deviation{n, z};
        const std::optional<double> time = moved.time({&deviation, 1});
        if (z > 0) high = time;
        return time;
    });
    const auto add = [&](const char* key, double sigma) {
        if (!(sigma > 0)) return;
        result.terms.push_back({key, sigma, 0, 0, {}});
        result.sigma = std::hypot(result.sigma, sigma);
    };
    add("clock_offset", track.clock_offset.sigma);
    add("run_scatter", track.run_scatter);
    return result;
}

FirstOrder propagate(const Project& project, const HeatCase& heat_case) {
    MovedInputs moved(project, heat_case);
    return propagate(moved, heat_case.track);
}

namespace {

/// A step a builder can take, and how a case is changed by `amount` of it.
struct Step {
    const char* key;
    const char* per;
    double amount;
    std::function<void(HeatCase&, double amount)> take;
};

Step model_step(ModelName name, const char* key, const char* per, double amount) {
    return {key, per, amount, [name](HeatCase& c, double by) { c.car.model[name].value += by; }};
}

std::vector<Step> practical_steps() {
    return {
        {"mass", "1 g", gram, add_mass},
        {"balance", "1 mm forward", millimetre, move_balance},
        model_step(ModelName::journal, "journal", "0.01", 0.01),
        model_step(ModelName::rolling, "rolling", "0.0001", 0.0001),
        model_step(ModelName::hub_on_head, "hub_on_head", "0.01", 0.01),
        model_step(ModelName::hub_on_wood, "hub_on_wood", "0.01", 0.01),
        model_step(ModelName::rail, "rail", "0.01", 0.01),
        {"drag_coefficient", "0.01", 0.01,
         [](HeatCase& c, double by) { c.car.drag_coefficient.value += by; }},
        {"frontal_area", "1 cm²", 1e-4, [](HeatCase& c, double by) { c.car.frontal_area += by; }},
        {"wheel_mass", "0.1 g each", 0.1 * gram, add_wheel_mass},
        {"rear_cant", "1°", degree, [](HeatCase& c, double by) { cant_axle(c, false, by); }},
        {"front_cant", "1°", degree, [](HeatCase& c, double by) { cant_axle(c, true, by); }},
        {"steer", "1°", degree, steer_front},
        {"nose", "1 mm forward", millimetre, [](HeatCase& c, double by) { c.car.nose.x() += by; }},
        {"bore", "0.1 mm", 0.1 * millimetre,
         [](HeatCase& c, double by) {
             for (Wheel& wheel : c.car.wheels)
                 wheel.bore_radius += 0.5 * by;
         }},
    };
}

} // namespace

std::vector<Sensitivity> find_sensitivities(const HeatCase& heat_case) {
    std::vector<Sensitivity> result;
    const auto track = std::make_shared<const Track>(heat_case.track);
    for (const Step& step : practical_steps()) {
        // A tenth of the step on either side: a derivative, told per whole step.
        constexpr double part = 0.1;
        HeatCase more = heat_case, less = heat_case;
        step.take(more, part * step.amount);
        step.take(less, -part * step.amount);
        const std::optional<double> slower = clock_time(more, track), faster = clock_time(less, track);
        if (slower && faster) result.push_back({step.key, step.per, (*slower - *faster) / (2 * part) * 1e3});
    }
    std::stable_sort(result.begin(), result.end(), [](const Sensitivity& a, const Sensitivity& b) {
        return std::abs(a.ms) > std::abs(b.ms);
    });
    return result;
}

} // namespace rampwright
