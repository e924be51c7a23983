#include "drawing/cut_drawing.hpp"

#include "drawing/outline.hpp"

#include <rampwright/body/solid.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/project/edits.hpp>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr double past_the_skin = 1 * millimetre;

/// The two coordinates along a view at which a cut starts and ends, and whether it goes through.
struct Depth {
    double from = 0, to = 0;
    bool through = true;
};

/// Into wood from its face at `face` towards `back`, at most as deep as the habit.
Depth into(double face, double back, const CutHabit& habit, double point = 0) {
    const double inward = back < face ? -1 : 1;
    const double room = std::abs(face - back) - habit.floor - point;
    if (room < habit.floor / 3) return {face - inward * past_the_skin, back + inward * past_the_skin, true};
    return {face - inward * past_the_skin, face + inward * std::min(habit.depth, room), false};
}

double middle_between_axles(const CarPlan& plan) {
    return (plan.axles.rear_x + plan.axles.front_x) / 2;
}

/// The depth of a cut in a view, over a stretch of the car. @param point how far a drill's point goes on.
Depth depth_in(const CarShape& shape, const CutHabit& habit, View view, double x0, double x1, double point) {
    switch (view) {
    case View::top: {
        const auto [top, bottom] = wood_between(shape, x0, x1);
        return into(top, bottom, habit, point);
    }
    case View::front: {
        const QRectF box = shape.wood[index(View::side)].boundingRect();
        return into(box.right(), box.left(), habit, point);
    }
    case View::side:
        break;
    }
    return {-shape.half_width - past_the_skin, shape.half_width + past_the_skin, true};
}

int axis_along(View view) {
    return view == View::side ? 1 : view == View::top ? 2 : 0;
}

Vec3 place(View view, QPointF plane, double depth) {
    Vec3 away = Vec3::Zero();
    away[axis_along(view)] = depth;
    return from_plane(view, plane, away);
}

} // namespace

CutHabit CutHabit::of(UnitSystem units) {
    return units == UnitSystem::metric ? CutHabit{10 * millimetre, 3 * millimetre}
                                       : CutHabit{inch * 3 / 8, inch / 8};
}

std::pair<double, double> wood_between(const CarShape& shape, double x0, double x1) {
    const QPainterPath& wood = shape.wood[index(View::side)];
    const QRectF box = wood.boundingRect();
    const double low = std::max(std::min(x0, x1), box.left()), high = std::min(std::max(x0, x1), box.right());
    if (low > high) return {0, 0};
    constexpr int steps = 64; // a curve between two of them rises by less than the skin
    double top = -1e9, bottom = 1e9;
    for (int i = 0; i <= steps; ++i) {
        const auto [under, over] = span_at(wood, low + (high - low) * i / steps);
        top = std::max(top, over);
        bottom = std::min(bottom, under);
    }
    return {top, bottom};
}

std::optional<CutPlan> drawn_pocket(const CarPlan& plan, const CarShape& shape, const CutHabit& habit,
                                    View view, QPointF one, QPointF other) {
    constexpr double least = 0.1 * millimetre;
    if (std::abs(one.x() - other.x()) < least || std::abs(one.y() - other.y()) < least) return {};
    const Depth depth = depth_in(shape, habit, view, one.x(), other.x(), 0);
    const Vec3 a = place(view, one, depth.from), b = place(view, other, depth.to);
    CutPlan cut;
    cut.name = free_cut_name(plan, "pocket");
    cut.from = a.cwiseMin(b);
    cut.to = a.cwiseMax(b);
    return cut;
}

CutPlan drawn_bore(const CarPlan& plan, const CarShape& shape, const CutHabit& habit, View view, QPointF from,
                   QPointF to, double diameter) {
    CutPlan cut;
    cut.name = free_cut_name(plan, "bore");
    cut.is_bore = true;
    cut.diameter = diameter;
    if (from == to) {
        const double point = diameter / 2 / std::tan(drill_point_angle / 2);
        const Depth depth =
            depth_in(shape, habit, view, from.x() - diameter / 2, from.x() + diameter / 2, point);
        cut.from = place(view, from, depth.from);
        cut.to = place(view, from, depth.to);
        cut.pointed = !depth.through;
        return cut;
    }
    double across = 0;
    if (view == View::top) {
        const auto [top, bottom] = wood_between(shape, from.x(), to.x());
        across = (top + bottom) / 2;
    } else if (view == View::front) {
        across = middle_between_axles(plan);
    }
    cut.from = place(view, from, across);
    cut.to = place(view, to, across);
    cut.pointed = true;
    return cut;
}

CutPlan usual_pocket(const CarPlan& plan, const CarShape& shape, const CutHabit& habit) {
    const double x = middle_between_axles(plan), half = habit.depth;
    return *drawn_pocket(plan, shape, habit, View::top, {x - half, -half}, {x + half, half});
}

CutPlan usual_bore(const CarPlan& plan, const CarShape& shape, const CutHabit& habit, double diameter) {
    const QPointF at(middle_between_axles(plan), 0);
    return drawn_bore(plan, shape, habit, View::top, at, at, diameter);
}

} // namespace rampwright::ui
