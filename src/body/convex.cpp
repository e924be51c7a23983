#include "body/convex.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace rampwright::body_detail {

using Eigen::Matrix3d;
using Eigen::Vector3d;

namespace {

const double tip_tangent = std::tan(drill_point_angle / 2);
const double tip_cosine = std::cos(drill_point_angle / 2);

template <class... F>
struct overloaded : F... {
    using F::operator()...;
};
template <class... F>
overloaded(F...) -> overloaded<F...>;

Section section_of(const Block& block, double x) {
    Section s;
    const double c = block.along.x(), n = block.along.y(), dx = x - block.centre.x();
    s.y0 = -endless;
    s.y1 = endless;
    // |dx c + dy n| <= half.x and |-dx n + dy c| <= half.y
    const auto slab = [&](double offset, double slope, double half) {
        if (slope == 0) {
            if (std::abs(offset) > half) s.y1 = s.y0;
            return;
        }
        const double a = (-half - offset) / slope, b = (half - offset) / slope;
        s.keep_y(block.centre.y() + std::min(a, b), block.centre.y() + std::max(a, b));
    };
    slab(dx * c, n, block.half.x());
    slab(-dx * n, c, block.half.y());
    if (s.empty()) return s;
    s.add(Limit::above(block.centre.z() - block.half.z()));
    s.add(Limit::below(block.centre.z() + block.half.z()));
    return s;
}

/// Keeps along · (r - point) >= 0, or <= 0.
void keep_side(Section& s, const Vector3d& along, const Vector3d& point, double x, bool beyond) {
    const double across = along.x() * (x - point.x());
    if (along.z() != 0) {
        // along.z (z - z0) >= -across - along.y (y - y0)
        const double slope = -along.y() / along.z();
        const double z0 = point.z() - across / along.z() - slope * point.y();
        s.add((along.z() > 0) == beyond ? Limit::above(z0, slope) : Limit::below(z0, slope));
    } else if (along.y() != 0) {
        const double y = point.y() - across / along.y();
        (along.y() > 0) == beyond ? s.keep_y(y, endless) : s.keep_y(-endless, y);
    } else if (beyond ? across < 0 : across > 0) {
        s.y1 = s.y0;
    }
}

/// The cone of half angle 59° with its apex at `apex`, open against `along`.
void keep_tip(Section& s, const Vector3d& along, const Vector3d& apex, double x) {
    const double k = tip_cosine * tip_cosine, dx = along.x(), dy = along.y(), dz = along.z();
    const double xi = x - apex.x(), m0 = dx * xi - dy * apex.y();
    const double steep = dz * dz - k, sign = steep < 0 ? -1 : 1;
    Curve c;
    c.line = false;
    // In ζ = z - apex.z: (dz² - k) ζ² + 2 m dz ζ + m² - k (ξ² + η²) >= 0, m = m0 + dy y.
    c.a = std::abs(steep);
    const double b0 = sign * m0 * dz, b1 = sign * dy * dz;
    const double c0 = sign * (m0 * m0 - k * (xi * xi + apex.y() * apex.y()));
    const double c1 = sign * (2 * m0 * dy + 2 * k * apex.y()), c2 = sign * (dy * dy - k);
    c.b0 = b0 - c.a * apex.z();
    c.b1 = b1;
    c.c0 = c0 - 2 * b0 * apex.z() + c.a * apex.z() * apex.z();
    c.c1 = c1 - 2 * b1 * apex.z();
    c.c2 = c2;
    // Q = k (m² + (dz² - k)(ξ² + η²)), free of cancellation in this form.
    c.p = k * (m0 * m0 + steep * (xi * xi + apex.y() * apex.y()));
    c.q = k * (2 * m0 * dy - 2 * steep * apex.y());
    c.r = k * (dy * dy + steep);
    c.find_roots();
    Limit limit;
    limit.curve = c;
    if (steep < 0) {
        // A vertical line meets the double cone in one stretch, of one nappe: the apex plane picks it.
        limit.floor = Branch::lower;
        limit.ceiling = Branch::upper;
        keep_side(s, along, apex, x, false);
    } else if (dz > 0) {
        limit.ceiling = Branch::lower;
    } else {
        limit.floor = Branch::upper;
    }
    s.add(limit);
}

Eigen::AlignedBox3d bounds_of(const Rod& rod) {
    const Vector3d reach = rod.radius * (Vector3d::Ones() - rod.along.cwiseAbs2()).cwiseMax(0).cwiseSqrt();
    const Vector3d to = rod.from + rod.length * rod.along;
    Eigen::AlignedBox3d box(rod.from - reach, rod.from + reach);
    box.extend(to - reach);
    box.extend(to + reach);
    if (rod.tip > 0) box.extend(to + rod.tip * rod.along);
    return box;
}

Section section_of(const Rod& rod, double x) {
    Section s;
    const auto box = bounds_of(rod);
    if (!(x > box.min().x() && x < box.max().x())) return s;
    s.y0 = box.min().y();
    s.y1 = box.max().y();
    const double dx = rod.along.x(), dy = rod.along.y(), dz = rod.along.z(), a = dx * dx + dy * dy;
    const double u = x - rod.from.x();
    if (a == 0) {
        const double half = std::sqrt(std::max(0., rod.radius * rod.radius - u * u));
        s.keep_y(rod.from.y() - half, rod.from.y() + half);
    } else {
        // a ζ² - 2 dz (dx u + dy v) ζ + (1 - dx²) u² - 2 dx dy u v + (1 - dy²) v² - R² <= 0, v = y - y0
        Curve c;
        c.line = false;
        const double y0 = rod.from.y(), z0 = rod.from.z(), w0 = dx * u - dy * y0;
        c.a = a;
        const double b0 = -dz * w0, b1 = -dz * dy;
        const double c0 = u * u + y0 * y0 - w0 * w0 - rod.radius * rod.radius;
        const double c1 = -2 * y0 - 2 * w0 * dy, c2 = 1 - dy * dy;
        c.b0 = b0 - a * z0;
        c.b1 = b1;
        c.c0 = c0 - 2 * b0 * z0 + a * z0 * z0;
        c.c1 = c1 - 2 * b1 * z0;
        c.c2 = c2;
        // Q = a R² - (e - dx y)²: the distance of a vertical line from the axis, free of cancellation.
        const double e = dy * u + dx * y0, g = rod.radius * std::sqrt(a);
        c.p = (g - e) * (g + e);
        c.q = 2 * e * dx;
        c.r = -dx * dx;
        if (dx != 0) {
            c.root_low = std::min((e - g) / dx, (e + g) / dx);
            c.root_high = std::max((e - g) / dx, (e + g) / dx);
            s.keep_y(c.root_low, c.root_high);
        } else if (c.p <= 0) {
            s.y1 = s.y0;
        }
        if (s.empty()) return s;
        s.add(Limit::between(c));
    }
    keep_side(s, rod.along, rod.from, x, true);
    if (rod.tip > 0)
        keep_tip(s, rod.along, rod.from + (rod.length + rod.tip) * rod.along, x);
    else
        keep_side(s, rod.along, rod.from + rod.length * rod.along, x, false);
    return s;
}

Section section_of(const Ball& ball, double x) {
    Section s;
    const double u = x - ball.centre.x(), q = ball.radius * ball.radius - u * u;
    if (q <= 0) return s;
    const double radius = std::sqrt(q);
    s.y0 = ball.centre.y() - radius;
    s.y1 = ball.centre.y() + radius;
    s.add(Limit::between(Curve::circle(ball.centre.y(), ball.centre.z(), radius)));
    return s;
}

std::array<double, 4> corner_x(const Block& block) {
    const double a = block.half.x() * block.along.x(), b = block.half.y() * block.along.y();
    return {block.centre.x() - a - b, block.centre.x() - a + b, block.centre.x() + a - b,
            block.centre.x() + a + b};
}

Rod rod_of(const Bore& bore) {
    Rod rod;
    rod.from = bore.from;
    rod.along = bore.to - bore.from;
    rod.length = rod.along.norm();
    rod.radius = bore.diameter / 2;
    rod.tip = bore.pointed ? rod.radius / tip_tangent : 0;
    if (rod.length > 0) rod.along /= rod.length;
    return rod;
}

} // namespace

