#pragma once

#include "drawing/car_shape.hpp"

#include <optional>

/// Cuts as a hand draws them: two places in a view become a pocket or a bore. What the view does not show is
/// chosen here, and can be typed afterwards.
///
/// From above and from the front a cut goes 10 mm (3/8 in) into the face one looks at, or leaves 3 mm (1/8
/// in) of wood under it where that is less; wood too thin for either is cut through. From the side it goes
/// through: weight belongs on the centre line. A cut starts 1 mm outside the wood, so that no skin is left.
namespace rampwright::ui {

/// How deep cuts go by themselves, m.
struct CutHabit {
    double depth = 0, floor = 0;
    static CutHabit of(UnitSystem units);
};

/// A pocket between two opposite corners in a view's plane, m. Nothing where it would have no area.
std::optional<CutPlan> drawn_pocket(const CarPlan& plan, const CarShape& shape, const CutHabit& habit,
                                    View view, QPointF one, QPointF other);

/// A bore from one place in a view's plane to another, on the car's centre plane (side), at half the wood's
/// height (top), midway between the axles (front). Where the two places are one, a bore along the view.
/// Blind bores end in the drill's point.
CutPlan drawn_bore(const CarPlan& plan, const CarShape& shape, const CutHabit& habit, View view, QPointF from,
                   QPointF to, double diameter);

/// What drawing without a mouse starts from: midway between the axles, from above.
CutPlan usual_pocket(const CarPlan& plan, const CarShape& shape, const CutHabit& habit);
CutPlan usual_bore(const CarPlan& plan, const CarShape& shape, const CutHabit& habit, double diameter);

/// The highest and the lowest wood between two places along the car, m; {0, 0} where there is none.
std::pair<double, double> wood_between(const CarShape& shape, double x0, double x1);

} // namespace rampwright::ui
