#include "project/pointer_token.hpp"

#include <rampwright/project/edits.hpp>

namespace rampwright {

namespace {

bool same_kind(const Json& a, const Json& b) {
    return (a.is_number() && b.is_number()) || a.type() == b.type();
}

void collect(const Json& before, const Json& after, const std::string& where,
             std::vector<std::string>& found) {
    if (!same_kind(before, after) || !before.is_structured() ||
        (before.is_array() && before.size() != after.size())) {
        if (before != after) found.push_back(where);
        return;
    }
    if (before.is_array()) {
        for (std::size_t i = 0; i < before.size(); ++i)
            collect(before[i], after[i], where + "/" + std::to_string(i), found);
        return;
    }
    for (const auto& [key, value] : before.items()) {
        const auto other = after.find(key);
        const std::string place = where + "/" + pointer_token(key);
        if (other == after.end())
            found.push_back(place);
        else
            collect(value, *other, place, found);
    }
    for (const auto& [key, value] : after.items())
        if (!before.contains(key)) found.push_back(where + "/" + pointer_token(key));
}

} // namespace

std::vector<std::string> difference(const Document& before, const Document& after) {
    std::vector<std::string> found;
    collect(before.root, after.root, "", found);
    return found;
}

} // namespace rampwright
