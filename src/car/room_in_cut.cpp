#include "car/room_in_cut.hpp"

#include "car/fit.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright {

double room_in_cut(const CarPlan& plan, std::size_t cut, const Cut& cavity, const BodyOutlines& outlines) {
    BallastPlan pinch;
    pinch.shape = PieceShape::putty;
    pinch.mass = 1e-6;
    double room = fill_with_putty(pinch, plan.body.cuts[cut], outlines).capacity;
    for (const BallastPlan& each : plan.ballast) {
        if (find_cut(plan.body.cuts, each.in) != cut) continue;
        if (const auto piece = piece_of(each))
            room -= volume_in_cuts(*piece, std::span(&cavity, 1));
        else
            room -= each.mass / putty_density(each.material);
    }
    return room;
}

double room_to_slide(const CarPlan& plan, std::size_t weight, const BodyShape& body, double wanted) {
    const auto piece = piece_of(plan.ballast[weight]);
    if (!piece || wanted == 0) return 0;
    const auto cut = find_cut(plan.body.cuts, plan.ballast[weight].in);
    std::vector<Piece> others;
    for (std::size_t i = 0; i < plan.ballast.size(); ++i)
        if (const auto other = piece_of(plan.ballast[i]); other && i != weight) others.push_back(*other);
    // How much is wrong at a place: lengths for the cut, volumes for the wood and for other weights.
    struct Wrong {
        double out = 0, wood = 0, common = 0;
    };
    const auto at = [&](double by) {
        Piece moved = *piece;
        moved.centre.x() += by;
        Wrong wrong;
        if (cut)
            wrong.out = sticking_out(moved, body.cuts[*cut]).depth;
        else
            wrong.wood = volume_in_wood(moved, body);
        for (const Piece& other : others)
            wrong.common += overlap(moved, other);
        return wrong;
    };
    const Wrong now = at(0);
    const auto fits = [&](double by) {
        const Wrong then = at(by);
        return then.out <= now.out + least_length && then.wood <= now.wood + least_volume &&
               then.common <= now.common + least_volume;
    };
    // Small steps first: a weight does not pass through another.
    const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(wanted) / 2e-3)));
    double low = 0;
    for (int n = 1; n <= steps; ++n) {
        double high = wanted * n / steps;
        if (fits(high)) {
            low = high;
            continue;
        }
        for (int i = 0; i < 12; ++i) {
            const double middle = (low + high) / 2;
            (fits(middle) ? low : high) = middle;
        }
        return low;
    }
    return wanted;
}

} // namespace rampwright
