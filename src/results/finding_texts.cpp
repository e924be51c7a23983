#include "core/catalogues.hpp"
#include "core/fill_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/results/finding.hpp>

#include <algorithm>
#include <array>
#include <cassert>

/// The one catalogue of what a finding says in English. `{name}` stands for the value of that name with its
/// unit; `{name*}` for the value whose name is that and a unit (core/fill_text.hpp).
namespace rampwright {

namespace {

struct Text {
    std::string_view code, text;
};

constexpr std::array texts{
    // Geometry
    Text{"wheel-touches-body",
         "The wheel runs into the wood by {overlap_mm}: widen the gap or cut the body away there."},
    Text{"wheel-meets-ballast",
         "{overlap_mm3} of this weight is in a wheel's way: move it, or it stops the wheel."},
    Text{"ballast-near-wheel", "A weight passes the wheel with only {clearance_mm} to spare."},
    Text{"body-on-track", "The car's lowest point is {below_mm} below the running surface: it would drag."},
    Text{"ballast-near-track", "This weight hangs {clearance_mm} above the track, below the wood: a joint "
                               "in the lane may catch it."},
    Text{"axle-misses-wood", "The axle's hole lies outside of the wood: nothing holds the axle."},
    Text{"axle-barely-held", "Only {held_mm} of the axle is in the wood: a knock will bend or loosen it."},
    Text{"axles-meet",
         "The two axles of this pair run into each other by {overlap_mm} in the middle: shorten them."},
    Text{"hole-too-small", "The hole is {tight_mm} narrower than the axle: the wood will split or the "
                           "axle bend. Drill in steps, the piece clamped, eyes covered."},
    Text{"axle-through-cut",
         "The axle's hole passes through a cut for {open_mm}: the axle is not held there."},
    Text{"axles-through-cut", "Both axles' holes pass through the same cut: a weight in it can be held by "
                              "neither, and the wood between is weak."},
    Text{"axle-through-ballast",
         "An axle runs through this weight, {overlap_mm3} of it: one of them has to move."},
    Text{"ballast-near-axle", "Only {clearance_mm} between this weight and the axle."},
    Text{"wheels-differ", "The touching wheels of this axle differ by {difference_mm} in diameter: the "
                          "car leans and steers."},
    // Ballast
    Text{"ballast-outside-cut",
         "This weight does not fit its cut: it is outside by {outside_mm} ({outside_mm3})."},
    Text{"ballast-outside-body", "This weight sticks out of the body by {outside_mm} ({outside_mm3})."},
    Text{"ballast-in-wood",
         "{overlap_mm3} of this weight is where wood is: cut the room for it, or move it into its cut."},
    Text{"ballast-overlap", "Two weights take the same room: {overlap_mm3} of it."},
    Text{"putty-overflows", "The putty is {excess_mm3} more than its cut holds ({capacity_mm3})."},
    Text{"ballast-lost", "The cut that should hold this weight is not in the wood."},
    Text{"wall-thin", "The wall left here is {wall_mm}: under {least_mm} pine breaks easily."},
    Text{"bit-not-owned", "No drill bit of {diameter_mm} is among your tools; the nearest is {nearest_mm}."},
    Text{"kerf-over-slot", "The saw's blade takes {kerf_mm}, the axle slots are {slot_mm} wide: sawn with "
                           "it they come out wider, and the axles sit loose."},
    Text{"offcut-under-kerf", "Only {strip_mm} of the block is left over here, less than the {kerf_mm} "
                              "that the saw's blade takes: plane or sand it down instead."},
    // Standing
    Text{"car-tips",
         "The balance point lies {outside_mm} outside of the wheels that touch: the car tips over."},
    Text{"tipping-margin-small",
         "The balance point is only {margin_mm} inside the wheels' outline: a bump tips the car."},
    Text{"wheel-in-the-air", "On four wheels this one carries nothing: it would hang in the air."},
    Text{"loads-idealised", "Four wheels touch: how an axle's load is shared left and right depends on "
                            "hairbreadths; shown is the share of equally stiff wheels."},
    Text{"steer-from-raised-wheel",
         "The car steers {steer_deg} away from its raised wheel: then the wheel that stands still rubs on "
         "the rail. Steer towards the raised wheel's side."},
    // As built
    Text{"as-built-heavier", "The car weighs {difference_g} more than its parts add up to. If the wood "
                             "alone is denser, it is {density_kg_m3} instead of {planned_kg_m3}; glue "
                             "and paint that the plan leaves out weigh too."},
    Text{"as-built-lighter", "The car weighs {difference_g} less than its parts add up to. If the wood "
                             "alone is lighter, it is {density_kg_m3} instead of {planned_kg_m3}."},
    Text{"as-built-balance-ahead",
         "The balance point found is {shift_mm} ahead of the computed one ({wood_mm} of it if the wood "
         "makes up the difference in mass). The rest would be {ballast_g} of weights sitting {ballast_mm}"
         " further forward than drawn."},
    Text{"as-built-balance-behind",
         "The balance point found is {shift_mm} behind the computed one ({wood_mm} of it if the wood "
         "makes up the difference in mass). The rest would be {ballast_g} of weights sitting {ballast_mm}"
         " further back than drawn."},
    Text{"as-built-balance-ahead-no-ballast",
         "The balance point found is {shift_mm} ahead of the computed one ({wood_mm} of it if the wood "
         "makes up the difference in mass)."},
    Text{"as-built-balance-behind-no-ballast",
         "The balance point found is {shift_mm} behind the computed one ({wood_mm} of it if the wood "
         "makes up the difference in mass)."},
    Text{"as-built-contradiction",
         "Weighing says that the balance point is {by_load_mm} ahead of the rear axle, the balance edge "
         "says {by_edge_mm}: they differ by {difference_mm}, or {difference_g} on the front. The front "
         "load counts: weigh it again with the car level."},
    Text{"as-built-height",
         "The centre of mass found is {found_mm} above the track, computed are {computed_mm}."},
    // The heat and going straight
    Text{"front-lifts", "The front wheels carry nothing at {at_mm} down the track: the nose lifts there, "
                        "and the figures assume it does not."},
    Text{"rear-lifts", "The rear wheels carry nothing at {at_mm} down the track: the tail lifts there, "
                       "and the figures assume it does not."},
    Text{"stops-short", "The car stops {reached_mm} down the track, before the finish line."},
    Text{"guidance-weak",
         "Guidance margin {margin} with {front_load_g} in front: below 1 the front is too light, or steered "
         "too little, to hold the car against bumps."},
    // The lane, and where the model and practice part
    Text{"lane-unknown",
         "Nobody has measured this lane: that alone makes the time uncertain by {lane_ms}. What the scale "
         "and the rule say does not depend on it: weight, balance point, front load, fit and rules. Which of "
         "two cars is faster hardly does. docs/measure-a-lane.md tells how to measure it with tape and "
         "level."},
    Text{"cant-disputed",
         "Builders say that rear wheels canted by about 3° are faster. This model says that {cant_deg} costs "
         "{cost_ms} here: a canted wheel pushes its hub against the axle's head all the way, which takes "
         "{hub_mj}, and nothing pays for it, because a tread on its edge is taken to roll no easier than "
         "a flat one. A trial would settle it: about {runs} runs canted and {runs} level, by turns on one "
         "lane."},
    // Rules
    Text{"scale-worse-reads-over",
         "The race's scale finds the car legal, a worse one would read {worse_reads_g}: keep {off_g} of "
         "putty where it comes off easily, {pellet_mm} of a {diameter_mm} pellet."},
    Text{"rule-breach-words", "A rule of this race is broken."},
    Text{"rule-breach", "A rule of this race is broken: the limit is {limit*}, the car has {measured*}."},
};

} // namespace

std::string_view to_string(Severity severity) {
    switch (severity) {
    case Severity::note:
        return "note";
    case Severity::warning:
        return "warning";
    case Severity::breach:
        return "breach";
    }
    return {};
}

std::vector<std::string_view> finding_texts() {
    std::vector<std::string_view> list;
    for (const Text& each : texts)
        list.push_back(each.text);
    return list;
}

std::string_view find_finding_text(std::string_view code) {
    const auto found =
        std::find_if(texts.begin(), texts.end(), [code](const Text& t) { return t.code == code; });
    return found == texts.end() ? std::string_view{} : found->text;
}

Finding make_finding(std::string code, Severity severity, std::string where, std::optional<Vec3> at,
                     std::vector<std::pair<std::string, double>> values) {
    const std::string_view text = find_finding_text(code);
    assert(!text.empty() && "a finding's code has a text in the catalogue");
    std::string filled = text.empty() ? code : fill_text(Core::tr(text), values, UnitSystem::metric);
    return {std::move(code), severity, std::move(where), at, std::move(values), std::move(filled)};
}

} // namespace rampwright
