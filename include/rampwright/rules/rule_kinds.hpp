#pragma once

#include <rampwright/project/project.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace rampwright {

/// A kind of rule that races set, from data/tables/rule_kinds.json. Its `id` is the place of its limit below
/// `rules` in a project file: "max_mass_g", "wheelbase_mm/min", "allow/bent_axles".
struct RuleKind {
    std::string id;
    std::string name;    ///< English, a few words: "greatest length"
    std::string text;    ///< what the rule says, without its limit; of "allow/...": what it permits
    std::string forbids; ///< of "allow/...": what it says where that is not allowed
    std::string inspect; ///< how an inspector looks at it
    std::string source;
    std::string why; ///< why no figure decides it, or where none does; empty where one always does
};

/// Every kind, in the order of an inspection.
const std::vector<RuleKind>& rule_kinds();

/// By id; null where there is none.
const RuleKind* find_rule_kind(std::string_view id);

/// The reader behind the table. Throws Problem as the readers of materials do.
std::vector<RuleKind> read_rule_kinds(std::string_view json);

} // namespace rampwright
