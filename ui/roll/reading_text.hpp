#pragma once

#include <rampwright/project/project.hpp>

#include <QString>

#include <vector>

namespace rampwright::ui {

/// Pairs of time and speed out of a text, one pair a line, numbers as typed; a first line without any digit
/// is a heading. @throws Problem where a line is no such pair or the times do not rise.
std::vector<Vec2> read_reading_text(const QString& text, UnitSystem units);

/// The text that reads as these pairs.
QString reading_text(const std::vector<Vec2>& readings);

} // namespace rampwright::ui
