#include "project/edit_support.hpp"
#include "project/rule_keys.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <numeric>

namespace rampwright {

namespace {

std::optional<double> mean(const std::vector<double>& weighings) {
    if (weighings.empty()) return std::nullopt;
    return std::accumulate(weighings.begin(), weighings.end(), 0.0) / static_cast<double>(weighings.size());
}

void put_list(Json& readings, const std::string& key, const std::vector<double>& weighings) {
    if (weighings.empty()) {
        readings.erase(key);
        return;
    }
    Json list = Json::array();
    for (const double mass : weighings)
        list.push_back(file_number(mass, key));
    readings[key] = std::move(list);
}

/// Sets a measured value that follows from weighings, or takes it back where they were all taken back; one
/// that was typed without any weighing stays.
void put_measured(Json& as_built, const std::string& key, std::optional<double> value, bool weighed_before) {
    if (value)
        as_built[key] = file_number(*value, key);
    else if (weighed_before)
        as_built.erase(key);
}

bool holds(const Json& readings, const char* key) {
    const auto found = readings.find(key);
    return found != readings.end() && found->is_array() && !found->empty();
}

} // namespace

Edit set_rules(const Document& document, const Json& rules, const std::string& title) {
    return make_edit(document, Core::tr("Choose rules") + ": " + title, [&](Json& root) {
        Json replaced = rules;
        if (const auto found = root.find("rules"); found != root.end() && found->is_object())
            for (const auto& [key, value] : found->items())
                if (!is_rule_key(key)) replaced[key] = value;
        root["rules"] = std::move(replaced);
    });
}

Edit set_readings(const Document& document, std::size_t car, const Readings& readings) {
    return make_edit(document, Core::tr("Weigh") + ": " + car_name(document, car), [&](Json& root) {
        Json& as_built = object_in(car_at(root, car), "as_built");
        if (!as_built.is_object())
            throw Problem(Exit::could_not, "/cars/" + std::to_string(car) + "/as_built",
                          Core::tr("no object stands here"), Core::tr("repair the file"));
        Json& kept = object_in(as_built, "readings");
        const bool had_whole = holds(kept, "whole_g"), had_front = holds(kept, "front_g"),
                   had_rear = holds(kept, "rear_g");
        put_list(kept, "whole_g", readings.whole);
        put_list(kept, "front_g", readings.front);
        put_list(kept, "rear_g", readings.rear);
        const bool none_left = kept.empty(); // `kept` moves when its neighbours grow
        const auto rear = mean(readings.rear);
        auto whole = mean(readings.whole), front = mean(readings.front);
        if (!whole && front && rear) whole = *front + *rear;
        if (!front && whole && rear) front = *whole - *rear;
        put_measured(as_built, "mass_g", whole, had_whole || (had_front && had_rear));
        put_measured(as_built, "front_load_g", front, had_front || (had_whole && had_rear));
        if (none_left) as_built.erase("readings");
        if (as_built.empty()) car_at(root, car).erase("as_built");
    });
}

} // namespace rampwright
