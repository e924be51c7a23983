#include "project/edit_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <charconv>

namespace rampwright {

namespace {

[[noreturn]] void leads_nowhere(const std::string& pointer, const std::string& why) {
    throw Problem(Exit::could_not, pointer.empty() ? "-" : pointer, why,
                  Core::tr("choose a value that is there"));
}

/// The keys of a JSON pointer (RFC 6901), outermost first.
std::vector<std::string> tokens_of(const std::string& pointer) {
    std::vector<std::string> tokens;
    try {
        for (Json::json_pointer rest(pointer); !rest.empty(); rest.pop_back())
            tokens.push_back(rest.back());
    } catch (const Json::exception&) {
        leads_nowhere(pointer, Core::tr("this is no JSON pointer"));
    }
    if (tokens.empty()) leads_nowhere(pointer, Core::tr("the project as a whole is not one value"));
    std::reverse(tokens.begin(), tokens.end());
    return tokens;
}

Json& element_named(Json& list, const std::string& token, const std::string& pointer) {
    std::size_t index = 0;
    const auto [end, error] = std::from_chars(token.data(), token.data() + token.size(), index);
    const bool is_index = error == std::errc() && end == token.data() + token.size();
    if (!is_index || index >= list.size())
        leads_nowhere(pointer, Core::tr("the list has no element \"{what}\"", {{"what", token}}));
    return list[index];
}

} // namespace

Edit set_value(const Document& document, const std::string& pointer, const Json& value,
               const std::string& name) {
    const std::vector<std::string> tokens = tokens_of(pointer);
    return make_edit(document, name, [&](Json& root) {
        Json* at = &root;
        for (std::size_t i = 0; i + 1 < tokens.size(); ++i) {
            if (at->is_null()) *at = Json::object();
            if (at->is_array()) {
                at = &element_named(*at, tokens[i], pointer);
            } else if (at->is_object()) {
                // Removing what is not there must not leave an empty object behind.
                if (value.is_null() && !at->contains(tokens[i])) return;
                at = &(*at)[tokens[i]];
            } else {
                leads_nowhere(pointer, Core::tr("a plain value stands on the way there"));
            }
        }
        if (at->is_null() && value.is_null()) return;
        if (at->is_null()) *at = Json::object();
        if (at->is_array()) {
            Json& element = element_named(*at, tokens.back(), pointer);
            if (value.is_null())
                leads_nowhere(pointer, Core::tr("an element of a list cannot be left out by itself"));
            element = value;
        } else if (at->is_object()) {
            if (value.is_null())
                at->erase(tokens.back());
            else
                (*at)[tokens.back()] = value;
        } else {
            leads_nowhere(pointer, Core::tr("a plain value stands on the way there"));
        }
    });
}

Edit set_units(const Document& document, UnitSystem units) {
    const bool metric = units == UnitSystem::metric;
    return set_value(document, "/units", metric ? "metric" : "inch-ounce",
                     metric ? Core::tr("Show millimetres and grams") : Core::tr("Show inches and ounces"));
}

} // namespace rampwright
