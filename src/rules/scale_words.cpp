#include "results/scale_figures.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
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
    std::string text = fine(amount.mass, units);
    if (scale.putty_density > 0)
        text += ", " + format_reading(amount.pellet, Quantity::length, units) + " of a " +
                pellet_text(scale.pellet_diameter, units) + " pellet of " + scale.putty;
    return text;
}

std::string how_it_shows(const Scale& scale, UnitSystem units) {
    std::string text = "in steps of " + step_text(scale.division, units) + ", " +
                       (scale.rounds_down ? "cut off" : "rounded to the nearest");
    if (scale.offset != 0)
        text += ", " + step_text(std::abs(scale.offset), units) +
                (scale.offset > 0 ? " too much" : " too little");
    return text;
}

std::string verdict_of(const Scale& scale, double reads, double bound, double margin, UnitSystem units) {
    return "reads " + reading_text(reads, scale.division, units) + "; it reads legal below a true " +
           fine(bound, units) + ": " + fine(std::abs(margin), units) + (margin > 0 ? " left" : " too much");
}

} // namespace

std::vector<std::string> scale_words(const Project& project, const Figures& figures) {
    if (!figures.scale) return {};
    const ScaleFigures& s = *figures.scale;
    const UnitSystem units = project.units;
    std::vector<std::string> words{
        "The race's scale, " + how_it_shows(project.scale, units) + ", " +
            verdict_of(project.scale, s.reads, s.largest_legal_true, s.margin, units) + ".",
        "A worse one, " + how_it_shows(project.worse_scale, units) + ", " +
            verdict_of(project.worse_scale, s.worse_reads, s.worse_largest_legal_true, s.worse_margin,
                       units) +
            "."};
    if (s.margin <= 0)
        words.push_back("Take off more than " + pellet(putty_of(s, -s.margin), s, units) + ".");
    words.push_back("The car's weight is known to " + fine(s.mass_sigma, units) +
                    " (one sigma). To be sure on both scales, let this much come off easily: " +
                    (s.take_off.mass > 0 ? pellet(s.take_off, s, units) : "nothing") +
                    "; and carry to add: " + (s.carry.mass > 0 ? pellet(s.carry, s, units) : "nothing") +
                    ".");
    return words;
}

} // namespace rampwright
