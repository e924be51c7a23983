#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/units/entry.hpp>

#include <algorithm>
#include <cctype>
#include <cmath>
#include <utility>

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

enum class Meaning { unknown, name, mould, measured };

struct Column {
    Meaning meaning = Meaning::unknown;
    WheelColumn column = WheelColumn::mass;
    Quantity quantity = Quantity::plain;
    std::string heading, unit;
};

/// "Spin time (s)" is the words "spintime" and the unit "s"; "mass_g" is "mass" and "g".
Column understand(const std::string& heading) {
    Column column;
    column.heading = heading;
    std::string word = heading;
    if (const auto open = word.find_first_of("([_"); open != std::string::npos) {
        std::string_view rest = std::string_view(word).substr(open + 1);
        // spin_time_s: the unit stands behind the last mark.
        if (const auto last = rest.find_last_of('_'); word[open] == '_' && last != std::string_view::npos) {
            column.unit = std::string(rest.substr(last + 1));
            word = word.substr(0, open) + std::string(rest.substr(0, last));
        } else {
            rest = rest.substr(0, rest.find_first_of(")]"));
            column.unit = std::string(trimmed(rest));
            word = word.substr(0, open);
        }
    }
    std::string key;
    for (const char c : word)
        if (std::isalpha(static_cast<unsigned char>(c)))
            key += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    const auto is = [&key](std::initializer_list<std::string_view> names) {
        return std::find(names.begin(), names.end(), key) != names.end();
    };
    const auto measured = [&column](WheelColumn which, Quantity quantity) {
        column.meaning = Meaning::measured;
        column.column = which;
        column.quantity = quantity;
    };
    if (is({"name", "wheel", "no", "number"}))
        column.meaning = Meaning::name;
    else if (is({"mould", "mold", "mark", "mouldmark", "moldmark"}))
        column.meaning = Meaning::mould;
    else if (is({"mass", "weight"}))
        measured(WheelColumn::mass, Quantity::mass);
    else if (is({"diameter", "outerdiameter"}))
        measured(WheelColumn::diameter, Quantity::length);
    else if (is({"runout"}))
        measured(WheelColumn::runout, Quantity::length);
    else if (is({"bore", "borediameter"}))
        measured(WheelColumn::bore, Quantity::length);
    else if (is({"spin", "spintime", "spindown"}))
        measured(WheelColumn::spin_time, Quantity::time);
    return column;
}

std::optional<double>& place_of(MeasuredWheel& wheel, WheelColumn column) {
    return const_cast<std::optional<double>&>(value_of(wheel, column));
}

double read_cell(const std::string& cell, const Column& column) {
    const bool bare = std::none_of(cell.begin(), cell.end(), [](unsigned char c) {
        return (std::isalpha(c) && c != 'e' && c != 'E') || c == '"' || c == '\'' || c >= 0x80;
    });
    const std::string text = bare && !column.unit.empty() ? cell + " " + column.unit : cell;
    return parse_entry(text, column.quantity, UnitSystem::metric);
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return (*middle + *std::max_element(values.begin(), middle)) / 2;
}

} // namespace

const std::optional<double>& value_of(const MeasuredWheel& wheel, WheelColumn column) {
    switch (column) {
    case WheelColumn::mass:
        return wheel.mass;
    case WheelColumn::diameter:
        return wheel.diameter;
    case WheelColumn::runout:
        return wheel.runout;
    case WheelColumn::bore:
        return wheel.bore;
    case WheelColumn::spin_time:
        break;
    }
    return wheel.spin_time;
}

std::optional<double>& value_of(MeasuredWheel& wheel, WheelColumn column) {
    return const_cast<std::optional<double>&>(value_of(std::as_const(wheel), column));
}

WheelTable read_wheel_table(std::string_view text) {
    if (text.substr(0, 3) == "\xEF\xBB\xBF") text.remove_prefix(3);
    WheelTable table;
    std::vector<Column> columns;
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
        if (columns.empty()) {
            separator = separator_of(line);
            for (const std::string& heading : cells_of(line, separator)) {
                columns.push_back(understand(heading));
                if (columns.back().meaning == Meaning::unknown) table.ignored.push_back(heading);
            }
            continue;
        }
        MeasuredWheel wheel;
        const std::vector<std::string> cells = cells_of(line, separator);
        if (cells.size() > columns.size())
            table.faults.push_back({line_number, "", std::string(trimmed(line)),
                                    "more cells than headings; a decimal comma needs tabs or semicolons "
                                    "between the columns"});
        for (std::size_t i = 0; i < std::min(cells.size(), columns.size()); ++i) {
            const Column& column = columns[i];
            const std::string& cell = cells[i];
            if (column.meaning == Meaning::name)
                wheel.name = cell;
            else if (column.meaning == Meaning::mould)
                wheel.mould = cell;
            else if (column.meaning == Meaning::measured && !cell.empty() && cell != "-") {
                try {
                    const double value = read_cell(cell, column);
                    const bool may_be_zero = column.column == WheelColumn::runout;
                    if (value > 0 || (may_be_zero && value == 0))
                        place_of(wheel, column.column) = value;
                    else
                        table.faults.push_back({line_number, column.heading, cell, "not a positive value"});
                } catch (const Problem& problem) {
                    table.faults.push_back({line_number, column.heading, cell, problem.wrong()});
                }
            }
        }
        if (wheel.name.empty()) wheel.name = std::to_string(table.wheels.size() + 1);
        table.wheels.push_back(std::move(wheel));
    }
    if (std::none_of(columns.begin(), columns.end(),
                     [](const Column& c) { return c.meaning == Meaning::measured; }))
        throw Problem(Exit::could_not, "-", "the table has no heading line that names a measured column",
                      "start it with a line such as: name, mass_g, diameter_mm, runout_mm, bore_mm, spin_s");
    return table;
}

std::vector<std::optional<double>> robust_z(const std::vector<std::optional<double>>& values) {
    std::vector<std::optional<double>> z(values.size());
    std::vector<double> known;
    for (const auto& value : values)
        if (value) known.push_back(*value);
    if (known.empty()) return z;
    const double middle = median(known);
    std::vector<double> off(known.size());
    std::transform(known.begin(), known.end(), off.begin(), [&](double x) { return std::abs(x - middle); });
    double mean = 0;
    for (double d : off)
        mean += d / static_cast<double>(off.size());
    const double deviation = median(off);
    // What is alike to rounding is alike.
    const double alike = 1e-12 * std::abs(middle);
    constexpr std::size_t least_count = 5;
    const double scale = known.size() < least_count || !(mean > alike) ? 0
                         : deviation > alike                           ? deviation / 0.6745
                                                                       : 1.2533 * mean;
    for (std::size_t i = 0; i < values.size(); ++i)
        if (values[i]) z[i] = scale > 0 ? (*values[i] - middle) / scale : 0;
    return z;
}

std::vector<Outlier> find_outliers(const std::vector<MeasuredWheel>& wheels) {
    std::vector<Outlier> outliers;
    for (const WheelColumn column : all_wheel_columns) {
        std::vector<std::optional<double>> values;
        for (const MeasuredWheel& wheel : wheels)
            values.push_back(value_of(wheel, column));
        const auto z = robust_z(values);
        for (std::size_t i = 0; i < z.size(); ++i)
            if (z[i] && std::abs(*z[i]) > outlier_z) outliers.push_back({i, column, *z[i]});
    }
    std::stable_sort(outliers.begin(), outliers.end(),
                     [](const Outlier& a, const Outlier& b) { return a.wheel < b.wheel; });
    return outliers;
}

} // namespace rampwright
