#include "car/fit.hpp"
#include "car/room_in_cut.hpp"
#include "car/running_surface.hpp"

#include <rampwright/core/constants.hpp>

#include <algorithm>

namespace rampwright {

namespace {

std::string key_of(const FitCase& fit, std::size_t piece) {
    return fit.car.key + "/ballast/" + std::to_string(piece);
}

double in_mm3(double volume) {
    return volume * 1e9;
}

void check_piece(const FitCase& fit, std::size_t index, const Piece& piece, Findings& findings) {
    const auto held_by = find_cut(fit.plan.body.cuts, fit.plan.ballast[index].in);
    if (held_by) {
        const Cut& cavity = fit.cut.cuts[*held_by];
        const Protrusion out = sticking_out(piece, cavity);
        const double volume = out.depth > least_length ? volume_out_of_cuts(piece, std::span(&cavity, 1)) : 0;
        if (volume > least_volume)
            findings.push_back(
                make_finding("ballast-outside-cut", Severity::warning, key_of(fit, index), out.at,
                             {{"outside_mm", out.depth / millimetre}, {"outside_mm3", in_mm3(volume)}}));
    } else if (const double volume = volume_in_wood(piece, fit.cut); volume > least_volume) {
        findings.push_back(make_finding("ballast-in-wood", Severity::warning, key_of(fit, index),
                                        piece.centre, {{"overlap_mm3", in_mm3(volume)}}));
    }
    const Protrusion out = past_body(piece, fit.uncut);
    const double volume = out.depth > least_length ? volume_out_of_body(piece, fit.uncut) : 0;
    if (volume > least_volume)
        findings.push_back(
            make_finding("ballast-outside-body", Severity::warning, key_of(fit, index), out.at,
                         {{"outside_mm", out.depth / millimetre}, {"outside_mm3", in_mm3(volume)}}));
}

/// Putty rises by what stands in it, so a cut is full where all that is in it takes more than its room.
void check_putty(const FitCase& fit, std::size_t index, Findings& findings) {
    const auto held_by = find_cut(fit.plan.body.cuts, fit.plan.ballast[index].in);
    if (!held_by) return;
    const PuttyFill fill =
        fill_with_putty(fit.plan.ballast[index], fit.plan.body.cuts[*held_by], fit.outlines);
    if (fill.capacity <= 0) {
        findings.push_back(
            make_finding("ballast-lost", Severity::warning, key_of(fit, index), fill.properties.centre, {}));
        return;
    }
    const double excess = -room_in_cut(fit.plan, fit.car, *held_by, fit.cut.cuts[*held_by], fit.outlines);
    if (excess > least_volume + 1e-6 * fill.capacity)
        findings.push_back(
            make_finding("putty-overflows", Severity::warning, key_of(fit, index), fill.properties.centre,
                         {{"excess_mm3", in_mm3(excess)}, {"capacity_mm3", in_mm3(fill.capacity)}}));
}

/// How much room is between two solids, as far as `enough`: how much thicker the first could be.
double room_between(const Piece& one, const Piece& other, double enough) {
    const auto thicker = [&](double by) {
        Piece grown = one;
        grown.size += Vec3::Constant(2 * by);
        return grown;
    };
    if (overlap(thicker(enough), other) <= least_volume) return enough;
    double low = 0, high = enough;
    for (int i = 0; i < 12; ++i) { // to a quarter of a micrometre
        const double middle = (low + high) / 2;
        (overlap(thicker(middle), other) <= least_volume ? low : high) = middle;
    }
    return low;
}

/// Less room than this between a weight and something that has to stay clear of it is worth a note.
constexpr double near = 1 * millimetre;

void check_against(const FitCase& fit, std::size_t index, const Piece& weight, const Piece& obstacle,
                   const char* meets, const char* passes, Corner corner, Findings& findings) {
    const auto half_diagonal = [](const Piece& p) { return p.size.norm(); }; // more than enough for any kind
    if ((weight.centre - obstacle.centre).norm() > half_diagonal(weight) + half_diagonal(obstacle) + near)
        return;
    const double common = overlap(obstacle, weight);
    const double number = static_cast<double>(corner);
    if (common > least_volume) {
        findings.push_back(make_finding(meets, Severity::warning, key_of(fit, index), weight.centre,
                                        {{"overlap_mm3", in_mm3(common)}, {"corner", number}}));
    } else if (const double room = room_between(obstacle, weight, near); room < near) {
        findings.push_back(make_finding(passes, Severity::note, key_of(fit, index), weight.centre,
                                        {{"clearance_mm", room / millimetre}, {"corner", number}}));
    }
}

} // namespace

std::optional<Piece> piece_of(const BallastPlan& plan) {
    Piece piece;
    piece.centre = plan.at;
    piece.turned = plan.turned;
    switch (plan.shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        piece.size = {plan.size[0], plan.size[1], plan.size[2]};
        return piece;
    case PieceShape::cylinder:
        piece.kind = Piece::Kind::cylinder;
        piece.size = {plan.size[0], plan.size[1], 0};
        piece.axis = Vec3::Unit(plan.axis);
        return piece;
    case PieceShape::sphere:
        piece.kind = Piece::Kind::sphere;
        piece.size = {plan.size[0], 0, 0};
        return piece;
    case PieceShape::putty:
        break;
    }
    return std::nullopt;
}

void check_ballast(const FitCase& fit, Findings& findings) {
    const auto& ballast = fit.plan.ballast;
    for (std::size_t i = 0; i < ballast.size(); ++i) {
        const auto piece = piece_of(ballast[i]);
        if (!piece) {
            check_putty(fit, i, findings);
            continue;
        }
        check_piece(fit, i, *piece, findings);
        for (std::size_t k = i + 1; k < ballast.size(); ++k) {
            const auto other = piece_of(ballast[k]);
            if (!other || !box_around(ballast[i])->intersects(*box_around(ballast[k]))) continue;
            const double common = overlap(*piece, *other);
            if (common > least_volume)
                findings.push_back(make_finding(
                    "ballast-overlap", Severity::warning, key_of(fit, i), (piece->centre + other->centre) / 2,
                    {{"overlap_mm3", in_mm3(common)}, {"other", static_cast<double>(k)}}));
        }
    }
}

void check_ballast_clearance(const FitCase& fit, Findings& findings) {
    const RunningSurface surface = find_running_surface(fit.car);
    for (std::size_t i = 0; i < fit.plan.ballast.size(); ++i) {
        const auto weight = piece_of(fit.plan.ballast[i]);
        if (!weight) continue;
        for (const Wheel& wheel : fit.car.wheels) {
            check_against(fit, i, *weight, piece_of(wheel), "wheel-meets-ballast", "ballast-near-wheel",
                          wheel.corner, findings);
            check_against(fit, i, *weight, piece_of(axle_shape(fit.plan.axles, wheel)),
                          "axle-through-ballast", "ballast-near-axle", wheel.corner, findings);
        }
        // Only a weight that is the car's lowest thing catches what the wood would clear.
        const Eigen::AlignedBox3d around = *box_around(fit.plan.ballast[i]);
        const double lowest = std::min(surface.height({around.min().x(), 0, around.min().z()}),
                                       surface.height({around.max().x(), 0, around.min().z()}));
        constexpr double low = 5 * millimetre;
        if (lowest < low && around.min().z() < fit.outlines.profile.across().low - least_length)
            findings.push_back(make_finding("ballast-near-track", Severity::warning, key_of(fit, i),
                                            weight->centre, {{"clearance_mm", lowest / millimetre}}));
    }
}

} // namespace rampwright
