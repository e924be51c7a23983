#pragma once

#include "body/curve.hpp"

#include <array>
#include <limits>

namespace rampwright::body_detail {

inline constexpr double endless = std::numeric_limits<double>::infinity();

enum class Branch { none, lower, upper };

/// One bound on a section: z at least the `floor` branch and at most the `ceiling` branch of a curve, for
/// from <= y <= to. Where a conic has no z at that y, nothing of the section is left.
struct Limit {
    Curve curve;
    Branch floor = Branch::none, ceiling = Branch::none;
    double from = -endless, to = endless;

    static Limit above(double z0, double slope = 0) {
        return {Curve::straight(z0, slope), Branch::upper, Branch::none};
    }
    static Limit below(double z0, double slope = 0) {
        return {Curve::straight(z0, slope), Branch::none, Branch::upper};
    }
    static Limit between(const Curve& curve) { return {curve, Branch::lower, Branch::upper}; }
};

/// The one interval of z that a section has at a y, and which bounds make its ends: 2 x limit + (upper
/// branch).
struct Reach {
    double low = -endless, high = endless;
    int low_by = -1, high_by = -1;
    bool empty() const { return !(high > low); }
};

/// A region of the y-z plane that meets every vertical line in one interval: what lies in y0..y1 within every
/// limit.
struct Section {
    double y0 = 0, y1 = 0;
    std::array<Limit, 6> limits;
    int count = 0;

    bool empty() const { return !(y1 > y0); }
    void add(const Limit& limit) { limits[count++] = limit; }
    void keep_y(double low, double high) {
        y0 = std::max(y0, low);
        y1 = std::min(y1, high);
    }
    Reach at(double y) const {
        Reach reach;
        if (y < y0 || y > y1) {
            reach.high = reach.low;
            return reach;
        }
        for (int i = 0; i < count; ++i) {
            const Limit& limit = limits[i];
            if (y < limit.from || y > limit.to) continue;
            double root = 0;
            if (!limit.curve.line) {
                const double q = limit.curve.discriminant(y);
                if (q < 0) {
                    reach.high = reach.low;
                    return reach;
                }
                root = std::sqrt(q);
            }
            if (limit.floor != Branch::none) {
                const bool upper = limit.floor == Branch::upper;
                const double z = limit.curve.branch(upper, y, root);
                if (z > reach.low) {
                    reach.low = z;
                    reach.low_by = 2 * i + upper;
                }
            }
            if (limit.ceiling != Branch::none) {
                const bool upper = limit.ceiling == Branch::upper;
                const double z = limit.curve.branch(upper, y, root);
                if (z < reach.high) {
                    reach.high = z;
                    reach.high_by = 2 * i + upper;
                }
            }
        }
        return reach;
    }
};

} // namespace rampwright::body_detail
