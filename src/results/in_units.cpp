#include "core/fill_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/results/in_units.hpp>
#include <rampwright/study/steps.hpp>

namespace rampwright {

std::string fill_in_units(std::string_view text, const std::vector<std::pair<std::string, double>>& values,
                          UnitSystem units) {
    return fill_text(text, values, units);
}

std::string text_of(const Finding& finding, UnitSystem units) {
    const std::string_view text = find_finding_text(finding.code);
    return text.empty() ? finding.text : fill_text(Core::tr(text), finding.values, units);
}

std::string text_of(const BuilderStep& step, UnitSystem units) {
    const std::string_view text = find_step_text(step.key);
    return text.empty() ? step.text : fill_text(Core::tr(text), step.values, units);
}

} // namespace rampwright
