#include <rampwright/bench/pendulum.hpp>

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>
#include <numbers>

namespace rampwright {

namespace {

constexpr double two_pi = 2 * std::numbers::pi;

double amplitude_factor(double amplitude) {
    return std::comp_ellint_1(std::sin(amplitude / 2)) * 2 / std::numbers::pi;
}

} // namespace

// Turned by q the body has risen by h - sqrt(h² - 4 r² sin²(q/2)), and rises at r² sin(q) / height per turn.
// From the energy, T = 4 integral dq / q'. With sin(q/2) = sin(q0/2) sin(u) the integrand is smooth and
// periodic in u, so the trapezoidal sum converges geometrically.
double wire_period(const WirePendulum& p, double inertia, double amplitude) {
    const double small = two_pi * std::sqrt(inertia * p.length / (p.mass * p.gravity)) / p.radius;
    if (amplitude == 0) return small;
    const double k = std::sin(amplitude / 2), r = p.radius, h = p.length;
    constexpr int steps = 64; // over a quarter
    double sum = 0;
    for (int i = 0; i < steps; ++i) {
        const double u = std::numbers::pi / 2 * (i + 0.5) / steps;
        const double s = k * std::sin(u), c = std::sqrt(1 - s * s); // of half the turn
        const double height = std::sqrt(h * h - 4 * r * r * s * s);
        const double lowest = std::sqrt(h * h - 4 * r * r * k * k);
        const double climb = r * r * 2 * s * c / height;
        // Drop from the turning point: height - lowest, written without cancelling.
        const double cosine = std::cos(u);
        const double drop = 4 * r * r * k * k * cosine * cosine / (height + lowest);
        const double turn_per_u = 2 * k * cosine / c;
        sum += turn_per_u * std::sqrt((inertia + p.mass * climb * climb) / (2 * p.mass * p.gravity * drop));
    }
    return 4 * sum * (std::numbers::pi / 2) / steps;
}

double inertia_from_period(const WirePendulum& p, double period, double amplitude) {
    const double per_root = p.radius * std::sqrt(p.mass * p.gravity / p.length) / two_pi;
    // What small swings would mean; a wide swing is slower, so the truth lies below.
    const double most = std::pow(period * per_root, 2);
    if (amplitude == 0) return most;
    const auto off = [&](double inertia) { return wire_period(p, inertia, amplitude) - period; };
    const double at_zero = off(0), at_most = off(most);
    if (!(at_zero < 0))
        return 0; // so quick a swing that wide needs no inertia at all: something was measured wrong
    if (!(at_most > 0)) return most;
    std::uintmax_t passes = 100;
    const auto bracket = boost::math::tools::toms748_solve(
        off, 0.0, most, at_zero, at_most, boost::math::tools::eps_tolerance<double>(50), passes);
    return (bracket.first + bracket.second) / 2;
}

Combined measure_inertia(const WireBench& bench) {
    const Formula formula = [&bench](const Eigen::VectorXd& x) {
        const WirePendulum both{x[0] + x[1], x[2], x[3], bench.gravity};
        const double whole = inertia_from_period(both, x[4], bench.amplitude);
        if (!(x[1] > 0)) return whole;
        const WirePendulum platform{x[1], x[2], x[3], bench.gravity};
        return whole - inertia_from_period(platform, x[5], bench.amplitude);
    };
    return combine(formula, {bench.body_mass, bench.platform_mass, bench.radius, bench.length, bench.period,
                             bench.platform_period});
}

double pin_period(double inertia, double mass, double arm, double gravity, double amplitude) {
    return two_pi * std::sqrt((inertia + mass * arm * arm) / (mass * gravity * arm)) *
           amplitude_factor(amplitude);
}

Combined inertia_from_pin(const Measured& period, const Measured& mass, const Measured& arm, double gravity,
                          double amplitude) {
    const double factor = amplitude_factor(amplitude);
    const Formula formula = [gravity, factor](const Eigen::VectorXd& x) {
        const double root = x[0] / factor / two_pi;
        return x[1] * x[2] * (gravity * root * root - x[2]);
    };
    return combine(formula, {period, mass, arm});
}

} // namespace rampwright
