#include "car/running_surface.hpp"
#include "results/scale_figures.hpp"

#include <rampwright/results/figures_again.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/study/first_order.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Two-sided 95 % of a normal distribution.
constexpr double normal_95 = 1.959963984540054;

void fill_heat(Figures& figures, const HeatCase& heat_case, const HeatResult& result,
               const FirstOrder& spread) {
    HeatFigures& heat = figures.heat;
    heat.finished = result.finished;
    heat.finish_speed = result.finish_speed;
    heat.top_speed = result.top_speed;
    heat.reached = result.reached;
    if (result.finished) {
        heat.time = result.time + heat_case.track.clock_offset.value;
        heat.sigma = spread.sigma;
        heat.interval95 = {*heat.time - normal_95 * spread.sigma, *heat.time + normal_95 * spread.sigma};
    }
    figures.budget = result.budget;
    figures.budget_residual = result.residual;
    figures.budget_by_wheel = result.by_wheel;
    const double gravity = heat_case.track.gravity;
    figures.smallest_front_load = result.smallest_front_load / gravity;
    figures.smallest_front_load_at = result.smallest_front_load_at;
    figures.lifts = result.lifted_front || result.lifted_rear;

    for (const FirstOrder::Term& term : spread.terms)
        figures.shares.push_back(
            {term.key, term.per_sigma * term.per_sigma / (spread.sigma * spread.sigma), {}});
    std::stable_sort(figures.shares.begin(), figures.shares.end(),
                     [](const Share& a, const Share& b) { return a.share > b.share; });
}

/// Toe of the touching front wheel (the mean of two), rad, positive to the car's left.
double front_toe(const CarOnWheels& car) {
    double sum = 0;
    int count = 0;
    for (const Wheel& wheel : car.wheels)
        if (is_front(wheel.corner) && wheel.touches) {
            sum += wheel.toe;
            ++count;
        }
    return count ? sum / count : 0;
}

/// +1 where the car rides the rail on its left, -1 on its right: the side of the raised front wheel, or where
/// none is raised the one it steers towards.
double ridden_side(const CarOnWheels& car) {
    const bool left = car.wheels[std::size_t(Corner::front_left)].touches;
    const bool right = car.wheels[std::size_t(Corner::front_right)].touches;
    if (left != right) return left ? -1 : 1;
    return front_toe(car) < 0 ? -1 : 1;
}

void fill_steer(Figures& figures, const ReadyHeat& ready, const CarPlan& plan, const TrackPlan& track) {
    SteerFigures& steer = figures.steer;
    steer.toe = front_toe(ready.wheels);
    const double wheelbase = ready.wheels.wheelbase;
    if (steer.toe != 0) steer.turn_radius = turn_radius(wheelbase, std::abs(steer.toe));
    if (!track.rail) return;
    const double speed = figures.heat.finished ? figures.heat.finish_speed : figures.heat.top_speed;
    steer.ride_probability = ready.guide.ride_probability;
    steer.guidance_margin = ready.guide.margin;
    steer.ride_force = ready.guide.ride_force;
    steer.bounce_force = ready.guide.bounce_force(speed);
    const double gap = std::max(0.0, side_gap(ready.wheels, *track.rail));
    steer.best_toe = best_steer(ready.wheels, gap, std::max(0.0, ready.level.front), speed);
    if (plan.steer.over) steer.best_drift = drift_from_steer(wheelbase, *steer.best_toe, *plan.steer.over);
    *steer.best_toe *= ridden_side(ready.wheels);
}