Convex::Convex(const Rod& rod) : shape_(rod) {
    // A tilt this small moves no point by a hundredth of a nanometre; exactly along an axis, sections are
    // simple.
    Vector3d& along = std::get<Rod>(shape_).along;
    for (int i = 0; i < 3; ++i)
        if (std::abs(along[i]) < 1e-9) along[i] = 0;
    if (std::abs(along.x()) < 1e-7 && std::abs(along.y()) < 1e-7) along.head<2>().setZero();
    if (!along.isZero(0)) along.normalize();
}

Convex::Convex(const Cut& cut)
    : Convex(std::visit(overloaded{[](const Pocket& p) -> Convex {
                                       return Block{(p.low + p.high) / 2, (p.high - p.low).cwiseAbs() / 2};
                                   },
                                   [](const Bore& b) -> Convex { return rod_of(b); }},
                        cut)) {}

Eigen::AlignedBox3d Convex::bounds() const {
    return std::visit(overloaded{[](const Block& b) {
                                     const auto x = corner_x(b);
                                     const double wide = std::abs(b.half.x() * b.along.y()) +
                                                         std::abs(b.half.y() * b.along.x());
                                     const auto [low, high] = std::minmax_element(x.begin(), x.end());
                                     return Eigen::AlignedBox3d(
                                         Vector3d(*low, b.centre.y() - wide, b.centre.z() - b.half.z()),
                                         Vector3d(*high, b.centre.y() + wide, b.centre.z() + b.half.z()));
                                 },
                                 [](const Rod& r) { return bounds_of(r); },
                                 [](const Ball& b) {
                                     const Vector3d r = Vector3d::Constant(b.radius);
                                     return Eigen::AlignedBox3d(b.centre - r, b.centre + r);
                                 }},
                      shape_);
}

