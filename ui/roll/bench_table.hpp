#pragma once

#include <rampwright/bench/table_fault.hpp>
#include <rampwright/units/quantity.hpp>

#include <QLabel>
#include <QTableWidget>

#include <optional>

namespace rampwright::ui {

/// What the tables of the bench, wheels and axles, have in common. Each cell knows its row's place in the
/// project's table, however the rows are sorted.

void set_up_bench_table(QTableWidget& table, const QStringList& headings);
QTableWidgetItem* bench_text_cell(const std::string& text, std::size_t place);
/// Sorts by what it holds, not by how it is spelled.
QTableWidgetItem* bench_value_cell(const std::optional<double>& value, Quantity quantity, UnitSystem units,
                                   std::size_t place);
/// A cell that is worked out, not typed.
QTableWidgetItem* bench_note_cell(const QString& text, std::size_t place);
/// Place in the project's table of a cell; none where there is no cell.
std::optional<std::size_t> bench_place(const QTableWidgetItem* item);

/// A typed cell as a value, SI; nothing where it is empty. @throws EntryError.
std::optional<double> bench_cell_value(const QTableWidgetItem& item, Quantity quantity, UnitSystem units);

/// What a pasted table left out, and why.
QStringList table_faults_text(const std::vector<TableFault>& faults, const std::vector<std::string>& ignored);

/// Asks for a file and reads it; nothing, and the reason on the label, where it cannot be read.
std::optional<QString> ask_for_table(QWidget& parent, const QString& title, QLabel& trouble);

} // namespace rampwright::ui
