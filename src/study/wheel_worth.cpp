#include "study/changes.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/study/wheel_worth.hpp>

#include <cmath>

namespace rampwright {

namespace {

constexpr double mass_step = 0.1 * gram;
constexpr double weighing_sigma = 0.005 * gram;
/// A tenth of a millimetre of run-out ranks as so much mass of the same wheel.
constexpr double mass_per_length = 0.05 * gram / (0.1 * millimetre);

/// Seconds per kilogram of the wheels that touch, or of the raised one; none where there is no such wheel.
std::optional<double> per_mass(const HeatCase& heat_case, bool touching,
                               const std::shared_ptr<const Track>& track) {
    int count = 0;
    const auto with = [&](double change) {
        HeatCase changed = heat_case;
        count = 0;
        for (const Wheel& wheel : heat_case.car.wheels) {
            if (wheel.touches != touching) continue;
            ++count;
            set_wheel_mass(changed, wheel.corner, wheel.mass + change);
        }
        // A car that is weighed as a whole weighs so much the more.
        if (changed.car.as_built.mass) *changed.car.as_built.mass += count * change;
        return clock_time(changed, track);
    };
    const auto heavier = with(mass_step), lighter = with(-mass_step);
    if (count == 0 || !heavier || !lighter) return std::nullopt;
    return (*heavier - *lighter) / (2 * mass_step * count);
}

Uncertain with_sigma(const HeatCase& heat_case, bool touching, const std::shared_ptr<const Track>& track) {
    const auto value = per_mass(heat_case, touching, track);
    if (!value) return {};
    const Uncertain journal = heat_case.car.model[ModelName::journal];
    HeatCase rough = heat_case, smooth = heat_case;
    rough.car.model[ModelName::journal].value = journal.value + journal.sigma;
    smooth.car.model[ModelName::journal].value = std::max(0.0, journal.value - journal.sigma);
    const auto high = per_mass(rough, touching, track), low = per_mass(smooth, touching, track);
    return {*value, high && low ? 0.5 * std::abs(*high - *low) : 0};
}

} // namespace

WheelWorth wheel_worth(const HeatCase& heat_case) {
    const auto track = std::make_shared<const Track>(heat_case.track);
    WheelWorth worth;
    worth.touching_mass = with_sigma(heat_case, true, track);
    worth.raised_mass = with_sigma(heat_case, false, track);
    worth.guide_runout = 2 * mass_per_length * std::abs(worth.touching_mass.value);
    worth.rear_runout = mass_per_length * std::abs(worth.touching_mass.value);
    worth.pair_difference = worth.rear_runout;
    worth.mass_sigma = weighing_sigma;
    return worth;
}

} // namespace rampwright
