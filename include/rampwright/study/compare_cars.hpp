#pragma once

#include <rampwright/project/document.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace rampwright {

/// One thing in which a second car differs from a first: a value, a place, a piece or a whole outline.
struct CarDifference {
    std::vector<std::string> keys; ///< JSON pointers inside a car: "/ballast/0/at_mm"
    std::string what;              ///< "tungsten bar 13: place"
    std::string from, to;          ///< as text, in the project's units
    /// What the first car's heat takes longer with this difference alone, s; negative: it is faster. None
    /// where the first car cannot be run with it alone.
    std::optional<double> worth;
    std::string problem; ///< why not
};

/// Two cars of a project, value by value.
struct CarComparison {
    std::vector<CarDifference> differences; ///< the greatest worth first, those without one last
    std::optional<double> first, second;    ///< heat times, s; none where a car does not finish
    double sum = 0;                         ///< of the worths: what the differences bring, each alone
    /// What is left of second less first beside that sum: differences help or hinder each other, and some
    /// cannot be tried alone. None where either car has no time.
    std::optional<double> together() const;
    bool cancelled = false;
};

/// Compares two cars of a document. Names, numbers, paint and records are no differences. One heat a
/// difference: a few milliseconds each.
/// @param keep_going asked before each heat; where it says no, the comparison ends, `cancelled`.
/// @throws Problem where there is no such car or the document cannot be read.
CarComparison compare_cars(const Document& document, std::size_t first, std::size_t second,
                           const std::function<bool()>& keep_going = {});

} // namespace rampwright
