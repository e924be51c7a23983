#include <rampwright/bench/spin_down.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace rampwright {

namespace {

/// Speed and its derivatives to the first speed and to the deceleration.
using State = Eigen::Vector3d;

State slope(const State& y, double deceleration, double drag) {
    const double root = std::sqrt(std::max(y[0], 0.0));
    const double stiffness = -1.5 * drag * root;
    return {-deceleration - drag * root * root * root, stiffness * y[1], stiffness * y[2] - 1};
}

/// The curve at the readings, by Runge and Kutta's fourth order: drag varies slowly, so short steps are exact
/// to far below a reading's scatter.
Eigen::Matrix<double, Eigen::Dynamic, 3> curve(const Eigen::VectorXd& time, double first, double deceleration,
                                               double drag) {
    constexpr int steps = 8; // between readings
    Eigen::Matrix<double, Eigen::Dynamic, 3> at(time.size(), 3);
    State y(first, 1, 0);
    at.row(0) = y.transpose();
    for (Eigen::Index i = 1; i < time.size(); ++i) {
        const double h = (time[i] - time[i - 1]) / steps;
        for (int step = 0; step < steps; ++step) {
            const State k1 = slope(y, deceleration, drag);
            const State k2 = slope(y + h / 2 * k1, deceleration, drag);
            const State k3 = slope(y + h / 2 * k2, deceleration, drag);
            const State k4 = slope(y + h * k3, deceleration, drag);
            y += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        }
        at.row(i) = y.transpose();
    }
    return at;
}

struct Decline {
    double first, deceleration, deceleration_sigma, scatter;
    Eigen::VectorXd expected;
};

Decline fit(const SpinDown& spin, double drag) {
    const LineFit line = fit_line(spin.time, spin.speed, spin.time[0]);
    // A first guess that leaves what drag takes at mid speed to drag.
    const double mean = std::max(spin.speed.mean(), 0.0);
    Eigen::Vector2d x(line.at_origin, -line.slope - drag * std::pow(mean, 1.5));
    Eigen::Matrix2d normal;
    for (int pass = 0; pass < 20; ++pass) {
        const auto at = curve(spin.time, x[0], x[1], drag);
        const Eigen::MatrixXd jacobian = at.rightCols<2>();
        normal = jacobian.transpose() * jacobian;
        const Eigen::Vector2d change = normal.ldlt().solve(jacobian.transpose() * (spin.speed - at.col(0)));
        x += change;
        if (change.norm() < 1e-13 * x.norm()) break;
    }
    Decline decline{x[0], x[1], 0, 0, curve(spin.time, x[0], x[1], drag).col(0)};
    decline.scatter =
        std::sqrt((spin.speed - decline.expected).squaredNorm() / static_cast<double>(spin.time.size() - 2));
    decline.deceleration_sigma = decline.scatter * std::sqrt(normal.inverse()(1, 1));
    return decline;
}

} // namespace

SpinDownFit fit_spin_down(const SpinDown& spin) {
    if (spin.time.size() < 4 || spin.time.size() != spin.speed.size())
        throw Problem(Exit::could_not, "-",
                      Core::tr("a spin-down curve needs at least four readings of time and speed"),
                      Core::tr("read the speed more often while the wheel slows down"));
    for (Eigen::Index i = 1; i < spin.time.size(); ++i)
        if (!(spin.time[i] > spin.time[i - 1]))
            throw Problem(Exit::could_not, "-", Core::tr("the times of a spin-down curve do not increase"),
                          Core::tr("sort the readings by time and leave out repeated ones"));

    const Decline decline = fit(spin, spin.windage.value / spin.inertia.value);
    if (!(decline.deceleration > 0))
        throw Problem(Exit::could_not, "-",
                      Core::tr("the wheel does not slow down by friction in these readings"),
                      Core::tr("check the speeds, or let it run longer"));

    SpinDownFit result;
    result.first_speed = decline.first;
    result.deceleration = decline.deceleration;
    result.scatter = decline.scatter;
    result.expected = decline.expected;
    const Formula journal = [&spin](const Eigen::VectorXd& x) {
        const double deceleration = fit(spin, x[4] / x[1]).deceleration + x[0];
        return deceleration * x[1] / (x[2] * spin.gravity * x[3]);
    };
    const double freedom = static_cast<double>(spin.time.size() - 2);
    result.journal = combine(
        journal,
        {{0, decline.deceleration_sigma, freedom}, spin.inertia, spin.mass, spin.bore_radius, spin.windage});
    return result;
}

} // namespace rampwright
