#pragma once

#include <rampwright/body/path_data.hpp>

#include <QString>

#include <vector>

namespace rampwright::ui {

struct NamedLine {
    DrawnLine line;
    QString name;
};

/// Closes a line that comes back to where it begins; one piece alone does not. @param within as in
/// `join_lines`.
void close_where_met(DrawnLine& line, double within);

/// Open lines whose ends meet made into one, turned round where they must be, each with the name of its
/// first: drawing programs for engineers write every edge by itself. One that comes back to its beginning is
/// closed. Where more than two ends meet the nearest goes on. Lines that are closed already are left as they
/// are.
/// @param within how far apart two ends may lie, in the lines' own unit; above zero.
std::vector<NamedLine> join_lines(std::vector<NamedLine> lines, double within);

} // namespace rampwright::ui
