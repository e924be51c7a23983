#include "drawing/shelf_drop.hpp"

#include "drawing/cut_drawing.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::ui {
namespace {

constexpr const char* shelf_format = "application/x-rampwright-shelf-piece";

/// Half of the room a piece takes along x, y and z.
Vec3 half_extent(const ShelfPiece& piece, int axis) {
    const auto size = [&](std::size_t i) { return i < piece.size.size() ? piece.size[i] : 0.0; };
    switch (piece.shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        return Vec3(size(0), size(1), size(2)) / 2;
    case PieceShape::cylinder: {
        Vec3 half = Vec3::Constant(size(0) / 2);
        half[axis] = size(1) / 2;
        return half;
    }
    case PieceShape::sphere:
        return Vec3::Constant(size(0) / 2);
    case PieceShape::putty:
        break;
    }
    return Vec3::Zero();
}

/// As near to `wish` as a thing of that half size can be between two walls; midway where it does not fit.
double fit_between(double low, double high, double half, double wish) {
    return high - low < 2 * half ? (low + high) / 2 : std::clamp(wish, low + half, high - half);
}

double on_grid(double value, double step) {
    return step > 0 ? std::round(value / step) * step : value;
}

const CutPlan* cut_under(const CarPlan& plan, const CarShape& shape, const DrawingMap& map, View view,
                         const QPointF& pixel) {
    for (std::size_t i = plan.body.cuts.size(); i-- > 0;)
        if (map.transform(view).map(shape.cuts[i].outline[index(view)]).contains(pixel))
            return &plan.body.cuts[i];
    return nullptr;
}

/// The wood's own room: what is cut outside of it holds nothing.
std::pair<Vec3, Vec3> wood_box(const CarShape& shape, double x0, double x1) {
    const QRectF side = shape.wood[index(View::side)].boundingRect();
    const auto [top, bottom] = wood_between(shape, x0, x1);
    return {{side.left(), -shape.half_width, bottom}, {side.right(), shape.half_width, top}};
}

Placement into_pocket(const ShelfPiece& piece, const CarShape& shape, const CutPlan& cut, const Vec3& wish,
                      std::optional<int> axis) {
    Placement placement;
    placement.in = cut.name;
    placement.axis = axis.value_or(0);
    Vec3 low = cut.from.cwiseMin(cut.to), high = cut.from.cwiseMax(cut.to);
    const auto [wood_low, wood_high] = wood_box(shape, low.x(), high.x());
    low = low.cwiseMax(wood_low);
    high = high.cwiseMin(wood_high);
    const Vec3 half = half_extent(piece, placement.axis);
    placement.at = {fit_between(low.x(), high.x(), half.x(), wish.x()),
                    fit_between(low.y(), high.y(), half.y(), wish.y()), low.z() + half.z()};
    return placement;
}

Placement into_bore(const ShelfPiece& piece, const CarShape& shape, const CutPlan& cut, const Vec3& wish,
                    std::optional<int> own_axis) {
    Placement placement;
    placement.in = cut.name;
    const Vec3 along = (cut.to - cut.from).normalized();
    int axis = 0;
    along.cwiseAbs().maxCoeff(&axis);
    placement.axis = own_axis.value_or(piece.shape == PieceShape::cylinder ? axis : 0);
    const Vec3 half = half_extent(piece, placement.axis);
    const double length = (cut.to - cut.from).norm();
    // Upright, it lies on the lower end; lying, where the hand is, on the bottom of the hole.
    const bool upright = axis == 2;
    const bool down = along.z() < 0;
    const double way = upright ? (down ? length - half.z() : half.z())
                               : fit_between(0, length, half[axis], (wish - cut.from).dot(along));
    placement.at = cut.from + way * along;
    if (upright) {
        const auto [low, high] = wood_box(shape, placement.at.x(), placement.at.x());
        placement.at.z() = std::max(placement.at.z(), low.z() + half.z());
    } else if (piece.shape == PieceShape::cylinder || piece.shape == PieceShape::sphere) {
        placement.at.z() -= std::max(0.0, cut.diameter / 2 - half.z());
    }
    return placement;
}

/// @param axis a cylinder's own, where it keeps that.
Placement into_cut(const ShelfPiece& piece, const CarShape& shape, const CutPlan& cut, const Vec3& wish,
                   std::optional<int> axis = {}) {
    return cut.is_bore ? into_bore(piece, shape, cut, wish, axis)
                       : into_pocket(piece, shape, cut, wish, axis);
}

/// Whether a cut is where a piece is dragged: it lies under its middle in the view and, but from above, at
/// its depth.
bool is_at(const CutPlan& cut, const QPainterPath& outline, View view, const Vec3& at) {
    const auto axes = axes_of(view);
    if (!outline.contains({at[axes[0]], at[axes[1]]})) return false;
    if (view == View::top) return true;
    const int depth = 3 - axes[0] - axes[1];
    const double reach = cut.is_bore ? cut.diameter / 2 : 0;
    const auto [low, high] = std::minmax(cut.from[depth], cut.to[depth]);
    return low - reach <= at[depth] && at[depth] <= high + reach;
}

} // namespace

