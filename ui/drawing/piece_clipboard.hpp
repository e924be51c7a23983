#pragma once

#include <rampwright/project/group_edits.hpp>

#include <QMimeData>

#include <memory>

/// Pieces and cuts on the system's clipboard: for another car, file or window as JSON of our own type, for a
/// text editor or a spreadsheet as a table.
namespace rampwright::ui {

inline constexpr const char* pieces_mime_type = "application/x-rampwright-pieces+json";

/// @param copied what `copy_group` made of the group.
std::unique_ptr<QMimeData> pieces_mime(const Json& copied, const CarPlan& plan, const Group& group,
                                       UnitSystem units);

/// What is on the clipboard; our own text pasted somewhere as text and copied there again counts too.
/// @throws Problem where it is nothing of ours.
Json pieces_on(const QMimeData* mime);

} // namespace rampwright::ui
