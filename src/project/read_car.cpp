#include "project/read_parts.hpp"

#include <rampwright/core/data_table.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/job.hpp>

namespace rampwright {

namespace {

SteerNote read_steer(const Node& steer) {
    SteerNote s;
    s.drift = steer["drift_mm"].maybe_number(from_to(-1000, 1000));
    s.over = steer["over_mm"].maybe_number(above(0, 10000));
    s.watched_ahead = steer["watched_ahead_mm"].maybe_number(from_to(-500, 500)).value_or(0);
    s.bend = steer["bend_deg"].maybe_number(from_to(0, 30));
    s.turn = steer["turn_deg"].maybe_number(from_to(-360, 360));
    s.target = steer["target_drift_mm"].maybe_number(from_to(0, 1000));
    s.tolerance = steer["tolerance_mm"].maybe_number(above(0, 1000));
    for (const Node& row : steer["log"].rows()) {
        TuningEvent event{row["drift_mm"].maybe_number(from_to(-1000, 1000)),
                          row["turned_deg"].maybe_number(from_to(-360, 360))};
        if (event.drift.has_value() == event.turned.has_value())
            row.refuse(Core::tr("an entry of the log is a roll or a turn"),
                       Core::tr("give \"drift_mm\" or \"turned_deg\", not both"));
        s.log.push_back(event);
    }
    return s;
}

DragPlan read_drag(const Node& drag) {
    DragPlan d;
    const Node body_class = drag["class"];
    const Node coefficient = drag["coefficient"];
    const Node sigma = drag["sigma"];
    if (!body_class.present() && !coefficient.present()) body_class.assume("block");
    d.body_class = body_class.text(coefficient.present() ? "" : "block");

    static const Json table = Json::parse(find_data_table("drag_classes"));
    const Json* entry = nullptr;
    std::vector<std::string_view> known;
    for (const Json& row : table.at("classes")) {
        known.push_back(row.at("class").get_ref<const std::string&>());
        if (known.back() == d.body_class) entry = &row;
    }
    if (entry == nullptr && !coefficient.present()) body_class.refuse_word(d.body_class, known);

    if (coefficient.present()) {
        d.coefficient.value = coefficient.number(from_to(0, 3));
    } else {
        d.coefficient.value = entry->at("coefficient").get<double>();
        coefficient.assume(Default{d.coefficient.value, entry->at("sigma").get<double>(), Tag::published});
    }
    if (sigma.present()) {
        d.coefficient.sigma = sigma.number(from_to(0, 3));
    } else {
        d.coefficient.sigma = d.coefficient.value / 5;
        if (coefficient.present()) sigma.assume(Default{d.coefficient.sigma});
    }
    d.height = drag["height_mm"].maybe_number(above(0, 500));
    d.frontal_area = drag["frontal_area_mm2"].maybe_number(above(0, 1e6));
    return d;
}

AsBuilt read_as_built(const Node& as_built) {
    AsBuilt a;
    a.mass = as_built["mass_g"].maybe_number(above(0, 5000));
    a.front_load = as_built["front_load_g"].maybe_number(from_to(0, 5000));
    a.balance_ahead_of_rear_axle =
        as_built["balance_ahead_of_rear_axle_mm"].maybe_number(from_to(-500, 1000));
    a.centre_height = as_built["centre_height_mm"].maybe_number(above(0, 500));
    a.pitch_inertia = as_built["pitch_inertia_g_mm2"].maybe_number(above(0, 1e9));
    a.yaw_inertia = as_built["yaw_inertia_g_mm2"].maybe_number(above(0, 1e9));
    return a;
}

/// A list of what a scale showed, one weighing a number.
std::vector<double> read_weighings(const Node& list, Limits limits) {
    constexpr std::size_t most = 100;
    std::vector<double> weighings;
    for (const Node& row : list.rows())
        weighings.push_back(row.number(limits));
    if (weighings.size() > most)
        list.refuse(Core::tr("more than a hundred weighings"), Core::tr("keep a few"));
    return weighings;
}

Readings read_readings(const Node& readings) {
    Readings r;
    r.whole = read_weighings(readings["whole_g"], above(0, 5000));
    r.front = read_weighings(readings["front_g"], from_to(0, 5000));
    r.rear = read_weighings(readings["rear_g"], from_to(0, 5000));
    return r;
}

Underlay read_underlay(const Node& underlay) {
    Underlay u;
    const Node picture = underlay["picture"], width = underlay["width_mm"];
    u.picture = picture.text();
    if (u.picture.empty()) picture.refuse_missing(Core::tr("give the path of the picture's file"));
    if (const Node at = underlay["at_mm"]; at.present()) u.at = at.point2(from_to(-10000, 10000));
    u.width = width.number(above(0, 100000));
    u.turned = underlay["turned_deg"].maybe_number(from_to(-360, 360)).value_or(0);
    u.opacity = underlay["opacity_pct"].maybe_number(from_to(0, 100)).value_or(u.opacity);
    u.mirrored = underlay["mirrored"].present() && underlay["mirrored"].flag();
    u.hidden = underlay["hidden"].present() && underlay["hidden"].flag();
    return u;
}

/// The plan does not hold what is decided (job.hpp reads it when asked); a word that is no step is refused.
void read_decided(const Node& decided) {
    std::array<std::pair<std::string_view, JobStep>, all_job_steps.size()> words;
    for (std::size_t i = 0; i < words.size(); ++i)
        words[i] = {to_string(all_job_steps[i]), all_job_steps[i]};
    for (const Node& row : decided.rows())
        row.word<JobStep>(std::span<const std::pair<std::string_view, JobStep>>(words));
}

} // namespace

CarPlan read_car(const Node& car, std::size_t index, const Model& project_model) {
    const std::string count = std::to_string(index + 1);
    CarPlan plan;
    plan.id = car["id"].text("car-" + count);
    plan.name = car["name"].text("Car " + count);
    plan.number = car["number"].label();
    plan.paint = car["paint"].text();
    plan.built_on = read_date(car["built_on"]);
    for (const Node& step : car["done"].rows())
        plan.done.push_back(step.text());
    read_decided(car["decided"]);
    plan.body = read_body(car["body"]);
    plan.axles = read_axles(car["axles"], plan.body);
    plan.wheels = read_wheels(car["wheels"], plan.axles);
    plan.ballast = read_ballast(car["ballast"], plan.body.cuts);
    plan.steer = read_steer(car["steer"]);
    plan.model = read_car_model(car["model"], project_model, plan.axles.holes);
    plan.drag = read_drag(car["drag"]);
    plan.as_built = read_as_built(car["as_built"]);
    plan.readings = read_readings(car["as_built"]["readings"]);
    for (const std::size_t view : {0, 1})
        if (const Node underlay = car["underlay"][view == 0 ? "side" : "top"]; underlay.present())
            plan.underlays[view] = read_underlay(underlay);
    return plan;
}

} // namespace rampwright
