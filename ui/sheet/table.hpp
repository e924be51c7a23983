#pragma once

#include "sheet/flow.hpp"

namespace rampwright::ui::paper {

struct Column {
    QString title;
    double width = -1; ///< mm; negative: a share of what is left, by its size
    Align align = Align::left;
};

struct Cell {
    enum class Kind { text, box, ticked, blank };
    QString text;
    Kind kind = Kind::text;
    bool bold = false;
    Cell(QString words = {}, bool is_bold = false) : text(std::move(words)), bold(is_bold) {}
    Cell(Kind what) : kind(what) {} ///< a box to tick, or room to write on
};

struct Table {
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    TextStyle style;
    double least_height = 0; ///< mm of a row, for writing by hand
};

/// Sets a table; its head comes again on every page, and a row taller than a page is divided.
void put_table(Flow& flow, const Table& table);

} // namespace rampwright::ui::paper
