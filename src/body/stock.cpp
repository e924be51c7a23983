#include "body/stock.hpp"

#include "body/adaptive.hpp"
#include "body/quadrature.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <Eigen/Geometry>

#include <algorithm>

namespace rampwright::body_detail {

namespace {

/// ∫ 1, y, z, y², yz, z² over a rectangle with rounded corners: the rectangle less its four corners.
Section6 integrals(const Rectangle& s) {
    const double w = s.y1 - s.y0, h = s.z1 - s.z0, y = 0.5 * (s.y0 + s.y1), z = 0.5 * (s.z0 + s.z1);
    const double area = w * h;
    double a = area, yy = area * w * w / 12, zz = area * h * h / 12;
    if (s.r > 0) {
        // A spandrel, the square of side r less its quarter disc: area k r², centroid g r from the sharp
        // corner's two sides, second moment about them q r⁴.
        const double pi = std::numbers::pi, r = s.r, k = 1 - pi / 4;
        const double spandrel = k * r * r;
        const double g = (0.5 - (pi / 4 - 1. / 3)) * r * r * r;             // ∫ u dA, u from the side
        const double q = (1. / 3 - (5 * pi / 16 - 2. / 3)) * r * r * r * r; // ∫ u² dA
        a -= 4 * spandrel;
        yy -= 4 * (spandrel * w * w / 4 - w * g + q);
        zz -= 4 * (spandrel * h * h / 4 - h * g + q);
    }
    return {a, a * y, a * z, yy + a * y * y, a * y * z, zz + a * z * z};
}

bool holds_rectangle(const Strips& strips, double x0, double x1, double v0, double v1) {
    const auto* middle = strips.find(0.5 * (x0 + x1));
    if (!middle) return false;
    const double x = 0.5 * (x0 + x1), v = 0.5 * (v0 + v1);
    const auto& edges = strips.edges();
    if (std::none_of(middle->pairs.begin(), middle->pairs.end(), [&](const auto& pair) {
            return edges[pair[0]].at(x) <= v && v <= edges[pair[1]].at(x);
        }))
        return false;
    if (x0 < strips.strips().front().x0 || x1 > strips.strips().back().x1) return false;
    for (size_t i = 0; i < strips.strips().size(); ++i) {
        // Between strips the inside may change at an upright edge: each that the box spans must hold it.
        const auto& strip = strips.strips()[i];
        if (strip.x1 <= x0 || strip.x0 >= x1) continue;
        if (i > 0 && strip.x0 > x0 && strips.strips()[i - 1].x1 < strip.x0 - 1e-12) return false;
        const double a = std::max(strip.x0, x0), b = std::min(strip.x1, x1);
        if (std::none_of(strip.pairs.begin(), strip.pairs.end(), [&](const auto& pair) {
                const Edge &low = edges[pair[0]], &high = edges[pair[1]];
                const double floor = low.straight ? std::max(low.at(a), low.at(b)) : low.highest();
                const double ceiling = high.straight ? std::min(high.at(a), high.at(b)) : high.lowest();
                return floor <= v0 && v1 <= ceiling;
            }))
            return false;
    }
    return true;
}

Outline require(const Outline& outline, const std::string& where) {
    if (outline.empty())
        throw Problem(Exit::could_not, where, Core::tr("the body has no outline here"),
                      Core::tr("give it one of three points or more"));
    return outline;
}

void check_cut(const Cut& cut, size_t index) {
    const auto refuse = [&](const std::string& wrong, const std::string& remedy) {
        throw Problem(Exit::could_not, "cuts/" + std::to_string(index), wrong, remedy);
    };
    if (const auto* pocket = std::get_if<Pocket>(&cut)) {
        if (!pocket->low.allFinite() || !pocket->high.allFinite())
            refuse(Core::tr("the pocket's corners are not numbers"),
                   Core::tr("give both corners as [x, y, z] in millimetres"));
    } else {
        const auto& bore = std::get<Bore>(cut);
        if (!bore.from.allFinite() || !bore.to.allFinite())
            refuse(Core::tr("the bore's ends are not numbers"),
                   Core::tr("give both ends as [x, y, z] in millimetres"));
        if (!(bore.diameter >= 0) || !std::isfinite(bore.diameter))
            refuse(Core::tr("the bore's diameter is not a length of zero or more"),
                   Core::tr("give its diameter in millimetres"));
    }
}

} // namespace

Section Rectangle::section(double y, double z, double unit) const {
    Section s;
    const double a = (y0 - y) / unit, b = (y1 - y) / unit, low = (z0 - z) / unit, high = (z1 - z) / unit;
    s.y0 = a;
    s.y1 = b;
    s.add(Limit::above(low));
    s.add(Limit::below(high));
    const double radius = r / unit;
    if (!(radius > 0)) return s;
    for (const bool right : {false, true})
        for (const bool top : {false, true}) {
            const double cy = right ? b - radius : a + radius, cz = top ? high - radius : low + radius;
            Limit corner;
            corner.curve = Curve::circle(cy, cz, radius);
            corner.floor = top ? Branch::none : Branch::lower;
            corner.ceiling = top ? Branch::upper : Branch::none;
            corner.from = right ? cy : -endless;
            corner.to = right ? endless : cy;
            s.add(corner);
        }
    return s;
}

Stock::Stock(const BodyShape& shape)
    : radius_(shape.edge_radius),
      profile_(require(shape.profile, "profile_mm"), "profile_mm"),
      plan_(require(shape.plan, "plan_mm"), "plan_mm") {
    for (size_t i = 0; i < shape.cuts.size(); ++i)
        check_cut(shape.cuts[i], i);
    if (!(radius_ >= 0) || !std::isfinite(radius_))
        throw Problem(Exit::could_not, "edge_radius_mm",
                      Core::tr("the edge radius is not a length of zero or more"),
                      Core::tr("give it in millimetres, or leave it out for sharp edges"));
    for (const Strips* strips : {&profile_, &plan_})
        for (const auto& strip : strips->strips())
            for (const double x : {strip.x0, strip.x1})
                events_.push_back({x, strips->sharp(x)});
    if (!rounded()) return;
    // Where a side is twice the radius, and where two sides that limit it are alike.
    std::vector<double> ends;
    for (const auto& e : events_)
        ends.push_back(e.x);
    std::sort(ends.begin(), ends.end());
    for (size_t i = 0; i + 1 < ends.size(); ++i) {
        const double x0 = ends[i], x1 = ends[i + 1];
        if (x1 - x0 < 1e-12) continue;
        const double inset = 1e-9 * (x1 - x0);
        const auto *p = profile_.find(0.5 * (x0 + x1)), *q = plan_.find(0.5 * (x0 + x1));
        if (!p || !q) continue;
        const auto side = [](const Strips& s, const std::array<int, 2>& pair, double x) {
            return s.edges()[pair[1]].at(x) - s.edges()[pair[0]].at(x);
        };
        for (const auto& a : p->pairs)
            for (const auto& b : q->pairs) {
                const auto h = [&](double x) { return side(profile_, a, x); };
                const auto w = [&](double x) { return side(plan_, b, x); };
                const auto add = [&](auto&& f) {
                    add_crossings(f, x0 + inset, x1 - inset, straight(), events_);
                };
                add([&](double x) { return h(x) - 2 * radius_; });
                add([&](double x) { return w(x) - 2 * radius_; });
                add([&](double x) { return h(x) - w(x); });
            }
    }
}

void Stock::section(double x, std::vector<Rectangle>& out) const {
    out.clear();
    const auto *p = profile_.find(x), *q = plan_.find(x);
    if (!p || !q) return;
    for (const auto& a : p->pairs) {
        const double z0 = profile_.edges()[a[0]].at(x), z1 = profile_.edges()[a[1]].at(x);
        for (const auto& b : q->pairs) {
            const double y0 = plan_.edges()[b[0]].at(x), y1 = plan_.edges()[b[1]].at(x);
            if (z1 > z0 && y1 > y0)
                out.push_back({y0, y1, z0, z1, std::min({radius_, 0.5 * (z1 - z0), 0.5 * (y1 - y0)})});
        }
    }
}

Moments Stock::moments() const {
    std::vector<Rectangle> rectangles;
    const auto slice = [&](double x) {
        section(x, rectangles);
        Section6 sum{};
        for (const auto& r : rectangles) {
            const auto one = integrals(r);
            for (size_t i = 0; i < 6; ++i)
                sum[i] += one[i];
        }
        return sum;
    };
    const double x0 = profile_.strips().front().x0, x1 = profile_.strips().back().x1;
    section(0.5 * (x0 + x1), rectangles);
    Accuracy accuracy;
    accuracy.length = x1 - x0;
    accuracy.tolerance = 1e-10;
    accuracy.volume = 0;
    for (int i = 0; i < 16; ++i)
        accuracy.volume += slice(x0 + (i + 0.5) / 16 * (x1 - x0))[0] * (x1 - x0) / 16;
    AlongX along(slice, accuracy);
    return along(events_, x0, x1, straight() ? Method::polynomial : Method::adaptive);
}

bool Stock::holds(const Eigen::AlignedBox3d& box) const {
    const auto &a = box.min(), &b = box.max();
    if (!holds_rectangle(profile_, a.x(), b.x(), a.z(), b.z()) ||
        !holds_rectangle(plan_, a.x(), b.x(), a.y(), b.y()))
        return false;
    if (!rounded()) return true;
    // Rounding takes at most a square of the radius off each corner of a section.
    return holds_rectangle(profile_, a.x(), b.x(), a.z() - radius_, b.z() + radius_) ||
           holds_rectangle(plan_, a.x(), b.x(), a.y() - radius_, b.y() + radius_);
}

} // namespace rampwright::body_detail
