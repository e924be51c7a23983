#include "project/edit_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/take_in.hpp>

#include <algorithm>

namespace rampwright {

namespace {

/// Writes into a car what it had of its project's model and would have otherwise here. What neither project
/// states is not the car's: it follows the lane and the holes. @return how many.
std::size_t keep_inputs(Json& car, const Model& had, const Model& there, const Project& here) {
    std::size_t kept = 0;
    for (std::size_t i = 0; i < model_name_count; ++i) {
        const std::string name(to_string(static_cast<ModelName>(i)));
        if (!there.given[i] && !here.model.given[i]) continue;
        if (const auto own = car.find("model"); own != car.end() && own->is_object() && own->contains(name))
            continue;
        const Uncertain &was = had.values[i], &is = here.model.values[i];
        if (here.model.given[i] && was.value == is.value && was.sigma == is.sigma) continue;
        // These stand in the unit of their name, in the file and read.
        object_in(car, "model")[name] = Json{{"value", was.value}, {"sigma", was.sigma}};
        ++kept;
    }
    return kept;
}

Json member(const Json& root, const char* key) {
    const auto found = root.find(key);
    return found == root.end() ? Json() : *found;
}

} // namespace

std::string free_car_name(const Project& project, const std::string& name) {
    std::string candidate = name;
    for (int number = 2; find_car(project, candidate) != nullptr; ++number)
        candidate = name + " " + std::to_string(number);
    return candidate;
}

TakenIn take_in_cars(const Document& document, const Document& other, const std::vector<std::size_t>& cars) {
    if (cars.empty())
        throw Problem(Exit::could_not, "/cars", Core::tr("no car was chosen"),
                      Core::tr("choose one or more"));
    Project here = read_project(document);
    const Project there = read_project(other);
    TakenIn taken;
    std::vector<Json> rows;
    Json list = document.root.contains("cars") ? document.root["cars"] : Json::array();
    Json other_root = other.root;
    for (const std::size_t index : cars) {
        Json car = car_at(other_root, index);
        const CarPlan& plan = there.cars.at(index);
        const std::string name = free_car_name(here, plan.name);
        car["id"] = new_car_id(list, name);
        car["name"] = name;
        car.erase("figures");
        taken.inputs_kept += keep_inputs(car, plan.model, there.model, here);
        taken.runs_left +=
            static_cast<std::size_t>(std::count_if(there.runs.begin(), there.runs.end(), [&](const Run& run) {
                return run.car == plan.id || run.car == plan.name;
            }));
        taken.names.push_back(name);
        CarPlan known;
        known.id = car["id"];
        known.name = name;
        here.cars.push_back(std::move(known));
        list.push_back(car);
        rows.push_back(std::move(car));
    }
    taken.other_rules = member(document.root, "rules") != member(other.root, "rules");
    taken.other_lane = member(document.root, "track") != member(other.root, "track") ||
                       member(document.root, "air") != member(other.root, "air");
    const std::string name = taken.names.size() == 1
                                 ? Core::tr("Take in car: {name}", {{"name", taken.names[0]}})
                                 : Core::tr("Take in {n} cars", {{"n", std::to_string(taken.names.size())}});
    taken.edit = make_edit(document, name, [&](Json& root) {
        for (Json& row : rows)
            list_in(root, "cars").push_back(std::move(row));
    });
    return taken;
}

} // namespace rampwright