Section Convex::section(double x) const {
    return std::visit([x](const auto& s) { return section_of(s, x); }, shape_);
}

void Convex::add_events(std::vector<Event>& events) const {
    std::visit(overloaded{[&](const Block& b) {
                              for (const double x : corner_x(b))
                                  events.push_back({x, false});
                          },
                          [&](const Rod& r) {
                              const double reach =
                                  r.radius * std::sqrt(std::max(0., 1 - r.along.x() * r.along.x()));
                              const double to = r.from.x() + r.length * r.along.x();
                              for (const double x : {r.from.x(), to}) {
                                  events.push_back({x - reach, reach > 0});
                                  events.push_back({x + reach, reach > 0});
                              }
                              if (r.tip > 0) events.push_back({to + r.tip * r.along.x(), true});
                          },
                          [&](const Ball& b) {
                              events.push_back({b.centre.x() - b.radius, true});
                              events.push_back({b.centre.x() + b.radius, true});
                          }},
               shape_);
}

Moments about_origin(double volume, const Vector3d& centroid, const Matrix3d& central) {
    return {volume, volume * centroid, central + volume * centroid * centroid.transpose()};
}

Moments Convex::moments() const {
    return std::visit(
        overloaded{
            [](const Block& b) {
                const double volume = 8 * b.half.prod();
                Matrix3d turn = Matrix3d::Identity();
                turn.topLeftCorner<2, 2>() << b.along.x(), -b.along.y(), b.along.y(), b.along.x();
                const Matrix3d own = (volume / 3 * b.half.cwiseAbs2()).asDiagonal();
                return about_origin(volume, b.centre, turn * own * turn.transpose());
            },
            [](const Rod& r) {
                const Matrix3d along = r.along * r.along.transpose();
                const Matrix3d across = Matrix3d::Identity() - along;
                const double face = std::numbers::pi * r.radius * r.radius, v = face * r.length;
                Moments m =
                    about_origin(v, r.from + r.length / 2 * r.along,
                                 v * (r.radius * r.radius / 4 * across + r.length * r.length / 12 * along));
                // A cone: 3/20 R² across, 3/80 h² along, a quarter of its height above its base.
                const double c = face * r.tip / 3;
                m += about_origin(c, r.from + (r.length + r.tip / 4) * r.along,
                                  c * (0.15 * r.radius * r.radius * across + 0.0375 * r.tip * r.tip * along));
                return m;
            },
            [](const Ball& b) {
                const double v = 4. / 3 * std::numbers::pi * b.radius * b.radius * b.radius;
                return about_origin(v, b.centre, v * b.radius * b.radius / 5 * Matrix3d::Identity());
            }},
        shape_);
}

Convex Convex::in_frame(const Vector3d& origin, double unit) const {
    return std::visit(overloaded{[&](Block b) -> Convex {
                                     b.centre = (b.centre - origin) / unit;
                                     b.half /= unit;
                                     return b;
                                 },
                                 [&](Rod r) -> Convex {
                                     r.from = (r.from - origin) / unit;
                                     r.length /= unit;
                                     r.radius /= unit;
                                     r.tip /= unit;
                                     return r;
                                 },
                                 [&](Ball b) -> Convex {
                                     b.centre = (b.centre - origin) / unit;
                                     b.radius /= unit;
                                     return b;
                                 }},
                      shape_);
}

Moments from_frame(const Moments& local, const Vector3d& origin, double unit) {
    const double cube = unit * unit * unit;
    Moments m;
    m.volume = cube * local.volume;
    m.first = cube * (local.volume * origin + unit * local.first);
    const Matrix3d mixed = unit * origin * local.first.transpose();
    m.second = cube * (local.volume * origin * origin.transpose() + mixed + mixed.transpose() +
                       unit * unit * local.second);
    return m;
}

} // namespace rampwright::body_detail
