#pragma once

#include <rampwright/results/figures.hpp>

#include <string>
#include <vector>

namespace rampwright {

/// A figure as people read it: what it is, and its value with unit and, where it has one, uncertainty.
struct TableRow {
    std::string code;  ///< stable name, the key of `figures --json` (nested: "heat.time_s")
    std::string label; ///< English
    std::string value; ///< through the one formatter
};

/// The rows that screen, sheet and command line show, in the order of importance.
std::vector<TableRow> table_rows(const Figures& figures, UnitSystem units);

/// The rows as aligned text under the car's name, findings last.
std::string to_table(const Figures& figures, UnitSystem units);

} // namespace rampwright
