#include "results/scale_figures.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/rules/scale_words.hpp>
#include <rampwright/units/decimal.hpp>
#include <rampwright/units/format.hpp>
#include <rampwright/units/reading.hpp>

#include <cmath>

namespace rampwright {

namespace {

/// A scale's step in two digits: "0.1 g", on a scale that shows grams "0.0035 oz (0.1 g)".
std::string step_text(double step, UnitSystem units) {
    const std::string grams =
        format(step, Quantity::mass, units, {.unit = find_unit("g"), .significant = 2, .trim = true});
    if (units == UnitSystem::metric) return grams;
    return format(step, Quantity::mass, units, {.significant = 2, .trim = true}) + " (" + grams + ")";
}

/// What a scale shows, with the decimals of its steps.
std::string reading_text(double reads, double step, UnitSystem units) {
    const Unit& unit = default_unit(Quantity::mass, units);
    const int decimals = step > 0 ? std::max(0, -decimal_exponent(step / unit.scale)) : 3;
    return format(reads, Quantity::mass, units, {.decimals = decimals});
}

/// Two decimals of a gram: what putty is rolled to is finer than what most scales show.
std::string fine(double mass, UnitSystem units) {
    return units == UnitSystem::metric
               ? format(mass, Quantity::mass, units, {.unit = find_unit("g"), .decimals = 2})
               : format(mass, Quantity::mass, units, {.unit = find_unit("oz"), .decimals = 3});
}

/// Pellets are sold by the millimetre.
std::string pellet_text(double diameter, UnitSystem units) {
    const std::string mm = format_entry(diameter, Quantity::length, UnitSystem::metric);
    return units == UnitSystem::metric ? mm
                                       : format_reading(diameter, Quantity::length, units) + " (" + mm + ")";
}

std::string pellet(const PuttyAmount& amount, const ScaleFigures& scale, UnitSystem units) {
    const std::string text = fine(amount.mass, units);
    if (scale.putty_density > 0)
        return Core::tr("{mass}, {length} of a {diameter} pellet of {putty}",
                        {{"mass", text},
                         {"length", format_reading(amount.pellet, Quantity::length, units)},
                         {"diameter", pellet_text(scale.pellet_diameter, units)},
                         {"putty", Core::tr(scale.putty)}});
    return text;
}

std::string how_it_shows(const Scale& scale, UnitSystem units) {
    const std::string division = step_text(scale.division, units),
                      off = step_text(std::abs(scale.offset), units);
    const std::string text =
        scale.rounds_down
            ? Core::tr("in steps of {division}, cut off", {{"division", division}})
            : Core::tr("in steps of {division}, rounded to the nearest", {{"division", division}});
    if (scale.offset > 0) return Core::tr("{scale}, {amount} too much", {{"scale", text}, {"amount", off}});
    if (scale.offset < 0) return Core::tr("{scale}, {amount} too little", {{"scale", text}, {"amount", off}});
    return text;
}

std::string verdict_of(const Scale& scale, double reads, double bound, double margin, UnitSystem units) {
    const std::string read = reading_text(reads, scale.division, units), below = fine(bound, units),
                      by = fine(std::abs(margin), units);
    return margin > 0 ? Core::tr("reads {reads}; it reads legal below a true {bound}: {margin} left",
                                 {{"reads", read}, {"bound", below}, {"margin", by}})
                      : Core::tr("reads {reads}; it reads legal below a true {bound}: {margin} too much",
                                 {{"reads", read}, {"bound", below}, {"margin", by}});
}

} // namespace

std::vector<std::string> scale_words(const Project& project, const Figures& figures) {
    if (!figures.scale) return {};
    const ScaleFigures& s = *figures.scale;
    const UnitSystem units = project.units;
    const auto putty = [&](const PuttyAmount& amount) {
        return amount.mass > 0 ? pellet(amount, s, units) : Core::tr("nothing");
    };
    std::vector<std::string> words{
        Core::tr("The race's scale, {scale}, {verdict}.",
                 {{"scale", how_it_shows(project.scale, units)},
                  {"verdict", verdict_of(project.scale, s.reads, s.largest_legal_true, s.margin, units)}}),
        Core::tr("A worse one, {scale}, {verdict}.",
                 {{"scale", how_it_shows(project.worse_scale, units)},
                  {"verdict", verdict_of(project.worse_scale, s.worse_reads, s.worse_largest_legal_true,
                                         s.worse_margin, units)}})};
    if (s.margin <= 0)
        words.push_back(
            Core::tr("Take off more than {putty}.", {{"putty", pellet(putty_of(s, -s.margin), s, units)}}));
    words.push_back(Core::tr(
        "The car's weight is known to {sigma} (one sigma). To be sure on both scales, let "
        "this much come off easily: {off}; and carry to add: {carry}.",
        {{"sigma", fine(s.mass_sigma, units)}, {"off", putty(s.take_off)}, {"carry", putty(s.carry)}}));
    return words;
}

} // namespace rampwright
