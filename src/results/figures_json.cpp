#include "results/finding_json.hpp"
#include "results/scale_figures.hpp"

#include <rampwright/results/figures.hpp>

namespace rampwright {

namespace {

Json maybe(const std::optional<double>& value, double scale = 1) {
    return value ? Json(*value * scale) : Json(nullptr);
}

std::string corner_key(Corner corner) {
    return std::string(to_string(corner));
}

std::string_view to_string(Tag tag) {
    switch (tag) {
    case Tag::definition:
        return "definition";
    case Tag::published:
        return "published";
    case Tag::memory:
        return "memory";
    case Tag::fit:
        return "fit";
    }
    return "";
}

Json budget_json(const Figures& figures) {
    const Budget& b = figures.budget;
    return {{"released", b.released * 1e3}, {"forward", b.forward * 1e3},
            {"spin", b.spin * 1e3},         {"pitch", b.pitch * 1e3},
            {"journal", b.journal * 1e3},   {"hub", b.hub * 1e3},
            {"rolling", b.rolling * 1e3},   {"rail", maybe(b.rail, 1e3)},
            {"scrub", b.scrub * 1e3},       {"air", b.air * 1e3}};
}

Json wheel_budget_json(const Figures& figures) {
    Json result = Json::object();
    for (Corner corner : all_corners) {
        const WheelBudget& w = figures.budget_by_wheel[std::size_t(corner)];
        result[corner_key(corner)] = {{"spin", w.spin * 1e3},   {"journal", w.journal * 1e3},
                                      {"hub", w.hub * 1e3},     {"rolling", w.rolling * 1e3},
                                      {"scrub", w.scrub * 1e3}, {"windage", w.windage * 1e3}};
    }
    return result;
}

Json times_json(const std::optional<LossTimes>& times) {
    if (!times) return nullptr;
    return {{"journal", times->journal * 1e3}, {"hub", times->hub * 1e3},
            {"rolling", times->rolling * 1e3}, {"rail", maybe(times->rail, 1e3)},
            {"scrub", times->scrub * 1e3},     {"air", times->air * 1e3}};
}

Json wheel_times_json(const std::optional<std::array<WheelLossTimes, 4>>& times) {
    if (!times) return nullptr;
    Json result = Json::object();
    for (Corner corner : all_corners) {
        const WheelLossTimes& w = (*times)[std::size_t(corner)];
        result[corner_key(corner)] = {{"journal", w.journal * 1e3},
                                      {"hub", w.hub * 1e3},
                                      {"rolling", w.rolling * 1e3},
                                      {"scrub", w.scrub * 1e3},
                                      {"windage", w.windage * 1e3}};
    }
    return result;
}

Json steps_json(const std::optional<std::vector<BuilderStep>>& steps) {
    if (!steps) return nullptr;
    Json list = Json::array();
    for (const BuilderStep& step : *steps) {
        Json values = Json::object();
        for (const auto& [key, value] : step.values)
            values[key] = value;
        list.push_back({{"key", step.key},
                        {"effort", to_string(step.effort)},
                        {"gain_ms", step.gain * 1e3},
                        {"sigma_ms", step.sigma * 1e3},
                        {"values", values},
                        {"text", step.text}});
    }
    return list;
}

Json heat_json(const HeatFigures& heat) {
    Json interval = nullptr, sigma = nullptr;
    if (heat.time) {
        interval = {heat.interval95[0], heat.interval95[1]};
        sigma = heat.sigma;
    }
    return {{"time_s", maybe(heat.time)},
            {"sigma_s", sigma},
            {"interval95_s", interval},
            {"finish_speed_m_s", heat.finished ? Json(heat.finish_speed) : Json(nullptr)},
            {"top_speed_m_s", heat.top_speed},
            {"finished", heat.finished},
            {"reached_mm", heat.reached * 1e3}};
}

Json steer_json(const SteerFigures& steer) {
    constexpr double degrees = 57.295779513082320877;
    Json next{{"move", to_string(steer.next)}, {"turn_deg", nullptr}, {"towards_rail", nullptr}};
    if (steer.next_turn) {
        next["turn_deg"] = *steer.next_turn * degrees;
        next["towards_rail"] = steer.next_turn_towards_rail;
    }
    return {{"toe_deg", steer.toe * degrees},
            {"turn_radius_mm", maybe(steer.turn_radius, 1e3)},
            {"ride_probability", maybe(steer.ride_probability)},
            {"guidance_margin", maybe(steer.guidance_margin)},
            {"ride_mn", maybe(steer.ride_force, 1e3)},
            {"bounce_mn", maybe(steer.bounce_force, 1e3)},
            {"best_toe_deg", maybe(steer.best_toe, degrees)},
            {"best_drift_mm", maybe(steer.best_drift, 1e3)},
            {"next", std::move(next)}};
}

} // namespace

Json to_json(const Figures& f) {
    Json json = Json::object();
    json["name"] = f.name;
    json["mass_g"] = f.mass * 1e3;
    json["body_mass_g"] = f.body_mass * 1e3;
    json["wood_volume_mm3"] = f.wood_volume * 1e9;
    json["centre_mm"] = {f.centre.x() * 1e3, f.centre.y() * 1e3, f.centre.z() * 1e3};
    json["balance_ahead_of_rear_axle_mm"] = f.balance_ahead_of_rear_axle * 1e3;
    Json inertia = Json::array();
    for (int row = 0; row < 3; ++row)
        inertia.push_back({f.inertia(row, 0) * 1e9, f.inertia(row, 1) * 1e9, f.inertia(row, 2) * 1e9});
    json["inertia_g_mm2"] = inertia;
    json["front_load_g"] = f.front_load * 1e3;
    for (Corner corner : all_corners)
        json["wheel_loads_g"][corner_key(corner)] = maybe(f.wheel_loads[std::size_t(corner)], 1e3);
    json["ramp_front_load_g"] = f.ramp_front_load * 1e3;
    json["smallest_front_load_g"] = f.smallest_front_load * 1e3;
    json["smallest_front_load_at_mm"] = f.smallest_front_load_at * 1e3;
    json["lifts"] = f.lifts;
    json["frontal_area_mm2"] = f.frontal_area * 1e6;
    json["air_density_kg_m3"] = f.air_density;
    json["heat"] = heat_json(f.heat);
    json["budget_mj"] = budget_json(f);
    json["budget_residual"] = f.budget_residual;
    json["budget_by_wheel"] = wheel_budget_json(f);
    json["budget_ms"] = times_json(f.budget_time);
    json["budget_ms_by_wheel"] = wheel_times_json(f.budget_time_by_wheel);
    json["sensitivities"] = Json::array();
    for (const Sensitivity& s : f.sensitivities)
        json["sensitivities"].push_back({{"key", s.key}, {"per", s.per}, {"ms", s.ms}});
    json["steps"] = steps_json(f.steps);
    json["shares"] = Json::array();
    for (const Share& s : f.shares) {
        Json share{{"key", s.key}, {"share", s.share}};
        if (s.standard_error) share["standard_error"] = *s.standard_error;
        json["shares"].push_back(share);
    }
    json["steer"] = steer_json(f.steer);
    json["scale"] = f.scale ? to_json(*f.scale) : Json(nullptr);
    json["built"] = f.built ? to_json(*f.built) : Json(nullptr);
    json["findings"] = Json::array();
    for (const Finding& finding : f.findings)
        json["findings"].push_back(to_json(finding));
    json["assumed"] = Json::array();
    for (const Assumed& a : f.assumed) {
        Json value;
        std::visit([&](const auto& v) { value = v; }, a.value);
        json["assumed"].push_back({{"key", a.key},
                                   {"value", value},
                                   {"unit", a.unit},
                                   {"sigma", a.sigma},
                                   {"tag", to_string(a.tag)}});
    }
    return json;
}

} // namespace rampwright
