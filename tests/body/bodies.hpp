#pragma once

#include <rampwright/body/solid.hpp>

#include <algorithm>
#include <random>

/// Bodies drawn at random from a seed, for comparisons.
namespace bodies {

using rampwright::BodyShape;
using rampwright::Bore;
using rampwright::Moments;
using rampwright::Outline;
using rampwright::Pocket;

class Draw {
public:
    explicit Draw(unsigned seed) : engine_(seed) {}
    double operator()(double low, double high) {
        // uniform_real_distribution's values are not fixed by the standard; these are.
        return low + (high - low) * (double(engine_()) / 4294967296.);
    }
    Eigen::Vector3d direction() {
        const Eigen::Vector3d d((*this)(-1, 1), (*this)(-1, 1), (*this)(-1, 1));
        return d.norm() > 0.1 ? d.normalized() : Eigen::Vector3d(Eigen::Vector3d::UnitX());
    }

private:
    std::mt19937 engine_;
};

inline Outline corners(std::initializer_list<Eigen::Vector2d> points) {
    Outline outline;
    for (const auto& p : points)
        outline.push_back({p, false});
    return outline;
}

/// A wedge-like body without cuts, some 180 x 44 x 30 mm; smooth at the given points of profile and plan.
inline BodyShape wedge(Draw& u, bool smooth) {
    BodyShape s;
    s.profile = corners({{0, 0},
                         {.18, 0},
                         {.18, u(.004, .012)},
                         {u(.12, .16), u(.008, .02)},
                         {u(.06, .1), u(.02, .04)},
                         {0, u(.02, .032)}});
    s.plan = corners(
        {{0, -.022}, {u(.05, .1), -u(.015, .022)}, {.18, -.02}, {.18, .02}, {u(.05, .1), .022}, {0, .021}});
    if (smooth) {
        for (const int i : {3, 4})
            s.profile[i].smooth = true;
        for (const int i : {1, 4})
            s.plan[i].smooth = true;
    }
    return s;
}

inline Pocket pocket(Draw& u) {
    const Eigen::Vector3d c(u(.01, .17), u(-.02, .02), u(0, .03));
    const Eigen::Vector3d h(u(.003, .02), u(.003, .012), u(.003, .012));
    return {c - h, c + h};
}

/// Along an axis, or tilted any way; flat or pointed.
inline Bore bore(Draw& u, bool tilted) {
    const Eigen::Vector3d c(u(.01, .17), u(-.02, .02), u(0, .03));
    const Eigen::Vector3d d =
        tilted ? u.direction() : Eigen::Vector3d(Eigen::Vector3d::Unit(std::min(2, int(u(0, 3)))));
    const double length = u(.01, .05);
    return {c - d * length / 2, c + d * length / 2, u(.003, .012), u(0, 1) < 0.4};
}

/// Largest difference of volume, centre and second moments, relative to the volume; lengths as a fraction of
/// 50 mm.
inline double difference(const Moments& one, const Moments& other) {
    const double arm = 0.05;
    return std::max({std::abs(one.volume - other.volume),
                     (one.first - other.first).cwiseAbs().maxCoeff() / arm,
                     (one.second - other.second).cwiseAbs().maxCoeff() / (arm * arm)}) /
           std::abs(other.volume);
}

} // namespace bodies
