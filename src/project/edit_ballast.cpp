#include "project/edit_support.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/project/group_edits.hpp>

#include <algorithm>
#include <array>

namespace rampwright {

namespace {

std::string piece_name(const Document& document, std::size_t car, std::size_t piece) {
    Json root = document.root;
    return text_in(piece_at(root, car, piece), "piece",
                   Core::tr("piece {n}", {{"n", std::to_string(piece + 1)}}));
}

[[noreturn]] void none_left(const std::string& where, const ShelfPiece& piece, int left) {
    if (left > 0)
        throw Problem(Exit::could_not, where,
                      Core::tr("no more than {n} of \"{piece}\" are left on the shelf",
                               {{"n", std::to_string(left)}, {"piece", piece.name}}),
                      Core::tr("take fewer, or raise the shelf's count"));
    throw Problem(Exit::could_not, where,
                  piece.count == 1 ? Core::tr("the only one of \"{piece}\" on the shelf is in the car",
                                              {{"piece", piece.name}})
                                   : Core::tr("all {n} of \"{piece}\" on the shelf are in the car",
                                              {{"n", std::to_string(piece.count)}, {"piece", piece.name}}),
                  Core::tr("take another piece, or raise the shelf's count"));
}

} // namespace

Json& piece_at(Json& root, std::size_t car, std::size_t piece) {
    return element_of(list_in(car_at(root, car), "ballast"), piece,
                      "/cars/" + std::to_string(car) + "/ballast", "ballast piece");
}

void refuse_if_none_left(const Project& project, std::size_t car, const std::string& name, int wanted) {
    for (std::size_t i = 0; i < project.shelf.size(); ++i) {
        const auto left = left_on_shelf(project, car, i);
        if (project.shelf[i].name == name && left && *left < wanted)
            none_left("/shelf/" + std::to_string(i), project.shelf[i], std::max(*left, 0));
    }
}

std::optional<int> left_on_shelf(const Project& project, std::size_t car, std::size_t shelf) {
    const ShelfPiece& piece = project.shelf.at(shelf);
    if (!piece.counted) return std::nullopt;
    const auto& ballast = project.cars.at(car).ballast;
    const auto used = std::count_if(ballast.begin(), ballast.end(),
                                    [&](const BallastPlan& b) { return b.name == piece.name; });
    return piece.count - static_cast<int>(used);
}

Edit add_from_shelf(const Document& document, std::size_t car, std::size_t shelf,
                    const Placement& placement) {
    const std::string where = "/shelf/" + std::to_string(shelf);
    const Project project = read_project(document);
    Json root = document.root;
    Json piece = element_of(list_in(root, "shelf"), shelf, "/shelf", "shelf piece");
    car_at(root, car);
    const ShelfPiece& read = project.shelf.at(shelf);
    if (const auto left = left_on_shelf(project, car, shelf); left && *left <= 0) none_left(where, read, 0);
    piece.erase("count");
    piece["piece"] = read.name;
    if (read.shape != PieceShape::putty) piece["at_mm"] = file_point(placement.at, "at_mm");
    if (read.shape == PieceShape::cylinder && placement.axis != 0)
        piece["axis"] = std::array{"x", "y", "z"}.at(static_cast<std::size_t>(placement.axis));
    if (!placement.in.empty()) piece["in"] = placement.in;
    return add_ballast(document, car, piece);
}

Edit duplicate_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& by) {
    return duplicate_group(document, car, {{piece}, {}}, by);
}

Edit move_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& at) {
    return make_edit(document, Core::tr("Move ballast") + ": " + piece_name(document, car, piece),
                     [&](Json& root) { piece_at(root, car, piece)["at_mm"] = file_point(at, "at_mm"); });
}

Edit move_ballast(const Document& document, std::size_t car, std::size_t piece, const Vec3& at,
                  const std::string& in) {
    return make_edit(document, Core::tr("Move ballast") + ": " + piece_name(document, car, piece),
                     [&](Json& root) {
                         Json& row = piece_at(root, car, piece);
                         row["at_mm"] = file_point(at, "at_mm");
                         if (in.empty())
                             row.erase("in");
                         else
                             row["in"] = in;
                     });
}

Edit set_holding(const Document& document, std::size_t car, std::size_t piece, const std::string& held) {
    return make_edit(document,
                     Core::tr("Set what holds {piece}", {{"piece", piece_name(document, car, piece)}}),
                     [&](Json& root) {
                         Json& row = piece_at(root, car, piece);
                         row.erase("held_g");
                         if (held.empty())
                             row.erase("held");
                         else
                             row["held"] = held;
                     });
}

Edit add_ballast(const Document& document, std::size_t car, const Json& piece) {
    return make_edit(document, Core::tr("Add ballast") + ": " + text_in(piece, "piece", "piece"),
                     [&](Json& root) { list_in(car_at(root, car), "ballast").push_back(piece); });
}

Edit remove_ballast(const Document& document, std::size_t car, std::size_t piece) {
    return make_edit(document, Core::tr("Remove ballast") + ": " + piece_name(document, car, piece),
                     [&](Json& root) {
                         piece_at(root, car, piece);
                         car_at(root, car)["ballast"].erase(piece);
                     });
}

Edit set_ballast_mass(const Document& document, std::size_t car, std::size_t piece, double mass_kg) {
    return make_edit(
        document, Core::tr("Set mass") + ": " + piece_name(document, car, piece),
        [&](Json& root) { piece_at(root, car, piece)["mass_g"] = file_number(mass_kg, "mass_g"); });
}

} // namespace rampwright
