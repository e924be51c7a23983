#pragma once

#include "drawing/drawing_map.hpp"

#include <QPainterPath>

#include <vector>

namespace rampwright::ui {

/// What a car looks like in the three views: outlines in each view's plane, m. Made from a plan at every
/// change; it knows nothing of pixels or colours.
struct CarShape {
    struct WheelShape {
        Corner corner = Corner::rear_left;
        Vec3 centre = Vec3::Zero();
        double radius = 0, width = 0, bore = 0;
        double tread_inner = 0, hub = 0; ///< radii of the section: where the tread ends, and the hub
        bool touches = true;
    };
    struct CutShape {
        std::string name;
        std::array<QPainterPath, 3> outline; ///< by View
        std::array<bool, 3> open{};          ///< seen from that side: no wood in front of it
    };
    struct BallastShape {
        std::array<QPainterPath, 3> outline;
        Vec3 at = Vec3::Zero();
        bool movable = true; ///< neither locked nor putty, which lies where its cut is
    };

    std::array<QPainterPath, 3> wood;
    double half_width = 0, height = 0;        ///< of the body at its widest and highest
    std::vector<CutShape> cuts;               ///< in the plan's order
    std::vector<BallastShape> ballast;        ///< in the plan's order
    std::array<WheelShape, 4> wheels;         ///< by Corner
    std::array<double, 2> axle_x{}, axle_z{}; ///< rear, front
    double shank = 0, head = 0, axle_length = 0;
    std::array<Vec2, 2> ground; ///< (x, z) where rear and front wheels stand

    CarExtent extent() const;
    /// Height of the running surface under x, car frame.
    double ground_at(double x) const;
};

CarShape make_car_shape(const CarPlan& plan);

/// A piece of ballast in a view; putty shows nothing by itself.
QPainterPath piece_outline(View view, const BallastPlan& piece);

} // namespace rampwright::ui
