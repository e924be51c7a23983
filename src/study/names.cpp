#include "core/catalogues.hpp"
#include "core/fill_text.hpp"

#include <rampwright/core/say.hpp>
#include <rampwright/study/names.hpp>
#include <rampwright/units/reading.hpp>

#include <algorithm>
#include <array>
#include <charconv>

/// The one catalogue of what inputs are called in English.
namespace rampwright {

namespace {

struct Name {
    std::string_view stem, text;
};

constexpr std::array names{
    // Friction, wheels and lane
    Name{"journal", "friction at the axles"},
    Name{"hub_on_head", "friction of hubs on axle heads"},
    Name{"hub_on_wood", "friction of hubs on the wood"},
    Name{"rolling", "rolling resistance"},
    Name{"edge_factor", "how a canted tread rolls"},
    Name{"windage", "air the wheels stir"},
    Name{"tread_grip", "grip of the treads"},
    Name{"creep_per_rad", "stiffness of the treads against slipping aside"},
    Name{"rail", "friction on the guide rail"},
    Name{"rail_share", "how far down the rail is met"},
    Name{"touch_share", "how hard a bounce rubs"},
    Name{"restitution", "how springy a bounce is"},
    Name{"align_deg", "how true the axle holes are"},
    Name{"need_deg", "how uneven the lane is"},
    Name{"kick_n_mm", "how hard the joints kick"},
    Name{"hold_width", "how sharply a car begins to hold the rail"},
    Name{"lane_drop", "how far the lane falls"},
    Name{"lane_way", "how long the lane is"},
    Name{"clock_offset", "the clock's zero"},
    Name{"run_scatter", "one run differing from the next"},
    Name{"drag_coefficient", "drag coefficient"},
    Name{"frontal_area", "frontal area"},
    // Weight and place
    Name{"mass", "weight at the balance point"},
    Name{"balance", "balance point"},
    Name{"mass/body", "weight of the wood"},
    Name{"mass/body/finish_g", "weight of the finish"},
    Name{"mass/axles", "weight of the axles"},
    Name{"mass/wheels", "weight of the {what} wheel"},
    Name{"mass/ballast", "weight of {what}"},
    Name{"mass/ballast/held", "weight of what holds {what}"},
    Name{"place-x/ballast", "how far forward {what} sits"},
    Name{"place-z/ballast", "how high {what} sits"},
    Name{"wheel_mass", "weight of the wheels"},
    Name{"rear_x", "place of the rear axle"},
    Name{"front_x", "place of the front axle"},
    Name{"rear_z", "height of the rear axle"},
    Name{"front_z", "height of the front axle"},
    Name{"saw/profile", "how true the side outline is sawn"},
    Name{"saw/plan", "how true the top outline is sawn"},
    Name{"drill/cuts", "how true {what} is drilled"},
    Name{"nose_x", "place of the nose"},
    Name{"nose", "place of the nose"},
    Name{"rear_wheel_radius", "size of the rear wheels"},
    Name{"front_wheel_radius", "size of the front wheels"},
    Name{"bore_radius", "size of the wheels' bores"},
    Name{"bore", "size of the wheels' bores"},
    Name{"rear_cant", "cant of the rear wheels"},
    Name{"front_cant", "cant of the front wheels"},
    Name{"steer", "steer of the front wheel"},
    // Weighed and measured
    Name{"as_built/mass", "the car's weight as weighed"},
    Name{"as_built/front_load", "the front load as weighed"},
    Name{"as_built/balance_ahead_of_rear_axle", "the balance point as found"},
    Name{"as_built/centre_height", "the height of the balance point as found"},
};

std::string filled(std::string_view text, const std::string& what) {
    return fill_places(text, [&](std::string_view) { return what; });
}

std::string name_of(std::string_view key, const CarPlan* plan) {
    if (const std::string_view text = find_input_name_text(key); !text.empty()) return Core::tr(text);
    // What ends in a number is one of several; what holds a piece comes after the piece's.
    constexpr std::string_view held = "/held";
    const std::string_view one = key.ends_with(held) ? key.substr(0, key.size() - held.size()) : key;
    const std::size_t slash = one.rfind('/');
    std::size_t index = 0;
    if (slash == std::string_view::npos) return std::string(key);
    const std::string_view number = one.substr(slash + 1), stem = one.substr(0, slash);
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), index);
    const std::string_view text = find_input_name_text(std::string(stem).append(key.substr(one.size())));
    if (error != std::errc() || end != number.data() + number.size() || text.empty()) return std::string(key);
    if (stem.ends_with("/wheels"))
        return index < all_corners.size() ? filled(Core::tr(text), in_words(all_corners[index]))
                                          : std::string(key);
    if (stem == "drill/cuts") {
        const bool known = plan && index < plan->body.cuts.size() && !plan->body.cuts[index].name.empty();
        return filled(Core::tr(text), known ? plan->body.cuts[index].name
                                            : Core::tr("cut {n}", {{"n", std::to_string(index + 1)}}));
    }
    const bool named = plan && index < plan->ballast.size() && !plan->ballast[index].name.empty();
    return filled(Core::tr(text), named ? plan->ballast[index].name
                                        : Core::tr("ballast piece {n}", {{"n", std::to_string(index + 1)}}));
}

} // namespace

std::vector<std::string_view> input_name_texts() {
    std::vector<std::string_view> list;
    for (const Name& each : names)
        list.push_back(each.text);
    return list;
}

std::string_view find_input_name_text(std::string_view stem) {
    const auto found =
        std::find_if(names.begin(), names.end(), [stem](const Name& name) { return name.stem == stem; });
    return found == names.end() ? std::string_view{} : found->text;
}

std::string input_name(std::string_view key, const CarPlan& plan) {
    return name_of(key, &plan);
}

std::string input_name(std::string_view key) {
    return name_of(key, nullptr);
}

std::string change_size(std::string_view per, UnitSystem units) {
    double number = 0;
    const auto [end, error] = std::from_chars(per.data(), per.data() + per.size(), number);
    if (units == UnitSystem::metric || error != std::errc()) return std::string(per);
    const auto digits = static_cast<std::size_t>(end - per.data());
    std::string_view rest = per.substr(digits);
    if (!rest.starts_with(' ')) return std::string(per); // a plain number or an angle
    rest.remove_prefix(1);
    const SpelledUnit spelled = match_any_unit(rest);
    if (!spelled.unit) return std::string(per);
    return format_reading(to_si(number, *spelled.unit), spelled.unit->quantity, units) + " (" +
           std::string(per.substr(0, digits + 1 + spelled.length)) + ")" +
           std::string(rest.substr(spelled.length));
}

std::string change_phrase(std::string_view key, std::string_view per, UnitSystem units) {
    constexpr std::string_view forward = " forward";
    const bool directed = per.ends_with(forward);
    if (directed) per.remove_suffix(forward.size());
    const std::string size = change_size(per, units);
    return directed ? Core::tr("{what}, {amount} forward", {{"what", input_name(key)}, {"amount", size}})
                    : Core::tr("{what}, {amount} more", {{"what", input_name(key)}, {"amount", size}});
}

} // namespace rampwright
