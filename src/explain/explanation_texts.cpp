#include "core/catalogues.hpp"

#include <rampwright/explain/explain.hpp>

#include <algorithm>
#include <array>

/// The one catalogue of what an explanation says in English: a sentence that a ten-year-old can read, the
/// formula in words, and where it is from. `{name}` stands for a value with its unit.
namespace rampwright {

namespace {

constexpr std::string_view energy_source = "energy theorem; the sum is made along the heat, docs/model.md";

constexpr std::array texts{
    ExplanationText{"mass_g", "The whole car weighs {mass}, wheels and all: add up everything it is made of.",
                    "wood + finish + axles + wheels + weights + what holds them; where the car was weighed, "
                    "the last term is what the scale says beyond that",
                    "masses add up", "Mass"},
    ExplanationText{
        "balance_ahead_of_rear_axle_mm",
        "Put a ruler under the car {balance} in front of the rear axle and it stays level, like a "
        "seesaw with nobody heavier.",
        "sum of (mass × distance ahead of the rear axle) / whole mass; from the weighed front "
        "load, if there is one: front load × wheelbase / mass",
        "centre of mass, any book of statics", "Standing"},
    ExplanationText{"front_load_g",
                    "Of all the car's weight the front wheels carry {load}; the rear wheels carry the rest.",
                    "mass × balance point / wheelbase", "law of the lever", "Standing"},
    ExplanationText{"ramp_front_load_g",
                    "Waiting at the start pin, nose down by {slope}, the front wheels carry {load}.",
                    "mass × (balance point × cos(slope) + (height of the balance point − height of the "
                    "nose) × sin(slope)) / wheelbase",
                    "moments about the rear wheels' foot; docs/model.md, Standing", "Standing"},
    ExplanationText{
        "scale.reads_g", "The scale counts in steps of {division}, so it shows {reads} for this car.",
        "(mass + the scale's error), rounded to whole divisions", "how a digital scale rounds", "Standing"},
    ExplanationText{"scale.margin_g",
                    "{margin} may still be added: from {bound} on the scale would show more than the {limit} "
                    "allowed.",
                    "division × (whole divisions in the limit + where the reading turns) − the scale's error "
                    "− mass",
                    "how a digital scale rounds", "Standing"},
    ExplanationText{
        "heat.time_s",
        "It rolls {way} at {speed} on average, slowly at first and fast at the end, and that "
        "takes {time}.",
        "the time on each piece of the track one after the other, and the clock's offset; on each "
        "piece it is the sum of (a little way / the speed there), the speeds from the forces "
        "at each place",
        "equations of motion, docs/model.md, Motion of one heat", "Motion of one heat"},
    ExplanationText{"heat.sigma_s",
                    "Nobody knows the friction and the sizes exactly, so the time may well be {sigma} off: "
                    "19 heats of 20 lie between {low} and {high}.",
                    "square root of the sum of squares: what one sigma of each uncertain value is worth, the "
                    "largest first, the last term all others together",
                    "first-order law of propagation, JCGM 100:2008 (GUM), 5.1.2", "Inputs"},
    ExplanationText{
        "heat.top_speed_m_s", "Nowhere on the way is it faster than {speed}.",
        "√(2 × (mass × gravity × drop to where it is fastest − spin − pitch − what was rubbed and "
        "blown away by then) / mass)",
        "equations of motion, docs/model.md, Motion of one heat", "Motion of one heat"},
    ExplanationText{
        "smallest_front_load_g",
        "While it rolls, the front wheels press the track with {load} where they press least, {place} "
        "from the start.",
        "(share of the weight at that place's slope + curvature, air and wheels × speed² + air stirred by "
        "the "
        "wheels × speed^1.5 + lever of the guide × its force) / gravity, where that is smallest; no sum "
        "where an axle hangs",
        "equations of motion, docs/model.md, Motion of one heat", "Motion of one heat"},
    ExplanationText{"heat.finish_speed_m_s",
                    "At the finish it does {speed}: what the fall gave, less what was rubbed and blown away, "
                    "is all speed.",
                    "√(2 × (released − spin − pitch − axles − hubs − rolling − rail − scrub − air) / mass)",
                    energy_source, "Motion of one heat"},
    ExplanationText{"budget_mj.released",
                    "The balance point sinks by {drop} from start to finish, and that frees {energy} of "
                    "energy to go fast with.",
                    "mass × gravity × drop of the centre of mass", "potential energy", "Motion of one heat"},
    ExplanationText{"budget_mj.forward", "{energy} has become speed by the finish.", "½ × mass × speed²",
                    "kinetic energy", "Motion of one heat"},
    ExplanationText{"budget_mj.spin", "{energy} went into making the wheels spin.",
                    "½ × (spin inertia / radius², rear and front) × wheel speed²", "kinetic energy",
                    "Motion of one heat"},
    ExplanationText{"budget_mj.pitch", "{energy} is in the nose's turning up or down at the finish.",
                    "½ × pitch inertia × pitch rate²", "kinetic energy", "Motion of one heat"},
    ExplanationText{"budget_mj.journal",
                    "The wheels rub on their axles all the way down, and that eats {energy}. "
                    "Without it the car would be {time} sooner.",
                    "friction × (bore radius / wheel radius × mean load, wheel by wheel) × distance; the "
                    "mean loads are summed up along the heat",
                    "journal friction; friction value to be measured by a spin-down", "Losses at the wheel"},
    ExplanationText{"budget_mj.hub",
                    "Where a wheel is pushed sideways its hub rubs on the axle's head or on the wood: "
                    "{energy}, and {time} of the heat.",
                    "(hub arm / wheel radius × mean load, wheel by wheel) × distance; arm = friction × side "
                    "load × 2/3 (r2³ − r1³) / (r2² − r1²)",
                    "thrust collar, Engineering Statics (Baker and Haynes)", "Losses at the wheel"},
    ExplanationText{
        "budget_mj.rolling",
        "Rolling squeezes wheel and track a tiny bit at every turn: {energy}, and {time} of the heat.",
        "(rolling coefficient × mean load, wheel by wheel) × distance",
        "coefficient of rolling resistance; its value from memory, to be calibrated", "Losses at the wheel"},
    ExplanationText{"budget_mj.scrub",
                    "A wheel that points a little aside is dragged sideways as it rolls: {energy}, "
                    "and {time} of the heat.",
                    "(side force per load × sin(toe), wheel by wheel × mean load) × distance",
                    "docs/model.md, Losses at the wheel", "Losses at the wheel"},
    ExplanationText{
        "budget_mj.rail",
        "Leaning on the guide rail or bumping into it costs {energy}, and {time} "
        "of the heat.",
        "(force leaning on the rail + how often it changes sides × mean force changing) × distance; the "
        "mean is summed up along the heat; a reduced model",
        "docs/model.md, Going straight", "Going straight"},
    ExplanationText{
        "budget_mj.air",
        "Pushing the air aside with {area} of front costs {energy}, and {time} of the "
        "heat.",
        "(½ × air density × drag coefficient × frontal area × mean of speed² + what the rear and the "
        "front wheels stir × mean of speed^1.5) × distance; the means are summed up along the heat",
        "drag equation, NASA Glenn; rotating disc (von Karman) for the wheels", "Air"},
    ExplanationText{"air_density_kg_m3",
                    "At {temperature} the air weighs {density}: warm, damp air is lighter and brakes less.",
                    "pressure × molar mass / (compressibility × gas constant × temperature) × (1 − vapour's "
                    "share × (1 − its molar mass / dry air's))",
                    "CIPM-2007, Metrologia 45 (2008) 149", "Air"},
    ExplanationText{
        "steer.guidance_margin",
        "With {load} on the front the steered wheel can push {margin} times as hard as the "
        "track's bumps push back; above 1 it holds its line.",
        "grip × front load × tanh(creep × (steer − rear toe) / grip) × wheelbase / kick of the bumps",
        "docs/model.md, Going straight; a reduced model", "Going straight"},
    ExplanationText{"steer.ride_probability",
                    "The chance that it glides along the rail and does not bounce from side to side is "
                    "{chance}.",
                    "Φ((margin − 1.3) / √(width of the passage² + (margin / steer)² × (what the holes "
                    "leave² + what the track takes up²)))",
                    "docs/model.md, Going straight; a reduced model", "Going straight"},
};

} // namespace

std::vector<std::string_view> explanation_texts() {
    std::vector<std::string_view> list;
    for (const ExplanationText& each : texts)
        list.insert(list.end(), {each.plain, each.law, each.source});
    return list;
}

const ExplanationText* find_explanation_text(std::string_view code) {
    const auto found =
        std::find_if(texts.begin(), texts.end(), [code](const ExplanationText& t) { return t.code == code; });
    return found == texts.end() ? nullptr : &*found;
}

} // namespace rampwright
