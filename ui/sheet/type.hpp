#pragma once

#include "sheet/ink.hpp"

#include <QFont>
#include <QStringList>

/// The sheet's type: measured once at a fine resolution without hinting, so that lines break alike on every
/// device.
namespace rampwright::ui::paper {

/// Dots of the resolution in which type is measured and set, a millimetre (1200 an inch).
inline constexpr double dots_per_mm = 1200 / 25.4;

/// The font at 1200 dots an inch. @throws Problem where the machine has no typeface at all.
const QFont& font_of(const TextStyle& style);

/// All in mm.
double width_of(const QString& text, const TextStyle& style);
double ascent_of(const TextStyle& style);
double descent_of(const TextStyle& style);
/// From baseline to baseline.
double leading_of(const TextStyle& style);

/// The text in lines no wider than `width`; a word that is wider is broken. A text's own line breaks are
/// kept.
QStringList wrapped(const QString& text, const TextStyle& style, double width);
/// The text cut to `width` with "…".
QString elided(const QString& text, const TextStyle& style, double width);

} // namespace rampwright::ui::paper
