#pragma once

#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/starting_shapes.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/project/job.hpp>

#include <functional>
#include <random>
#include <string>
#include <vector>

namespace rampwright::test {

/// One edit of each kind, on values that the demo has. @param spin changes from sample to sample, so that
/// repeated edits differ.
struct EditSample {
    std::string what;
    std::function<Edit(const Document&)> apply;
};

/// @param n changes the values used, so that samples of two numbers differ from each other.
inline std::vector<EditSample> edit_samples(unsigned n) {
    const double mm = 1e-3, g = 1e-3, deg = 0.017453292519943295;
    const double step = 0.1 * (1 + n % 7);
    const std::string tail = std::to_string(n);
    const std::size_t car = n % 3;
    const Corner corner = all_corners[n % 4];
    return {
        {"set_value",
         [=](const Document& d) { return set_value(d, "/air/temperature_c", 18 + step, "Set air"); }},
        {"set_value of a new object",
         [=](const Document& d) { return set_value(d, "/cars/0/as_built/mass_g", 141 + step, "Weigh"); }},
        {"set_value null",
         [](const Document& d) { return set_value(d, "/cars/0/paint", nullptr, "No paint"); }},
        {"move_ballast",
         [=](const Document& d) { return move_ballast(d, car, 0, Vec3(20.3 + step, step, 9.7) * mm); }},
        {"move_ballast into a cut",
         [=](const Document& d) {
             return move_ballast(d, car, 1, Vec3(25 + step, step, 9.5) * mm,
                                 n % 3 == 0   ? ""
                                 : n % 3 == 1 ? "weight pocket"
                                              : "tail pocket");
         }},
        {"set_holding", [=](const Document& d) { return set_holding(d, car, 0, n % 2 ? "epoxy" : "screw"); }},
        {"set_wood", [=](const Document& d) { return set_wood(d, car, woods().at(n % woods().size()).id); }},
        {"add_household_piece",
         [=](const Document& d) {
             return add_household_piece(d, household_pieces().at(n % household_pieces().size()));
         }},
        {"add_ballast",
         [=](const Document& d) {
             return add_ballast(d, car,
                                Json{{"piece", "ball " + tail},
                                     {"shape", "sphere"},
                                     {"size_mm", {4}},
                                     {"mass_g", step},
                                     {"at_mm", {90, 0, 5}}});
         }},
        {"add_from_shelf",
         [=](const Document& d) {
             return add_from_shelf(d, car, 3 + n % 3,
                                   {Vec3(60 + step, 0, 9) * mm, static_cast<int>(n % 3), {}});
         }},
        {"duplicate_ballast",
         [=](const Document& d) { return duplicate_ballast(d, n % 2, 0, Vec3(0, step, 0) * mm); }},
        {"remove_ballast", [=](const Document& d) { return remove_ballast(d, car, 0); }},
        {"set_ballast_mass", [=](const Document& d) { return set_ballast_mass(d, car, 0, (30 + step) * g); }},
        {"set_cant", [=](const Document& d) { return set_cant(d, car, corner, step * deg); }},
        {"set_toe", [=](const Document& d) { return set_toe(d, car, corner, -step * deg); }},
        {"set_touching",
         [=](const Document& d) { return set_touching(d, n % 2, Corner::front_left, n % 4 < 2); }},
        {"set_wheel_mass", [=](const Document& d) { return set_wheel_mass(d, car, corner, (2 + step) * g); }},
        {"move_outline_point",
         [=](const Document& d) {
             return move_outline_point(d, car, n % 2 == 0, 1, Vec2(177 + step, 3) * mm);
         }},
        {"insert_outline_point",
         [=](const Document& d) {
             return insert_outline_point(d, car, n % 2 == 0, 2, Vec2(170 + step, 8) * mm, n % 3 == 0);
         }},
        {"remove_outline_point",
         [=](const Document& d) { return remove_outline_point(d, car, n % 2 == 0, 1); }},
        {"set_outline_smooth",
         [=](const Document& d) { return set_outline_smooth(d, car, n % 2 == 0, 2, n % 4 < 2); }},
        {"set_outline",
         [=](const Document& d) {
             const double z = (18 + step) * mm;
             return set_outline(
                 d, car, n % 2 == 0,
                 {{Vec2(0, -z)}, {Vec2(170 * mm, -z)}, {Vec2(175 * mm, 0), true}, {Vec2(0, z)}});
         }},
        {"set_underlay",
         [=](const Document& d) {
             return set_underlay(d, car, n % 2 == 0,
                                 {"sketch " + tail + ".png", Vec2(80 + step, 10) * mm, 0.2, step * deg, 0.4,
                                  n % 3 == 0, false},
                                 "Lay picture");
         }},
        {"remove_underlay", [=](const Document& d) { return remove_underlay(d, car, n % 2 == 0); }},
        {"add_cut",
         [=](const Document& d) {
             return add_cut(d, car,
                            Json{{"name", "cut " + tail},
                                 {"kind", "bore"},
                                 {"from_mm", {100, 0, 2}},
                                 {"to_mm", {120, 0, 2}},
                                 {"diameter_mm", 1 + step}});
         }},
        {"add_cut of a plan",
         [=](const Document& d) {
             CutPlan cut{
                 "drawn " + tail, n % 2 == 0, Vec3(90, -5, 3) * mm, Vec3(100 + step, 5, 18) * mm, 0, false};
             if (cut.is_bore) cut.diameter = (3 + step) * mm;
             cut.pointed = cut.is_bore;
             return add_cut(d, car, cut);
         }},
        {"duplicate_cut",
         [=](const Document& d) { return duplicate_cut(d, car, 0, Vec3(30 + step, 0, 0) * mm); }},
        {"set_cut_diameter", [=](const Document& d) { return set_cut_diameter(d, 0, 1, (4 + step) * mm); }},
        {"set_cut_pointed", [=](const Document& d) { return set_cut_pointed(d, 0, 1, n % 2 == 0); }},
        {"start_from_shape",
         [=](const Document& d) {
             return start_from_shape(d, car, starting_shapes().at(n % starting_shapes().size()));
         }},
        {"move_cut",
         [=](const Document& d) {
             return move_cut(d, car, 0, Vec3(50 + step, -10, 1) * mm, Vec3(70, 10, 12) * mm);
         }},
        {"rename_cut", [=](const Document& d) { return rename_cut(d, car, 0, "hollow " + tail); }},
        {"remove_cut", [=](const Document& d) { return remove_cut(d, car, 0); }},
        {"move_axle",
         [=](const Document& d) {
             return move_axle(d, car, n % 2 == 0, (n % 2 == 0 ? 140 : 18) * mm, step * mm);
         }},
        {"duplicate_car", [=](const Document& d) { return duplicate_car(d, car, "Dunlin " + tail); }},
        {"rename_car", [=](const Document& d) { return rename_car(d, car, "Knot " + tail); }},
        {"remove_car", [=](const Document& d) { return remove_car(d, 3 + n % 2); }},
        {"add_run",
         [=](const Document& d) {
             return add_run(d, Json{{"car", "bittern"}, {"time_s", 3 + 0.01 * step}});
         }},
        {"remove_run", [=](const Document& d) { return remove_run(d, n % 5); }},
        {"add_shelf_piece",
         [=](const Document& d) {
             return add_shelf_piece(d, Json{{"piece", "washer " + tail},
                                            {"shape", "cylinder"},
                                            {"size_mm", {8, 1}},
                                            {"mass_g", step}});
         }},
        {"remove_shelf_piece", [=](const Document& d) { return remove_shelf_piece(d, n % 5); }},
        {"set_rules",
         [=](const Document& d) {
             return set_rules(d, Json{{"title", "class " + tail}, {"max_length_mm", 170 + step}},
                              "class " + tail);
         }},
        {"set_readings",
         [=](const Document& d) {
             return set_readings(d, car, {{(140 + step) * g, 141 * g}, {step * 10 * g}, {}});
         }},
        {"set_readings taken back", [=](const Document& d) { return set_readings(d, 0, {}); }},
        {"set_track",
         [=](const Document& d) {
             return set_track(
                 d, Json{{"title", "lane " + tail},
                         {"first_slope_deg", -20},
                         {"pieces", Json::array({Json{{"kind", "straight"}, {"length_mm", 5000 + n % 9}}})},
                         {"finish_line_mm", 4800}});
         }},
        {"add_track_piece",
         [=](const Document& d) {
             return add_track_piece(d, n % 2, Json{{"kind", "straight"}, {"length_mm", 400 + 10 * step}});
         }},
        {"set_track_piece",
         [=](const Document& d) {
             return set_track_piece(d, 0, Json{{"kind", "straight"}, {"length_mm", 2500 + 10 * step}});
         }},
        {"remove_track_piece", [=](const Document& d) { return remove_track_piece(d, n % 2); }},
        {"set_track_points",
         [=](const Document& d) {
             return set_track_points(d, {Vec2(0, 1200 + step) * mm, Vec2(900, 700) * mm, Vec2(2000, 250) * mm,
                                         Vec2(3000, 60) * mm, Vec2(4500, 0) * mm, Vec2(9000, 0) * mm});
         }},
        {"set_track_lines",
         [=](const Document& d) { return set_track_lines(d, (250 + step) * mm, (4000 + step) * mm); }},
        {"set_bench_wheels",
         [=](const Document& d) {
             return set_bench_wheels(d, {{"a " + tail, "7", (2.4 + step) * g, 30 * mm, {}, 2.6 * mm, {}},
                                         {"b", "", {}, {}, 0.1 * mm, {}, 21.5}});
         }},
        {"set_pendulum",
         [=](const Document& d) {
             PendulumReadings swings;
             swings.wires = 2 + static_cast<int>(n % 2);
             swings.time = Uncertain{31.4 + step, 0.1};
             return set_pendulum(d, n % 3 == 0 ? std::nullopt : std::optional<std::size_t>(n % 2), swings);
         }},
        {"set_spin_down",
         [=](const Document& d) {
             SpinDownReadings spin;
             spin.wheel = Uncertain{(2.6 + step) * g, 0.01 * g};
             spin.readings = {{0, 200}, {1, 190 - step}};
             return set_spin_down(d, n % 3 == 0 ? std::nullopt : std::optional<std::size_t>(n % 2), spin);
         }},
        {"set_bench_axles",
         [=](const Document& d) {
             return set_bench_axles(d, {{"p", "polished", (2 + step) * mm, 0.02 * mm}});
         }},
        {"use_bench_wheel", [=](const Document& d) { return use_bench_wheel(d, car, corner, n % 5); }},
        {"add_tuning_event roll",
         [=](const Document& d) {
             return add_tuning_event(d, car, {(60 + step) * mm, {}});
         }},
        {"add_tuning_event turn",
         [=](const Document& d) {
             return add_tuning_event(d, car, {{}, -step * deg});
         }},
        {"remove_tuning_event", [=](const Document& d) { return remove_tuning_event(d, 2, n % 2); }},
        {"clear_tuning_log", [=](const Document& d) { return clear_tuning_log(d, 2); }},
        {"set_decided",
         [=](const Document& d) { return set_decided(d, car, all_job_steps[n % 7], n % 3 != 0); }},
        {"set_units",
         [=](const Document& d) {
             return set_units(d, n % 2 == 0 ? UnitSystem::inch_ounce : UnitSystem::metric);
         }},
    };
}

} // namespace rampwright::test
