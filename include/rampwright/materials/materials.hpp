#pragma once

#include <rampwright/project/project.hpp>

#include <string>
#include <string_view>
#include <vector>

/// What cars are made of, from the tables in data/tables. Every row names its source; a piece on the
/// builder's own scale beats any of them.
namespace rampwright {

/// What every row of a table carries.
struct SourcedRow {
    std::string id;   ///< Stable, kebab-case: what a project file says, and a window translates by.
    std::string name; ///< English.
    std::string source;
    Tag status = Tag::memory;          ///< Published and read, or from memory: measure it yourself.
    std::vector<std::string> cautions; ///< Codes of `cautions()`.
    std::string note;
};

/// A wood as boards come from the yard, at 12 % moisture content. Boards vary: sigma is that spread.
struct Wood : SourcedRow {
    Uncertain density; ///< kg/m³
};

/// Ballast, glue, putty: whatever is known by its density.
struct Material : SourcedRow {
    Uncertain density; ///< kg/m³
};

/// Household ballast by the piece, with a typical mass: weigh yours.
struct HouseholdPiece : SourcedRow {
    Uncertain mass; ///< kg
    PieceShape shape = PieceShape::cylinder;
    std::vector<double> size; ///< m, as ShelfPiece has it: the room it takes, holes not counted
    double hole = 0;          ///< m, diameter of a hole along its axis
};

/// What holds a weight in its place has mass too.
struct Holding : SourcedRow {
    Uncertain mass; ///< kg for one place
};

/// What can hurt, and what to do. Local rules and the adult in charge decide.
struct Caution {
    std::string code;
    std::string text; ///< English.
    std::string source;
};

const std::vector<Wood>& woods();
const std::vector<Material>& materials();
const std::vector<HouseholdPiece>& household_pieces();
const std::vector<Holding>& holdings();
const std::vector<Caution>& cautions();

/// By id or English name, in any case; null where there is none.
const Wood* find_wood(std::string_view word);
const Material* find_material(std::string_view word);
const Holding* find_holding(std::string_view word);
const Caution* find_caution(std::string_view code);

/// The readers behind the tables: JSON text to rows. Throw Problem, with the row's JSON pointer, where a row
/// has no id, name, source or status, no value with its unit in the key's name, no spread, or has them out of
/// bounds; where an id comes twice; or where the text is not JSON.
std::vector<Wood> read_woods(std::string_view json);
std::vector<Material> read_materials(std::string_view json);
std::vector<HouseholdPiece> read_household_pieces(std::string_view json);
std::vector<Holding> read_holdings(std::string_view json);
std::vector<Caution> read_cautions(std::string_view json);

} // namespace rampwright
