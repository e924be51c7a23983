#pragma once

#include "sheet/flow.hpp"
#include "sheet/spread.hpp"

namespace rampwright::ui::paper {

/// Words beside a drawing with lines to what they speak of, spread so that none covers another.
class Callouts {
public:
    enum class Edge { above, below, right };

    /// @param low, high the strip's ends on the page, mm, along the edge.
    Callouts(Edge edge, double low, double high, TextStyle style = {7.5, false});

    /// @param anchor page point that the line starts from. @param ringed the text in a ring, as part numbers
    /// are.
    void add(const QString& text, QPointF anchor, bool ringed = false);
    bool empty() const { return texts_.empty(); }

    /// Settles the places. @return how far the strip reaches away from the drawing, mm.
    double settle();
    /// Draws them beside a drawing whose edge is at `edge` (y above and below, x at the right).
    void put(Flow& flow, double edge) const;

private:
    struct Said {
        QString text;
        QPointF anchor;
        bool ringed = false;
    };
    double across() const; ///< of one row, mm
    Edge edge_;
    double low_, high_;
    TextStyle style_;
    std::vector<Said> texts_;
    std::vector<Label> labels_;
    int rows_ = 1;
};

} // namespace rampwright::ui::paper