void fill_findings(Figures& figures, const Project& project, const HeatCase& heat_case,
                   const ReadyHeat& ready, const HeatResult& result, WoodMemo& memo) {
    const auto take = [&](std::vector<Finding> found) {
        figures.findings.insert(figures.findings.end(), std::make_move_iterator(found.begin()),
                                std::make_move_iterator(found.end()));
    };
    take(check_fit(project, heat_case.car, memo));
    take(reconcile_as_built(heat_case.car));
    take(check_rules(project, heat_case.car, figures));
    const std::string& key = heat_case.car.key;
    if (!result.finished)
        take({make_finding("stops-short", Severity::warning, key, {},
                           {{"reached_mm", result.reached * 1e3}})});
    if (result.lifted_front || result.lifted_rear)
        take({make_finding(result.lifted_front ? "front-lifts" : "rear-lifts", Severity::warning, key, {},
                           {{"at_mm", result.lifted_at * 1e3}})});
    if (project.track.rail && ready.guide.margin < 1)
        take({make_finding("guidance-weak", Severity::warning, key + "/wheels", {},
                           {{"margin", ready.guide.margin}, {"front_load_g", figures.front_load * 1e3}})});
    std::stable_sort(figures.findings.begin(), figures.findings.end(),
                     [](const Finding& a, const Finding& b) {
                         return static_cast<int>(a.severity) > static_cast<int>(b.severity);
                     });
}

/// A point of the level frame in the car frame.
Vec3 in_car_frame(const CarModel& car, const Vec3& level) {
    const RunningSurface surface = find_running_surface(car);
    const Vec2 normal(-surface.along.y(), surface.along.x());
    const Vec2 offset = surface.along * level.x() + normal * level.z();
    return {surface.origin.x() + offset.x(), level.y(), surface.origin.z() + offset.y()};
}

void fill_standing(Figures& figures, const HeatCase& heat_case, const ReadyHeat& ready) {
    const MassProperties computed = total(heat_case.car);
    const double gravity = ready.track->gravity();
    figures.mass = ready.wheels.mass;
    figures.body_mass = heat_case.car.body_mass;
    figures.wood_volume = heat_case.car.wood_volume;
    figures.balance_ahead_of_rear_axle = ready.wheels.centre.x();
    // As-built values move the centre along and across the level frame; the car frame's point follows.
    figures.centre = computed.centre;
    const CarModel& car = heat_case.car;
    if (car.as_built.mass || car.as_built.front_load || car.as_built.balance_ahead_of_rear_axle ||
        car.as_built.centre_height)
        figures.centre = in_car_frame(car, ready.wheels.centre);
    figures.inertia = ready.wheels.inertia;
    figures.front_load = ready.level.front / gravity;
    for (Corner corner : all_corners)
        if (const auto load = ready.level.loads[std::size_t(corner)])
            figures.wheel_loads[std::size_t(corner)] = *load / gravity;
    figures.ramp_front_load =
        stand(ready.wheels, ready.course.start_slope(), gravity, Held::by_pin).front / gravity;
    figures.frontal_area = car.frontal_area;
    figures.air_density = ready.air.density;
}

/// A default concerns a car if it stands in its own part of the file or in no car's.
bool concerns(const std::string& key, std::size_t car) {
    const std::string own = "/cars/" + std::to_string(car) + "/";
    return !key.starts_with("/cars/") || key.starts_with(own);
}

} // namespace

Figures compute_figures(const Project& project, std::size_t car) {
    WoodMemo nothing;
    return compute_figures(project, car, nothing);
}

Figures compute_figures(const Project& project, std::size_t car, WoodMemo& memo) {
    const HeatCase heat_case{build_car(project, car, memo), project.track, project.air};
    const ReadyHeat ready = make_ready(heat_case);
    const HeatResult result = run_heat(ready.course, ready.car, HeatDetail::books);

    Figures figures;
    figures.name = project.cars[car].name;
    fill_standing(figures, heat_case, ready);
    fill_heat(figures, heat_case, result, result.finished ? propagate(project, heat_case) : FirstOrder{});
    figures.sensitivities = find_sensitivities(heat_case);
    fill_steer(figures, ready, project.cars[car], project.track);
    figures.scale = weigh_car(project, heat_case.car, figures.mass);
    figures.built = compare_built(project, heat_case.car);
    for (const Assumed& assumed : project.assumed)
        if (concerns(assumed.key, car)) figures.assumed.push_back(assumed);
    fill_findings(figures, project, heat_case, ready, result, memo);
    return figures;
}

} // namespace rampwright
