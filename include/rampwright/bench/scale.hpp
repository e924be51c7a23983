#pragma once

#include <rampwright/project/project.hpp>

namespace rampwright {

// What a digital scale shows: division * round((true + offset) / division), halves up, or cut off. Rounding
// to the nearest division is what NIST Handbook 44 and OIML R 76 ask of one. All masses in kg.
//
// A mass within a thousand-millionth of a division of where the reading turns counts as being there, so that
// the answers are those of exact arithmetic for whatever a person writes in grams or ounces: to a double,
// 143.05 g on a 0.1 g scale lies on the wrong side.
//
// All throw Problem where the division is not above zero, or a mass is no number or above a million
// divisions.

/// What the scale shows for this true mass.
double scale_reading(const Scale& scale, double true_mass);

/// The true mass below which the scale shows no more than `limit`; at the bound itself it shows more:
/// division (floor(limit / division) + 1/2) - offset, or + 1 where it cuts off.
double legal_bound(const Scale& scale, double limit);

/// One car on one scale.
struct ScaleVerdict {
    double reading = 0; ///< As displayed.
    double bound = 0;   ///< legal_bound of this scale.
    double margin = 0;  ///< Bound less the car: legal where above zero.
    bool legal = false;
};

/// How a car of this true mass fares on the scale against a greatest mass.
ScaleVerdict weigh(const Scale& scale, double true_mass, double limit);

/// What has to come off (positive), or may still be added (negative), in kg, so that neither scale shows more
/// than the limit: the true mass must stay below the lower of the two bounds.
double excess_on_both(const Scale& first, const Scale& second, double true_mass, double limit);

} // namespace rampwright
