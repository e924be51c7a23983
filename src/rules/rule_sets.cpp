#include "materials/table_reader.hpp"

#include <rampwright/core/data_table.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/rules/rule_sets.hpp>
#include <rampwright/units/key_unit.hpp>

#include <algorithm>
#include <set>

namespace rampwright {

namespace {

/// A member of the rule being read, made sure of.
const Json& member(const Json& rule, const char* key, bool fits(const Json&), const std::string& where,
                   const std::string& wanted) {
    const auto found = rule.find(key);
    if (found == rule.end() || !fits(*found))
        throw Problem(Exit::could_not, where + "/" + key, "this rule has no " + wanted, "give it");
    return *found;
}

/// The limit in the unit that the project file's key names.
Json read_limit(const Json& rule, const std::string& id, const std::string& where) {
    const double number = member(
                              rule, "limit", [](const Json& v) { return v.is_number(); }, where, "limit")
                              .get<double>();
    const Unit* wanted = find_key_unit(id.substr(0, id.find('/')));
    if (wanted == nullptr) return rule.at("limit");
    const std::string word = member(
                                 rule, "unit", [](const Json& v) { return v.is_string(); }, where, "unit")
                                 .get<std::string>();
    const Unit* given = find_unit(word);
    if (given == nullptr || given->quantity != wanted->quantity)
        throw Problem(Exit::could_not, where + "/unit", "\"" + word + "\" does not measure this limit",
                      "write \"" + std::string(wanted->symbol) + "\"");
    return given == wanted ? rule.at("limit") : Json(from_si(to_si(number, *given), *wanted));
}

void put_rule(Json& rules, const Json& rule, const std::string& id, const std::string& where) {
    if (id.starts_with("allow/")) {
        rules["allow"][id.substr(6)] = member(
            rule, "allowed", [](const Json& v) { return v.is_boolean(); }, where, "yes or no");
    } else if (id == "lubricants") {
        rules[id] = member(
            rule, "kinds", [](const Json& v) { return v.is_array(); }, where, "list of kinds");
    } else if (id == "built_after") {
        rules[id] = member(
            rule, "date", [](const Json& v) { return v.is_string(); }, where, "date");
    } else {
        const std::size_t slash = id.find('/');
        Json& place =
            slash == std::string::npos ? rules[id] : rules[id.substr(0, slash)][id.substr(slash + 1)];
        place = read_limit(rule, id, where);
    }
}

void put_words(Json& rules, const Json& rule, const std::string& id) {
    Json words = Json::object();
    for (const char* key : {"text", "inspect", "source"})
        if (const auto found = rule.find(key); found != rule.end()) words[key] = *found;
    if (id == "house")
        rules["house"].push_back(words);
    else if (!words.empty())
        rules["words"][id] = words;
}

} // namespace

RuleSet read_rule_set(std::string_view json) {
    const Json root = Json::parse(json, nullptr, false);
    if (!root.is_object() || root.value("format", "") != "rampwright-rules" || root.value("version", 0) != 1)
        throw Problem(Exit::could_not, "/format", "this is no set of rules, version 1",
                      "write \"rampwright-rules\" and 1");
    const RowReader reader(root, "");
    RuleSet set{reader.text("id"), reader.text("title"), reader.text("about"), reader.text("source"),
                Json::object()};
    set.rules["set"] = set.id;
    set.rules["title"] = set.title;
    set.rules["source"] = set.source;
    std::set<std::string> seen;
    std::size_t index = 0;
    for (const Json& rule : member(
             root, "rules", [](const Json& v) { return v.is_array(); }, "", "list of rules")) {
        const std::string where = "/rules/" + std::to_string(index++);
        const RowReader row(rule, where);
        const std::string id = row.text("id");
        if (id == "house")
            row.text("text");
        else if (find_rule_kind(id) == nullptr)
            row.refuse("id", "\"" + id + "\" is no kind of rule", "use one of data/tables/rule_kinds.json");
        else if (!seen.insert(id).second)
            row.refuse("id", "the rule \"" + id + "\" comes twice", "say it once");
        else
            put_rule(set.rules, rule, id, where);
        put_words(set.rules, rule, id);
    }
    return set;
}

const std::vector<RuleSet>& rule_sets() {
    static const std::vector<RuleSet> sets = [] {
        std::vector<RuleSet> read;
        for (const std::string_view name : data_table_names())
            if (name.starts_with("rules/")) read.push_back(read_rule_set(find_data_table(name)));
        std::sort(read.begin(), read.end(),
                  [](const RuleSet& a, const RuleSet& b) { return a.title < b.title; });
        return read;
    }();
    return sets;
}

const RuleSet* find_rule_set(std::string_view id) {
    const auto& sets = rule_sets();
    const auto found = std::find_if(sets.begin(), sets.end(), [id](const RuleSet& s) { return s.id == id; });
    return found == sets.end() ? nullptr : &*found;
}

} // namespace rampwright
