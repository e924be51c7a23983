#pragma once

#include <rampwright/bench/table_fault.hpp>
#include <rampwright/project/project.hpp>

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace rampwright {

/// One wheel as measured at the bench, SI: a row of the project's own table.
using MeasuredWheel = BenchWheel;

enum class WheelColumn { mass, diameter, runout, bore, spin_time };
inline constexpr std::array<WheelColumn, 5> all_wheel_columns{
    WheelColumn::mass, WheelColumn::diameter, WheelColumn::runout, WheelColumn::bore, WheelColumn::spin_time};
const std::optional<double>& value_of(const MeasuredWheel& wheel, WheelColumn column);
std::optional<double>& value_of(MeasuredWheel& wheel, WheelColumn column);

struct WheelTable {
    std::vector<MeasuredWheel> wheels;
    std::vector<TableFault> faults;   ///< cells left out
    std::vector<std::string> ignored; ///< headings that mean nothing here
};

/// Reads a table pasted from a spreadsheet or a text file: one heading line, one wheel a line. Columns are
/// parted by tabs, semicolons or commas, whichever the heading line has (in that order); cells may stand in
/// double quotes. Headings, in any order and any case: name (or wheel), mould (or mold, mark), mass (weight),
/// diameter, runout (run-out), bore, spin (spin time); a unit may follow as `mass_g`, `mass (g)`, `bore
/// [mm]`. A cell is read as typed entries are: "." and "," are both a decimal mark whatever the locale, and
/// it may name its own unit; without any unit g, mm and s are meant.
/// @throws Problem where there is no heading line that names one measured column.
WheelTable read_wheel_table(std::string_view text);

/// Robust z of each value: 0.6745 (x - median) / median absolute deviation; where half the values are equal,
/// of the mean absolute deviation, (x - median) / (1.2533 mean). Absent values stay absent; fewer than five
/// values, or all alike, give zeros. Source: Iglewicz and Hoaglin, How to Detect and Handle Outliers (1993),
/// from memory.
std::vector<std::optional<double>> robust_z(const std::vector<std::optional<double>>& values);

/// |z| beyond which a value is flagged (same source). Flagged, never dropped.
inline constexpr double outlier_z = 3.5;

struct Outlier {
    std::size_t wheel = 0;
    WheelColumn column = WheelColumn::mass;
    double z = 0;
};

/// Every flagged value, wheel by wheel.
std::vector<Outlier> find_outliers(const std::vector<MeasuredWheel>& wheels);

} // namespace rampwright
