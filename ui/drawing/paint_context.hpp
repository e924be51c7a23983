#pragma once

#include "drawing/car_shape.hpp"
#include "drawing/drawing_map.hpp"
#include "drawing/target.hpp"

#include <rampwright/results/figures.hpp>

#include <QRectF>
#include <QString>

#include <algorithm>
#include <optional>
#include <vector>

class QPainter;

namespace rampwright::ui {

/// Something the drawing is asked to show: a box on a view's plane, m, and what it is called.
struct PointedOut {
    View view = View::side;
    QRectF box;
    QString name;
};

/// All that one picture of the sheet needs; painters read it and keep nothing.
struct PaintContext {
    const DrawingMap& map;
    const CarShape& shape;
    const CarPlan& plan;
    const Project& project;
    const Figures* figures = nullptr; ///< none where the car cannot be computed
    Reach reach = Reach::weight;      ///< what may be touched now, and so shows its handles
    const std::vector<Target>& selection;
    std::optional<Target> hovered;
    std::optional<Target> held;     ///< the selected thing that the hand drags, and
    std::optional<View> dragged_in; ///< the view it is dragged in
    std::optional<std::size_t> selected_finding;
    std::optional<BallastPlan> ghost;  ///< a piece on its way, where it would come to lie
    std::array<bool, 3> see_through{}; ///< by View: a picture lies under it, and the wood lets it be seen
    std::optional<PointedOut> pointed_out;

    bool is_selected(const Target& target) const {
        return std::find(selection.begin(), selection.end(), target) != selection.end();
    }
};

/// The paper, its rulers, its title block.
void paint_sheet(QPainter& painter, const PaintContext& context);
/// The size that the race allows, as faint limits in one view, while nothing or the wood is in hand.
void paint_limits(QPainter& painter, const PaintContext& context, View view);
/// Where the title block stands, px; null where there is no room for it.
QRectF title_block(const DrawingMap& map);
/// The car itself in one view.
void paint_car(QPainter& painter, const PaintContext& context, View view);
/// What can be taken hold of in one view, where the step in hand is about the wood or the wheels.
void paint_handles(QPainter& painter, const PaintContext& context, View view);
/// A piece on its way, where it would come to lie.
void paint_ghost(QPainter& painter, const PaintContext& context, View view);
/// What is said about it: centre of mass, balance dimension, front load, findings.
void paint_marks(QPainter& painter, const PaintContext& context);

} // namespace rampwright::ui
