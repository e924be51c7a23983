#include "project/edit_support.hpp"
#include "project/piece_shapes.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/materials/materials.hpp>

#include <algorithm>

namespace rampwright {

namespace {

/// Cars without an id are told apart by their place: written out before places change.
void write_out_ids(Json& cars) {
    for (std::size_t i = 0; i < cars.size(); ++i)
        if (cars[i].is_object() && (!cars[i].contains("id") || cars[i]["id"].is_null()))
            cars[i]["id"] = "car-" + std::to_string(i + 1);
}

Edit remove_row(const Document& document, const std::string& list, std::size_t index, const std::string& what,
                const std::string& name) {
    return make_edit(document, name, [&](Json& root) {
        element_of(list_in(root, list), index, "/" + list, what);
        root[list].erase(index);
    });
}

} // namespace

std::string new_car_id(const Json& cars, const std::string& name) {
    std::string base;
    for (const char c : name) {
        if (c >= 'A' && c <= 'Z')
            base += static_cast<char>(c - 'A' + 'a');
        else if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'))
            base += c;
        else if (!base.empty() && base.back() != '-')
            base += '-';
    }
    while (!base.empty() && base.back() == '-')
        base.pop_back();
    if (base.empty()) base = "car";
    const auto taken = [&](const std::string& id) {
        for (std::size_t i = 0; i < cars.size(); ++i)
            if (text_in(cars[i], "id", "car-" + std::to_string(i + 1)) == id) return true;
        return false;
    };
    std::string id = base;
    for (int count = 2; taken(id); ++count)
        id = base + "-" + std::to_string(count);
    return id;
}

Edit duplicate_car(const Document& document, std::size_t car, const std::string& new_name) {
    return make_edit(document, Core::tr("Duplicate car") + ": " + car_name(document, car), [&](Json& root) {
        Json copy = car_at(root, car);
        Json& cars = root["cars"];
        copy["id"] = new_car_id(cars, new_name);
        copy["name"] = new_name;
        copy.erase("figures");
        cars.push_back(std::move(copy));
    });
}

Edit remove_car(const Document& document, std::size_t car) {
    return make_edit(document, Core::tr("Remove car") + ": " + car_name(document, car), [&](Json& root) {
        car_at(root, car);
        Json& cars = root["cars"];
        write_out_ids(cars);
        const std::string id = text_in(cars[car], "id", "");
        cars.erase(car);
        // Its runs would name a car that is no more.
        const auto runs = root.find("runs");
        if (runs == root.end() || !runs->is_array()) return;
        for (std::size_t i = runs->size(); i-- > 0;)
            if (text_in((*runs)[i], "car", "") == id) runs->erase(i);
    });
}

Edit rename_car(const Document& document, std::size_t car, const std::string& name) {
    return make_edit(document, Core::tr("Rename car") + ": " + name,
                     [&](Json& root) { car_at(root, car)["name"] = name; });
}

Edit add_run(const Document& document, const Json& run) {
    return make_edit(document, Core::tr("Add run"),
                     [&](Json& root) { list_in(root, "runs").push_back(run); });
}

Edit remove_run(const Document& document, std::size_t run) {
    return remove_row(document, "runs", run, "run", "Remove run");
}

Edit add_shelf_piece(const Document& document, const Json& piece) {
    return make_edit(document, Core::tr("Add to shelf") + ": " + text_in(piece, "piece", "piece"),
                     [&](Json& root) { list_in(root, "shelf").push_back(piece); });
}

Edit add_household_piece(const Document& document, const HouseholdPiece& piece) {
    const Project project = read_project(document);
    const auto there = std::find_if(project.shelf.begin(), project.shelf.end(),
                                    [&](const ShelfPiece& each) { return each.name == piece.name; });
    if (there != project.shelf.end())
        throw Problem(Exit::could_not, "/shelf/" + std::to_string(there - project.shelf.begin()),
                      Core::tr("\"{what}\" is on the shelf already", {{"what", piece.name}}),
                      Core::tr("take it from there"));
    Json size = Json::array();
    for (const double each : piece.size)
        size.push_back(file_number(each, "size_mm"));
    return add_shelf_piece(document, Json{{"piece", piece.name},
                                          {"shape", word_of(piece.shape)},
                                          {"size_mm", std::move(size)},
                                          {"mass_g", file_number(piece.mass.value, "mass_g")}});
}

Edit remove_shelf_piece(const Document& document, std::size_t piece) {
    return remove_row(document, "shelf", piece, "shelf piece", "Remove from shelf");
}

} // namespace rampwright
