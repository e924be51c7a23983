#include "project/edit_support.hpp"

namespace rampwright {

namespace {

Json& piece_at(Json& root, std::size_t car, std::size_t piece) {
    return element_of(list_in(car_at(root, car), "ballast"), piece,
                      "/cars/" + std::to_string(car) + "/ballast", "ballast piece");
}

std::string piece_name(const Document& document, std::size_t car, std::size_t piece) {
    Json root = document.root;
    return text_in(piece_at(root, car, piece), "piece", "piece " + std::to_string(piece + 1));
}

} // namespace

Edit move_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& at) {
    return make_edit(document, "Move ballast: " + piece_name(document, car, piece),
                     [&](Json& root) { piece_at(root, car, piece)["at_mm"] = file_point(at, "at_mm"); });
}

Edit add_ballast(const Document& document, std::size_t car, const Json& piece) {
    return make_edit(document, "Add ballast: " + text_in(piece, "piece", "piece"),
                     [&](Json& root) { list_in(car_at(root, car), "ballast").push_back(piece); });
}

Edit remove_ballast(const Document& document, std::size_t car, std::size_t piece) {
    return make_edit(document, "Remove ballast: " + piece_name(document, car, piece), [&](Json& root) {
        piece_at(root, car, piece);
        car_at(root, car)["ballast"].erase(piece);
    });
}

Edit set_ballast_mass(const Document& document, std::size_t car, std::size_t piece, double mass_kg) {
    return make_edit(document, "Set mass: " + piece_name(document, car, piece), [&](Json& root) {
        piece_at(root, car, piece)["mass_g"] = file_number(mass_kg, "mass_g");
    });
}

} // namespace rampwright
