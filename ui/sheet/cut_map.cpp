#include "sheet/cut_map.hpp"

#include "drawing/outline.hpp"

#include <rampwright/body/solid.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace rampwright::ui::paper {
namespace {

constexpr double hair = 1e-6; ///< m: closer than this counts as there

constexpr std::array all_faces{Face::top, Face::bottom, Face::right, Face::left, Face::tail, Face::nose};

int axis_of(Face face) {
    return face == Face::top || face == Face::bottom ? 2 : face == Face::right || face == Face::left ? 1 : 0;
}

/// Whether the face lies at the high end of its axis.
bool is_high(Face face) {
    return face == Face::top || face == Face::left || face == Face::nose;
}

Face opposite(Face face) {
    switch (face) {
    case Face::top:
        return Face::bottom;
    case Face::bottom:
        return Face::top;
    case Face::right:
        return Face::left;
    case Face::left:
        return Face::right;
    case Face::tail:
        return Face::nose;
    case Face::nose:
        break;
    }
    return Face::tail;
}

/// Where the sawn surface and the block's own face lie along a face's axis.
class Surfaces {
public:
    Surfaces(const CarPlan& plan, const CarShape& shape)
        : side_(shape.wood[index(View::side)]), top_(shape.wood[index(View::top)]), block_(plan.body.block) {}

    double sawn(Face face, double x) const {
        const QRectF box = side_.boundingRect();
        if (axis_of(face) == 0) return face == Face::nose ? box.right() : box.left();
        const auto [low, high] = span_at(axis_of(face) == 2 ? side_ : top_, x);
        return is_high(face) ? high : low;
    }
    double block(Face face) const {
        const int axis = axis_of(face);
        if (axis == 1) return (is_high(face) ? 0.5 : -0.5) * block_.y();
        return is_high(face) ? block_[axis] : 0;
    }
    std::pair<double, double> along() const {
        const QRectF a = side_.boundingRect(), b = top_.boundingRect();
        return {std::max(a.left(), b.left()), std::min(a.right(), b.right())};
    }

private:
    const QPainterPath &side_, &top_;
    Vec3 block_;
};

/// The box around a cut, its ends cut off flat.
void set_box(CutPlace& place, const Vec3& block) {
    const CutPlan& cut = *place.cut;
    place.low = cut.from.cwiseMin(cut.to);
    place.high = cut.from.cwiseMax(cut.to);
    if (cut.is_bore) {
        const Vec3 along = (cut.to - cut.from).normalized();
        for (int axis = 0; axis < 3; ++axis) {
            const double reach = cut.diameter / 2 * std::sqrt(std::max(0.0, 1 - along[axis] * along[axis]));
            place.low[axis] -= reach;
            place.high[axis] += reach;
        }
        place.slanted = along.cwiseAbs().maxCoeff() < 1 - 1e-9;
        if (cut.pointed) place.point = cut.diameter / 2 / std::tan(drill_point_angle / 2);
    }
    const Vec3 least(0, -block.y() / 2, 0), most(block.x(), block.y() / 2, block.z());
    place.low = place.low.cwiseMax(least).cwiseMin(most);
    place.high = place.high.cwiseMin(most).cwiseMax(least);
}

/// Places along the cut at which a curved surface is looked at.
std::vector<double> stations(const CutPlace& place, const Surfaces& surfaces) {
    const auto [first, last] = surfaces.along();
    const double from = std::clamp(place.low.x(), first, last), to = std::clamp(place.high.x(), first, last);
    constexpr int count = 16;
    std::vector<double> places;
    for (int i = 0; i <= count; ++i)
        places.push_back(from + (to - from) * i / count);
    return places;
}

bool breaks_through(const CutPlace& place, const Surfaces& surfaces, Face face) {
    const CutPlan& cut = *place.cut;
    const int axis = axis_of(face);
    // A bore comes in along its own axis.
    if (cut.is_bore && !place.slanted && std::abs(cut.to[axis] - cut.from[axis]) < hair) return false;
    const Vec3 low = cut.is_bore && !place.slanted ? cut.from.cwiseMin(cut.to) : place.low;
    const Vec3 high = cut.is_bore && !place.slanted ? cut.from.cwiseMax(cut.to) : place.high;
    const double surface = surfaces.sawn(face, (place.low.x() + place.high.x()) / 2);
    return is_high(face) ? high[axis] >= surface - hair : low[axis] <= surface + hair;
}

void set_depths(CutPlace& place, const Surfaces& surfaces) {
    const Face face = *place.opens;
    const int axis = axis_of(face);
    const double sign = is_high(face) ? 1 : -1;
    const double floor = is_high(face) ? place.low[axis] : place.high[axis];
    place.least_depth = std::numeric_limits<double>::infinity();
    place.greatest_depth = 0;
    place.left_standing = std::numeric_limits<double>::infinity();
    for (const double x : stations(place, surfaces)) {
        const double depth = sign * (surfaces.sawn(face, x) - floor);
        place.least_depth = std::min(place.least_depth, depth);
        place.greatest_depth = std::max(place.greatest_depth, depth);
        place.left_standing =
            std::min(place.left_standing, sign * (floor - surfaces.sawn(opposite(face), x)) - place.point);
    }
    place.left_standing = std::max(0.0, place.left_standing);
    place.depth_from_block = sign * (surfaces.block(face) - floor);
}

} // namespace

std::vector<CutPlace> find_cut_places(const CarPlan& plan, const CarShape& shape) {
    const Surfaces surfaces(plan, shape);
    std::vector<CutPlace> places;
    for (const CutPlan& cut : plan.body.cuts) {
        CutPlace place;
        place.cut = &cut;
        set_box(place, plan.body.block);
        const auto face = std::find_if(all_faces.begin(), all_faces.end(),
                                       [&](Face each) { return breaks_through(place, surfaces, each); });
        if (face != all_faces.end()) {
            place.opens = *face;
            place.through = breaks_through(place, surfaces, opposite(*face));
            set_depths(place, surfaces);
        }
        places.push_back(place);
    }
    return places;
}

} // namespace rampwright::ui::paper
