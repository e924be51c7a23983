#include "core/fill_text.hpp"

#include <rampwright/core/say.hpp>

#include <algorithm>

namespace rampwright {

namespace {

std::function<std::string(std::string_view)>& translation() {
    static std::function<std::string(std::string_view)> installed;
    return installed;
}

thread_local int english_only = 0;

} // namespace

std::string Core::tr(std::string_view english) {
    if (english.empty() || english_only > 0 || !translation()) return std::string(english);
    return translation()(english);
}

std::string Core::tr(std::string_view english,
                     std::initializer_list<std::pair<std::string_view, std::string>> values) {
    return fill_places(tr(english), [&](std::string_view name) {
        const auto found = std::find_if(values.begin(), values.end(),
                                        [name](const auto& each) { return each.first == name; });
        return found == values.end() ? std::string("?") : found->second;
    });
}

InEnglish::InEnglish() {
    ++english_only;
}

InEnglish::~InEnglish() {
    --english_only;
}

void install_translation(std::function<std::string(std::string_view)> translate) {
    translation() = std::move(translate);
}

} // namespace rampwright
