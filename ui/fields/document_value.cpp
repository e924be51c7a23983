#include "fields/document_value.hpp"

#include <rampwright/units/format.hpp>
#include <rampwright/units/key_unit.hpp>

#include <algorithm>
#include <string_view>

namespace rampwright::ui {
namespace {

const Json* find(const Document& document, const std::string& pointer) {
    const Json::json_pointer place(pointer);
    if (!document.root.contains(place)) return nullptr;
    const Json& value = document.root.at(place);
    return value.is_null() ? nullptr : &value;
}

} // namespace

ValueUnit find_value_unit(const std::string& pointer) {
    std::string_view rest = pointer;
    while (!rest.empty()) {
        const std::size_t slash = rest.rfind('/');
        const std::string_view key = rest.substr(slash + 1);
        const bool index = std::all_of(key.begin(), key.end(), [](char c) { return c >= '0' && c <= '9'; });
        if (!index && key != "min" && key != "max") {
            const Unit* unit = find_key_unit(key);
            return unit ? ValueUnit{unit->quantity, unit} : ValueUnit{};
        }
        rest = rest.substr(0, slash);
    }
    return {};
}

std::optional<double> find_number(const Document& document, const std::string& pointer) {
    const Json* value = find(document, pointer);
    if (!value || !value->is_number()) return {};
    const auto [quantity, unit] = find_value_unit(pointer);
    return unit ? to_si(value->get<double>(), *unit) : value->get<double>();
}

std::optional<std::string> find_string(const Document& document, const std::string& pointer) {
    const Json* value = find(document, pointer);
    if (!value || !value->is_string()) return {};
    return value->get<std::string>();
}

QString assumed_text(const Project& project, const std::string& pointer) {
    const auto found = std::find_if(project.assumed.begin(), project.assumed.end(),
                                    [&](const Assumed& each) { return each.key == pointer; });
    if (found == project.assumed.end()) return {};
    if (const auto* word = std::get_if<std::string>(&found->value)) return QString::fromStdString(*word);
    const auto [quantity, unit] = find_value_unit(pointer);
    const double number = std::get<double>(found->value);
    return QString::fromStdString(
        format_entry(unit ? to_si(number, *unit) : number, quantity, project.units));
}

} // namespace rampwright::ui
