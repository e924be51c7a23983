#include "trace/take_in.hpp"

#include <rampwright/body/fit_outline.hpp>
#include <rampwright/core/constants.hpp>

#include <Eigen/Geometry>

#include <algorithm>

namespace rampwright::ui {

Vec2 place_of_outline(const BodyPlan& body, bool plan) {
    Outline outline;
    for (const PlanPoint& point : plan ? body.plan : body.profile)
        outline.push_back({point.at, point.smooth});
    Eigen::AlignedBox2d box;
    for (const Vec2& p : flatten(outline, outline_tolerance / 50))
        box.extend(p);
    return {box.min().x(), plan ? box.center().y() : box.min().y()};
}

std::vector<PlanPoint> outline_from(const DrawnShape& shape, const TakeIn& how) {
    const double scale = how.factor * millimetre;
    const Vec2 from(how.mirrored ? shape.high.x() : shape.low.x(),
                    how.plan ? (shape.low.y() + shape.high.y()) / 2 : shape.low.y());
    DrawnLine line = shape.line;
    for (OutlinePiece& piece : line.pieces)
        for (Vec2& p : piece.control) {
            p = scale * (p - from);
            if (how.mirrored) p.x() = -p.x();
            p += how.place;
        }
    std::vector<PlanPoint> points;
    const Outline outline = fit_outline(line, outline_tolerance);
    for (const OutlinePoint& point : outline)
        points.push_back({point.at, point.smooth});
    check_outline(outline, "-");
    return points;
}

} // namespace rampwright::ui
