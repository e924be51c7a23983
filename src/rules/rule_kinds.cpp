#include "materials/table_reader.hpp"

#include <rampwright/core/data_table.hpp>
#include <rampwright/rules/rule_kinds.hpp>

#include <algorithm>

namespace rampwright {

std::vector<RuleKind> read_rule_kinds(std::string_view json) {
    std::vector<RuleKind> kinds;
    read_rows(json, [&](const RowReader& reader) {
        RuleKind kind;
        kind.id = reader.text("id");
        kind.name = reader.text("name");
        kind.text = reader.text("text");
        kind.forbids = kind.id.starts_with("allow/") ? reader.text("forbids") : "";
        kind.inspect = reader.text("inspect");
        kind.source = reader.text("source");
        kind.why = reader.text_or("why", "");
        reader.status();
        if (std::any_of(kinds.begin(), kinds.end(), [&](const RuleKind& k) { return k.id == kind.id; }))
            reader.refuse("id", "the kind \"" + kind.id + "\" comes twice", "give each rule its own");
        kinds.push_back(std::move(kind));
    });
    return kinds;
}

const std::vector<RuleKind>& rule_kinds() {
    static const std::vector<RuleKind> kinds = read_rule_kinds(find_data_table("rule_kinds"));
    return kinds;
}

const RuleKind* find_rule_kind(std::string_view id) {
    const auto& kinds = rule_kinds();
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [id](const RuleKind& kind) { return kind.id == id; });
    return found == kinds.end() ? nullptr : &*found;
}

} // namespace rampwright
