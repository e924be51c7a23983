#include "core/catalogues.hpp"

#include <rampwright/results/figures.hpp>
#include <rampwright/study/steps.hpp>

#include <algorithm>
#include <array>

/// The one catalogue of what a builder's step says in English.
namespace rampwright {

namespace {

struct Text {
    std::string_view key, text;
};

constexpr std::array texts{
    Text{"polish-axles", "Polish the axles and dust them well: friction {from} to {to}."},
    Text{"cone-hubs", "Cone the wheels' hubs, so that they rub close to the axle only."},
    Text{"jig-holes", "Drill the axle holes in a jig: true to {to_deg} instead of {from_deg}."},
    Text{"lighter-wheels", "Lighter wheels: {each_g} off each, put back as weight at the balance point."},
    Text{"raise-front-wheel", "Raise one front wheel by {raised_mm}, so that it need not be turned."},
    Text{"cant-rear", "Cant the rear axles to {to_deg}, outer ends up (now {from_deg})."},
    Text{"level-rear", "Set the rear axles level (now canted by {from_deg})."},
    Text{"set-steer", "Steer the front wheel to {to_deg} (now {from_deg})."},
    Text{"fill-to-limit", "Add {add_g} of weight at the balance point, as much as the scale lets pass."},
    Text{"weight-rearward", "Move the balance point {back_mm} back: front load {from_g} to {to_g}."},
    Text{"slimmer-body", "Make the body slimmer: {less_pct} less front for the air to meet."},
};

} // namespace

std::vector<std::string_view> step_texts() {
    std::vector<std::string_view> list;
    for (const Text& each : texts)
        list.push_back(each.text);
    return list;
}

std::string_view find_step_text(std::string_view key) {
    const auto found =
        std::find_if(texts.begin(), texts.end(), [key](const Text& t) { return t.key == key; });
    return found == texts.end() ? std::string_view{} : found->text;
}

std::string_view to_string(Effort effort) {
    switch (effort) {
    case Effort::small:
        return "small";
    case Effort::some:
        return "some";
    case Effort::much:
        return "much";
    }
    return {};
}

} // namespace rampwright
