#include "project/edit_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

const char* view_key(bool plan) {
    return plan ? "top" : "side";
}

/// What stands at its default is left out of the file.
void put(Json& row, const char* key, const Json& value, const Json& usual) {
    if (value == usual)
        row.erase(key);
    else
        row[key] = value;
}

} // namespace

Edit set_underlay(const Document& document, std::size_t car, bool plan, const Underlay& underlay,
                  const std::string& name) {
    return make_edit(document, name, [&](Json& root) {
        Json& row = object_in(object_in(car_at(root, car), "underlay"), view_key(plan));
        row["picture"] = underlay.picture;
        row["at_mm"] = file_point(underlay.at, "at_mm");
        row["width_mm"] = file_number(underlay.width, "width_mm");
        put(row, "turned_deg", file_number(underlay.turned, "turned_deg"), 0);
        put(row, "opacity_pct", file_number(underlay.opacity, "opacity_pct"), 50);
        put(row, "mirrored", underlay.mirrored, false);
        put(row, "hidden", underlay.hidden, false);
    });
}

Edit remove_underlay(const Document& document, std::size_t car, bool plan) {
    return make_edit(document, Core::tr("Remove picture"), [&](Json& root) {
        Json& owner = car_at(root, car);
        const auto underlays = owner.find("underlay");
        if (underlays == owner.end() || !underlays->is_object()) return;
        underlays->erase(view_key(plan));
        if (underlays->empty()) owner.erase("underlay");
    });
}

Underlay scaled_underlay(const Underlay& underlay, const Vec2& one, const Vec2& other, double distance,
                         bool level) {
    constexpr double nearest = 1e-5, widest = 100;
    const Vec2 way = other - one;
    const auto refuse = [](const std::string& wrong, const std::string& remedy) {
        throw Problem(Exit::could_not, "-", wrong, remedy);
    };
    if (!(way.norm() > nearest))
        refuse(Core::tr("the two places on the picture are one"), Core::tr("click two that lie well apart"));
    if (!(distance > 0))
        refuse(Core::tr("the distance is not greater than nothing"), Core::tr("type how far they are apart"));
    const double factor = distance / way.norm();
    Underlay scaled = underlay;
    scaled.width *= factor;
    if (!(scaled.width < widest))
        refuse(Core::tr("the picture would be more than a hundred metres wide"),
               Core::tr("check the distance and its unit"));
    double turn = 0;
    if (level) {
        using std::numbers::pi;
        turn = -std::atan2(way.y(), way.x());
        if (turn > pi / 2) turn -= pi;
        if (turn <= -pi / 2) turn += pi;
        scaled.turned = std::remainder(underlay.turned + turn, 2 * pi);
    }
    const Vec2 arm = factor * (underlay.at - one);
    scaled.at = one + Vec2(std::cos(turn) * arm.x() - std::sin(turn) * arm.y(),
                           std::sin(turn) * arm.x() + std::cos(turn) * arm.y());
    return scaled;
}

} // namespace rampwright
