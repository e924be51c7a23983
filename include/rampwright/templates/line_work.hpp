#pragma once

#include <rampwright/car/car_model.hpp>

#include <array>
#include <optional>
#include <string>
#include <vector>

/// The wooden body as lines on paper: what templates, drawing exports and the build sheet draw. Lengths in m,
/// in the view's own plane: side (x, z), seen from the car's right, nose to the right; top (x, y).
namespace rampwright {

enum class TemplateView { side, top };

enum class LineRole {
    outline, ///< of the uncut wood
    cut,     ///< edges of a pocket or a bore
    hole,    ///< of an axle's hole or slot
    centre,  ///< axes of bores and holes, the car's plane of symmetry
    ballast, ///< outline of a weight in its place
};

/// One piece of a line: a cubic Bézier curve, or a straight line (its inner control points at the thirds).
struct Stroke {
    std::array<Vec2, 4> control;
    bool straight = true;
};

struct Circle {
    Vec2 centre = Vec2::Zero();
    double radius = 0;
};

/// A line as it is drawn in one go.
struct LinePath {
    LineRole role = LineRole::outline;
    bool hidden = false;          ///< wood lies between it and the viewer: dashed (ISO 128)
    std::string key;              ///< JSON pointer of what it belongs to
    std::string name;             ///< the cut's or the weight's own, or "rear axle"; may be empty
    std::vector<Stroke> strokes;  ///< each begins where the one before ends; empty for a circle
    bool closed = false;          ///< the last stroke ends where the first begins
    std::optional<Circle> circle; ///< a whole circle
};

/// A name beside what it names; `at` is the middle of the text.
struct LineLabel {
    Vec2 at = Vec2::Zero();
    std::string text;
    LineRole role = LineRole::outline;
};

struct LineWork {
    TemplateView view = TemplateView::side;
    std::vector<LinePath> paths;                  ///< outline first
    std::vector<LineLabel> labels;                ///< one for each cut, axle and weight that shows
    Vec2 low = Vec2::Zero(), high = Vec2::Zero(); ///< box around the outline
};

/// The lines of one view, to scale.
///
/// A cut is drawn as far as it lies within the uncut outline of the view; its mouth, where it breaks through
/// the outline, has no line. It is hidden where most of it lies behind wood. Curves are exact but for
/// circles seen aslant, which are cubics within 0.03 % of their radius.
/// @param car the same car, put together (build_car).
/// @throws Problem as `measure` does.
LineWork draw_template(const CarPlan& plan, const CarModel& car, TemplateView view);

/// The path as points joined by straight lines, within `tolerance` (m); of a closed one the first is not
/// repeated.
std::vector<Vec2> flatten(const LinePath& path, double tolerance);

} // namespace rampwright
