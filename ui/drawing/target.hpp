#pragma once

#include "drawing/car_shape.hpp"

#include <rampwright/project/group_edits.hpp>

#include <optional>
#include <string>
#include <vector>

namespace rampwright::ui {

/// What a hand can take hold of on the drawing.
enum class TargetKind { piece, profile_point, plan_point, cut, cut_corner, axle };

/// One such thing. `index` counts in the plan's own list (axle: 0 rear, 1 front); a cut's corner is named by
/// which of its low and high faces meet there in the view's plane (bit 0 across, bit 1 up), and a bore's by
/// its end (0 from, 1 to).
struct Target {
    TargetKind kind = TargetKind::piece;
    std::size_t index = 0;
    int corner = 0;
    bool operator==(const Target&) const = default;
};

/// What the step in hand lets one touch.
enum class Reach { weight, wood, wheels, nothing };

/// The point of a target that keeps to the grid, m, car frame.
Vec3 anchor_of(const CarPlan& plan, const Target& target, View view);

/// The targets that can be taken hold of in a view, uppermost first.
std::vector<Target> targets_in(const CarPlan& plan, View view, Reach reach);

/// Whether the hand at `pixel` is on a target. @param grasp how far it may miss, px.
bool hits(const CarPlan& plan, const CarShape& shape, const DrawingMap& map, View view, const Target& target,
          const QPointF& pixel, double grasp);

/// What is under the hand: handles before what lies below them, exact hits before near misses.
std::optional<Target> pick(const CarPlan& plan, const CarShape& shape, const DrawingMap& map, View view,
                           Reach reach, const QPointF& pixel);

/// Why a target will not move; empty where it does.
QString why_stuck(const CarPlan& plan, const Target& target);

/// The edit that brings a target's anchor to `to`; a piece of ballast goes along into the cut it is brought
/// over. @param plan the car as `document` has it, with the cuts that `shape` shows.
Edit move_target(const Document& document, const CarPlan& plan, const CarShape& shape, std::size_t car,
                 const Target& target, View view, const Vec3& to);

/// Whether a target can be one of several that are chosen together; a cut's corner stands for its cut.
bool goes_with_others(const Target& target);
/// The pieces and cuts among targets, and the other way round.
Group group_of(const std::vector<Target>& targets);
std::vector<Target> targets_of(const Group& group);

/// The edit that moves several pieces and cuts by one way; each piece goes into the cut it is brought over,
/// as it would alone. What stays put is left out.
Edit move_together(const Document& document, const CarPlan& plan, const CarShape& shape, std::size_t car,
                   const Group& group, View view, const Vec3& by);

/// The edit that takes a target away; nothing where it cannot be.
std::optional<Edit> remove_target(const Document& document, std::size_t car, const Target& target);

/// What a target is called: "tungsten cube", "profile point 3".
QString name_of(const CarPlan& plan, const Target& target);

} // namespace rampwright::ui
