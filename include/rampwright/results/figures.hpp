#pragma once

#include <rampwright/core/json.hpp>
#include <rampwright/results/built.hpp>
#include <rampwright/results/finding.hpp>
#include <rampwright/steer/tuning_state.hpp>

#include <array>

namespace rampwright {

/// Energy of one heat, J. Each loss is its own integral along the way; nothing is a remainder.
struct Budget {
    double released = 0, forward = 0, spin = 0, pitch = 0;
    double journal = 0, hub = 0, rolling = 0, scrub = 0, air = 0;
    std::optional<double> rail; ///< absent where the lane has no guide
    double kept() const { return forward + spin + pitch; }
    double lost() const { return journal + hub + rolling + scrub + air + rail.value_or(0); }
};

/// What one wheel's contacts took, J.
struct WheelBudget {
    double spin = 0, journal = 0, hub = 0, rolling = 0, scrub = 0, windage = 0;
};

/// Time regained if one loss alone were gone, s: a heat run without it. Gone one by one, so that they do not
/// add up.
struct LossTimes {
    double journal = 0, hub = 0, rolling = 0, scrub = 0, air = 0;
    std::optional<double> rail; ///< absent where the lane has no guide
};

/// The same for one wheel's contacts.
struct WheelLossTimes {
    double journal = 0, hub = 0, rolling = 0, scrub = 0, windage = 0;
};

/// How much of a builder's evening a step takes.
enum class Effort { small, some, much };
std::string_view to_string(Effort effort);

/// A step that a builder can take, with what it is worth on this car: `gain` is less heat time, negative
/// where the step costs time.
struct BuilderStep {
    std::string key; ///< stable: "polish-axles"; a window translates by it
    Effort effort = Effort::some;
    double gain = 0, sigma = 0; ///< s; one sigma from the inputs' uncertainty, not from the builder's hand
    std::vector<std::pair<std::string, double>> values; ///< for the phrase, named with the unit
    std::string text; ///< English, from the one catalogue (src/results/step_texts.cpp)
};

struct HeatFigures {
    std::optional<double> time;             ///< s, on the track's clock; absent where the car stops short
    double sigma = 0;                       ///< s, one sigma of a single heat's prediction
    std::array<double, 2> interval95{};     ///< s
    double finish_speed = 0, top_speed = 0; ///< of the centre of mass, m/s
    bool finished = false;
    double reached = 0; ///< m, the nose's foot point from the start line
};

/// What a change of one input is worth: `ms` more heat time for `per` more of `key`.
struct Sensitivity {
    std::string key, per;
    double ms = 0;
};

/// The part of the prediction's variance that comes from one input.
struct Share {
    std::string key;
    double share = 0;
    std::optional<double> standard_error; ///< with draws
};

struct SteerFigures {
    double toe = 0;                    ///< rad, of the touching front wheel
    std::optional<double> turn_radius; ///< m; none when it runs straight
    std::optional<double> ride_probability, guidance_margin, ride_force,
        bounce_force;                           ///< N; none without a rail
    std::optional<double> best_toe, best_drift; ///< rad, m
    /// What the car's tuning log asks for next.
    TuningMove next = TuningMove::roll;
    std::optional<double> next_turn; ///< rad, clockwise seen from the axle's head; where the move is a turn
    double axle_turn = 0;            ///< rad, where its bend is believed to point, clockwise from straight up
    bool next_turn_towards_rail = true; ///< whether it steers more towards the rail that is ridden
};

/// An amount of putty: its mass, kg, and the length of a pellet of it, m.
struct PuttyAmount {
    double mass = 0, pellet = 0;
};

/// The car on the race's scale and on a worse one, and what that asks of the builder.
struct ScaleFigures {
    double reads = 0;              ///< kg as displayed
    double largest_legal_true = 0; ///< kg, the bound itself is not legal
    double margin = 0;             ///< bound less the car
    double worse_reads = 0, worse_largest_legal_true = 0, worse_margin = 0; ///< the same on the worse scale
    double mass_sigma = 0; ///< kg, of the car: from the weighings, or what the parts' masses are known to
    /// What should come off easily, so that the worse scale finds the car legal even where it is two sigma
    /// heavier than thought; and what to bring along, so that it can be filled up to the more lenient bound
    /// where it is two sigma lighter.
    PuttyAmount take_off, carry;
    std::string putty; ///< the material's name
    double putty_density = 0, pellet_diameter = 0;
};

/// Everything computed for one car, SI: the one source of every number on screen, sheet and command line.
struct Figures {
    std::string name;
    double mass = 0, body_mass = 0, wood_volume = 0;
    Vec3 centre = Vec3::Zero(); ///< car frame
    double balance_ahead_of_rear_axle = 0;
    Eigen::Matrix3d inertia = Eigen::Matrix3d::Zero(); ///< about the centre of mass, car axes
    double front_load = 0;                             ///< kg, level
    std::array<std::optional<double>, 4> wheel_loads;  ///< kg, level, by Corner; none for a raised wheel
    double ramp_front_load = 0;                        ///< kg, held by the pin at the start line
    double smallest_front_load = 0, smallest_front_load_at = 0; ///< kg; m of the nose's foot point
    bool lifts = false;
    double frontal_area = 0, air_density = 0;
    HeatFigures heat;
    Budget budget;
    double budget_residual = 0; ///< relative to the energy released
    std::array<WheelBudget, 4> budget_by_wheel;
    std::optional<LossTimes> budget_time;                              ///< absent where the car stops short
    std::optional<std::array<WheelLossTimes, 4>> budget_time_by_wheel; ///< by complete_figures
    std::vector<Sensitivity> sensitivities;                            ///< ranked by size
    std::vector<Share> shares;                                         ///< ranked
    std::optional<std::vector<BuilderStep>> steps; ///< by complete_figures; the greatest gain first
    SteerFigures steer;
    std::optional<ScaleFigures> scale; ///< none where the rules set no greatest mass
    std::optional<Built> built;        ///< none where nothing was measured on the finished car
    std::vector<Finding> findings;     ///< most severe first
    std::vector<Assumed> assumed;      ///< those that concern this car or every car
    bool drawn = false;                ///< sigma and shares from draws rather than first order
};

/// Computes everything for one car, first-order sigma. About 2 ms.
/// @throws Problem where the car or the track cannot be computed (a track too short for the car, a body
///         that cuts itself), `where` its JSON pointer.
Figures compute_figures(const Project& project, std::size_t car);

/// The same with what follows no hand: builder's steps with the uncertainty of their gains, and the time each
/// wheel's contacts cost. Many times the work. @throws Problem as compute_figures.
Figures complete_figures(const Project& project, std::size_t car);

/// One car's figures as `figures --json` prints them: units in the names, full precision.
Json to_json(const Figures& figures);

} // namespace rampwright
