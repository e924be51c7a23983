#include "project/edit_support.hpp"
#include "project/read_parts.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

namespace rampwright {

namespace {

/// Writes what was measured, leaves out what was not.
void put(Json& row, const char* key, const std::optional<double>& value) {
    if (value) row[key] = file_number(*value, key);
}

/// The same, removing what is no longer said.
void put(Json& row, const char* key, const std::optional<Uncertain>& reading) {
    if (!reading) {
        row.erase(key);
        return;
    }
    Json& place = object_in(row, key);
    place["value"] = file_number(reading->value, key);
    place["sigma"] = file_number(reading->sigma, key);
}

void put_pendulum(Json& place, const PendulumReadings& p) {
    place["wires"] = p.wires;
    place["swings"] = p.swings;
    put(place, "wheel_g", p.wheel);
    put(place, "plate_g", p.plate);
    put(place, "spread_mm", p.spread);
    put(place, "length_mm", p.length);
    put(place, "time_s", p.time);
    put(place, "plate_time_s", p.plate_time);
    put(place, "swing_deg", p.swing);
}

void put_spin_down(Json& place, const SpinDownReadings& s) {
    for (const auto& [word, unit] : speed_unit_words)
        if (unit == s.speed_unit) place["speed_in"] = word;
    place["air"] = s.air;
    put(place, "spin_inertia_g_mm2", s.spin_inertia);
    put(place, "wheel_g", s.wheel);
    put(place, "bore_mm", s.bore);
    Json rows = Json::array();
    for (const Vec2& reading : s.readings)
        rows.push_back(file_point(Vec2(reading.x(), reading.y() / radians_per_second(s.speed_unit)), ""));
    place["readings"] = std::move(rows);
}

Json row_of(const BenchWheel& wheel) {
    Json row = Json::object();
    row["name"] = wheel.name;
    if (!wheel.mould.empty()) row["mould"] = wheel.mould;
    put(row, "mass_g", wheel.mass);
    put(row, "outer_diameter_mm", wheel.diameter);
    put(row, "runout_mm", wheel.runout);
    put(row, "bore_diameter_mm", wheel.bore);
    put(row, "spin_time_s", wheel.spin_time);
    if (wheel.pendulum) put_pendulum(object_in(row, "pendulum"), *wheel.pendulum);
    if (wheel.spin_down) put_spin_down(object_in(row, "spin_down"), *wheel.spin_down);
    return row;
}

Json row_of(const BenchAxle& axle) {
    Json row = Json::object();
    row["name"] = axle.name;
    if (!axle.finish.empty()) row["finish"] = axle.finish;
    put(row, "diameter_mm", axle.diameter);
    put(row, "bow_mm", axle.bow);
    return row;
}

/// The rows of a table in place of those there are. A row that is as it was, or that stands where it stood
/// in a table of the same length, keeps what this version does not know of it.
template <class Part>
Edit replace_rows(const Document& document, const std::string& name, const char* key,
                  const std::vector<Part>& table, const std::vector<Part>& before) {
    return make_edit(document, name, [&](Json& root) {
        Json& rows = list_in(object_in(root, "bench"), key);
        Json fresh = Json::array();
        std::size_t next = 0; // of the old rows not yet found again
        for (std::size_t i = 0; i < table.size(); ++i) {
            const Json row = row_of(table[i]);
            std::size_t old = table.size() == before.size() ? i : next;
            if (table.size() != before.size())
                while (old < before.size() && row_of(before[old]) != row)
                    ++old;
            if (old >= before.size()) {
                fresh.push_back(row);
                continue;
            }
            next = old + 1;
            const Json was = row_of(before[old]);
            Json& kept = fresh.emplace_back(rows[old]);
            if (was == row) continue;
            // What was known of it goes, what is known now comes; the readings' own unknown keys stay.
            for (const auto& [member, value] : was.items())
                if (!row.contains(member)) kept.erase(member);
            for (const auto& [member, value] : row.items())
                if (!was.contains(member) || was[member] != value) kept[member] = value;
        }
        rows = std::move(fresh);
    });
}

/// Where a bench measurement of a wheel stands.
Json& measured_of(Json& root, std::optional<std::size_t> wheel, const std::string& key) {
    Json& bench = object_in(root, "bench");
    if (!wheel) return object_in(bench, key);
    return object_in(element_of(list_in(bench, "wheels"), *wheel, "/bench/wheels", "wheel"), key);
}

Json& log_of(Json& root, std::size_t car) {
    return list_in(object_in(car_at(root, car), "steer"), "log");
}

} // namespace

Edit set_bench_wheels(const Document& document, const std::vector<BenchWheel>& wheels) {
    return replace_rows(document, Core::tr("Set wheel table"), "wheels", wheels,
                        read_project(document).bench_wheels);
}

Edit set_bench_axles(const Document& document, const std::vector<BenchAxle>& axles) {
    return replace_rows(document, Core::tr("Set axle table"), "axles", axles,
                        read_project(document).bench_axles);
}

Edit set_pendulum(const Document& document, std::optional<std::size_t> wheel,
                  const PendulumReadings& readings) {
    return make_edit(document, Core::tr("Note a wheel's swings"),
                     [&](Json& root) { put_pendulum(measured_of(root, wheel, "pendulum"), readings); });
}

Edit set_spin_down(const Document& document, std::optional<std::size_t> wheel,
                   const SpinDownReadings& readings) {
    return make_edit(document, Core::tr("Note a wheel's spin-down"),
                     [&](Json& root) { put_spin_down(measured_of(root, wheel, "spin_down"), readings); });
}

Edit add_tuning_event(const Document& document, std::size_t car, const TuningEvent& event) {
    return make_edit(document, event.drift ? Core::tr("Log a roll") : Core::tr("Log a turn of the axle"),
                     [&](Json& root) {
                         Json row = Json::object();
                         put(row, "drift_mm", event.drift);
                         put(row, "turned_deg", event.turned);
                         log_of(root, car).push_back(std::move(row));
                     });
}

Edit remove_tuning_event(const Document& document, std::size_t car, std::size_t event) {
    return make_edit(document, Core::tr("Remove from the tuning log"), [&](Json& root) {
        Json& log = log_of(root, car);
        element_of(log, event, "/cars/" + std::to_string(car) + "/steer/log", "entry");
        log.erase(event);
    });
}

Edit clear_tuning_log(const Document& document, std::size_t car) {
    return make_edit(document, Core::tr("Empty the tuning log"),
                     [&](Json& root) { log_of(root, car) = Json::array(); });
}

} // namespace rampwright
