#include "bench/pasted_table.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/units/entry.hpp>

#include <algorithm>
#include <cctype>

namespace rampwright {

namespace {

std::string_view trimmed(std::string_view text) {
    const std::string_view blank = " \t\r\n";
    const auto first = text.find_first_not_of(blank);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

/// The cells of one line; a doubled quote inside quotes is a quote.
std::vector<std::string> cells_of(std::string_view line, char separator) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (c == '"') {
            if (quoted && i + 1 < line.size() && line[i + 1] == '"')
                cells.back() += line[i++];
            else
                quoted = !quoted;
        } else if (c == separator && !quoted)
            cells.emplace_back();
        else
            cells.back() += c;
    }
    for (std::string& cell : cells)
        cell = std::string(trimmed(cell));
    return cells;
}

char separator_of(std::string_view heading) {
    for (char separator : {'\t', ';'})
        if (heading.find(separator) != std::string_view::npos) return separator;
    return ',';
}

PastedHeading understand(const std::string& text) {
    PastedHeading heading;
    heading.text = text;
    std::string word = text;
    if (const auto open = word.find_first_of("([_"); open != std::string::npos) {
        std::string_view rest = std::string_view(word).substr(open + 1);
        // spin_time_s: the unit stands behind the last mark.
        if (const auto last = rest.find_last_of('_'); word[open] == '_' && last != std::string_view::npos) {
            heading.unit = std::string(rest.substr(last + 1));
            word = word.substr(0, open) + std::string(rest.substr(0, last));
        } else {
            rest = rest.substr(0, rest.find_first_of(")]"));
            heading.unit = std::string(trimmed(rest));
            word = word.substr(0, open);
        }
    }
    for (const char c : word)
        if (std::isalpha(static_cast<unsigned char>(c)))
            heading.word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return heading;
}

double read_cell(const std::string& cell, const std::string& unit, Quantity quantity) {
    const bool bare = std::none_of(cell.begin(), cell.end(), [](unsigned char c) {
        return (std::isalpha(c) && c != 'e' && c != 'E') || c == '"' || c == '\'' || c >= 0x80;
    });
    return parse_entry(bare && !unit.empty() ? cell + " " + unit : cell, quantity, UnitSystem::metric);
}

} // namespace

PastedTable read_pasted_table(std::string_view text) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    PastedTable table;
    char separator = ',';
    std::size_t line_number = 0;
    while (!text.empty()) {
        const auto end = text.find_first_of("\r\n");
        const std::string_view line = text.substr(0, end);
        ++line_number;
        if (end == std::string_view::npos)
            text = {};
        else
            text.remove_prefix(end + (text.substr(end, 2) == "\r\n" ? 2 : 1));
        if (trimmed(line).empty()) continue;
        if (table.headings.empty()) {
            separator = separator_of(line);
            for (const std::string& heading : cells_of(line, separator))
                table.headings.push_back(understand(heading));
            continue;
        }
        PastedRow row{line_number, cells_of(line, separator)};
        if (row.cells.size() > table.headings.size()) {
            table.faults.push_back(
                {line_number, "", std::string(trimmed(line)),
                 Core::tr("more cells than headings; a decimal comma needs tabs or semicolons "
                          "between the columns")});
            row.cells.resize(table.headings.size());
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

std::optional<double> read_pasted_value(const PastedTable& table, const PastedRow& row, std::size_t column,
                                        Quantity quantity, bool may_be_zero,
                                        std::vector<TableFault>& faults) {
    const std::string& cell = row.cells[column];
    const PastedHeading& heading = table.headings[column];
    if (cell.empty() || cell == "-") return {};
    try {
        const double value = read_cell(cell, heading.unit, quantity);
        if (value > 0 || (may_be_zero && value == 0)) return value;
        faults.push_back({row.line, heading.text, cell, Core::tr("not a positive value")});
    } catch (const Problem& problem) {
        faults.push_back({row.line, heading.text, cell, problem.wrong()});
    }
    return {};
}

void sort_by_line(std::vector<TableFault>& faults) {
    std::stable_sort(faults.begin(), faults.end(),
                     [](const TableFault& a, const TableFault& b) { return a.line < b.line; });
}

} // namespace rampwright
