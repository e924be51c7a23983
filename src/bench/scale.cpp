#include <rampwright/bench/scale.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

// Divisions within which a mass counts as being where the reading turns: far above what doubles lose on
// numbers written in grams or ounces, far below what anyone can weigh.
constexpr double sliver = 1e-9;
constexpr double finest_display = 1e6; // counts, where doubles still lose less than the sliver

void require(const Scale& scale) {
    if (!(scale.division > 0 && std::isfinite(scale.division)))
        throw Problem(Exit::could_not, "/scale/division_g",
                      Core::tr("the scale's division is not above zero"),
                      Core::tr("give the step in which its display counts"));
    if (!std::isfinite(scale.offset))
        throw Problem(Exit::could_not, "/scale/offset_g", Core::tr("the scale's offset is no number"),
                      Core::tr("check the number"));
}

// Whole divisions at or below `mass`, moved up by `lift` divisions.
double whole_divisions(const Scale& scale, double mass, double lift) {
    const double divisions = mass / scale.division;
    if (!(std::abs(divisions) <= finest_display))
        throw Problem(Exit::could_not, "/scale/division_g",
                      Core::tr("a mass is more than a million divisions of the scale"),
                      Core::tr("check the division, the mass and their units"));
    return std::floor(divisions + lift + sliver);
}

// Where in a division the reading turns to the next one.
double turning_point(const Scale& scale) {
    return scale.rounds_down ? 1 : 0.5;
}

} // namespace

double scale_reading(const Scale& scale, double true_mass) {
    require(scale);
    return scale.division * whole_divisions(scale, true_mass + scale.offset, 1 - turning_point(scale));
}

double legal_bound(const Scale& scale, double limit) {
    require(scale);
    return scale.division * (whole_divisions(scale, limit, 0) + turning_point(scale)) - scale.offset;
}

ScaleVerdict weigh(const Scale& scale, double true_mass, double limit) {
    ScaleVerdict verdict;
    verdict.reading = scale_reading(scale, true_mass);
    verdict.bound = legal_bound(scale, limit);
    verdict.margin = verdict.bound - true_mass;
    if (std::abs(verdict.margin) <= sliver * scale.division) verdict.margin = 0;
    verdict.legal = verdict.margin > 0;
    return verdict;
}

double excess_on_both(const Scale& first, const Scale& second, double true_mass, double limit) {
    return -std::min(weigh(first, true_mass, limit).margin, weigh(second, true_mass, limit).margin);
}

} // namespace rampwright
