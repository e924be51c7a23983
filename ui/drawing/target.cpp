#include "drawing/target.hpp"

#include "drawing/shelf_drop.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

struct TargetText {
    Q_DECLARE_TR_FUNCTIONS(rampwright::ui::Target)
};

constexpr double handle_reach = 6; // px

bool is_handle(TargetKind kind) {
    return kind != TargetKind::piece && kind != TargetKind::cut;
}

/// The corner of a pocket, or the end of a bore, that a target names.
Vec3 corner_place(const CutPlan& cut, int corner, View view) {
    if (cut.is_bore) return corner == 0 ? cut.from : cut.to;
    const Vec3 low = cut.from.cwiseMin(cut.to), high = cut.from.cwiseMax(cut.to);
    const auto axes = axes_of(view);
    Vec3 at = (low + high) / 2;
    at[axes[0]] = corner & 1 ? high[axes[0]] : low[axes[0]];
    at[axes[1]] = corner & 2 ? high[axes[1]] : low[axes[1]];
    return at;
}

Edit move_corner(const Document& document, const CutPlan& cut, std::size_t car, const Target& target,
                 View view, const Vec3& to) {
    if (cut.is_bore)
        return move_cut(document, car, target.index, target.corner == 0 ? to : cut.from,
                        target.corner == 1 ? to : cut.to);
    Vec3 from = cut.from, far = cut.to;
    const auto axes = axes_of(view);
    for (const std::size_t i : {0, 1}) {
        const int axis = axes[i];
        const bool high = target.corner & (i == 0 ? 1 : 2);
        // The face that is moved may be either of the file's two points.
        double& face = (from[axis] > far[axis]) == high ? from[axis] : far[axis];
        face = to[axis];
    }
    return move_cut(document, car, target.index, from, far);
}

} // namespace

Vec3 anchor_of(const CarPlan& plan, const Target& target, View view) {
    switch (target.kind) {
    case TargetKind::piece:
        return plan.ballast[target.index].at;
    case TargetKind::profile_point: {
        const Vec2& at = plan.body.profile[target.index].at;
        return {at.x(), 0, at.y()};
    }
    case TargetKind::plan_point: {
        const Vec2& at = plan.body.plan[target.index].at;
        return {at.x(), at.y(), 0};
    }
    case TargetKind::cut:
        return plan.body.cuts[target.index].from;
    case TargetKind::cut_corner:
        return corner_place(plan.body.cuts[target.index], target.corner, view);
    case TargetKind::axle:
        break;
    }
    return target.index == 0 ? Vec3(plan.axles.rear_x, 0, plan.axles.rear_z)
                             : Vec3(plan.axles.front_x, 0, plan.axles.front_z);
}

std::vector<Target> targets_in(const CarPlan& plan, View view, Reach reach) {
    std::vector<Target> targets;
    const auto add = [&](TargetKind kind, std::size_t index, int corner = 0) {
        targets.push_back({kind, index, corner});
    };
    switch (reach) {
    case Reach::weight:
        for (std::size_t i = plan.ballast.size(); i-- > 0;)
            add(TargetKind::piece, i);
        break;
    case Reach::wood:
        if (view == View::side)
            for (std::size_t i = 0; i < plan.body.profile.size(); ++i)
                add(TargetKind::profile_point, i);
        if (view == View::top)
            for (std::size_t i = 0; i < plan.body.plan.size(); ++i)
                add(TargetKind::plan_point, i);
        for (std::size_t i = plan.body.cuts.size(); i-- > 0;)
            for (int corner = 0; corner < (plan.body.cuts[i].is_bore ? 2 : 4); ++corner)
                add(TargetKind::cut_corner, i, corner);
        for (std::size_t i = plan.body.cuts.size(); i-- > 0;)
            add(TargetKind::cut, i);
        break;
    case Reach::wheels:
        if (view == View::side)
            for (const std::size_t end : {0, 1})
                add(TargetKind::axle, end);
        break;
    case Reach::nothing:
        break;
    }
    return targets;
}

bool hits(const CarPlan& plan, const CarShape& shape, const DrawingMap& map, View view, const Target& target,
          const QPointF& pixel, double grasp) {
    if (is_handle(target.kind)) {
        const QPointF away = map.to_pixel(view, anchor_of(plan, target, view)) - pixel;
        const double reach = target.kind == TargetKind::axle ? 12 : handle_reach;
        return std::max(std::abs(away.x()), std::abs(away.y())) <= reach + grasp;
    }
    const auto& outlines = target.kind == TargetKind::piece ? shape.ballast[target.index].outline
                                                            : shape.cuts[target.index].outline;
    const QPainterPath outline = map.transform(view).map(outlines[index(view)]);
    return outline.contains(pixel) || (grasp > 0 && outline.intersects(QRectF(pixel - QPointF(grasp, grasp),
                                                                              QSizeF(2 * grasp, 2 * grasp))));
}

