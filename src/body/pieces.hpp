#pragma once

#include "body/convex.hpp"

#include <rampwright/body/fit_volumes.hpp>

namespace rampwright::body_detail {

Convex convex(const Piece& piece);

/// The surface of a convex solid as a few faces, each a map from the unit square; for searches of the
/// farthest or nearest point.
struct Face {
    const Convex* solid;
    int index;
    Eigen::Vector3d at(double u, double v) const;
    Eigen::Vector3d outward(double u, double v) const; ///< unit normal
};
std::vector<Face> faces(const Convex& solid);

/// Finds the (u, v) of a face where `value` is greatest: a coarse grid, then a pattern search from its best
/// place. `value` may be -infinity where a point doesn't count. Returns the value, and the place.
struct Best {
    double value = -endless;
    double u = 0, v = 0;
};
template <class F>
Best greatest(F&& value, int grid = 8, double finest = 1e-7) {
    Best best;
    for (int i = 0; i <= grid; ++i)
        for (int j = 0; j <= grid; ++j) {
            const double u = double(i) / grid, v = double(j) / grid, here = value(u, v);
            if (here > best.value) best = {here, u, v};
        }
    if (best.value == -endless) return best;
    for (double step = 0.5 / grid; step > finest;) {
        Best next = best;
        for (int i = -1; i <= 1; ++i)
            for (int j = -1; j <= 1; ++j) {
                if (i == 0 && j == 0) continue;
                const double u = std::clamp(best.u + i * step, 0., 1.),
                             v = std::clamp(best.v + j * step, 0., 1.);
                const double here = value(u, v);
                if (here > next.value) next = {here, u, v};
            }
        if (next.value > best.value)
            best = next;
        else
            step /= 2;
    }
    return best;
}

} // namespace rampwright::body_detail
