#pragma once

#include "body/convex.hpp"
#include "body/quadrature.hpp"

#include <algorithm>
#include <cstdint>
#include <vector>

namespace rampwright::body_detail {

/// How a section's integrals depend on x between two events: as a polynomial of degree five at most, or in
/// some smooth way that has to be followed to a tolerance.
enum class Method { polynomial, adaptive };

/// What decides that an adaptive integral is good enough: the error of the volume, of the first moment over
/// `length` and of the second over its square, against `volume` times `tolerance`.
struct Accuracy {
    double volume = 1, length = 1;
    double tolerance = 1e-9;
};

/// Adds the place where f changes its sign on [a, b]; of a curve, every one that shows between 16 samples.
template <class F>
void add_crossings(F&& f, double a, double b, bool linear, std::vector<Event>& events) {
    const int n = linear ? 1 : 16;
    double x0 = a, f0 = f(a);
    for (int i = 1; i <= n; ++i) {
        const double x1 = i == n ? b : a + (b - a) * i / n, f1 = f(x1);
        if ((f0 < 0) != (f1 < 0)) {
            double low = x0, high = x1, at = linear ? x0 - f0 * (x1 - x0) / (f1 - f0) : 0;
            for (int k = 0; !linear && k < 50; ++k) {
                at = 0.5 * (low + high);
                ((f(at) < 0) == (f0 < 0) ? low : high) = at;
            }
            events.push_back({at, false});
        }
        x0 = x1;
        f0 = f1;
    }
}

/// Ten integrals over a stretch of x, by name in Moments.
inline void add_slice(Moments& m, double x, double weight, const Section6& s) {
    const double a = weight * s[0], y = weight * s[1], z = weight * s[2];
    m.volume += a;
    m.first += Eigen::Vector3d(x * a, y, z);
    m.second(0, 0) += x * x * a;
    m.second(0, 1) += x * y;
    m.second(0, 2) += x * z;
    m.second(1, 1) += weight * s[3];
    m.second(1, 2) += weight * s[4];
    m.second(2, 2) += weight * s[5];
}

inline void make_symmetric(Moments& m) {
    m.second(1, 0) = m.second(0, 1);
    m.second(2, 0) = m.second(0, 2);
    m.second(2, 1) = m.second(1, 2);
}

/// Integrates sections along x. `slice(x)` gives a section's integrals; where it also has `signature()`, a
/// number that says of the last section which edges bound it, a stretch that won't converge is cut where that
/// changes.
template <class Slice>
class AlongX {
public:
    AlongX(Slice& slice, const Accuracy& accuracy) : slice_(slice), accuracy_(accuracy) {}

    Moments operator()(std::vector<Event> events, double x0, double x1, Method method) {
        events.push_back({x0, false});
        events.push_back({x1, false});
        std::sort(events.begin(), events.end(), [](auto& a, auto& b) { return a.x < b.x; });
        Moments sum;
        const double least = 1e-13 * std::max(x1 - x0, std::max(std::abs(x0), std::abs(x1)));
        Event from{x0, false};
        for (const auto& event : events) {
            if (event.x < x0 - least || event.x > x1 + least) continue;
            if (event.x - from.x <= least) {
                from.sharp |= event.sharp;
                continue;
            }
            // Events alike count as one: the sharpness of those just ahead belongs to this end.
            bool sharp = false;
            for (const auto& e : events)
                sharp |= e.sharp && std::abs(e.x - event.x) <= least;
            if (method == Method::polynomial)
                polynomial(from.x, event.x, sum);
            else
                adaptive({from.x, event.x, from.sharp, sharp, 0}, sum);
            from = {event.x, sharp};
        }
        make_symmetric(sum);
        return sum;
    }

private:
    struct Stretch {
        double x0, x1;
        bool sharp0, sharp1;
        int depth;
    };

    void polynomial(double x0, double x1, Moments& sum) {
        const auto& rule = gauss<3>();
        const double mid = 0.5 * (x0 + x1), half = 0.5 * (x1 - x0);
        for (size_t i = 0; i < 3; ++i) {
            const double x = mid + half * rule.node[i];
            add_slice(sum, x, half * rule.weight[i], slice_(x));
        }
    }

