#pragma once

#include <rampwright/bench/table_fault.hpp>
#include <rampwright/project/project.hpp>

#include <string_view>

namespace rampwright {

struct AxleTable {
    std::vector<BenchAxle> axles;
    std::vector<TableFault> faults;   ///< cells left out
    std::vector<std::string> ignored; ///< headings that mean nothing here
};

/// Reads a table of axles, by the rules of `read_wheel_table`. Headings: name (or axle, no, number), finish
/// (or polish), diameter (or shank), bow (or straightness).
/// @throws Problem where there is no heading line that names diameter, bow or finish.
AxleTable read_axle_table(std::string_view text);

} // namespace rampwright
