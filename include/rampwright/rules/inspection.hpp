#pragma once

#include <rampwright/car/car_model.hpp>
#include <rampwright/results/figures.hpp>

#include <string>
#include <vector>

namespace rampwright {

/// How a rule stands for a car.
enum class Verdict {
    pass,
    margin, ///< kept, by less than can be relied on; the limit itself is kept
    breach,
    look_yourself ///< no figure decides it: a person must look
};
std::string_view to_string(Verdict verdict);
/// In words, for people: "passes", "passes narrowly", "breaks the rule", "look at it yourself".
std::string_view in_words(Verdict verdict);

/// Which side of the limit is kept.
enum class Bound {
    at_most,
    at_least,
    allowed, ///< yes or no: `limit_words` says which
    words    ///< a date, a list of lubricants, a rule of the house
};

/// One line of the inspection: a rule of the race against one car. Numbers are SI, in the unit of `quantity`.
struct InspectionRow {
    std::string code;    ///< its place below `rules` in the file: "max_mass_g", "allow/lead", "house/0"
    std::string name;    ///< a few words: "greatest length"
    std::string rule;    ///< what the rule says, without its limit
    std::string inspect; ///< how it is looked at
    std::string source;  ///< where it is from
    Bound bound = Bound::words;
    Quantity quantity = Quantity::plain;
    std::optional<double> limit, value; ///< of the greatest mass: what the scale reads
    std::optional<double> margin; ///< room left, negative in breach; of the mass: true mass to the bound
    std::string limit_words, value_words; ///< English, where they are no numbers
    Verdict verdict = Verdict::look_yourself;
    std::string why; ///< English: why a person must look, or why there is little room
};

/// Everything an inspector asks of one car. The one list behind `rampwright check`, the window and the sheet.
struct Inspection {
    std::string car;
    std::string title, source; ///< of the rules
    std::vector<InspectionRow> rows;
    std::size_t count(Verdict verdict) const;
    bool broken() const { return count(Verdict::breach) > 0; }
};

/// Said wherever verdicts are shown: on screen, in print and on paper.
inline constexpr std::string_view inspector_decides =
    "Local rules and the inspector decide; this list only helps to come prepared.";

/// Every rule the project states, decided wherever a figure can decide it.
///
/// Mass is judged as the race's scale reads it (bench/scale.hpp). A length that keeps its limit by less than
/// the saw's tolerance (the wheelbase: the drill's), a wheel's mass that does by less than the scale's
/// division, and a car that the worse scale would find too heavy, pass narrowly. A rule that no figure
/// decides is never passed: a person must look.
Inspection inspect(const Project& project, const CarModel& car, const Figures& figures);

/// The same from the project alone. @throws Problem as compute_figures does.
Inspection inspect(const Project& project, std::size_t car);

/// "at most 141.7 g", "not allowed", "at least 44.00 mm".
std::string limit_text(const InspectionRow& row, UnitSystem units);
/// "141.6 g", "none"; a dash where nothing is computed.
std::string value_text(const InspectionRow& row, UnitSystem units);
/// "0.1 g left", "2.00 mm too much", "2.00 mm short"; empty where there is no number.
std::string margin_text(const InspectionRow& row, UnitSystem units);

/// As `rampwright check` prints it, and for scripts (docs/file-format.md, "Inspection").
std::string to_table(const Inspection& inspection, UnitSystem units);
Json to_json(const Inspection& inspection);

/// The breaches as findings.
std::vector<Finding> check_rules(const Project& project, const CarModel& car, const Figures& figures);

} // namespace rampwright
