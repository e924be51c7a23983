#include "project/edit_support.hpp"

#include <rampwright/core/problem.hpp>

namespace rampwright {

namespace {

/// Writes what was measured, leaves out what was not.
void put(Json& row, const char* key, const std::optional<double>& value) {
    if (value) row[key] = file_number(*value, key);
}

Json wheel_row(const BenchWheel& wheel) {
    Json row = Json::object();
    row["name"] = wheel.name;
    if (!wheel.mould.empty()) row["mould"] = wheel.mould;
    put(row, "mass_g", wheel.mass);
    put(row, "outer_diameter_mm", wheel.diameter);
    put(row, "runout_mm", wheel.runout);
    put(row, "bore_diameter_mm", wheel.bore);
    put(row, "spin_time_s", wheel.spin_time);
    return row;
}

Json& log_of(Json& root, std::size_t car) {
    return list_in(object_in(car_at(root, car), "steer"), "log");
}

} // namespace

Edit set_bench_wheels(const Document& document, const std::vector<BenchWheel>& wheels) {
    return make_edit(document, "Set wheel table", [&](Json& root) {
        Json rows = Json::array();
        for (const BenchWheel& wheel : wheels)
            rows.push_back(wheel_row(wheel));
        object_in(root, "bench")["wheels"] = std::move(rows);
    });
}

Edit set_bench_axles(const Document& document, const std::vector<BenchAxle>& axles) {
    return make_edit(document, "Set axle table", [&](Json& root) {
        Json rows = Json::array();
        for (const BenchAxle& axle : axles) {
            Json row = Json::object();
            row["name"] = axle.name;
            if (!axle.finish.empty()) row["finish"] = axle.finish;
            put(row, "diameter_mm", axle.diameter);
            put(row, "bow_mm", axle.bow);
            rows.push_back(std::move(row));
        }
        object_in(root, "bench")["axles"] = std::move(rows);
    });
}

Edit add_tuning_event(const Document& document, std::size_t car, const TuningEvent& event) {
    return make_edit(document, event.drift ? "Log a roll" : "Log a turn of the axle", [&](Json& root) {
        Json row = Json::object();
        put(row, "drift_mm", event.drift);
        put(row, "turned_deg", event.turned);
        log_of(root, car).push_back(std::move(row));
    });
}

Edit remove_tuning_event(const Document& document, std::size_t car, std::size_t event) {
    return make_edit(document, "Remove from the tuning log", [&](Json& root) {
        Json& log = log_of(root, car);
        element_of(log, event, "/cars/" + std::to_string(car) + "/steer/log", "entry");
        log.erase(event);
    });
}

Edit clear_tuning_log(const Document& document, std::size_t car) {
    return make_edit(document, "Empty the tuning log",
                     [&](Json& root) { log_of(root, car) = Json::array(); });
}

} // namespace rampwright
