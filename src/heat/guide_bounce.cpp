#include <algorithm>
#include <cmath>
#include <heat/guide_bounce.hpp>
#include <numbers>

namespace rampwright {

namespace {

// Where the normal density is cut.
constexpr double reach = 6.5;

// Near zero net steer p turns over a width as small as the joints' moment is weak, so nodes crowd there:
// y = crowd * sinh(w) in spreads, equal steps of w. The integrand is even and analytic in w, where the
// trapezoidal sum converges geometrically. The further off zero is, the less it weighs and the less they need
// crowd, and the finer the steps that the density at its own place needs; these rules hold 1e-6.
double crowd(double mean) {
    return std::min(0.01 * std::exp(mean * mean / 4), 0.5);
}
double step(double mean) {
    return 0.25 - 0.02 * mean;
}

// Beyond this many spreads zero no longer matters, and equal steps in y do.
constexpr double far = 5;
constexpr double far_step = 0.5;

double normal_density(double x) {
    return std::exp(-x * x / 2) * (std::numbers::inv_sqrtpi / std::numbers::sqrt2);
}

} // namespace

BounceMean::BounceMean(const GuideSetup& setup) {
    const double spread = std::hypot(setup.align, setup.need);
    const double mean = std::abs(setup.steer - setup.rear_toe);
    Nodes net;
    if (!(spread > 0)) {
        net.setConstant(1, mean);
        weight_.setOnes(1);
    } else if (mean < far * spread) {
        const double k = mean / spread, c = crowd(k), h = step(k);
        const auto n = static_cast<Eigen::Index>(std::asinh((k + reach) / c) / h) + 1;
        net.resize(n);
        weight_.resize(n);
        const double ratio = std::exp(h);
        double rising = c / 2, falling = c / 2;
        for (Eigen::Index i = 0; i < n; ++i) {
            const double x = rising - falling;
            net[i] = spread * x;
            weight_[i] = h * (rising + falling) * (normal_density(x - k) + normal_density(x + k));
            rising *= ratio;
            falling /= ratio;
        }
        weight_[0] /= 2;
    } else {
        constexpr int half = static_cast<int>(reach / far_step);
        net.resize(2 * half + 1);
        weight_.resize(2 * half + 1);
        for (int i = -half; i <= half; ++i) {
            net[half + i] = std::abs(mean + spread * far_step * i);
            weight_[half + i] = far_step * normal_density(far_step * i);
        }
    }

    const double greatest = setup.grip * setup.front_load;
    const double slope = setup.creep * setup.front_load;
    force_.resize(net.size());
    stiffness_.resize(net.size());
    for (Eigen::Index i = 0; i < net.size(); ++i) {
        const double force = greatest > 0 ? greatest * std::tanh(slope * net[i] / greatest) : 0;
        force_[i] = force;
        // A tiny floor keeps a front without load, at rest, from dividing zero by zero.
        stiffness_[i] = setup.wheelbase * std::max(net[i] > 0 ? force / net[i] : slope, 1e-300);
    }

    kicked_ = setup.kick / setup.wheelbase;
    // Of the two stiffnesses between which a typical net steer lies, the tread's and the joints', the mean.
    const double typical = std::hypot(spread, mean);
    const double tread = typical > 0 ? setup.side_force(typical) / typical : slope;
    const double turn = typical > 0 ? kicked_ / typical : slope;
    natural_energy_ = setup.wheelbase * std::sqrt(tread * std::max(turn, 0.01 * tread));
    touch_ = setup.touch_share * setup.rail_friction * (1 + setup.restitution);
    loss_ = (1 - setup.restitution * setup.restitution) / 2 *
            std::sqrt(2 * std::max(setup.side_gap, 0.0) / setup.effective_mass);
}

Eigen::Vector2d BounceMean::parts(double energy) const {
    const Nodes p = ((energy * force_ / (stiffness_ + energy)).square() + kicked_ * kicked_).sqrt();
    return {touch_ * (weight_ * p).sum(), loss_ * (weight_ * p * p.sqrt()).sum()};
}

} // namespace rampwright
