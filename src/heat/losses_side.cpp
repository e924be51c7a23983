#include <algorithm>
#include <cmath>
#include <heat/losses_side.hpp>
#include <numbers>

namespace rampwright {

namespace {

// Where the normal density is cut: what lies beyond is below 1e-10 of the whole.
constexpr double reach = 6.5;

/// What the grid walks over: density, tanh and sine at equal steps need no library call but the first.
struct Walk {
    double density, density_ratio, density_fall; // g, g_next / g, its own factor
    double growth, growth_ratio;                 // exp(2 z), its factor
    double sine, cosine, step_sine, step_cosine;

    void advance() {
        density *= density_ratio;
        density_ratio *= density_fall;
        growth *= growth_ratio;
        const double turned = sine * step_cosine + cosine * step_sine;
        cosine = cosine * step_cosine - sine * step_sine;
        sine = turned;
    }
    // In this form an overflowing or vanishing exponential gives the right limit.
    double tanh() const { return 1 - 2 / (growth + 1); }
};

/// Derivatives 1, 3, 5 of F(x) * normal density at a zero of F, for the Euler-Maclaurin end correction.
/// F = grip * tanh(z) + const, dz/dx = s, t = tanh(z).
double end_correction(double h, double x, double density, double grip, double s, double t) {
    const double u = 1 - t * t, tt = t * t;
    const double f1 = grip * s * u;
    const double f2 = grip * s * s * (-2 * t * u);
    const double f3 = grip * s * s * s * u * (4 * tt - 2 * u);
    const double f4 = grip * s * s * s * s * t * u * (16 * u - 8 * tt);
    const double f5 = grip * s * s * s * s * s * u * (16 * u * u - 88 * tt * u + 16 * tt * tt);
    const double xx = x * x;
    const double g1 = -x, g2 = xx - 1, g3 = x * (3 - xx), g4 = xx * xx - 6 * xx + 3;
    const double first = f1;
    const double third = f3 + 3 * f2 * g1 + 3 * f1 * g2;
    const double fifth = f5 + 5 * f4 * g1 + 10 * f3 * g2 + 10 * f2 * g3 + 5 * f1 * g4;
    const double hh = h * h;
    return density * hh * (first / 12 - hh * (third / 720 - hh * fifth / 30240));
}

SideLoad side_load_at(double sine_of_cant, double grip, double creep, double toe) {
    const double side = grip > 0 ? grip * std::tanh(creep * toe / grip) : 0;
    const double load = sine_of_cant + side;
    return {std::max(load, 0.0), std::max(-load, 0.0), side * std::sin(toe)};
}

} // namespace

// The mean is a trapezoidal sum over x, toe = mean + spread * x, which converges geometrically for a
// smooth integrand. F changes its bearing from head to wood where it is zero, so the grid is laid with a
// node on that kink and each side is summed on its own, with the end corrected by derivatives.
SideLoad mean_side_load(double sine_of_cant, double grip, double creep, Toe toe) {
    if (!(grip > 0) || !(toe.spread > 0) || !(creep > 0))
        return side_load_at(sine_of_cant, grip, creep, toe.mean);

    const double s = creep * toe.spread / grip;
    const double m = creep * toe.mean / grip;
    const double h = std::clamp(0.4 / s, 1e-4, 0.25);

    double anchor = 0;
    bool kinked = false;
    if (std::abs(sine_of_cant) < grip) {
        const double x = (-std::atanh(sine_of_cant / grip) - m) / s;
        kinked = std::abs(x) < reach;
        if (kinked) anchor = x;
    }

    const double density = std::exp(-anchor * anchor / 2) / std::sqrt(2 * std::numbers::pi);
    const double angle = toe.mean + toe.spread * anchor;
    Walk up{.density = density,
            .density_ratio = std::exp(-h * anchor - h * h / 2),
            .density_fall = std::exp(-h * h),
            .growth = std::exp(2 * (m + s * anchor)),
            .growth_ratio = std::exp(2 * s * h),
            .sine = std::sin(angle),
            .cosine = std::cos(angle),
            .step_sine = std::sin(toe.spread * h),
            .step_cosine = std::cos(toe.spread * h)};
    Walk down = up;
    down.density_ratio = std::exp(h * anchor - h * h / 2);
    down.growth_ratio = 1 / up.growth_ratio;
    down.step_sine = -up.step_sine;

    const double t = up.tanh();
    double side_up = 0, side_down = 0, weight_up = 0, weight_down = 0;
    double scrub = density * t * up.sine;
    const auto sum = [&scrub, h](Walk walk, double room, double& side, double& weight) {
        for (int i = static_cast<int>(room / h); i > 0; --i) {
            walk.advance();
            const double force = walk.density * walk.tanh();
            side += force;
            weight += walk.density;
            scrub += force * walk.sine;
        }
    };
    sum(up, reach - anchor, side_up, weight_up);
    sum(down, reach + anchor, side_down, weight_down);

    SideLoad load;
    load.scrub = h * grip * scrub;
    if (kinked) {
        const double end = end_correction(h, anchor, density, grip, s, t);
        load.on_head = std::max(0.0, h * (sine_of_cant * weight_up + grip * side_up) + end);
        load.on_wood = std::max(0.0, -h * (sine_of_cant * weight_down + grip * side_down) + end);
    } else {
        const double mean = sine_of_cant + h * grip * (side_up + side_down + density * t);
        (mean > 0 ? load.on_head : load.on_wood) = std::abs(mean);
    }
    return load;
}

} // namespace rampwright
