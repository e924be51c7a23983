#pragma once

#include <rampwright/results/figures.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace rampwright {

/// Where a figure comes from, in two steps: a sentence for a ten-year-old, and the formula with this car's
/// numbers in it.
struct Explanation {
    std::string code;  ///< as TableRow::code: the figure's key in `figures --json`
    std::string plain; ///< one sentence, numbers in the project's units
    std::string law;   ///< the formula in words
    /// The formula in SI numbers, "0.1417 × 0.022 / 0.1111 = 0.02806 kg". What stands before "=" evaluates to
    /// what stands behind it, to the digits printed, and that is the figure. Notation: + − × / ^ ( ), numbers
    /// with a point (small ones "(1.2 × 10^−6)"), and the functions √ sin cos tanh round floor Φ (the normal
    /// distribution) with their argument in brackets; angles in rad. Empty where the figure has none now.
    std::string formula;
    double result = 0; ///< SI
    std::string unit;  ///< SI, as text; empty for a plain number
    /// A number of the formula is itself summed along the heat, and `law` says which: a mean load, a mean
    /// square of speed, the time on a piece of the track. It is summed apart from the figure.
    bool integral = false;
    std::string source;
    std::string section; ///< heading of docs/model.md that tells more
};

/// Explains the figures of one car. Those that have no value (a guide's without a rail, a scale's without a
/// limit, a time where the car stops short) are left out.
/// @param figures of this project and car, as compute_figures makes them.
/// @throws Problem as compute_figures does.
std::vector<Explanation> explain(const Project& project, std::size_t car, const Figures& figures);

/// The catalogue's English for a code, `{name}` where a value goes; empty where it has none. A window
/// translates by it.
struct ExplanationText {
    std::string_view code, plain, law, source, section;
};
const ExplanationText* find_explanation_text(std::string_view code);

} // namespace rampwright
