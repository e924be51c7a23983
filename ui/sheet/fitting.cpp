#include "sheet/fitting.hpp"

#include "text/said.hpp"

#include <rampwright/materials/materials.hpp>

#include <algorithm>
#include <array>
#include <numeric>
#include <tuple>

namespace rampwright::ui::paper {

std::vector<std::size_t> fitting_order(const CarPlan& plan, const CarShape& shape) {
    const std::vector<CutPlace> cuts = find_cut_places(plan, shape);
    const auto rank = [&](std::size_t i) {
        const BallastPlan& piece = plan.ballast[i];
        const auto cut = std::find_if(cuts.begin(), cuts.end(),
                                      [&](const CutPlace& each) { return each.cut->name == piece.in; });
        double from_tail = piece.at.x(), depth = 0;
        if (cut != cuts.end()) {
            from_tail = cut->low.x();
            const Face face = cut->opens.value_or(Face::top);
            const int axis = face == Face::top || face == Face::bottom   ? 2
                             : face == Face::right || face == Face::left ? 1
                                                                         : 0;
            const bool high = face == Face::top || face == Face::left || face == Face::nose;
            depth = high ? piece.at[axis] : -piece.at[axis];
        }
        return std::tuple(piece.shape == PieceShape::putty, cut == cuts.end(), from_tail, depth, piece.at.x(),
                          i);
    };
    std::vector<std::size_t> order(plan.ballast.size());
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    return order;
}

QString piece_words(const BallastPlan& piece, const Words& words) {
    const auto size = [&](std::size_t i) {
        return words.bare_length(i < piece.size.size() ? piece.size[i] : 0);
    };
    const QString unit = words.length_unit();
    QString text;
    switch (piece.shape) {
    case PieceShape::box:
        text = Words::tr("block %1 × %2 × %3 %4").arg(size(0), size(1), size(2), unit);
        break;
    case PieceShape::sheet:
        text = Words::tr("sheet %1 × %2, %3 %4 thick").arg(size(0), size(1), size(2), unit);
        break;
    case PieceShape::cylinder: {
        const std::array along{Words::tr("lengthways"), Words::tr("across"), Words::tr("upright")};
        text = Words::tr("rod ⌀ %1 × %2 %3, %4")
                   .arg(size(0), size(1), unit, along[static_cast<std::size_t>(piece.axis)]);
        break;
    }
    case PieceShape::sphere:
        text = Words::tr("ball ⌀ %1 %2").arg(size(0), unit);
        break;
    case PieceShape::putty:
        text = Words::tr("fills its cut from the floor up");
        break;
    }
    if (piece.turned != 0) text += Words::tr(", turned %1").arg(Words::angle(piece.turned));
    return piece.material.empty() ? text : QStringLiteral("%1, %2").arg(said(piece.material), text);
}

QString held_words(const BallastPlan& piece, const Words& words) {
    if (const Holding* holding = find_holding(piece.held))
        return Words::tr("%1, %2").arg(said(holding->name),
                                       words.mass(piece.held_mass.value_or(holding->mass.value)));
    if (piece.held_mass) return Words::tr("%1 of glue, screw or plug").arg(words.mass(*piece.held_mass));
    if (piece.shape == PieceShape::putty) return Words::tr("pressed in, tape over it where allowed");
    return Words::tr("glue or screw (not planned: weigh it)");
}

std::vector<std::string> piece_cautions(const BallastPlan& piece) {
    std::vector<std::string> codes;
    const auto take = [&](const std::vector<std::string>& more) {
        codes.insert(codes.end(), more.begin(), more.end());
    };
    if (const Material* material = find_material(piece.material)) take(material->cautions);
    if (const Holding* holding = find_holding(piece.held))
        take(holding->cautions);
    else if (piece.shape != PieceShape::putty)
        take({"glue"});
    if (piece.mass < 5e-3) take({"small-parts"});
    return codes;
}

} // namespace rampwright::ui::paper
