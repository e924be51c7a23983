#include "sheet/axle_head.hpp"

#include "sheet/words.hpp"

#include <QPainterPath>

#include <cmath>
#include <numbers>

namespace rampwright::ui::paper {

void put_axle_head(Flow& flow, double turn, double by) {
    constexpr double radius = 9, outside = 11.5, tall = 2 * outside + 4; // mm
    flow.need(tall);
    const QPointF middle(flow.body().left() + outside + 2, flow.y() + outside + 1);
    const auto at = [&](double angle, double r) {
        return middle + r * QPointF(std::sin(angle), -std::cos(angle));
    };
    QPainterPath disc;
    disc.addEllipse(middle, radius, radius);
    flow.stroke(disc, 0.35);
    flow.line(at(0, radius + 1.5), at(std::numbers::pi, radius + 1.5), 0.15, Stroke::centre);
    flow.line(middle, at(turn, radius - 1), 0.9);
    flow.line(at(turn + by, radius - 3), at(turn + by, radius), 0.5);
    QPainterPath arc;
    constexpr double whole = 180 / std::numbers::pi;
    const QRectF around(middle - QPointF(outside, outside), QSizeF(2 * outside, 2 * outside));
    arc.arcMoveTo(around, 90 - turn * whole);
    arc.arcTo(around, 90 - turn * whole, -by * whole);
    const double way = by > 0 ? 1 : -1;
    const QPointF tip = at(turn + by, outside), along(std::cos(turn + by) * way, std::sin(turn + by) * way),
                  out(std::sin(turn + by), -std::cos(turn + by));
    for (const double side : {-1.0, 1.0}) {
        arc.moveTo(tip);
        arc.lineTo(tip - 2 * along + side * out);
    }
    flow.stroke(arc, 0.4);
    const double x = middle.x() + outside + 4;
    flow.put({x, middle.y() - 1}, Words::tr("The guide wheel's axle, seen from its head:"), {8});
    flow.put({x, middle.y() + 3.5},
             Words::tr("the thick line is where its bend points, the arrow the next turn."), {8});
    flow.skip(tall);
}

} // namespace rampwright::ui::paper
