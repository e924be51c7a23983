#include "project/edit_support.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/project/job.hpp>

#include <algorithm>

namespace rampwright {

namespace {

/// Which step settles the value at a pointer. @param own the pointer of the car itself.
JobStep step_of(std::string_view pointer, std::string_view own) {
    if (pointer.starts_with("/rules") || pointer.starts_with("/scale") || pointer.starts_with("/race"))
        return JobStep::agree;
    // The putty one trims with on the scale is chosen beside the scale.
    if (pointer.starts_with("/tools/putty") || pointer.starts_with("/tools/pellet")) return JobStep::agree;
    if (!pointer.starts_with(own)) return JobStep::run;
    const std::string_view rest = pointer.substr(own.size());
    if (rest.starts_with("body/")) return JobStep::shape;
    if (rest.starts_with("ballast")) return JobStep::load;
    if (rest.starts_with("steer") || rest.ends_with("/cant_deg") || rest.ends_with("/toe_deg"))
        return JobStep::aim;
    if (rest.starts_with("axles") || rest.starts_with("wheels") || rest.starts_with("model"))
        return JobStep::roll;
    return JobStep::run;
}

void add_measured(std::vector<std::string>& keys, const std::string& own, const Project& project,
                  const CarPlan& plan, JobStep step) {
    const AsBuilt& built = plan.as_built;
    switch (step) {
    case JobStep::agree:
        return; // rules are read, not measured
    case JobStep::shape:
        if (plan.body.block_mass) keys.push_back(own + "body/block_mass_g");
        return;
    case JobStep::roll:
        // One wheel timed says nothing of the others.
        for (const WheelPlan& wheel : plan.wheels)
            if (wheel.touches && !wheel.spin_inertia) return;
        for (const WheelPlan& wheel : plan.wheels)
            if (wheel.spin_inertia)
                keys.push_back(own + "wheels/" + std::to_string(wheel.row) + "/spin_inertia_g_mm2");
        return;
    case JobStep::load:
        if (built.front_load) keys.push_back(own + "as_built/front_load_g");
        if (built.balance_ahead_of_rear_axle) keys.push_back(own + "as_built/balance_ahead_of_rear_axle_mm");
        return;
    case JobStep::aim:
        if (plan.steer.drift) keys.push_back(own + "steer/drift_mm");
        for (std::size_t i = 0; i < plan.steer.log.size(); ++i)
            if (plan.steer.log[i].drift) keys.push_back(own + "steer/log/" + std::to_string(i) + "/drift_mm");
        return;
    case JobStep::run:
        if (!project.track.measured.empty()) keys.push_back("/track/measured_mm");
        for (std::size_t i = 0; i < project.runs.size(); ++i)
            if (project.runs[i].car == plan.id) keys.push_back("/runs/" + std::to_string(i) + "/time_s");
        return;
    case JobStep::paper:
        if (built.mass) keys.push_back(own + "as_built/mass_g");
        return;
    }
}

/// The car's list in the file, or nullptr.
const Json* decided_list(const Document& document, std::size_t car) {
    const Json::json_pointer place("/cars/" + std::to_string(car) + "/decided");
    return document.root.contains(place) && document.root[place].is_array() ? &document.root[place] : nullptr;
}

bool names(const Json* list, JobStep step) {
    return list && std::find(list->begin(), list->end(), Json(std::string(to_string(step)))) != list->end();
}

} // namespace

std::string_view to_string(JobStep step) {
    static constexpr std::array<std::string_view, all_job_steps.size()> words{
        "agree", "shape", "roll", "load", "aim", "run", "paper"};
    return words[static_cast<std::size_t>(step)];
}

StepState step_state(const Document& document, const Project& project, std::size_t car, JobStep step) {
    if (car >= project.cars.size()) {
        Json root = document.root;
        car_at(root, car); // throws what every edit of a missing car throws
    }
    const std::string own = "/cars/" + std::to_string(car) + "/";
    StepState state;
    state.confirmed = names(decided_list(document, car), step);
    add_measured(state.measured, own, project, project.cars[car], step);
    for (const Assumed& assumed : project.assumed) {
        const bool another_car = assumed.key.starts_with("/cars/") && !assumed.key.starts_with(own);
        if (!another_car && step_of(assumed.key, own) == step) state.usual.push_back(assumed.key);
    }
    return state;
}

Edit set_decided(const Document& document, std::size_t car, JobStep step, bool decided) {
    const std::string word(to_string(step));
    return make_edit(document,
                     (decided ? Core::tr("Confirm step") : Core::tr("Open step again")) + ": " + word,
                     [&](Json& root) {
                         Json& plan = car_at(root, car);
                         // Written anew in the job's order, whatever order the file had.
                         Json list = Json::array();
                         for (const JobStep each : all_job_steps)
                             if (each == step ? decided : names(decided_list(document, car), each))
                                 list.push_back(std::string(to_string(each)));
                         if (list.empty())
                             plan.erase("decided");
                         else
                             plan["decided"] = std::move(list);
                     });
}

} // namespace rampwright
