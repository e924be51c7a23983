#include "body/pieces.hpp"
#include "body/region.hpp"

#include <rampwright/body/fit_volumes.hpp>

#include <algorithm>

namespace rampwright {

using namespace body_detail;

Moments moments(const Piece& piece) {
    return convex(piece).moments();
}

double volume_in_cuts(const Piece& piece, std::span<const Cut> cuts) {
    const Convex base = convex(piece);
    const auto box = base.bounds();
    std::vector<Convex> near;
    for (const auto& cut : cuts) {
        Convex c(cut);
        if (!box.intersection(c.bounds()).isEmpty()) near.push_back(std::move(c));
    }
    return near.empty() ? 0 : integrate({base, {}, nullptr, near}).volume;
}

double volume_out_of_cuts(const Piece& piece, std::span<const Cut> cuts) {
    return std::max(0., convex(piece).moments().volume - volume_in_cuts(piece, cuts));
}

double volume_in_wood(const Piece& piece, const BodyShape& body) {
    const Convex base = convex(piece);
    const Stock stock(body);
    const auto box = base.bounds();
    std::vector<Convex> near;
    for (const auto& cut : body.cuts) {
        Convex c(cut);
        if (!box.intersection(c.bounds()).isEmpty()) near.push_back(std::move(c));
    }
    const double in_body =
        stock.holds(box) ? base.moments().volume : integrate({base, {}, &stock, {}}).volume;
    if (near.empty()) return in_body;
    return std::max(0., in_body - integrate({base, {}, &stock, near}).volume);
}

double volume_out_of_body(const Piece& piece, const BodyShape& body) {
    const Convex base = convex(piece);
    const Stock stock(body);
    if (stock.holds(base.bounds())) return 0;
    return std::max(0., base.moments().volume - integrate({base, {}, &stock, {}}).volume);
}

double overlap(const Piece& one, const Piece& other) {
    const Convex base = convex(one);
    const std::vector<Convex> within{convex(other)};
    if (base.bounds().intersection(within[0].bounds()).isEmpty()) return 0;
    return integrate({base, within, nullptr, {}}).volume;
}

} // namespace rampwright
