#include "project/read_parts.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/project/document.hpp>

#include <algorithm>

namespace rampwright {

Project read_project(const Document& document) {
    Project p;
    const Node root(document.root, p.assumed);
    p.title = root["title"].text();
    p.notes = root["notes"].text();
    p.units = root["units"].word<UnitSystem>(
        {{"metric", UnitSystem::metric}, {"inch-ounce", UnitSystem::inch_ounce}}, UnitSystem::metric);
    p.race = read_race(root["race"]);
    p.rules = read_rules(root["rules"]);
    p.scale = read_scale(root["scale"]);
    p.worse_scale = read_worse_scale(root["scale"]["worse"], p.scale);
    p.track = read_track(root["track"]);
    p.air = read_air(root["air"]);
    p.shelf = read_shelf(root["shelf"]);
    p.tools = read_tools(root["tools"]);
    p.model = read_model(root["model"], p.track.quality);
    p.bench_wheels = read_bench_wheels(root["bench"]["wheels"]);
    p.bench_axles = read_bench_axles(root["bench"]["axles"]);
    p.pendulum = read_pendulum(root["bench"]["pendulum"]);
    p.spin_down = read_spin_down(root["bench"]["spin_down"]);
    for (const Node& row : root["cars"].rows()) {
        CarPlan car = read_car(row, p.cars.size(), p.model);
        if (std::any_of(p.cars.begin(), p.cars.end(), [&](const CarPlan& c) { return c.id == car.id; }))
            row["id"].refuse(Core::tr("two cars have the id \"{what}\"", {{"what", car.id}}),
                             Core::tr("give each car an id of its own"));
        p.cars.push_back(std::move(car));
    }
    p.runs = read_runs(root["runs"], p.cars);
    return p;
}

std::optional<std::size_t> find_cut(const std::vector<CutPlan>& cuts, std::string_view name) {
    const auto found =
        std::find_if(cuts.begin(), cuts.end(), [&](const CutPlan& cut) { return cut.name == name; });
    if (name.empty() || found == cuts.end()) return std::nullopt;
    return static_cast<std::size_t>(found - cuts.begin());
}

bool is_done(const CarPlan& plan, std::string_view step) {
    return std::find(plan.done.begin(), plan.done.end(), step) != plan.done.end();
}

const CarPlan* find_car(const Project& project, std::string_view name_or_id) {
    for (const CarPlan& car : project.cars)
        if (car.name == name_or_id) return &car;
    for (const CarPlan& car : project.cars)
        if (car.id == name_or_id) return &car;
    return nullptr;
}

} // namespace rampwright
