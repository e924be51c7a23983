#include "explain/formula.hpp"

#include "core/fill_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/units/decimal.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace rampwright {

namespace {

constexpr int result_digits = 5;

/// The catalogue's text with the values in their places.
std::string fill(std::string_view text, const Words& words) {
    return fill_places(text, [&](std::string_view name) {
        const auto found =
            std::find_if(words.begin(), words.end(), [name](const auto& word) { return word.first == name; });
        assert(found != words.end() && "the catalogue asks for a value that is there");
        return found == words.end() ? std::string("?") : found->second;
    });
}

std::string trimmed(std::string digits) {
    if (digits.find('.') == std::string::npos) return digits;
    digits.erase(digits.find_last_not_of('0') + 1);
    if (digits.back() == '.') digits.pop_back();
    return digits;
}

std::string with_minus(std::string digits) {
    if (digits.starts_with('-')) digits.replace(0, 1, "−");
    return digits;
}

/// Without the brackets that a negative number needs inside a formula.
std::string bare_number(double value, int significant) {
    if (value == 0) return "0";
    const double rounded = round_to_significant(value, significant);
    const int exponent = decimal_exponent(rounded);
    constexpr int least_plain = -4, most_plain = 7;
    if (exponent >= least_plain && exponent <= most_plain)
        return with_minus(trimmed(to_fixed(rounded, std::max(0, significant - 1 - exponent))));
    const std::string digits = trimmed(to_fixed(rounded / std::pow(10.0, exponent), significant - 1));
    return "(" + with_minus(digits) + " × 10^" + with_minus(std::to_string(exponent)) + ")";
}

} // namespace

std::string formula_number(double value, int significant) {
    const std::string text = bare_number(value, significant);
    return text.starts_with("−") ? "(" + text + ")" : text;
}

std::string formula_sum(const std::vector<double>& terms, int significant) {
    std::string text;
    for (const double term : terms) {
        if (text.empty())
            text = formula_number(term, significant);
        else
            text += (term < 0 ? " − " : " + ") + formula_number(std::abs(term), significant);
    }
    return text.empty() ? "0" : text;
}

Explanation make_explanation(std::string_view code, const Words& words, const std::string& left,
                             double result, std::string unit, bool integral) {
    const ExplanationText* text = find_explanation_text(code);
    assert(text && "a figure that is explained has a text in the catalogue");
    Explanation made;
    made.code = code;
    made.plain = fill(Core::tr(text->plain), words);
    made.law = Core::tr(text->law);
    made.source = Core::tr(text->source);
    made.section = text->section;
    made.result = result;
    made.unit = std::move(unit);
    made.integral = integral;
    if (!left.empty()) {
        made.formula = left + " = " + bare_number(result, result_digits);
        if (!made.unit.empty()) made.formula += " " + made.unit;
    }
    return made;
}

} // namespace rampwright
