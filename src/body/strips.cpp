#include "body/strips.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::body_detail {

namespace {

using Eigen::Vector2d;
using Control = std::array<Vector2d, 4>;

double cubic(const Control& c, int k, double t) {
    const double s = 1 - t;
    return s * s * s * c[0][k] + 3 * s * s * t * c[1][k] + 3 * s * t * t * c[2][k] + t * t * t * c[3][k];
}

double cubic_rate(const Control& c, int k, double t) {
    const double s = 1 - t;
    return 3 * (s * s * (c[1][k] - c[0][k]) + 2 * s * t * (c[2][k] - c[1][k]) + t * t * (c[3][k] - c[2][k]));
}

/// The stretch t0..t1 of a Bézier curve (blossoming).
Control stretch(const Control& c, double t0, double t1) {
    const auto blossom = [&](double a, double b, double d) {
        const auto mix = [](const Vector2d& p, const Vector2d& q, double t) -> Vector2d {
            return (1 - t) * p + t * q;
        };
        const Vector2d p0 = mix(c[0], c[1], a), p1 = mix(c[1], c[2], a), p2 = mix(c[2], c[3], a);
        const Vector2d q0 = mix(p0, p1, b), q1 = mix(p1, p2, b);
        return mix(q0, q1, d);
    };
    return {blossom(t0, t0, t0), blossom(t0, t0, t1), blossom(t0, t1, t1), blossom(t1, t1, t1)};
}

/// Where dx/dt changes its sign inside (0, 1).
std::vector<double> turning(const Control& c) {
    const double a = c[1].x() - c[0].x(), b = c[2].x() - c[1].x(), d = c[3].x() - c[2].x();
    const double e2 = a - 2 * b + d, e1 = 2 * (b - a), e0 = a;
    std::vector<double> t;
    const double scale = std::abs(a) + std::abs(b) + std::abs(d);
    if (std::abs(e2) <= 1e-14 * scale) {
        if (e1 != 0) t.push_back(-e0 / e1);
    } else if (const double disc = e1 * e1 - 4 * e2 * e0; disc > 0) {
        const double s = -0.5 * (e1 + std::copysign(std::sqrt(disc), e1));
        t.push_back(s / e2);
        if (s != 0) t.push_back(e0 / s);
    }
    std::erase_if(t, [](double v) { return !(v > 1e-12 && v < 1 - 1e-12); });
    std::sort(t.begin(), t.end());
    return t;
}

} // namespace

double Edge::at(double x) const {
    if (straight) return at0 + slope * (x - x0);
    // x(t) only grows: Newton's step where it stays in the bracket, else the middle.
    double low = 0, high = 1, t = (x - x0) / (x1 - x0);
    for (int i = 0; i < 60; ++i) {
        const double miss = cubic(control, 0, t) - x, rate = cubic_rate(control, 0, t);
        (miss > 0 ? high : low) = t;
        double next = rate > 0 ? t - miss / rate : 2.;
        if (!(next > low && next < high)) next = 0.5 * (low + high);
        const bool done = std::abs(next - t) < 1e-15;
        t = next;
        if (done) break;
    }
    return cubic(control, 1, t);
}

double Edge::lowest() const {
    return std::min({control[0].y(), control[1].y(), control[2].y(), control[3].y()});
}

double Edge::highest() const {
    return std::max({control[0].y(), control[1].y(), control[2].y(), control[3].y()});
}

Strips::Strips(const Outline& outline, const std::string& where) {
    check_outline(outline, where);
    std::vector<double> ends;
    const auto add = [&](Control c, bool straight) {
        if (c[0].x() == c[3].x()) return; // upright: it bounds no strip
        if (c[0].x() > c[3].x()) {
            std::swap(c[0], c[3]);
            std::swap(c[1], c[2]);
        }
        const double run = c[3].x() - c[0].x();
        edges_.push_back({c[0].x(), c[3].x(), c, straight, c[0].y(), (c[3].y() - c[0].y()) / run});
        ends.insert(ends.end(), {c[0].x(), c[3].x()});
        if (straight) return;
        straight_ = false;
        for (const int end : {0, 1})
            if (cubic_rate(c, 0, end) < 0.05 * run) sharp_.push_back(end == 0 ? c[0].x() : c[3].x());
    };
    for (const auto& piece : outline_pieces(outline)) {
        double from = 0;
        if (!piece.straight)
            for (const double t : turning(piece.control)) {
                add(stretch(piece.control, from, t), false);
                from = t;
            }
        add(from == 0 ? piece.control : stretch(piece.control, from, 1), piece.straight);
    }
    std::sort(ends.begin(), ends.end());
    ends.erase(std::unique(ends.begin(), ends.end(), [](double a, double b) { return b - a < 1e-14; }),
               ends.end());
    for (size_t i = 0; i + 1 < ends.size(); ++i) {
        const double mid = 0.5 * (ends[i] + ends[i + 1]);
        std::vector<std::pair<double, int>> crossed;
        for (size_t e = 0; e < edges_.size(); ++e)
            if (edges_[e].x0 < mid && mid < edges_[e].x1)
                crossed.emplace_back(edges_[e].at(mid), static_cast<int>(e));
        std::sort(crossed.begin(), crossed.end());
        Strip strip{ends[i], ends[i + 1], {}};
        for (size_t k = 0; k + 1 < crossed.size(); k += 2)
            strip.pairs.push_back({crossed[k].second, crossed[k + 1].second});
        if (!strip.pairs.empty()) strips_.push_back(std::move(strip));
    }
}

const Strips::Strip* Strips::find(double x) const {
    auto it = std::upper_bound(strips_.begin(), strips_.end(), x,
                               [](double v, const Strip& strip) { return v < strip.x1; });
    return it != strips_.end() && x >= it->x0 ? &*it : nullptr;
}

bool Strips::sharp(double x) const {
    return std::any_of(sharp_.begin(), sharp_.end(), [&](double s) { return std::abs(s - x) < 1e-12; });
}

} // namespace rampwright::body_detail
