#include "project/read_parts.hpp"

#include <rampwright/core/say.hpp>

#include <numbers>

namespace rampwright {

namespace {

/// {`value`, `sigma`}; without a sigma the reading counts as exact.
std::optional<Uncertain> read_reading(const Node& node, Limits limits) {
    if (!node.object().present()) return {};
    const double sigma = node.inner("sigma").maybe_number(from_to(0, limits.high)).value_or(0);
    return Uncertain{node.inner("value").number(limits), sigma};
}

} // namespace

double radians_per_second(SpeedUnit unit) {
    constexpr double turn = 2 * std::numbers::pi;
    switch (unit) {
    case SpeedUnit::turns_per_minute:
        return turn / 60;
    case SpeedUnit::turns_per_second:
        return turn;
    case SpeedUnit::radians_per_second:
        break;
    }
    return 1;
}

std::optional<PendulumReadings> read_pendulum(const Node& node) {
    if (!node.object().present()) return {};
    PendulumReadings p;
    if (node["wires"].present()) p.wires = node["wires"].whole(2, 3);
    if (node["swings"].present()) p.swings = node["swings"].whole(1, 1000);
    p.wheel = read_reading(node["wheel_g"], above(0, 100));
    p.plate = read_reading(node["plate_g"], from_to(0, 10000));
    p.spread = read_reading(node["spread_mm"], above(0, 1000));
    p.length = read_reading(node["length_mm"], above(0, 10000));
    p.time = read_reading(node["time_s"], above(0, 36000));
    p.plate_time = read_reading(node["plate_time_s"], above(0, 36000));
    p.swing = read_reading(node["swing_deg"], from_to(0, 89));
    return p;
}

std::optional<SpinDownReadings> read_spin_down(const Node& node) {
    if (!node.object().present()) return {};
    SpinDownReadings s;
    if (node["speed_in"].present()) s.speed_unit = node["speed_in"].word<SpeedUnit>(speed_unit_words);
    if (node["air"].present()) s.air = node["air"].flag();
    s.spin_inertia = read_reading(node["spin_inertia_g_mm2"], above(0, 1e7));
    s.wheel = read_reading(node["wheel_g"], above(0, 100));
    s.bore = read_reading(node["bore_mm"], above(0, 50));
    constexpr double most = 1e6;
    for (const Node& row : node["readings"].rows()) {
        const Vec2 pair = row.point2(from_to(-most, most));
        if (!s.readings.empty() && !(pair.x() > s.readings.back().x()))
            row.refuse(Core::tr("the times of a spin-down do not rise"),
                       Core::tr("write its readings in the order of time"));
        s.readings.emplace_back(pair.x(), pair.y() * radians_per_second(s.speed_unit));
    }
    return s;
}

std::vector<BenchWheel> read_bench_wheels(const Node& wheels) {
    std::vector<BenchWheel> table;
    for (const Node& row : wheels.rows()) {
        BenchWheel wheel;
        wheel.name = row["name"].label();
        wheel.mould = row["mould"].label();
        wheel.mass = row["mass_g"].maybe_number(above(0, 100));
        wheel.diameter = row["outer_diameter_mm"].maybe_number(above(0, 200));
        wheel.runout = row["runout_mm"].maybe_number(from_to(0, 20));
        wheel.bore = row["bore_diameter_mm"].maybe_number(above(0, 50));
        wheel.spin_time = row["spin_time_s"].maybe_number(above(0, 3600));
        wheel.pendulum = read_pendulum(row["pendulum"]);
        wheel.spin_down = read_spin_down(row["spin_down"]);
        table.push_back(std::move(wheel));
    }
    return table;
}

std::vector<BenchAxle> read_bench_axles(const Node& axles) {
    std::vector<BenchAxle> table;
    for (const Node& row : axles.rows()) {
        BenchAxle axle;
        axle.name = row["name"].label();
        axle.finish = row["finish"].text();
        axle.diameter = row["diameter_mm"].maybe_number(above(0, 20));
        axle.bow = row["bow_mm"].maybe_number(from_to(0, 20));
        table.push_back(std::move(axle));
    }
    return table;
}

} // namespace rampwright