std::unique_ptr<QMimeData> shelf_mime(std::size_t shelf) {
    auto mime = std::make_unique<QMimeData>();
    mime->setData(QLatin1String(shelf_format), QByteArray::number(qulonglong(shelf)));
    return mime;
}

std::optional<std::size_t> shelf_piece_in(const QMimeData* mime) {
    if (!mime || !mime->hasFormat(QLatin1String(shelf_format))) return {};
    bool whole = false;
    const auto shelf = mime->data(QLatin1String(shelf_format)).toULongLong(&whole);
    return whole ? std::optional<std::size_t>(shelf) : std::nullopt;
}

Placement place_piece(const ShelfPiece& piece, const CarPlan& plan, const CarShape& shape,
                      const DrawingMap& map, View view, const QPointF& pixel, double step) {
    Vec3 wish((plan.axles.rear_x + plan.axles.front_x) / 2, 0, 0);
    const CutPlan* cut = cut_under(plan, shape, map, view, pixel);
    if (cut) wish = (cut->from + cut->to) / 2;
    wish = map.to_model(view, pixel, wish);
    for (const int axis : axes_of(view))
        wish[axis] = on_grid(wish[axis], step);
    if (cut) return into_cut(piece, shape, *cut, wish);
    Placement placement;
    placement.at = wish;
    const Vec3 half = half_extent(piece, placement.axis);
    if (view == View::top)
        placement.at.z() = wood_between(shape, wish.x() - half.x(), wish.x() + half.x()).first + half.z();
    return placement;
}

Placement place_piece_somewhere(const ShelfPiece& piece, const CarPlan& plan, const CarShape& shape) {
    if (!plan.body.cuts.empty()) {
        const CutPlan& cut = plan.body.cuts.back();
        return into_cut(piece, shape, cut, (cut.from + cut.to) / 2);
    }
    Placement placement;
    const double x = (plan.axles.rear_x + plan.axles.front_x) / 2;
    const Vec3 half = half_extent(piece, placement.axis);
    placement.at = {x, 0, wood_between(shape, x - half.x(), x + half.x()).first + half.z()};
    return placement;
}

Placement drag_piece(const CarPlan& plan, const CarShape& shape, std::size_t index, View view,
                     const Vec3& to) {
    const BallastPlan& piece = plan.ballast[index];
    const auto& cuts = plan.body.cuts;
    const auto outline_of = [&](const CutPlan& cut) -> const QPainterPath& {
        return shape.cuts[static_cast<std::size_t>(&cut - cuts.data())].outline[rampwright::ui::index(view)];
    };
    Placement placement{to, piece.axis, piece.in};
    const auto axes = axes_of(view);
    const auto own = find_cut(cuts, piece.in);
    if (own && outline_of(cuts[*own]).contains({to[axes[0]], to[axes[1]]})) return placement;
    const auto other = std::find_if(cuts.rbegin(), cuts.rend(), [&](const CutPlan& cut) {
        return is_at(cut, outline_of(cut), view, to);
    });
    if (other != cuts.rend()) {
        placement.in = other->name;
        ShelfPiece as_piece;
        as_piece.shape = piece.shape;
        as_piece.size = piece.size;
        const int depth = 3 - axes[0] - axes[1];
        placement.at[depth] = into_cut(as_piece, shape, *other, to, piece.axis).at[depth];
    } else if (own) {
        QRectF room = shape.ballast[index].outline[rampwright::ui::index(view)].boundingRect();
        room.moveCenter({to[axes[0]], to[axes[1]]});
        if (!outline_of(cuts[*own]).intersects(room)) placement.in.clear();
    }
    return placement;
}

BallastPlan ghost_of(const ShelfPiece& piece, const Placement& placement) {
    BallastPlan ghost;
    ghost.name = piece.name;
    ghost.shape = piece.shape;
    ghost.size = piece.size;
    ghost.at = placement.at;
    ghost.axis = placement.axis;
    ghost.in = placement.in;
    return ghost;
}

} // namespace rampwright::ui
