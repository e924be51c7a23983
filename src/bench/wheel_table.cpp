#include "bench/pasted_table.hpp"

#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace rampwright {

namespace {

enum class Meaning { unknown, name, mould, measured };

struct Column {
    Meaning meaning = Meaning::unknown;
    WheelColumn column = WheelColumn::mass;
    Quantity quantity = Quantity::plain;
};

Column understand(const std::string& word) {
    using enum WheelColumn;
    const auto is = [&word](std::initializer_list<std::string_view> names) {
        return std::find(names.begin(), names.end(), word) != names.end();
    };
    if (is({"name", "wheel", "no", "number"})) return {Meaning::name};
    if (is({"mould", "mold", "mark", "mouldmark", "moldmark"})) return {Meaning::mould};
    if (is({"mass", "weight"})) return {Meaning::measured, mass, Quantity::mass};
    if (is({"diameter", "outerdiameter"})) return {Meaning::measured, diameter, Quantity::length};
    if (is({"runout"})) return {Meaning::measured, runout, Quantity::length};
    if (is({"bore", "borediameter"})) return {Meaning::measured, bore, Quantity::length};
    if (is({"spin", "spintime", "spindown"})) return {Meaning::measured, spin_time, Quantity::time};
    return {};
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
    WheelTable table;
    const PastedTable pasted = read_pasted_table(text);
    std::vector<Column> columns;
    for (const PastedHeading& heading : pasted.headings) {
        columns.push_back(understand(heading.word));
        if (columns.back().meaning == Meaning::unknown) table.ignored.push_back(heading.text);
    }
    if (std::none_of(columns.begin(), columns.end(),
                     [](const Column& c) { return c.meaning == Meaning::measured; }))
        throw Problem(
            Exit::could_not, "-", Core::tr("the table has no heading line that names a measured column"),
            Core::tr("start it with a line such as: name, mass_g, diameter_mm, runout_mm, bore_mm, spin_s"));
    table.faults = pasted.faults;
    for (const PastedRow& row : pasted.rows) {
        MeasuredWheel wheel;
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            if (columns[i].meaning == Meaning::name) wheel.name = row.cells[i];
            if (columns[i].meaning == Meaning::mould) wheel.mould = row.cells[i];
            if (columns[i].meaning == Meaning::measured)
                value_of(wheel, columns[i].column) =
                    read_pasted_value(pasted, row, i, columns[i].quantity,
                                      columns[i].column == WheelColumn::runout, table.faults);
        }
        if (wheel.name.empty()) wheel.name = std::to_string(table.wheels.size() + 1);
        table.wheels.push_back(std::move(wheel));
    }
    sort_by_line(table.faults);
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
