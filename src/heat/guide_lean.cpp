#include <algorithm>
#include <cmath>
#include <heat/guide_lean.hpp>
#include <numbers>

namespace rampwright {

namespace {

// Where the normal density is cut.
constexpr double reach = 6.5;

// Near zero net steer the car changes sides over a width as small as the joints' moment is weak, so nodes
// crowd there: y = crowd * sinh(w) in spreads, equal steps of w. Folded about zero the integrand is even and
// analytic in w, where the trapezoidal sum converges geometrically: with steps below a quarter of the
// change's one sigma, and of half a spread where the density lies.
double crowd(double change) {
    return std::clamp(2 * change, 1e-4, 0.5);
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

/// Sums the mean over net steers given in pairs, x and -x, since both share what is costly.
class Sum {
public:
    explicit Sum(const GuideSetup& setup)
        // A joint without any moment would leave no width to the change of sides.
        : s_(setup), joints_(std::max(setup.kick / setup.wheelbase, 1e-9)) {}

    void add(double net, double weight_at_plus, double weight_at_minus) {
        const double side = s_.side_force(net), z = side / joints_;
        // The side force and the joints' moment together push the front to one side: this much on average
        // against the rail there, and what they leave to the other side.
        const double other = std::erfc(z / std::numbers::sqrt2) / 2, own = 1 - other;
        const double towards = joints_ * normal_density(z) + side * own, away = towards - side;
        const double slip = side * net;
        const double rub = s_.rail_friction, ride = s_.ride_share, touch = s_.touch_share;
        mean_.force += weight_at_plus * (rub * (ride * towards + touch * away) + slip) +
                       weight_at_minus * (rub * (ride * away + touch * towards) + slip);
        mean_.crossing += (weight_at_plus + weight_at_minus) * 4 * own * other;
    }
    LeanMean mean() const { return mean_; }
    /// rad of net steer, over which the sum of side force and joints changes sides, one sigma.
    double change() const { return joints_ / (s_.creep * s_.front_load); }

private:
    const GuideSetup& s_;
    double joints_; ///< N at the front wheel, one sigma
    LeanMean mean_;
};

} // namespace

LeanMean lean_mean(const GuideSetup& setup, double net) {
    const double spread = setup.spread();
    Sum sum(setup);
    const double k = spread > 0 ? net / spread : 0, away = std::abs(k);
    if (!(spread > 0)) {
        sum.add(net, 1, 0);
    } else if (away < far) {
        const double c = crowd(sum.change() / spread), h = step(away), ratio = std::exp(h);
        const int n = static_cast<int>(std::asinh((away + reach) / c) / h) + 1;
        double rising = c / 2, falling = c / 2;
        for (int i = 0; i < n; ++i) {
            const double x = rising - falling, width = (i == 0 ? h / 2 : h) * (rising + falling);
            sum.add(spread * x, width * normal_density(x - k), width * normal_density(x + k));
            rising *= ratio;
            falling /= ratio;
        }
    } else {
        constexpr int half = static_cast<int>(reach / far_step);
        for (int i = -half; i <= half; ++i)
            sum.add(net + spread * far_step * i, far_step * normal_density(far_step * i), 0);
    }
    return sum.mean();
}

} // namespace rampwright
