#include "project/edit_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

namespace rampwright {

namespace {

/// The wheel at a corner; where the car leaves its wheels to the defaults, the list is made first.
Json& wheel_at(Json& root, std::size_t car, Corner corner) {
    Json& wheels = list_in(car_at(root, car), "wheels");
    if (wheels.is_array() && wheels.empty())
        for (const Corner c : all_corners)
            wheels.push_back(Json{{"corner", std::string(to_string(c))}});
    for (Json& wheel : wheels)
        if (text_in(wheel, "corner", "") == to_string(corner)) return wheel;
    throw Problem(Exit::could_not, "/cars/" + std::to_string(car) + "/wheels",
                  Core::tr("there is no wheel at {what}", {{"what", std::string(to_string(corner))}}),
                  Core::tr("choose one that is there"));
}

Edit set_on_wheel(const Document& document, const std::string& what, std::size_t car, Corner corner,
                  const std::string& key, const Json& value) {
    return make_edit(document, what + ": " + Core::tr("{corner} wheel", {{"corner", in_words(corner)}}),
                     [&](Json& root) { wheel_at(root, car, corner)[key] = value; });
}

} // namespace

Edit set_cant(const Document& document, std::size_t car, Corner corner, double cant) {
    return set_on_wheel(document, Core::tr("Set cant"), car, corner, "cant_deg",
                        file_number(cant, "cant_deg"));
}

Edit set_toe(const Document& document, std::size_t car, Corner corner, double toe) {
    return set_on_wheel(document, Core::tr("Set toe"), car, corner, "toe_deg", file_number(toe, "toe_deg"));
}

Edit set_touching(const Document& document, std::size_t car, Corner corner, bool touches) {
    return set_on_wheel(document, touches ? Core::tr("Let touch") : Core::tr("Raise"), car, corner, "touches",
                        touches);
}

Edit set_wheel_mass(const Document& document, std::size_t car, Corner corner, double mass_kg) {
    return set_on_wheel(document, Core::tr("Set mass"), car, corner, "mass_g",
                        file_number(mass_kg, "mass_g"));
}

Edit use_bench_wheel(const Document& document, std::size_t car, Corner corner, std::size_t bench_wheel) {
    return make_edit(document, Core::tr("Fit bench wheel") + ": " + in_words(corner), [&](Json& root) {
        const Json row =
            element_of(list_in(object_in(root, "bench"), "wheels"), bench_wheel, "/bench/wheels", "wheel");
        Json& wheel = wheel_at(root, car, corner);
        for (const char* key : {"mass_g", "outer_diameter_mm", "bore_diameter_mm", "runout_mm"})
            if (row.contains(key) && !row[key].is_null()) wheel[key] = row[key];
    });
}

Edit move_axle(const Document& document, std::size_t car, bool front, double x, double z) {
    return make_edit(document, front ? Core::tr("Move front axle") : Core::tr("Move rear axle"),
                     [&](Json& root) {
                         Json& axles = object_in(car_at(root, car), "axles");
                         const std::string end = front ? "front" : "rear";
                         axles[end + "_x_mm"] = file_number(x, "x_mm");
                         axles[end + "_z_mm"] = file_number(z, "z_mm");
                     });
}

} // namespace rampwright
