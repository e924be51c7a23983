#pragma once

#include <rampwright/bench/table_fault.hpp>
#include <rampwright/units/quantity.hpp>

#include <optional>
#include <string_view>

namespace rampwright {

/// A heading as written, and what it says: "Spin time (s)" is the word "spintime" and the unit "s"; "mass_g"
/// is "mass" and "g".
struct PastedHeading {
    std::string text, word, unit;
};

struct PastedRow {
    std::size_t line = 0;           ///< from 1
    std::vector<std::string> cells; ///< as many as headings at most
};

struct PastedTable {
    std::vector<PastedHeading> headings;
    std::vector<PastedRow> rows;
    std::vector<TableFault> faults; ///< lines with more cells than headings
};

/// Cells of a table pasted from a spreadsheet or a text file, as `read_wheel_table` describes it.
PastedTable read_pasted_table(std::string_view text);

/// The value of one measured cell, SI; nothing where it is empty or "-", or where it cannot be read, which
/// goes to the faults.
std::optional<double> read_pasted_value(const PastedTable& table, const PastedRow& row, std::size_t column,
                                        Quantity quantity, bool may_be_zero, std::vector<TableFault>& faults);

/// Faults of whole lines and of cells in the order in which a person reads the table.
void sort_by_line(std::vector<TableFault>& faults);

} // namespace rampwright
