#include "project/read_parts.hpp"
#include "project/rule_keys.hpp"

#include <rampwright/core/say.hpp>

namespace rampwright {

namespace {

Range read_range(const Node& range, double largest) {
    Range r;
    // Its members have no ending of their own: they are in the unit of the key above.
    r.min = range.inner("min").maybe_number(from_to(0, largest));
    r.max = range.inner("max").maybe_number(above(0, largest));
    if (r.min && r.max && *r.min > *r.max)
        range.refuse(Core::tr("the smallest is above the largest"), Core::tr("exchange \"min\" and \"max\""));
    return r;
}

} // namespace

Rules read_rules(const Node& rules) {
    Rules r;
    r.set = rules["set"].text();
    r.title = rules["title"].text();
    r.source = rules["source"].text();
    r.max_mass = rules["max_mass_g"].maybe_number(above(0, 5000));
    r.max_length = rules["max_length_mm"].maybe_number(above(0, 2000));
    r.max_width = rules["max_width_mm"].maybe_number(above(0, 1000));
    r.max_height = rules["max_height_mm"].maybe_number(above(0, 1000));
    r.min_ground_clearance = rules["min_ground_clearance_mm"].maybe_number(from_to(0, 200));
    r.min_inner_width = rules["min_inner_width_mm"].maybe_number(from_to(0, 500));
    r.wheelbase = read_range(rules["wheelbase_mm"], 1000);
    r.wheel_min_mass = rules["wheel_min_mass_g"].maybe_number(from_to(0, 100));
    r.wheel_diameter = read_range(rules["wheel_diameter_mm"], 200);
    r.wheel_min_width = rules["wheel_min_width_mm"].maybe_number(from_to(0, 100));
    r.max_nose_height = rules["max_nose_height_mm"].maybe_number(above(0, 1000));
    if (const Node touching = rules["wheels_touching"]; touching.present())
        r.wheels_touching = touching.whole(3, 4);
    for (const auto& [name, allowed] : rules["allow"].members())
        if (allowed.present()) r.allow[name] = allowed.flag();
    if (const Node lubricants = rules["lubricants"]; lubricants.present()) {
        r.lubricants.emplace();
        for (const Node& kind : lubricants.rows())
            r.lubricants->push_back(kind.text());
    }
    r.built_after = read_date(rules["built_after"]);
    for (const auto& [id, words] : rules["words"].members())
        if (words.present())
            r.words[id] = {words["text"].text(), words["inspect"].text(), words["source"].text()};
    for (const Node& rule : rules["house"].rows()) {
        const Node text = rule["text"];
        if (!text.present()) text.refuse_missing("say what the rule is");
        r.house.push_back({text.text(), rule["inspect"].text(), rule["source"].text()});
    }
    for (const auto& [key, rule] : rules.members())
        if (!is_rule_key(key) && rule.present()) r.others[key] = rule.shown();
    return r;
}

} // namespace rampwright
