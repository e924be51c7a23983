#pragma once

#include <QRectF>
#include <QSizeF>

#include <optional>
#include <string_view>

/// The build sheet on paper. Lengths on a page are mm from the paper's upper left corner, y downward.
namespace rampwright::ui::paper {

enum class Paper { letter, a4 };

/// "letter" or "a4", as options and settings spell it.
std::string_view to_string(Paper paper);
std::optional<Paper> find_paper(std::string_view word);

/// Upright, mm: 8.5 in by 11 in (ANSI/ASME Y14.1), or 210 by 297 (ISO 216).
QSizeF size_of(Paper paper);

/// Where ink may go: 12 mm from the sides and 10 mm from top and bottom, more than printers need.
QRectF printable(Paper paper);

} // namespace rampwright::ui::paper
