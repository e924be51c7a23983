#pragma once

#include <rampwright/core/json.hpp>
#include <rampwright/rules/rule_kinds.hpp>

namespace rampwright {

/// Rules that go together, from data/rules: a class of a race. Their limits are the demo race's own
/// invention.
struct RuleSet {
    std::string id, title, about, source;
    Json rules; ///< the `rules` object of a project that takes them (set_rules in project/edits.hpp)
};

/// Every set that is built in, by title.
const std::vector<RuleSet>& rule_sets();

/// By id; null where there is none.
const RuleSet* find_rule_set(std::string_view id);

/// Reads one set: {"format": "rampwright-rules", "version": 1, id, title, about, source, "rules": [...]},
/// each rule with the `id` of its kind and `limit` with `unit`, `allowed`, `kinds` or `date`; or with the id
/// "house" and a text. `text`, `inspect` and `source` may say more than the kind does.
/// @throws Problem, `where` a JSON pointer into the text, for an unknown kind, one that comes twice, a
/// missing
///         or unfitting limit, or an unknown unit.
RuleSet read_rule_set(std::string_view json);

} // namespace rampwright
