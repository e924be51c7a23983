#include <rampwright/study/heat_case.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Studies take many heats, and look at differences of microseconds and more. What comes out is far better
/// than what is asked: at worst 6e-8 s.
constexpr double study_tolerance = 1e-7;

} // namespace

HeatCase make_case(const Project& project, std::size_t car) {
    return {build_car(project, car), project.track, project.air};
}

double side_gap(const CarOnWheels& car, const LaneRail& rail) {
    const auto inner_face = [&](Corner corner) {
        const Wheel& wheel = car.wheels[std::size_t(corner)];
        return std::abs(wheel.centre.y()) - 0.5 * wheel.width;
    };
    return 0.5 * (inner_face(Corner::front_left) + inner_face(Corner::front_right) - rail.width);
}

ReadyHeat make_ready(const HeatCase& heat_case, std::shared_ptr<const Track> track) {
    CarOnWheels wheels = on_wheels(heat_case.car);
    if (!track) track = std::make_shared<const Track>(heat_case.track);
    Standing level = stand(wheels, 0, track->gravity());
    const Air air = moist_air(heat_case.air.temperature, heat_case.air.pressure, heat_case.air.humidity);
    const bool rail = heat_case.track.rail.has_value();
    const double gap = rail ? side_gap(wheels, *heat_case.track.rail) : 0;
    const Guide guide = make_guide(wheels, heat_case.track, gap, level.front);
    const auto losses = wheel_losses(wheels, rail, air.density, air.dynamic_viscosity);
    HeatCar car = prepare(wheels, losses, level, air.density, guide);
    Course course(*track, car);
    return {std::move(wheels), std::move(level), air, std::move(track), guide,
            std::move(car),    std::move(course)};
}

std::optional<double> clock_time(const HeatCase& heat_case, std::shared_ptr<const Track> track) {
    const ReadyHeat ready = make_ready(heat_case, std::move(track));
    const HeatResult result =
        run_heat(ready.course, ready.car, HeatDetail::time, {.tolerance = study_tolerance});
    if (!result.finished) return std::nullopt;
    return result.time + heat_case.track.clock_offset.value;
}

} // namespace rampwright
