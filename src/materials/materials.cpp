#include "materials/table_reader.hpp"
#include "project/piece_shapes.hpp"

#include <rampwright/core/data_table.hpp>
#include <rampwright/materials/starting_shapes.hpp>

#include <algorithm>
#include <cctype>
#include <utility>

namespace rampwright {

namespace {

template <class Row>
void require_new(const RowReader& reader, const std::vector<Row>& rows, const Row& row) {
    if (std::any_of(rows.begin(), rows.end(), [&](const Row& other) { return other.id == row.id; }))
        reader.refuse("id", "the id \"" + row.id + "\" comes twice", "give each row its own");
}

template <class Row, class ReadRest>
std::vector<Row> read_table(std::string_view json, ReadRest read_rest) {
    std::vector<Row> rows;
    read_rows(json, [&](const RowReader& reader) {
        Row row;
        reader.read_common(row);
        read_rest(reader, row);
        require_new(reader, rows, row);
        rows.push_back(std::move(row));
    });
    return rows;
}

/// Putty has no size that a table could give.
PieceShape read_shape(const RowReader& reader) {
    const std::string word = reader.text("shape");
    for (const auto& [name, shape] : piece_shape_words)
        if (name == word && shape != PieceShape::putty) return shape;
    reader.refuse("shape", "\"" + word + "\" is no shape", "write box, cylinder, sphere or sheet");
}

bool equal_without_case(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                      [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

template <class Row>
const Row* find_row(const std::vector<Row>& rows, std::string_view word) {
    const auto found = std::find_if(rows.begin(), rows.end(), [&](const Row& row) {
        return equal_without_case(row.id, word) || equal_without_case(row.name, word);
    });
    return found == rows.end() ? nullptr : &*found;
}

} // namespace

std::vector<Wood> read_woods(std::string_view json) {
    return read_table<Wood>(json, [](const RowReader& reader, Wood& wood) {
        wood.density = reader.positive_uncertain("density", Quantity::density);
    });
}

std::vector<Material> read_materials(std::string_view json) {
    return read_table<Material>(json, [](const RowReader& reader, Material& material) {
        material.density = reader.positive_uncertain("density", Quantity::density);
    });
}

std::vector<HouseholdPiece> read_household_pieces(std::string_view json) {
    return read_table<HouseholdPiece>(json, [](const RowReader& reader, HouseholdPiece& piece) {
        piece.mass = reader.positive_uncertain("mass", Quantity::mass);
        piece.shape = read_shape(reader);
        piece.size = reader.lengths("size_mm");
        if (piece.size.size() != size_count(piece.shape))
            reader.refuse("size_mm", "the shape has another number of sizes",
                          "box and sheet have three, a cylinder two, a sphere one");
        if (reader.has("hole", Quantity::length)) piece.hole = reader.positive("hole", Quantity::length);
    });
}

std::vector<Holding> read_holdings(std::string_view json) {
    return read_table<Holding>(json, [](const RowReader& reader, Holding& holding) {
        holding.mass = reader.uncertain("mass", Quantity::mass);
    });
}

std::vector<StartingShape> read_starting_shapes(std::string_view json) {
    return read_table<StartingShape>(json, [](const RowReader& reader, StartingShape& shape) {
        shape.profile = reader.outline("profile", 0, 1);
        shape.plan = reader.outline("plan", -0.5, 0.5);
    });
}

std::vector<Caution> read_cautions(std::string_view json) {
    std::vector<Caution> rows;
    read_rows(json, [&](const RowReader& reader) {
        reader.status();
        Caution row{reader.text("code"), reader.text("text"), reader.text("source")};
        if (std::any_of(rows.begin(), rows.end(),
                        [&](const Caution& other) { return other.code == row.code; }))
            reader.refuse("code", "the code \"" + row.code + "\" comes twice", "give each row its own");
        rows.push_back(std::move(row));
    });
    return rows;
}

const std::vector<Wood>& woods() {
    static const auto rows = read_woods(find_data_table("woods"));
    return rows;
}

const std::vector<Material>& materials() {
    static const auto rows = read_materials(find_data_table("materials"));
    return rows;
}

const std::vector<HouseholdPiece>& household_pieces() {
    static const auto rows = read_household_pieces(find_data_table("household_pieces"));
    return rows;
}

const std::vector<Holding>& holdings() {
    static const auto rows = read_holdings(find_data_table("holdings"));
    return rows;
}

const std::vector<StartingShape>& starting_shapes() {
    static const auto rows = read_starting_shapes(find_data_table("starting_shapes"));
    return rows;
}

const std::vector<Caution>& cautions() {
    static const auto rows = read_cautions(find_data_table("cautions"));
    return rows;
}

const Wood* find_wood(std::string_view word) {
    return find_row(woods(), word);
}

const Material* find_material(std::string_view word) {
    return find_row(materials(), word);
}

const Holding* find_holding(std::string_view word) {
    return find_row(holdings(), word);
}

const Caution* find_caution(std::string_view code) {
    const auto& rows = cautions();
    const auto found =
        std::find_if(rows.begin(), rows.end(), [&](const Caution& row) { return row.code == code; });
    return found == rows.end() ? nullptr : &*found;
}

} // namespace rampwright
