#pragma once

#include "drawing/drawing_map.hpp"
#include "sheet/paper.hpp"

#include <QPainterPath>
#include <QString>

#include <optional>
#include <variant>
#include <vector>

/// What stands on a page, before any device: laid out once, painted the same on paper, screen and picture.
namespace rampwright::ui::paper {

struct TextStyle {
    double points = 8.5;
    bool bold = false;
};

/// One line of text. `box` is the room it takes, from its font's ascent to its descent.
struct TextInk {
    QString text;
    QRectF box;
    double baseline = 0;
    TextStyle style;
    bool cleared = false; ///< lines behind it are wiped out first
};

/// The kinds of line of a technical drawing (ISO 128-2).
enum class Stroke { solid, hidden, centre, phantom };

struct PathInk {
    QPainterPath path;
    double width = 0.25; ///< mm; 0: no line
    Stroke stroke = Stroke::solid;
    std::optional<double> fill; ///< grey, 0 black to 1 white
    std::optional<QRectF> clip;
};

using Ink = std::variant<PathInk, TextInk>;

/// A view of the car at true size: the page's point of the view's plane point (0, 0), the window of the page
/// it is seen through, and page mm per model mm (1, unless it makes up for a printer).
struct PlacedTemplate {
    View view = View::side;
    QPointF origin;
    double scale = 1;
    QRectF window;
};

/// A bar to lay a ruler on.
struct CheckBar {
    QPointF from, to;
    double length = 0; ///< mm it measures on a true print
};

struct Page {
    QString title;
    std::vector<Ink> ink;
    std::vector<PlacedTemplate> templates;
    std::vector<CheckBar> bars;
};

struct Sheet {
    Paper paper = Paper::a4;
    QString title; ///< of the document
    std::vector<Page> pages;
};

} // namespace rampwright::ui::paper
