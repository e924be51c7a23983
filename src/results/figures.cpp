#include "car/running_surface.hpp"
#include "results/scale_figures.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/heat/regained.hpp>
#include <rampwright/results/figures_again.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/study/spread.hpp>
#include <rampwright/study/steps.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

void fill_heat(Figures& figures, const HeatCase& heat_case, const HeatResult& result,
               const HeatSpread& heat_spread) {
    const FirstOrder& spread = heat_spread.first_order;
    HeatFigures& heat = figures.heat;
    heat.finished = result.finished;
    heat.finish_speed = result.finish_speed;
    heat.top_speed = result.top_speed;
    heat.reached = result.reached;
    if (result.finished) {
        heat.time = result.time + heat_case.track.clock_offset.value;
        heat.sigma = spread.sigma;
        heat.interval95 = heat_spread.interval95;
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

/// The part of the steer figures that a guide rail makes.
void fill_rail(Figures& figures, const ReadyHeat& ready, const CarPlan& plan) {
    SteerFigures& steer = figures.steer;
    const GuideSetup& setup = ready.guide.setup;
    // What a crossing costs, meaned over a heat by what a force costs in time there, is that at the mean
    // speed.
    const double way = ready.track->finish_line() - ready.track->start_line();
    const double speed =
        figures.heat.finished && figures.heat.time ? way / *figures.heat.time : figures.heat.top_speed;
    steer.ride_probability = ready.guide.ride_probability;
    steer.guidance_margin = ready.guide.margin;
    steer.ride_force = ready.guide.ride_force;
    steer.bounce_force = bounce_force(setup, speed);
    steer.best_toe = best_steer(setup, speed);
    if (plan.steer.over)
        steer.best_drift = drift_from_steer(setup.wheelbase, *steer.best_toe, *plan.steer.over);
    *steer.best_toe *= ridden_side(ready.wheels.wheels);
}

void fill_steer(Figures& figures, const ReadyHeat& ready, const CarPlan& plan, const TrackPlan& track) {
    SteerFigures& steer = figures.steer;
    steer.toe = mean_toe(ready.wheels.wheels, true);
    const double wheelbase = ready.wheels.wheelbase;
    if (steer.toe != 0) steer.turn_radius = turn_radius(wheelbase, std::abs(steer.toe));
    if (track.rail) fill_rail(figures, ready, plan);
    const TuningState tuning =
        follow_tuning_log(plan, steer.best_drift ? std::abs(*steer.best_drift) : practice_target);
    steer.next = tuning.next();
    steer.next_turn = tuning.next_turn();
    steer.axle_turn = tuning.side * tuning.log.axle().turn;
    steer.next_turn_towards_rail = tuning.towards_rail();
}

/// Where the model and common practice part: what the rear wheels' cant costs here, why, and what a trial
/// would settle.
void find_disputes(const HeatCase& heat_case, const ReadyHeat& ready, const HeatResult& result,
                   std::vector<Finding>& findings) {
    constexpr double least_cant = 1 * degree, least_cost = 0.5e-3;
    const double cant = 0.5 * (ready.wheels.wheels[0].cant + ready.wheels.wheels[1].cant);
    if (!result.finished || cant < least_cant) return;
    HeatCase level = heat_case;
    for (Wheel& wheel : level.car.wheels)
        if (!is_front(wheel.corner)) wheel.cant -= cant;
    const ReadyHeat ready_level = make_ready(level, ready.track);
    const HeatResult result_level = run_heat(ready_level.course, ready_level.car);
    const double cost = result.time - result_level.time;
    if (!result_level.finished || cost < least_cost) return;
    findings.push_back(
        make_finding("cant-disputed", Severity::note, heat_case.car.key + "/wheels", {},
                     {{"cant_deg", cant / degree},
                      {"cost_ms", cost * 1e3},
                      {"hub_mj", (result.budget.hub - result_level.budget.hub) * 1e3},
                      {"runs", runs_to_settle(cost, std::max(heat_case.track.run_scatter, 1e-3))}}));
}

/// What is known of the lane, and what rests on it.
void find_lane_notes(const Figures& figures, const TrackPlan& plan, std::vector<Finding>& findings) {
    if (plan.known == LaneKnown::unknown && figures.heat.time) {
        double variance = 0;
        for (const Share& share : figures.shares)
            if (share.key.starts_with("lane_")) variance += share.share;
        findings.push_back(make_finding("lane-unknown", Severity::note, "/track/known", {},
                                        {{"lane_ms", figures.heat.sigma * std::sqrt(variance) * 1e3}}));
    }
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
    find_lane_notes(figures, project.track, figures.findings);
    find_disputes(heat_case, ready, result, figures.findings);
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
    fill_heat(figures, heat_case, result, result.finished ? spread_heat(project, heat_case) : HeatSpread{});
    if (result.finished) figures.budget_time = regained(ready.course, ready.car, result.time);
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
