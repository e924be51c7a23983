#pragma once

#include "project/node.hpp"

namespace rampwright {

// One function for each part of the file; each takes the part's own node and lists its defaults.

RaceTime read_race(const Node& race);
Rules read_rules(const Node& rules);
Scale read_scale(const Node& scale);
/// The scale the car may meet on the night; where it is not given, the race's own showing one division too
/// much.
Scale read_worse_scale(const Node& scale, const Scale& race);
TrackPlan read_track(const Node& track);
AirState read_air(const Node& air);
std::vector<ShelfPiece> read_shelf(const Node& shelf);
Tools read_tools(const Node& tools);
std::vector<BenchWheel> read_bench_wheels(const Node& wheels);
std::vector<BenchAxle> read_bench_axles(const Node& axles);
std::optional<PendulumReadings> read_pendulum(const Node& node);
std::optional<SpinDownReadings> read_spin_down(const Node& node);
inline constexpr std::array<std::pair<std::string_view, SpeedUnit>, 3> speed_unit_words{
    {{"turns_per_minute", SpeedUnit::turns_per_minute},
     {"turns_per_second", SpeedUnit::turns_per_second},
     {"radians_per_second", SpeedUnit::radians_per_second}}};
std::vector<Run> read_runs(const Node& runs, const std::vector<CarPlan>& cars);

/// The project's own inputs; those it leaves out go by the track's quality. How well the axle holes hold
/// a wheel straight depends on the car and is settled by `read_car_model`.
Model read_model(const Node& model, Quality quality);
Model read_car_model(const Node& model, const Model& project_model, Holes holes);

CarPlan read_car(const Node& car, std::size_t index, const Model& project_model);
BodyPlan read_body(const Node& body);
AxlePlan read_axles(const Node& axles, const BodyPlan& body);
std::array<WheelPlan, 4> read_wheels(const Node& wheels, const AxlePlan& axles);
std::vector<BallastPlan> read_ballast(const Node& ballast, const std::vector<CutPlan>& cuts);

/// A day as YYYY-MM-DD, or nothing.
std::string read_date(const Node& date);

/// What a shelf piece and a piece in a car have in common.
struct PieceBody {
    PieceShape shape = PieceShape::box;
    std::vector<double> size;
    std::string material;
    double mass = 0;
    bool mass_given = false;
};
PieceBody read_piece(const Node& piece);

/// The names a table knows, for a message: "balsa", "basswood", ...
template <class Row>
std::string names_of(const std::vector<Row>& table) {
    std::string list;
    for (const Row& row : table)
        list += (list.empty() ? "\"" : ", \"") + row.name + "\"";
    return list;
}

} // namespace rampwright
