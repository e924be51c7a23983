#include "body/curve.hpp"

#include "body/quadrature.hpp"

#include <algorithm>
#include <utility>

namespace rampwright::body_detail {

namespace {

/// A polynomial of degree up to four, lowest power first.
struct Polynomial {
    std::array<double, 5> c{};
    int degree = 0;

    double operator()(double x) const {
        double sum = c[degree];
        for (int i = degree - 1; i >= 0; --i)
            sum = sum * x + c[i];
        return sum;
    }
    Polynomial derivative() const {
        Polynomial d;
        d.degree = std::max(0, degree - 1);
        for (int i = 1; i <= degree; ++i)
            d.c[i - 1] = i * c[i];
        return d;
    }
    /// Largest size that a term takes on [low, high]: what a value is small against.
    double scale(double low, double high) const {
        const double x = std::max(std::abs(low), std::abs(high));
        double size = 0, power = 1;
        for (int i = 0; i <= degree; ++i, power *= x)
            size = std::max(size, std::abs(c[i]) * power);
        return size;
    }
    void trim(double low, double high) {
        const double x = std::max({std::abs(low), std::abs(high), 1e-30}), size = scale(low, high);
        while (degree > 0 && std::abs(c[degree]) * std::pow(x, degree) <= 1e-15 * size)
            --degree;
    }
};

/// Between signs that differ: regula falsi with halving of the stale end (Illinois), then bisection.
double bracketed(const Polynomial& f, double a, double fa, double b, double fb) {
    for (int i = 0; i < 80 && std::abs(b - a) > 1e-16 * (1 + std::abs(a) + std::abs(b)); ++i) {
        double m = i < 40 ? b - fb * (b - a) / (fb - fa) : 0.5 * (a + b);
        if (!(m > std::min(a, b) && m < std::max(a, b))) m = 0.5 * (a + b);
        const double fm = f(m);
        if (fm == 0) return m;
        if ((fm > 0) == (fb > 0)) {
            fa *= 0.5;
        } else {
            a = b;
            fa = fb;
        }
        b = m;
        fb = fm;
        if (std::abs(fb) < 1e-300) break;
    }
    return b;
}

/// Roots on [low, high], and stationary points where the value is as good as zero (a touch).
void find_roots(Polynomial f, double low, double high, Meetings& found) {
    f.trim(low, high);
    const double tiny = 1e-11 * f.scale(low, high);
    if (f.degree == 0 || tiny == 0) return;
    if (f.degree == 1) {
        const double x = -f.c[0] / f.c[1];
        if (x >= low && x <= high) found.add(x);
        return;
    }
    if (f.degree == 2) {
        const double half = -f.c[1] / (2 * f.c[2]);
        const double d = f.c[1] * f.c[1] - 4 * f.c[2] * f.c[0];
        if (d <= 0) {
            if (half >= low && half <= high && std::abs(f(half)) <= tiny) found.add(half);
            return;
        }
        const double s = -0.5 * (f.c[1] + std::copysign(std::sqrt(d), f.c[1]));
        for (const double x : {s / f.c[2], s == 0 ? half : f.c[0] / s})
            if (x >= low && x <= high) found.add(x);
        return;
    }
    Meetings turns;
    find_roots(f.derivative(), low, high, turns);
    std::sort(turns.y.begin(), turns.y.begin() + turns.count);
    double a = low, fa = f(low);
    for (int i = 0; i <= turns.count; ++i) {
        const double b = i == turns.count ? high : turns.y[i], fb = f(b);
        if (std::abs(fb) <= tiny)
            found.add(b);
        else if (std::abs(fa) > tiny && (fa > 0) != (fb > 0))
            found.add(bracketed(f, a, fa, b, fb));
        a = b;
        fa = fb;
    }
}

/// Sums the six integrals of what lies under z(y) for one node.
inline void node(double y, double z, double weight, Section6& sum) {
    const double wz = weight * z, wzz = 0.5 * wz * z;
    sum[0] += wz;
    sum[1] += wz * y;
    sum[2] += wzz;
    sum[3] += wz * y * y;
    sum[4] += wzz * y;
    sum[5] += wzz * z * (2. / 3);
}

template <size_t N, class F>
void quadrature(double low, double high, double sign, Section6& sum, F&& point) {
    const auto& rule = gauss<N>();
    const double mid = 0.5 * (low + high), half = 0.5 * (high - low);
    for (size_t i = 0; i < N; ++i) {
        const auto [y, z, dy] = point(mid + half * rule.node[i]);
        node(y, z, sign * half * rule.weight[i] * dy, sum);
    }
}

struct Point {
    double y, z, dy;
};

/// An elliptic arc in the ellipse's own angle, in which the integrand is entire.
void add_elliptic(const Curve& c, bool upper, double low, double high, double sign, Section6& sum) {
    const double centre = 0.5 * (c.root_low + c.root_high), half = 0.5 * (c.root_high - c.root_low);
    const double height = std::sqrt(-c.r) * half;
    const auto angle = [&](double y) { return std::asin(std::clamp((y - centre) / half, -1., 1.)); };
    const double u0 = angle(low), u1 = angle(high);
    const auto point = [&](double u) {
        const double cosine = std::cos(u), y = centre + half * std::sin(u);
        return Point{y, c.branch(upper, y, height * cosine), half * cosine};
    };
    if (u1 - u0 < 0.6)
        quadrature<6>(u0, u1, sign, sum, point);
    else if (u1 - u0 < 1.6)
        quadrature<8>(u0, u1, sign, sum, point);
    else
        quadrature<12>(u0, u1, sign, sum, point);
}

/// An arc of any conic with a root of Q close to one end: y = root ± s² takes the square root away, and
/// panels that grow away from the root keep the other root's influence small.
void add_near_root(const Curve& c, bool upper, double low, double high, double sign, Section6& sum,
                   double root, double other) {
    const double side = root <= low ? 1 : -1;
    const double s0 = std::sqrt(std::max(0., side * (side > 0 ? low - root : high - root)));
    const double s1 = std::sqrt(std::max(0., side * (side > 0 ? high - root : low - root)));
    const double gap = other - root, size = std::sqrt(std::abs(c.r)), scale = std::sqrt(std::abs(gap));
    const bool single = !std::isfinite(other);
    const double linear = single ? std::sqrt(std::abs(c.q)) : 0;
    const auto point = [&](double s) {
        const double y = root + side * s * s;
        const double width = single ? linear : size * std::sqrt(std::abs(side * s * s - gap));
        return Point{y, c.branch(upper, y, s * width), 2 * s};
    };
    double from = s0, step = single ? s1 : std::max({scale, s0, 1e-9 * s1});
    while (from < s1) {
        const double to = from + step >= 0.95 * s1 ? s1 : from + step;
        quadrature<10>(from, to, sign, sum, point);
        from = to;
        step = std::max(step, from);
    }
}

} // namespace

Curve Curve::circle(double y, double z, double radius) {
    Curve c;
    c.line = false;
    c.a = 1;
    c.b0 = -z;
    c.c0 = z * z + y * y - radius * radius;
    c.c1 = -2 * y;
    c.c2 = 1;
    c.p = radius * radius - y * y;
    c.q = 2 * y;
    c.r = -1;
    c.root_low = y - radius;
    c.root_high = y + radius;
    return c;
}

void Curve::find_roots() {
    constexpr double infinite = std::numeric_limits<double>::infinity();
    const double d = q * q - 4 * p * r;
    if (r == 0) {
        if (q == 0) return;
        root_low = q > 0 ? -p / q : -infinite;
        root_high = q > 0 ? infinite : -p / q;
        return;
    }
    if (!(d >= 0)) return;
    const double s = -0.5 * (q + std::copysign(std::sqrt(d), q));
    const double one = s / r, two = s == 0 ? one : p / s;
    root_low = std::min(one, two);
    root_high = std::max(one, two);
}

Meetings meetings(const Curve& one, const Curve& two, double low, double high) {
    Meetings found;
    Polynomial f;
    if (one.line && two.line) {
        const double slope = one.c1 - two.c1;
        if (slope != 0) {
            const double y = -(one.c0 - two.c0) / slope;
            if (y >= low && y <= high) found.add(y);
        }
        return found;
    }
    if (one.line || two.line) {
        // The line's z = -l in the conic: a l² - 2 b l + c = 0.
        const Curve &line = one.line ? one : two, &k = one.line ? two : one;
        const double l0 = line.c0, l1 = line.c1;
        f.degree = 2;
        f.c[0] = k.a * l0 * l0 - 2 * k.b0 * l0 + k.c0;
        f.c[1] = 2 * (k.a * l0 * l1 - k.b0 * l1 - k.b1 * l0) + k.c1;
        f.c[2] = k.a * l1 * l1 - 2 * k.b1 * l1 + k.c2;
        find_roots(f, low, high, found);
        return found;
    }
    // Resultant of the two quadratics in z: (a C' - a' C)² - 4 (a B' - a' B)(B C' - B' C).
    const double e0 = one.a * two.c0 - two.a * one.c0, e1 = one.a * two.c1 - two.a * one.c1,
                 e2 = one.a * two.c2 - two.a * one.c2;
    const double g0 = one.a * two.b0 - two.a * one.b0, g1 = one.a * two.b1 - two.a * one.b1;
    const double h0 = one.b0 * two.c0 - two.b0 * one.c0;
    const double h1 = one.b0 * two.c1 + one.b1 * two.c0 - two.b0 * one.c1 - two.b1 * one.c0;
    const double h2 = one.b0 * two.c2 + one.b1 * two.c1 - two.b0 * one.c2 - two.b1 * one.c1;
    const double h3 = one.b1 * two.c2 - two.b1 * one.c2;
    f.degree = 4;
    f.c = {e0 * e0 - 4 * g0 * h0, 2 * e0 * e1 - 4 * (g0 * h1 + g1 * h0),
           2 * e0 * e2 + e1 * e1 - 4 * (g0 * h2 + g1 * h1), 2 * e1 * e2 - 4 * (g0 * h3 + g1 * h2),
           e2 * e2 - 4 * g1 * h3};
    find_roots(f, low, high, found);
    return found;
}

void add_under(const Curve& c, bool upper, double low, double high, double sign, Section6& sum) {
    if (!(high > low)) return;
    const auto plain = [&](double y) { return Point{y, c.z(upper, y), 1}; };
    if (c.line) {
        quadrature<2>(low, high, sign, sum, plain); // the integrands are cubics
        return;
    }
    const double width = high - low;
    const double below =
        std::isnan(c.root_low) ? -1 : std::abs(c.root_low - 0.5 * (low + high)) - 0.5 * width;
    const double above =
        std::isnan(c.root_high) ? -1 : std::abs(c.root_high - 0.5 * (low + high)) - 0.5 * width;
    if (std::isnan(c.root_low)) {
        if (c.r <= 0) { // Q is constant: parallel lines
            quadrature<2>(low, high, sign, sum, plain);
            return;
        }
        // A hyperbola's branch: panels that grow away from its narrowest place.
        const double centre = -0.5 * c.q / c.r;
        const double narrow = std::sqrt(std::max(0., c.p / c.r - centre * centre));
        double from = low;
        while (from < high) {
            const double step = std::max({narrow, std::abs(from - centre) * 0.5, 1e-9 * width});
            double to = from + step >= high - 1e-12 * width ? high : from + step;
            if (from < centre && to > centre) to = std::min(to, std::max(centre, from + 1e-9 * width));
            quadrature<10>(from, to, sign, sum, plain);
            from = to;
        }
        return;
    }
    if (below > width && above > width) {
        quadrature<10>(low, high, sign, sum, plain);
        return;
    }
    if (c.r < 0 && c.root_high - c.root_low < 8 * width) {
        add_elliptic(c, upper, low, high, sign, sum);
        return;
    }
    if (below <= above)
        add_near_root(c, upper, low, high, sign, sum, c.root_low, c.root_high);
    else
        add_near_root(c, upper, low, high, sign, sum, c.root_high, c.root_low);
}

} // namespace rampwright::body_detail