    /// x and dx/dt for t in [-1, 1]: a root at a sharp end becomes smooth, polynomials stay polynomials.
    static std::array<double, 2> map(const Stretch& s, double t) {
        const double h = s.x1 - s.x0, v = 0.5 * (1 + t), w = 0.5 * (1 - t);
        if (s.sharp0 && s.sharp1) return {s.x0 + h * v * v * (3 - 2 * v), 3 * h * v * w};
        if (s.sharp0) return {s.x0 + h * v * v, h * v};
        if (s.sharp1) return {s.x1 - h * w * w, h * w};
        return {s.x0 + h * v, 0.5 * h};
    }

    void adaptive(const Stretch& stretch, Moments& sum) {
        const auto& table = Kronrod::table();
        const double h = stretch.x1 - stretch.x0;
        Moments fine, miss;
        std::array<std::pair<double, std::uint64_t>, 15> seen{};
        for (size_t i = 0; i < 15; ++i) {
            const auto [x, dx] = map(stretch, table.rule.node[i]);
            const Section6 section = slice_(x);
            add_slice(fine, x, dx * table.rule.weight[i], section);
            // About the middle of the stretch, so that a far origin doesn't magnify the error.
            add_slice(miss, x - stretch.x0 - 0.5 * h, dx * (table.rule.weight[i] - table.inner[i]), section);
            if constexpr (requires { slice_.signature(); }) seen[i] = {x, slice_.signature()};
        }
        const double error =
            std::max({std::abs(miss.volume), miss.first.cwiseAbs().maxCoeff() / accuracy_.length,
                      miss.second.cwiseAbs().maxCoeff() / (accuracy_.length * accuracy_.length)});
        // What QUADPACK makes of the difference of the two rules (Piessens et al. 1983).
        const double relative = 200 * error / accuracy_.volume, guess = relative * std::sqrt(relative);
        bool changes = false;
        if constexpr (requires { slice_.signature(); }) {
            std::sort(seen.begin(), seen.end());
            for (size_t i = 0; i + 1 < seen.size(); ++i)
                changes |= seen[i].second != seen[i + 1].second;
        }
        // Where the section changes its kind the two rules may agree by chance: there they must agree better.
        if (guess <= accuracy_.tolerance * (changes ? 1e-4 : 1) || stretch.depth >= 24 || h < 1e-12) {
            sum += fine;
            return;
        }
        std::vector<double> cuts;
        if constexpr (requires { slice_.signature(); }) {
            if (stretch.depth < 6 && changes) {
                for (size_t i = 0; i + 1 < seen.size(); ++i)
                    if (seen[i].second != seen[i + 1].second) cuts.push_back(change(seen[i], seen[i + 1]));
                std::erase_if(
                    cuts, [&](double x) { return x - stretch.x0 < 1e-7 * h || stretch.x1 - x < 1e-7 * h; });
            }
        }
        const bool found = !cuts.empty();
        if (!found) cuts.push_back(0.5 * (stretch.x0 + stretch.x1));
        Stretch part = stretch;
        part.depth += found ? 4 : 1;
        for (const double x : cuts) {
            part.x1 = x;
            part.sharp1 = found;
            adaptive(part, sum);
            part.x0 = x;
            part.sharp0 = found;
        }
        part.x1 = stretch.x1;
        part.sharp1 = stretch.sharp1;
        adaptive(part, sum);
    }

    double change(std::pair<double, std::uint64_t> a, std::pair<double, std::uint64_t> b) {
        for (int i = 0; i < 30; ++i) {
            const double mid = 0.5 * (a.first + b.first);
            slice_(mid);
            (slice_.signature() == a.second ? a.first : b.first) = mid;
        }
        return 0.5 * (a.first + b.first);
    }

    Slice& slice_;
    Accuracy accuracy_;
};

} // namespace rampwright::body_detail
