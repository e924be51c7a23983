#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/edits.hpp>
#include <rampwright/study/compare_cars.hpp>
#include <rampwright/study/heat_case.hpp>
#include <rampwright/units/format.hpp>
#include <rampwright/units/key_unit.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

namespace rampwright {

namespace {

using Pointer = Json::json_pointer;

/// What is said of a car beside its plan.
constexpr std::array labels{"id", "name", "number", "paint", "done", "decided", "built_on", "figures"};

Json plan_of(const Document& document, std::size_t car) {
    const auto cars = document.root.find("cars");
    if (cars == document.root.end() || !cars->is_array() || car >= cars->size())
        throw Problem(Exit::could_not, "/cars/" + std::to_string(car), Core::tr("there is no such car"),
                      Core::tr("choose one that is there"));
    Json plan = (*cars)[car];
    for (const char* label : labels)
        plan.erase(label);
    if (plan.contains("as_built") && plan["as_built"].is_object()) plan["as_built"].erase("readings");
    return plan;
}

std::vector<std::string> tokens_of(std::string_view pointer) {
    std::vector<std::string> tokens;
    while (!pointer.empty()) {
        pointer.remove_prefix(1);
        const std::size_t end = std::min(pointer.find('/'), pointer.size());
        tokens.emplace_back(pointer.substr(0, end));
        pointer.remove_prefix(end);
    }
    return tokens;
}

std::string joined(const std::vector<std::string>& tokens, std::size_t count) {
    std::string pointer;
    for (std::size_t i = 0; i < std::min(count, tokens.size()); ++i)
        pointer += "/" + tokens[i];
    return pointer;
}

bool is_one_of(std::string_view key, std::initializer_list<std::string_view> keys) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

/// A value that differs, as it is tried alone: what only makes sense together goes together.
struct Group {
    std::string id; ///< values with one id are one difference
    std::string key;
};

/// @param others values that make a list's element another thing altogether, by that element.
Group group_of(const std::string& leaf, const std::set<std::string>& others) {
    const std::vector<std::string> tokens = tokens_of(leaf);
    const auto whole = [&](std::size_t count) {
        const std::string pointer = joined(tokens, count);
        return Group{pointer, pointer};
    };
    if (tokens.size() >= 2 && is_one_of(tokens[1], {"profile_mm", "plan_mm"})) return whole(2);
    if (tokens[0] == "ballast") return others.contains(joined(tokens, 2)) ? whole(2) : whole(3);
    if (tokens.size() >= 2 && tokens[1] == "cuts") {
        if (others.contains(joined(tokens, 3))) return whole(3);
        Group group = whole(4);
        // Both corners: one alone would stretch the cut.
        if (tokens.size() > 3 && is_one_of(tokens[3], {"from_mm", "to_mm"}))
            group.id = joined(tokens, 3) + "/at";
        return group;
    }
    if (tokens[0] == "wheels") return whole(3);
    return whole(2);
}

/// The elements of lists that are another thing, not the same one changed.
std::set<std::string> find_others(const std::vector<std::string>& leaves) {
    std::set<std::string> others;
    for (const std::string& leaf : leaves) {
        const std::vector<std::string> tokens = tokens_of(leaf);
        if (tokens[0] == "ballast" && tokens.size() > 2 &&
            is_one_of(tokens[2], {"piece", "shape", "size_mm", "material"}))
            others.insert(joined(tokens, 2));
        if (tokens.size() > 3 && tokens[1] == "cuts" && is_one_of(tokens[3], {"name", "kind"}))
            others.insert(joined(tokens, 3));
    }
    return others;
}

/// "outer_diameter_mm": "outer diameter".
std::string words_of(std::string key) {
    const std::map<std::string, std::string, std::less<>> own{
        {"at_mm", Core::tr("place")},
        {"from_mm", Core::tr("place")},
        {"to_mm", Core::tr("place")},
        {"in", Core::tr("the cut it lies in")},
        {"mass_g", Core::tr("weight")},
        {"toe_deg", Core::tr("steer")},
        {"block_mm", Core::tr("block")},
        {"profile_mm", Core::tr("side outline")},
        {"plan_mm", Core::tr("top outline")},
        {"outer_diameter_mm", Core::tr("outer diameter")},
        {"bore_diameter_mm", Core::tr("bore diameter")},
        {"diameter_mm", Core::tr("diameter")},
        {"width_mm", Core::tr("width")},
        {"runout_mm", Core::tr("runout")},
        {"cant_deg", Core::tr("cant")},
        {"hub", Core::tr("hub")},
        {"wood", Core::tr("wood")},
        {"held", Core::tr("held")},
        {"material", Core::tr("material")},
        {"size_mm", Core::tr("size")},
        {"number", Core::tr("number")},
        {"paint", Core::tr("paint")},
        {"finish_g", Core::tr("finish")},
        {"axles", Core::tr("axles")},
        {"air", Core::tr("air")},
        {"steer", Core::tr("steer")},
        {"front_x_mm", Core::tr("front x")},
        {"rear_x_mm", Core::tr("rear x")},
        {"end", Core::tr("end")},
        {"touches", Core::tr("touches the lane")}};
    if (const auto found = own.find(key); found != own.end()) return found->second;
    if (const Unit* unit = find_key_unit(key)) {
        const std::string_view ending = key_ending(*unit);
        if (key.ends_with(ending)) key.erase(key.size() - ending.size());
    }
    std::replace(key.begin(), key.end(), '_', ' ');
    return key;
}

const Json* find_at(const Json& plan, const std::string& pointer) {
    const Pointer place(pointer);
    return plan.contains(place) && !plan[place].is_null() ? &plan[place] : nullptr;
}

std::string name_in(const Json* element, const char* key) {
    if (!element || !element->is_object()) return {};
    const auto found = element->find(key);
    return found != element->end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::string what_differs(const Json& first, const Json& second, const std::string& pointer) {
    const std::vector<std::string> tokens = tokens_of(pointer);
    const auto element = [&](std::size_t count, const char* key) {
        const std::string name = name_in(find_at(first, joined(tokens, count)), key);
        return name.empty() ? name_in(find_at(second, joined(tokens, count)), key) : name;
    };
    if (tokens.size() == 1) return words_of(tokens[0]);
    std::string thing = tokens[0] == "body" ? Core::tr("wood") : words_of(tokens[0]);
    std::size_t used = 1;
    if (tokens[0] == "ballast") {
        thing = element(2, "piece");
        used = 2;
        if (thing.empty()) thing = Core::tr("ballast piece");
    } else if (tokens[0] == "wheels") {
        const std::string corner = element(2, "corner");
        thing = Core::tr("{corner} wheel", {{"corner", Core::tr(corner)}});
        used = 2;
    } else if (tokens[1] == "cuts" && tokens.size() > 2) {
        thing = element(3, "name");
        used = 3;
        if (thing.empty()) thing = Core::tr("cut");
    }
    return tokens.size() > used ? thing + ": " + words_of(tokens[used]) : thing;
}

std::string number_text(double number, const std::string& key, UnitSystem units, bool with_unit) {
    const Unit* unit = find_key_unit(key);
    const double si = unit ? to_si(number, *unit) : number;
    const Quantity quantity = unit ? unit->quantity : Quantity::plain;
    if (with_unit) return format_entry(si, quantity, units);
    return format(si, quantity, units, {.with_unit = false, .trim = true});
}

std::string value_text(const Json* value, const std::string& key, UnitSystem units) {
    if (!value) return Core::tr("as usual");
    if (value->is_number()) return number_text(value->get<double>(), key, units, true);
    if (value->is_boolean()) return value->get<bool>() ? Core::tr("yes") : Core::tr("no");
    if (value->is_string()) return value->get<std::string>();
    if (value->is_object()) {
        for (const char* name : {"piece", "name"})
            if (const std::string text = name_in(value, name); !text.empty()) return text;
        return Core::tr("another");
    }
    if (!value->empty() &&
        std::all_of(value->begin(), value->end(), [](const Json& each) { return each.is_number(); })) {
        std::string text;
        for (const Json& each : *value)
            text += (text.empty() ? "" : ", ") +
                    number_text(each.get<double>(), key, units, &each == &value->back());
        return text;
    }
    const std::string count = std::to_string(value->size());
    return key.ends_with("_mm") ? Core::tr("{n} points", {{"n", count}})
                                : Core::tr("{n} in number", {{"n", count}});
}

/// The lists whose elements are things with a name, and the key of that name.
constexpr std::array<std::pair<const char*, const char*>, 3> named_lists{
    {{"/ballast", "piece"}, {"/body/cuts", "name"}, {"/wheels", "corner"}}};

/// Brings the second plan's list into the first's order, so that like stands beside like wherever it is in
/// the file: first by name, then what is left over in turn, as one thing in another's place. Where either has
/// no partner, null stands in for it.
void pair_by_name(Json& one, Json& other, const char* list, const char* name) {
    const Pointer place(list);
    if (!find_at(one, list) && !find_at(other, list)) return;
    for (Json* plan : {&one, &other})
        if (!find_at(*plan, list)) (*plan)[place] = Json::array();
    Json& firsts = one[place];
    Json& seconds = other[place];
    if (!firsts.is_array() || !seconds.is_array()) return;
    std::vector<Json> left(seconds.begin(), seconds.end());
    std::vector<Json> paired(firsts.size());
    const auto take = [&](std::size_t i, auto suits) {
        const auto found = std::find_if(left.begin(), left.end(), suits);
        if (found == left.end()) return;
        paired[i] = *found;
        left.erase(found);
    };
    for (std::size_t i = 0; i < firsts.size(); ++i) // of several with one name, the very same
        take(i, [&](const Json& each) { return each == firsts[i]; });
    for (std::size_t i = 0; i < firsts.size(); ++i)
        if (paired[i].is_null())
            take(i, [&](const Json& each) { return name_in(&each, name) == name_in(&firsts[i], name); });
    for (std::size_t i = 0; i < firsts.size(); ++i)
        if (paired[i].is_null()) take(i, [](const Json&) { return true; });
    for (const Json& each : left) {
        paired.push_back(each);
        firsts.push_back(nullptr);
    }
    seconds = paired;
}

std::optional<double> time_of(const Project& project, std::size_t car) {
    return clock_time(make_case(project, car));
}

/// The first car with one difference alone.
Document tried_alone(const Document& document, std::size_t car, const Json& second,
                     const std::vector<std::string>& keys) {
    Document tried = document;
    for (const std::string& key : keys) {
        const Json* value = find_at(second, key);
        // Several values of one difference are only readable together: read when all are in.
        Json& plan = tried.root["cars"][car];
        const Pointer place(key);
        if (value)
            plan[place] = *value;
        else if (plan.contains(place))
            plan[place] = nullptr;
    }
    for (const auto& [list, name] : named_lists)
        if (Json& plan = tried.root["cars"][car]; find_at(plan, list)) {
            Json& elements = plan[Pointer(list)];
            elements.erase(std::remove(elements.begin(), elements.end(), nullptr), elements.end());
        }
    return tried;
}

} // namespace

std::optional<double> CarComparison::together() const {
    if (!first || !second) return std::nullopt;
    return *second - *first - sum;
}

CarComparison compare_cars(const Document& document, std::size_t first, std::size_t second,
                           const std::function<bool()>& keep_going) {
    Json one = plan_of(document, first), other = plan_of(document, second);
    for (const auto& [list, name] : named_lists)
        pair_by_name(one, other, list, name);
    const Project project = read_project(document);
    CarComparison comparison;
    comparison.first = time_of(project, first);
    comparison.second = time_of(project, second);

    const std::vector<std::string> leaves = difference({one}, {other});
    const std::set<std::string> others = find_others(leaves);
    std::vector<std::string> order;
    std::map<std::string, CarDifference> groups;
    for (const std::string& leaf : leaves) {
        const Group group = group_of(leaf, others);
        const auto [place, anew] = groups.try_emplace(group.id);
        if (anew) order.push_back(group.id);
        auto& keys = place->second.keys;
        if (std::find(keys.begin(), keys.end(), group.key) == keys.end()) keys.push_back(group.key);
    }
    for (const std::string& id : order) {
        if (keep_going && !keep_going()) {
            comparison.cancelled = true;
            return comparison;
        }
        CarDifference& found = groups[id];
        found.what = what_differs(one, other, found.keys.front());
        for (const std::string& key : found.keys) {
            const std::string name = tokens_of(key).back();
            const auto told = [&](const Json& plan) {
                const Json* value = find_at(plan, key);
                // An element of a list that is not there has no usual value.
                if (!value && name.find_first_not_of("0123456789") == std::string::npos)
                    return std::string("none");
                return value_text(value, name, project.units);
            };
            found.from += (found.from.empty() ? "" : " to ") + told(one);
            found.to += (found.to.empty() ? "" : " to ") + told(other);
        }
        try {
            const auto time = time_of(read_project(tried_alone(document, first, other, found.keys)), first);
            if (time && comparison.first)
                found.worth = *time - *comparison.first;
            else
                found.problem = Core::tr("a car stops short of the finish");
        } catch (const Problem& problem) {
            found.problem = problem.wrong();
        }
        comparison.sum += found.worth.value_or(0);
        comparison.differences.push_back(std::move(found));
    }
    const auto size = [](const CarDifference& each) { return each.worth ? std::abs(*each.worth) : -1; };
    std::stable_sort(comparison.differences.begin(), comparison.differences.end(),
                     [&](const CarDifference& a, const CarDifference& b) { return size(a) > size(b); });
    return comparison;
}

} // namespace rampwright
