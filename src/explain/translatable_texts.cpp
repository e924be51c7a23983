#include "core/catalogues.hpp"

#include <rampwright/core/data_table.hpp>
#include <rampwright/core/json.hpp>
#include <rampwright/explain/translatable_texts.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/units/quantity.hpp>

#include <algorithm>
#include <array>
#include <set>

namespace rampwright {

namespace {

/// The keys of a built-in table under which a person's words stand.
constexpr std::array<std::string_view, 9> worded{"name",  "text",  "forbids", "inspect", "why",
                                                 "title", "about", "notes",   "source"};

class List {
public:
    void add(std::string_view text) {
        if (!text.empty() && known_.insert(std::string(text)).second) texts_.emplace_back(text);
    }
    void add_worded(const Json& node, bool with_source) {
        if (node.is_array())
            for (const Json& each : node)
                add_worded(each, with_source);
        if (!node.is_object()) return;
        for (const auto& [key, value] : node.items()) {
            const bool is_word = std::find(worded.begin(), worded.end(), key) != worded.end();
            if (value.is_string() && is_word && (with_source || key != "source"))
                add(value.get_ref<const std::string&>());
            else
                add_worded(value, with_source);
        }
    }
    std::vector<std::string> take() { return std::move(texts_); }

private:
    std::set<std::string> known_;
    std::vector<std::string> texts_;
};

} // namespace

std::vector<std::string> translatable_texts() {
    List list;
    for (const auto& catalogue : {finding_texts(), step_texts(), explanation_texts(), input_name_texts()})
        for (const std::string_view text : catalogue)
            list.add(text);
    for (int i = 0; i <= static_cast<int>(Quantity::pressure); ++i)
        list.add(in_words(static_cast<Quantity>(i)));
    for (const Verdict verdict : {Verdict::pass, Verdict::margin, Verdict::breach, Verdict::look_yourself})
        list.add(in_words(verdict));
    for (const std::string_view name : data_table_names()) {
        const Json table = Json::parse(find_data_table(name));
        // Where the values of a material are from stands in the file for whoever checks them, not on the
        // screen.
        const bool rules = name == "rule_kinds" || table.contains("rules");
        if (table.contains("rows") && !rules)
            list.add_worded(table.at("rows"), false);
        else if (name == "rule_kinds")
            list.add_worded(table.at("rows"), true);
        else
            list.add_worded(table, rules);
    }
    return list.take();
}

} // namespace rampwright
