#include <rampwright/car/car_model.hpp>

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace rampwright {

namespace {

/// Where a wheel meets the surface, level frame.
struct Foot {
    Corner corner;
    Vec2 at;
};

double cross(const Vec2& a, const Vec2& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// The feet in order around their convex outline (a point inside it bears no edge), counter-clockwise.
std::vector<Foot> outline_of(std::vector<Foot> feet) {
    std::sort(feet.begin(), feet.end(), [](const Foot& a, const Foot& b) {
        return a.at.x() != b.at.x() ? a.at.x() < b.at.x() : a.at.y() < b.at.y();
    });
    if (feet.size() < 3) return feet;
    std::vector<Foot> hull;
    for (int side = 0; side < 2; ++side) { // lower chain, then upper chain (the monotone chain method)
        const std::size_t start = hull.size();
        for (const Foot& foot : feet) {
            while (hull.size() >= start + 2 &&
                   cross(hull.back().at - hull[hull.size() - 2].at, foot.at - hull.back().at) <= 0)
                hull.pop_back();
            hull.push_back(foot);
        }
        hull.pop_back();
        std::reverse(feet.begin(), feet.end());
    }
    return hull;
}

/// The outline's nearest edge to a point.
struct Edge {
    double distance = std::numeric_limits<double>::infinity(); ///< to the edge itself, not to its line
    double margin = std::numeric_limits<double>::infinity();   ///< to its line, positive on the inner side
    std::size_t from = 0, to = 0;
    double share = 0; ///< of the edge's load on `to`, as if the car were held from falling over it
};

Edge find_nearest_edge(const std::vector<Foot>& outline, const Vec2& point) {
    Edge nearest;
    const std::size_t edges = outline.size() < 3 ? outline.size() - 1 : outline.size();
    for (std::size_t i = 0; i < edges; ++i) {
        const std::size_t j = (i + 1) % outline.size();
        const Vec2 along = outline[j].at - outline[i].at, away = point - outline[i].at;
        const double share = std::clamp(away.dot(along) / along.squaredNorm(), 0.0, 1.0);
        const double distance = (away - share * along).norm();
        const double margin = outline.size() < 3 ? -distance : cross(along, away) / along.norm();
        nearest.margin = std::min(nearest.margin, margin);
        if (distance < nearest.distance) {
            nearest.distance = distance;
            nearest.from = i;
            nearest.to = j;
            nearest.share = share;
        }
    }
    return nearest;
}

/// Loads that balance `load` acting at `point`: the only ones for three feet, those of least norm for four.
Eigen::VectorXd balance(const std::vector<Foot>& feet, double load, const Vec2& point) {
    Eigen::Matrix<double, 3, Eigen::Dynamic> equations(3, static_cast<Eigen::Index>(feet.size()));
    for (std::size_t i = 0; i < feet.size();
         ++i) // moments about the point: then no scale matters but the car's
        equations.col(static_cast<Eigen::Index>(i)) << 1.0, feet[i].at - point;
    return equations.completeOrthogonalDecomposition().solve(Eigen::Vector3d(load, 0, 0));
}

} // namespace

Standing stand(const CarOnWheels& car, double slope, double gravity, Held held) {
    std::vector<Foot> feet;
    for (const Wheel& wheel : car.wheels)
        if (wheel.touches) feet.push_back({wheel.corner, {wheel.centre.x(), wheel.centre.y()}});

    // Gravity along the slope acts at the centre of mass and is met at the height where the car is held: the
    // couple of the two moves the point where the normal loads' resultant acts.
    const double hold_height = held == Held::by_pin ? car.nose.y() : 0.0;
    const double load = car.mass * gravity * std::cos(slope);
    const Vec2 point(car.centre.x() - (car.centre.z() - hold_height) * std::tan(slope), car.centre.y());

    Standing standing;
    standing.front = load * point.x() / car.wheelbase;
    standing.rear = load - standing.front;

    const std::vector<Foot> outline = outline_of(feet);
    const Edge edge = find_nearest_edge(outline, point);
    standing.tips = feet.size() < 3 || edge.margin < 0;
    standing.tipping_margin = standing.tips ? -edge.distance : edge.margin;

    if (standing.tips) {
        standing.loads[static_cast<std::size_t>(outline[edge.from].corner)] = load * (1 - edge.share);
        standing.loads[static_cast<std::size_t>(outline[edge.to].corner)] = load * edge.share;
        return standing;
    }
    Eigen::VectorXd loads = balance(feet, load, point);
    standing.idealised = feet.size() > 3;
    while (feet.size() > 3) {
        Eigen::Index least = 0;
        if (loads.minCoeff(&least) >= 0) break;
        feet.erase(feet.begin() + least);
        loads = balance(feet, load, point);
    }
    for (std::size_t i = 0; i < feet.size(); ++i)
        standing.loads[static_cast<std::size_t>(feet[i].corner)] =
            std::max(loads[static_cast<Eigen::Index>(i)], 0.0); // rounding alone makes it negative here
    return standing;
}

} // namespace rampwright
