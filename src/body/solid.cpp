#include "body/region.hpp"

#include <rampwright/body/solid.hpp>

#include <Eigen/Geometry>

#include <algorithm>

namespace rampwright {

namespace {

using namespace body_detail;

/// The part of a bore that opens the body at its start, and the rest, which lies in the wood as a whole: of
/// the rest everything is known in closed form.
bool split_off_inner(const Rod& rod, const Stock& stock, Rod& outer, Rod& inner) {
    const auto from = [&](double start) {
        Rod rest = rod;
        rest.from += start * rod.along;
        rest.length -= start;
        return rest;
    };
    if (!stock.holds(Convex(from(rod.length)).bounds())) return false;
    double open = 0, held = rod.length;
    for (int i = 0; i < 12; ++i) {
        const double mid = 0.5 * (open + held);
        (stock.holds(Convex(from(mid)).bounds()) ? held : open) = mid;
    }
    inner = from(held);
    outer = rod;
    outer.length = held;
    outer.tip = 0;
    return true;
}

/// What a cut alone takes out of the uncut body.
Moments alone(const Convex& cut, const Stock& stock) {
    if (stock.holds(cut.bounds())) return cut.moments();
    if (const auto* rod = std::get_if<Rod>(&cut.shape()); rod && rod->tip > 0) {
        Rod outer, inner;
        if (split_off_inner(*rod, stock, outer, inner))
            return Convex(inner).moments() + integrate({Convex(outer), {}, &stock, {}});
    }
    return integrate({cut, {}, &stock, {}});
}

} // namespace

BodyMeasure measure(const BodyShape& shape) {
    const Stock stock(shape);
    BodyMeasure result;
    result.uncut = stock.moments();
    result.wood = result.uncut;
    const std::vector<Convex> cuts(shape.cuts.begin(), shape.cuts.end());
    std::vector<Eigen::AlignedBox3d> bounds;
    std::vector<Convex> earlier;
    for (size_t i = 0; i < cuts.size(); ++i) {
        bounds.push_back(cuts[i].bounds());
        result.removed.push_back(alone(cuts[i], stock));
        result.wood -= result.removed.back();
        // What an earlier cut has taken already is not there to be taken again.
        earlier.clear();
        for (size_t j = 0; j < i; ++j)
            if (!bounds[i].intersection(bounds[j]).isEmpty()) earlier.push_back(cuts[j]);
        if (!earlier.empty()) result.wood += integrate({cuts[i], {}, &stock, earlier});
    }
    return result;
}

std::vector<std::array<double, 2>> z_intervals(const BodyShape& shape, double x, double y) {
    const Stock stock(shape);
    std::vector<std::array<double, 2>> wood;
    std::vector<Rectangle> rectangles;
    stock.section(x, rectangles);
    for (const auto& r : rectangles)
        if (const Reach reach = r.section(0, 0, 1).at(y); !reach.empty())
            wood.push_back({reach.low, reach.high});
    std::sort(wood.begin(), wood.end());
    for (const auto& cut : shape.cuts) {
        const Section section = Convex(cut).section(x);
        if (section.empty()) continue;
        const Reach gone = section.at(y);
        if (gone.empty()) continue;
        std::vector<std::array<double, 2>> left;
        for (const auto& [low, high] : wood) {
            if (low < std::min(high, gone.low)) left.push_back({low, std::min(high, gone.low)});
            if (std::max(low, gone.high) < high) left.push_back({std::max(low, gone.high), high});
        }
        wood = std::move(left);
    }
    return wood;
}

} // namespace rampwright
