#pragma once

#include <array>
#include <cmath>
#include <limits>

namespace rampwright::body_detail {

/// A curve of the y-z plane that bounds a section, as its z over y: a straight line, or a conic
/// a z² + 2 (b0 + b1 y) z + (c0 + c1 y + c2 y²) = 0 with a >= 0, whose lower and upper branches are
/// (-b ∓ √Q) / a with Q = p + q y + r y² = b² - a c. A line z = -(c0 + c1 y) has a = 0, b0 = 1/2.
struct Curve {
    double a = 0, b0 = 0.5, b1 = 0, c0 = 0, c1 = 0, c2 = 0;
    double p = 0, q = 0, r = 0;
    /// Real roots of Q, low to high; NaN where there are none. One root: the other is infinite.
    double root_low = std::numeric_limits<double>::quiet_NaN();
    double root_high = std::numeric_limits<double>::quiet_NaN();
    bool line = true;

    static Curve straight(double z0, double slope) {
        Curve curve;
        curve.c0 = -z0;
        curve.c1 = -slope;
        return curve;
    }
    static Curve circle(double y, double z, double radius);

    double discriminant(double y) const { return p + y * (q + y * r); }
    /// z of the lower (false) or upper (true) branch, given √Q there.
    double branch(bool upper, double y, double root) const {
        if (line) return -(c0 + y * c1);
        // The root with the sum of like signs is exact; the other follows from the product of the two.
        const double b = b0 + b1 * y;
        if (upper == (b <= 0)) return (upper ? root - b : -(b + root)) / a;
        const double c = c0 + y * (c1 + y * c2);
        const double sum = upper ? -(b + root) : root - b;
        return sum == 0 ? 0 : c / sum;
    }
    double z(bool upper, double y) const {
        return branch(upper, y, line ? 0 : std::sqrt(std::max(0., discriminant(y))));
    }
    /// Finds the roots of Q from its coefficients.
    void find_roots();
};

/// The y of the points common to two curves, or of near-touching places, within [low, high]: at most eight.
/// Some may be false (where one branch meets the mirror image of another); none is missed.
struct Meetings {
    std::array<double, 8> y{};
    int count = 0;
    void add(double at) {
        if (count < 8) y[count++] = at;
    }
};
Meetings meetings(const Curve& one, const Curve& two, double low, double high);

/// Integrals over a region of the y-z plane: ∫ 1, y, z, y², y z, z² dA.
using Section6 = std::array<double, 6>;

/// Adds `sign` times the integrals over what lies between z = 0 and one branch of the curve, low <= y <=
/// high.
void add_under(const Curve& curve, bool upper, double low, double high, double sign, Section6& sum);

} // namespace rampwright::body_detail
