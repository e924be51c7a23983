#pragma once

#include <rampwright/units/quantity.hpp>

#include <Eigen/Core>

#include <array>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// A project as plain values: what the file says, in SI units (m, kg, s, N, rad, K, Pa), with every
/// default filled in and listed. Read from a document by `read_project`; never edited: edits change
/// the document (edits.hpp). Frames: x forward from the tail of the block, y left, z up from its
/// bottom face. An `std::optional` is a value that is computed, or does not apply, unless given.
namespace rampwright {

using Vec2 = Eigen::Vector2d;
using Vec3 = Eigen::Vector3d;

/// Where a default comes from: a definition, a published value, memory (measure it yourself), or an
/// unknown that timed runs are meant to calibrate.
enum class Tag { definition, published, memory, fit };

/// A default that was taken because the file gives no value. `key` is the JSON pointer it would
/// stand at; `value` and `sigma` are in `unit`, the unit of the file's own key.
struct Assumed {
    std::string key;
    std::variant<double, std::string> value;
    std::string unit;
    double sigma = 0;
    Tag tag = Tag::memory;
};

/// A value with its one-sigma uncertainty.
struct Uncertain {
    double value = 0;
    double sigma = 0;
};

/// The named inputs of the model of losses and of going straight (docs/model.md, "Inputs").
enum class ModelName {
    journal,
    hub_on_head,
    hub_on_wood,
    rolling,
    edge_factor,
    windage,
    tread_grip,
    creep_per_rad,
    rail,
    rail_share,
    touch_share,
    restitution,
    align_deg,
    need_deg,
    kick_n_mm,
    hold_width,
};
inline constexpr std::size_t model_name_count = 16;
std::string_view to_string(ModelName name);

/// One value a name, in the unit of its name (align_deg and need_deg in degrees, kick_n_mm in N mm).
/// `given` tells which the file states; the others are defaults.
struct Model {
    std::array<Uncertain, model_name_count> values{};
    std::array<bool, model_name_count> given{};
    const Uncertain& operator[](ModelName name) const { return values[static_cast<std::size_t>(name)]; }
    Uncertain& operator[](ModelName name) { return values[static_cast<std::size_t>(name)]; }
};

struct Range {
    std::optional<double> min, max;
};

/// What the file says of one rule in its own words, in place of the usual ones (rules/rule_kinds.hpp).
struct RuleWords {
    std::string text, inspect, source;
};

/// A rule of the house that no program can decide: what it says, and how it is looked at.
struct HouseRule {
    std::string text, inspect, source;
};

/// Limits of a race, SI; an absent limit is not checked.
struct Rules {
    std::string set; ///< id of the rule set they were taken from; empty where they were not
    std::string title, source;
    std::optional<double> max_mass, max_length, max_width, max_height, min_ground_clearance, min_inner_width,
        wheel_min_mass, wheel_min_width;
    std::optional<double> max_nose_height; ///< of the most forward point: what the start pin holds
    Range wheelbase, wheel_diameter;
    std::optional<int> wheels_touching;
    std::map<std::string, bool> allow;
    std::optional<std::vector<std::string>> lubricants; ///< kinds allowed; empty: none is
    std::string built_after;                            ///< YYYY-MM-DD: the first day a car may be built on
    std::map<std::string, RuleWords> words;             ///< by the rule's id
    std::vector<HouseRule> house;
    std::map<std::string, std::string> others; ///< what this version does not know, as the file has it
};

struct Scale {
    double division = 0.1e-3; ///< kg
    bool rounds_down = false; ///< cuts off instead of rounding to the nearest division
    double offset = 0;        ///< kg
};

struct Straight {
    double length = 0;
};

/// Turns by `turn` (positive: upward, concave) on `radius`; over `easing` at each end the curvature
/// ramps linearly, inside the piece's own turn.
struct Arc {
    double radius = 0, turn = 0, easing = 0;
};

using TrackPiece = std::variant<Straight, Arc>;

struct LaneRail {
    double width = 0, height = 0;
};

enum class Quality { rough, fair, smooth };

/// Whether the lane's shape is known, or a guess about a lane that nobody has measured yet.
enum class LaneKnown { measured, unknown };

struct TrackPlan {
    std::string title;
    double first_slope = 0;                 ///< rad, negative downhill
    std::vector<TrackPiece> pieces;         ///< empty where measured
    std::vector<Vec2> measured;             ///< (X, Z); empty where pieces are given
    std::optional<double> start_height;     ///< stated; checked against the shape
    double start_line = 0, finish_line = 0; ///< arc length along the surface from the first piece's start
    std::optional<LaneRail> rail;           ///< absent: a lane without a guide
    Quality quality = Quality::fair;
    double gravity = 9.80665;
    Uncertain clock_offset;     ///< s
    double run_scatter = 0.003; ///< s, one sigma of a run
    LaneKnown known = LaneKnown::measured;
    double drop_sigma = 0, way_sigma = 0; ///< m, one sigma of fall and way between the lines
};

struct AirState {
    double temperature = 293.15, pressure = 101325, humidity = 0.5; ///< K, Pa, 0..1
};

enum class PieceShape { box, cylinder, sphere, sheet, putty };

/// A kind of ballast on the shelf. `size`: box [x, y, z], cylinder [diameter, length],
/// sphere [diameter], sheet [x, y, thickness], putty [].
struct ShelfPiece {
    std::string name;
    PieceShape shape = PieceShape::box;
    std::vector<double> size;
    std::string material;
    double mass = 0;
    int count = 1;
    bool counted = false; ///< the file states the count: no more than these are at hand
};

struct Tools {
    std::vector<double> drill_bits;
    double saw_kerf = 0, saw_tolerance = 0, drill_tolerance = 0;
    std::string putty = "tungsten-putty"; ///< what pellets for the last tenths of a gram are rolled from
    double pellet_diameter = 5e-3;        ///< m, of the roll they are cut from
};

/// A point of an outline as the file gives it.
struct PlanPoint {
    Vec2 at;
    bool smooth = false;
};

struct CutPlan {
    std::string name;
    bool is_bore = false;
    Vec3 from, to;        ///< opposite corners of a pocket, or the two centres of a bore
    double diameter = 0;  ///< bores only
    bool pointed = false; ///< bores: a drill's point beyond `to`
};

struct BodyPlan {
    std::string wood;
    double density = 0; ///< kg/m³
    double density_sigma = 0;
    std::optional<double> block_mass; ///< weighed; wins over density
    Vec3 block;                       ///< length, width, height
    std::vector<PlanPoint> profile;   ///< (x, z); the block's rectangle where not given
    std::vector<PlanPoint> plan;      ///< (x, y); the block's rectangle where not given
    double edge_radius = 0;
    std::vector<CutPlan> cuts;
    double finish = 0; ///< kg of paint and decals, spread over the surface
};

enum class Holes { jig, press, slots };

struct AxlePlan {
    double rear_x = 0, front_x = 0, rear_z = 0, front_z = 0;  ///< centres of the holes, car frame
    double shank_diameter = 0, length = 0, head_diameter = 0; ///< one axle a wheel; length under the head
    double mass_each = 0;
    Holes holes = Holes::press;
    double hole_diameter = 0;
};

enum class Corner { rear_left, rear_right, front_left, front_right };
inline constexpr std::array<Corner, 4> all_corners{Corner::rear_left, Corner::rear_right, Corner::front_left,
                                                   Corner::front_right};
std::string_view to_string(Corner corner);
/// "rear left"
std::string in_words(Corner corner);
inline constexpr bool is_front(Corner c) {
    return c == Corner::front_left || c == Corner::front_right;
}
inline constexpr bool is_left(Corner c) {
    return c == Corner::rear_left || c == Corner::front_left;
}

enum class Hub { flat, stepped, coned };

struct WheelPlan {
    Corner corner = Corner::rear_left;
    std::size_t row = 0; ///< its place in the file's list, which may name the corners in any order
    double mass = 0, outer_diameter = 0, bore_diameter = 0, width = 0, gap_to_body = 0;
    std::optional<double> spin_inertia; ///< measured, kg m²; computed where absent
    /// Of the wheel's section, where known; the usual proportions else (car/wheel_profile.hpp).
    std::optional<double> tread_thickness, web_thickness, hub_diameter;
    bool touches = true;
    double raised = 0;        ///< gap below a wheel that does not touch
    double cant = 0, toe = 0; ///< rad; outer end higher, steering to the car's left
    Hub hub = Hub::flat;
    Vec2 hub_ring = Vec2::Zero();  ///< inner, outer radius of the ring that rubs on the head
    Vec2 body_ring = Vec2::Zero(); ///< and of the one that rubs on the wood
    double runout = 0;             ///< peak to peak
};

struct BallastPlan {
    std::string name;
    PieceShape shape = PieceShape::box;
    std::vector<double> size; ///< as ShelfPiece
    std::string material;
    double mass = 0; ///< kg, resolved: mass given, else size and material
    bool mass_given = false;
    Vec3 at = Vec3::Zero(); ///< centre
    int axis = 0;           ///< cylinders: 0 x, 1 y, 2 z
    double turned = 0;      ///< rad about z
    std::string in;         ///< name of the cut that holds it; may be empty
    std::string held;       ///< id in the table of holdings (materials.hpp); may be empty
    /// kg, weighed, of what holds it; else the table's typical mass.
    std::optional<double> held_mass;
    bool fixed = false;
};

/// One entry of a tuning log, in the order they happened: either a roll on the board or a turn of the axle.
struct TuningEvent {
    std::optional<double> drift;  ///< m, a roll's, to the car's left
    std::optional<double> turned; ///< rad, clockwise seen from the axle's head
};

/// What was seen on a drift board or set on a bent axle: a measurement, never read by the heat.
struct SteerNote {
    std::optional<double> drift, over, bend, turn;
    double watched_ahead = 0;
    std::optional<double> target, tolerance; ///< m of drift, wanted size and how near; either way
    std::vector<TuningEvent> log;
};

struct DragPlan {
    std::string body_class;
    Uncertain coefficient;
    std::optional<double> height;       ///< of the line of action above the running surface
    std::optional<double> frontal_area; ///< given: overrides the car's own
};

struct AsBuilt {
    std::optional<double> mass, front_load /* kg */, balance_ahead_of_rear_axle, centre_height, pitch_inertia,
        yaw_inertia;
};

/// What a kitchen scale showed on the finished car, one number a weighing, kg: the whole car; under the front
/// wheels, the rear on a block as high as the scale; and the other way round.
struct Readings {
    std::vector<double> whole, front, rear;
};

/// A picture laid under the drawing, to be traced; no figure depends on it.
struct Underlay {
    std::string picture;    ///< path of the file; beside the project's where it is relative (pictures.hpp)
    Vec2 at = Vec2::Zero(); ///< its middle in the view's plane, m: side (x, z), top (x, y)
    double width = 0;       ///< m, of the picture's own lower edge
    double turned = 0;      ///< rad, counter-clockwise on the drawing
    double opacity = 0.5;   ///< 0 to 1
    bool mirrored = false;  ///< left for right, before it is turned
    bool hidden = false;
    bool operator==(const Underlay&) const = default;
};

struct CarPlan {
    std::string id, name, number, paint;
    std::string built_on; ///< YYYY-MM-DD; empty where it is not said
    std::vector<std::string> done;
    BodyPlan body;
    AxlePlan axles;
    std::array<WheelPlan, 4> wheels; ///< by Corner
    std::vector<BallastPlan> ballast;
    SteerNote steer;
    Model model; ///< the project's, overridden name by name
    DragPlan drag;
    AsBuilt as_built;
    Readings readings; ///< a record; what counts is `as_built`, which the edit that takes them sets
    std::array<std::optional<Underlay>, 2> underlays; ///< under the side view, under the top view
};

/// What was typed of a wheel's swings on wires (bench/pendulum.hpp), SI; what was not typed is absent.
struct PendulumReadings {
    int wires = 2;   ///< 2 or 3
    int swings = 20; ///< full swings that the times are of
    std::optional<Uncertain> wheel, plate, time, plate_time, swing /* to one side */;
    std::optional<Uncertain> spread; ///< between two wires, or from the axle's line to one of three
    std::optional<Uncertain> length; ///< of the wires
};

/// What a speed of a spin-down was read in.
enum class SpeedUnit { turns_per_minute, turns_per_second, radians_per_second };
/// rad/s in one of it.
double radians_per_second(SpeedUnit unit);

/// What was typed of a wheel's spin-down (bench/spin_down.hpp), SI; what was not typed is absent.
struct SpinDownReadings {
    SpeedUnit speed_unit = SpeedUnit::turns_per_minute;
    bool air = true;            ///< whether what the air takes is taken off
    std::vector<Vec2> readings; ///< time, s, and speed, rad/s, in the order of time
    std::optional<Uncertain> spin_inertia, wheel, bore /* diameter */;
};

/// One wheel of the bench's table; what was not measured is absent.
struct BenchWheel {
    std::string name, mould;
    std::optional<double> mass, diameter, runout /* peak to peak */, bore, spin_time;
    std::optional<PendulumReadings> pendulum = {};
    std::optional<SpinDownReadings> spin_down = {};
};

/// One axle of the bench's table.
struct BenchAxle {
    std::string name, finish;
    std::optional<double> diameter, bow; ///< m; bow: peak to peak of a gauge while it turns
};

struct Run {
    std::string car, date, lane, notes;
    double time = 0;
};

/// When the race is, for plans that count back from it; empty where the file does not say.
struct RaceTime {
    std::string date;   ///< YYYY-MM-DD
    std::string starts; ///< HH:MM, 00:00 to 23:59
};

struct Project {
    std::string title, notes;
    RaceTime race;
    UnitSystem units = UnitSystem::metric;
    Rules rules;
    Scale scale;
    Scale worse_scale; ///< what it might be on the night; unless given, shows one division too much
    TrackPlan track;
    AirState air;
    std::vector<ShelfPiece> shelf;
    Tools tools;
    Model model;
    std::vector<BenchWheel> bench_wheels;
    std::vector<BenchAxle> bench_axles;
    std::optional<PendulumReadings> pendulum;  ///< of a wheel that is not in the bench's table
    std::optional<SpinDownReadings> spin_down; ///< the same
    std::vector<CarPlan> cars;
    std::vector<Run> runs;
    std::vector<Assumed> assumed; ///< every default taken, in the order of the file format
};

/// The place of the cut of that name in a car's list; none where there is none, or no name.
std::optional<std::size_t> find_cut(const std::vector<CutPlan>& cuts, std::string_view name);

/// Whether the plan says that a step is done in wood: "sawn", "drilled".
bool is_done(const CarPlan& plan, std::string_view step);

/// The car of that name or id, or nullptr.
const CarPlan* find_car(const Project& project, std::string_view name_or_id);

} // namespace rampwright
