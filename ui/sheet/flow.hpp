#pragma once

#include "sheet/type.hpp"

#include <QPolygonF>

#include <functional>

namespace rampwright::ui::paper {

enum class Align { left, middle, right };

/// What the margins of every page say.
struct Margins {
    QString car, project, origin; ///< origin: which file, when, by which program
};

/// Fills pages from the top down; what does not fit goes on to the next page. Text is recorded with the room
/// it takes, so that nothing is printed over anything else and tests can see that.
class Flow {
public:
    Flow(Sheet& sheet, Margins margins);

    /// Starts a page of that title.
    void start_page(const QString& title);
    /// Goes on to a page of the same title unless `mm` fit below what is there.
    void need(double mm);

    /// Puts a section whose drawing may be smaller: where its last page would hold little, the drawing is
    /// made smaller until that goes on the page before. `put` starts the section's page and takes the
    /// drawing's size, 1 or less.
    void section(const std::function<void(double size)>& put);

    Page& page() { return sheet_.pages.back(); }
    /// The room between the margins' words.
    const QRectF& body() const { return body_; }
    double y() const { return y_; }
    double room() const { return body_.bottom() - y_; }
    void skip(double mm) { y_ += mm; }

    void heading(const QString& text);
    void paragraph(const QString& text, const TextStyle& style = {}, double indent = 0);

    /// One line of text at a baseline. @return the room it takes.
    QRectF put(QPointF baseline, const QString& text, const TextStyle& style = {}, Align align = Align::left,
               bool cleared = false);
    void stroke(const QPainterPath& path, double width = 0.25, Stroke stroke = Stroke::solid);
    void line(QPointF from, QPointF to, double width = 0.25, Stroke stroke = Stroke::solid);
    void fill(const QPainterPath& path, double grey, double width = 0.25);
    /// A box to tick, its side in mm.
    void tick_box(QPointF corner, double side, bool ticked);

    /// Writes the margins of all pages: they name how many there are.
    void finish();

private:
    Sheet& sheet_;
    Margins margins_;
    QRectF body_;
    double y_ = 0;
};

} // namespace rampwright::ui::paper
