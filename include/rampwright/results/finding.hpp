#pragma once

#include <rampwright/project/project.hpp>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rampwright {

enum class Severity { note, warning, breach };
std::string_view to_string(Severity severity);

/// Something about a car that its builder should know: where, how much, and in words.
struct Finding {
    std::string code; ///< stable, kebab-case; a window translates by it
    Severity severity = Severity::note;
    std::string where;                                  ///< JSON pointer of what it is about
    std::optional<Vec3> at;                             ///< place to draw it, m, car frame
    std::vector<std::pair<std::string, double>> values; ///< named with the unit, e.g. {"outside_mm3", 12.5}
    std::string text; ///< English, from the one catalogue (src/results/finding_texts.cpp)
};

/// The catalogue's English for a code, `{name}` where a value goes; empty where it has none.
std::string_view find_finding_text(std::string_view code);

/// Makes a finding with its English text filled in from the catalogue, values put in their places.
Finding make_finding(std::string code, Severity severity, std::string where, std::optional<Vec3> at,
                     std::vector<std::pair<std::string, double>> values);

} // namespace rampwright
