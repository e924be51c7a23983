#include "project/read_parts.hpp"

namespace rampwright {

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
