#pragma once

#include "body/cells.hpp"
#include "body/stock.hpp"

#include <vector>

namespace rampwright::body_detail {

/// A stretch of the uncut body along x: what lies in any of `solids`, which do not overlap.
struct Slab {
    double x0 = 0, x1 = 0;
    std::vector<ConvexSolid> solids; ///< bounded across x; the slab itself bounds them along it
};

/// The uncut body as slabs, one after the other without gaps, from its tail to its nose. @param chord m.
std::vector<Slab> slabs_of(const Stock& stock, double chord);

/// A cut as a convex solid, the planes that divide most first; empty where it has no extent.
ConvexSolid solid_of(const Cut& cut, double chord);

} // namespace rampwright::body_detail