std::optional<Target> pick(const CarPlan& plan, const CarShape& shape, const DrawingMap& map, View view,
                           Reach reach, const QPointF& pixel) {
    constexpr double near_miss = 4; // px
    const auto targets = targets_in(plan, view, reach);
    for (const double grasp : {0.0, near_miss}) {
        const auto found = std::find_if(targets.begin(), targets.end(), [&](const Target& each) {
            return hits(plan, shape, map, view, each, pixel, grasp);
        });
        if (found != targets.end()) return *found;
    }
    return {};
}

QString why_stuck(const CarPlan& plan, const Target& target) {
    switch (target.kind) {
    case TargetKind::piece:
        if (plan.ballast[target.index].fixed)
            return TargetText::tr("This piece is locked. Unlock it to move it.");
        if (plan.ballast[target.index].shape == PieceShape::putty)
            return TargetText::tr("Putty lies where its pocket is. Move the pocket to move it.");
        return {};
    case TargetKind::profile_point:
    case TargetKind::plan_point:
        return is_done(plan, "sawn") ? TargetText::tr("The wood is sawn: its outline stays.") : QString();
    case TargetKind::cut:
    case TargetKind::cut_corner:
    case TargetKind::axle:
        return is_done(plan, "drilled") ? TargetText::tr("The wood is drilled: holes and pockets stay.")
                                        : QString();
    }
    return {};
}

Edit move_target(const Document& document, const CarPlan& plan, const CarShape& shape, std::size_t car,
                 const Target& target, View view, const Vec3& to) {
    switch (target.kind) {
    case TargetKind::piece: {
        const Placement placement = drag_piece(plan, shape, target.index, view, to);
        return placement.in == plan.ballast[target.index].in
                   ? move_ballast(document, car, target.index, placement.at)
                   : move_ballast(document, car, target.index, placement.at, placement.in);
    }
    case TargetKind::profile_point:
        return move_outline_point(document, car, false, target.index, {to.x(), to.z()});
    case TargetKind::plan_point:
        return move_outline_point(document, car, true, target.index, {to.x(), to.y()});
    case TargetKind::cut: {
        const CutPlan& cut = plan.body.cuts[target.index];
        return move_cut(document, car, target.index, to, cut.to + (to - cut.from));
    }
    case TargetKind::cut_corner:
        return move_corner(document, plan.body.cuts[target.index], car, target, view, to);
    case TargetKind::axle:
        break;
    }
    return move_axle(document, car, target.index == 1, to.x(), to.z());
}

bool goes_with_others(const Target& target) {
    return target.kind == TargetKind::piece || target.kind == TargetKind::cut ||
           target.kind == TargetKind::cut_corner;
}

Group group_of(const std::vector<Target>& targets) {
    Group group;
    for (const Target& target : targets)
        if (target.kind == TargetKind::piece)
            group.pieces.push_back(target.index);
        else if (goes_with_others(target))
            group.cuts.push_back(target.index);
    return group;
}

std::vector<Target> targets_of(const Group& group) {
    std::vector<Target> targets;
    for (const std::size_t piece : group.pieces)
        targets.push_back({TargetKind::piece, piece, 0});
    for (const std::size_t cut : group.cuts)
        targets.push_back({TargetKind::cut, cut, 0});
    return targets;
}

Edit move_together(const Document& document, const CarPlan& plan, const CarShape& shape, std::size_t car,
                   const Group& group, View view, const Vec3& by) {
    const Group moved = movable(plan, group);
    std::vector<PieceMove> moves;
    for (const std::size_t piece : moved.pieces) {
        const Placement placement = drag_piece(plan, shape, piece, view, plan.ballast[piece].at + by);
        moves.push_back({piece, placement.at, placement.in});
    }
    return move_group(document, car, moves, moved.cuts, by);
}

std::optional<Edit> remove_target(const Document& document, std::size_t car, const Target& target) {
    switch (target.kind) {
    case TargetKind::piece:
        return remove_ballast(document, car, target.index);
    case TargetKind::profile_point:
        return remove_outline_point(document, car, false, target.index);
    case TargetKind::plan_point:
        return remove_outline_point(document, car, true, target.index);
    case TargetKind::cut:
    case TargetKind::cut_corner:
        return remove_cut(document, car, target.index);
    case TargetKind::axle:
        break;
    }
    return {};
}

QString name_of(const CarPlan& plan, const Target& target) {
    switch (target.kind) {
    case TargetKind::piece:
        return QString::fromStdString(plan.ballast[target.index].name);
    case TargetKind::profile_point:
        return TargetText::tr("profile point %1").arg(target.index + 1);
    case TargetKind::plan_point:
        return TargetText::tr("plan point %1").arg(target.index + 1);
    case TargetKind::cut:
    case TargetKind::cut_corner:
        return QString::fromStdString(plan.body.cuts[target.index].name);
    case TargetKind::axle:
        break;
    }
    return target.index == 0 ? TargetText::tr("rear axle") : TargetText::tr("front axle");
}

} // namespace rampwright::ui
