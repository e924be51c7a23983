#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>

#include <array>

namespace rampwright::ui {

enum class Appearance { light, dark };

/// Every colour the window draws with. Text colours reach 4.5 : 1 against what they stand on and marks
/// 3 : 1 (WCAG 2.1, AA); the hues of series and marks are those of Okabe and Ito (2008), which stay
/// apart for the common kinds of colour blindness.
struct Theme {
    Appearance appearance = Appearance::light;
    QColor bench; ///< the table the paper lies on
    QColor paper, paper_edge, grid;
    QColor ink, faint_ink; ///< lines and words; the words that may wait
    QColor accent;         ///< the one colour that says "touch me" or "this is new"
    QColor wood, wood_ink, grain;
    QColor cavity; ///< air inside the wood
    QColor metal, metal_ink;
    QColor wheel, wheel_ink, axle;
    QColor good, caution, breach; ///< marks only, always beside a word
    /// Lines of a chart, told apart by dash and label as well: blue, vermilion, green, orange, purple, black
    /// of Okabe and Ito, darker or lighter where the paper asks for it.
    std::array<QColor, 6> series;
    QPalette palette;
};

/// The theme in force.
const Theme& theme();

/// Sets the Fusion style, the palette and the typeface of the whole program.
void apply_theme(Appearance appearance);

/// The colours alone, for tests of contrast.
Theme make_theme(Appearance appearance);

/// Contrast of two colours as WCAG 2.1 defines it: 1 to 21.
double contrast(const QColor& a, const QColor& b);

/// The one typeface, sized relative to the program's own font.
QFont text_font(double scale = 1, bool bold = false);

} // namespace rampwright::ui
