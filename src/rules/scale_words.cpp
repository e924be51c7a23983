#include "results/scale_figures.hpp"

#include <rampwright/bench/scale.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/rules/scale_words.hpp>
#include <rampwright/units/format.hpp>

#include <cmath>

namespace rampwright {

namespace {

/// Two decimals of a gram: what putty is rolled to is finer than what most scales show.
std::string fine(double mass, UnitSystem units) {
    return units == UnitSystem::metric
               ? format(mass, Quantity::mass, units, {.unit = find_unit("g"), .decimals = 2})
               : format(mass, Quantity::mass, units, {.unit = find_unit("oz"), .decimals = 3});
}

std::string pellet(const PuttyAmount& amount, const ScaleFigures& scale, UnitSystem units) {
    std::string text = fine(amount.mass, units);
    if (scale.putty_density > 0)
        text += ", " + format(amount.pellet, Quantity::length, UnitSystem::metric, {.decimals = 1}) +
                " of a " + format_entry(scale.pellet_diameter, Quantity::length, UnitSystem::metric) +
                " pellet of " + scale.putty;
    return text;
}

std::string how_it_shows(const Scale& scale, UnitSystem units) {
    std::string text = "steps of " + format_entry(scale.division, Quantity::mass, units) + ", " +
                       (scale.rounds_down ? "cut off" : "rounded to the nearest");
    if (scale.offset != 0)
        text += ", " + format_entry(std::abs(scale.offset), Quantity::mass, units) +
                (scale.offset > 0 ? " too much" : " too little");
    return text;
}

std::string verdict_of(double reads, double bound, double margin, UnitSystem units) {
    return "reads " + format_entry(reads, Quantity::mass, units) + "; it reads legal below a true " +
           fine(bound, units) + ": " + fine(std::abs(margin), units) + (margin > 0 ? " left" : " too much");
}

} // namespace

std::vector<std::string> scale_words(const Project& project, const Figures& figures) {
    if (!figures.scale) return {};
    const ScaleFigures& s = *figures.scale;
    const UnitSystem units = project.units;
    std::vector<std::string> words{
        "The race's scale (" + how_it_shows(project.scale, units) + ") " +
            verdict_of(s.reads, s.largest_legal_true, s.margin, units) + ".",
        "A worse one (" + how_it_shows(project.worse_scale, units) + ") " +
            verdict_of(s.worse_reads, s.worse_largest_legal_true, s.worse_margin, units) + "."};
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
