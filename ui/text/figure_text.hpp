#pragma once

#include <rampwright/core/problem.hpp>
#include <rampwright/results/table.hpp>

#include <QString>

/// Numbers as the window shows them: by the core's one formatter, in the person's units; values are SI.
namespace rampwright::ui {

/// "21.3 mm", "141.7 g", "97.12 mJ".
QString quantity_text(double si, Quantity quantity, UnitSystem units);

/// A change with its sign: "+0.4 g", "−1.0 mm"; empty where it rounds to nothing.
QString change_text(double si, Quantity quantity, UnitSystem units);

/// A change of heat time in milliseconds: "−3.1 ms"; empty where it rounds to nothing.
QString heat_change_text(double seconds, UnitSystem units);

/// A figure as the command line prints it, found by its code ("heat.time_s"); "–" where there is none.
QString row_text(const std::vector<TableRow>& rows, std::string_view code);

/// What may still be added before the scale reads more than the rules allow: "0.2 g left", "1.4 g too
/// much"; empty where the rules set no greatest mass.
QString mass_left_text(const Figures& figures, UnitSystem units);

/// The word that goes with a finding's mark.
QString severity_word(Severity severity);

/// A problem in plain words, without its place in the file: what is wrong; what to do.
QString plain_text(const Problem& problem);

/// Why something typed or asked for did not go into the project: "Not taken: …".
QString not_taken(const QString& why);

/// A problem as a sentence, with its place.
QString problem_text(const Problem& problem);

} // namespace rampwright::ui
