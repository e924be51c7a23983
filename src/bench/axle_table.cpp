#include "bench/pasted_table.hpp"

#include <rampwright/bench/axle_table.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>

namespace rampwright {

namespace {

enum class Meaning { unknown, name, finish, diameter, bow };

Meaning understand(const std::string& word) {
    const auto is = [&word](std::initializer_list<std::string_view> names) {
        return std::find(names.begin(), names.end(), word) != names.end();
    };
    if (is({"name", "axle", "no", "number"})) return Meaning::name;
    if (is({"finish", "polish"})) return Meaning::finish;
    if (is({"diameter", "shank", "shankdiameter"})) return Meaning::diameter;
    if (is({"bow", "straightness"})) return Meaning::bow;
    return Meaning::unknown;
}

} // namespace

AxleTable read_axle_table(std::string_view text) {
    AxleTable table;
    const PastedTable pasted = read_pasted_table(text);
    std::vector<Meaning> columns;
    for (const PastedHeading& heading : pasted.headings) {
        columns.push_back(understand(heading.word));
        if (columns.back() == Meaning::unknown) table.ignored.push_back(heading.text);
    }
    if (std::none_of(columns.begin(), columns.end(),
                     [](Meaning m) { return m != Meaning::unknown && m != Meaning::name; }))
        throw Problem(Exit::could_not, "-",
                      Core::tr("the table has no heading line that names a column of axles"),
                      Core::tr("start it with a line such as: name, finish, diameter_mm, bow_mm"));
    table.faults = pasted.faults;
    for (const PastedRow& row : pasted.rows) {
        BenchAxle axle;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const auto length = [&](bool may_be_zero) {
                return read_pasted_value(pasted, row, i, Quantity::length, may_be_zero, table.faults);
            };
            if (columns[i] == Meaning::name) axle.name = row.cells[i];
            if (columns[i] == Meaning::finish) axle.finish = row.cells[i];
            if (columns[i] == Meaning::diameter) axle.diameter = length(false);
            if (columns[i] == Meaning::bow) axle.bow = length(true);
        }
        if (axle.name.empty()) axle.name = std::to_string(table.axles.size() + 1);
        table.axles.push_back(std::move(axle));
    }
    sort_by_line(table.faults);
    return table;
}

} // namespace rampwright
