#include <rampwright/bench/combine.hpp>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cassert>
#include <cmath>

namespace rampwright {

double Combined::expanded(double probability) const {
    const double upper = (1 + probability) / 2;
    if (std::isinf(freedom)) return sigma * boost::math::quantile(boost::math::normal{}, upper);
    return sigma * boost::math::quantile(boost::math::students_t{freedom}, upper);
}

Combined combine(const Formula& formula, const std::vector<Measured>& inputs,
                 const Eigen::MatrixXd& correlation) {
    const auto n = static_cast<Eigen::Index>(inputs.size());
    assert(correlation.size() == 0 || (correlation.rows() == n && correlation.cols() == n));
    Eigen::VectorXd x(n);
    for (Eigen::Index i = 0; i < n; ++i)
        x[i] = inputs[static_cast<std::size_t>(i)].value;

    Combined result;
    result.value = formula(x);
    Eigen::VectorXd part = Eigen::VectorXd::Zero(n);
    for (Eigen::Index i = 0; i < n; ++i) {
        const double sigma = inputs[static_cast<std::size_t>(i)].sigma;
        if (!(sigma > 0)) continue;
        Eigen::VectorXd up = x, down = x;
        up[i] += sigma / 2;
        down[i] -= sigma / 2;
        part[i] = formula(up) - formula(down); // over a width of one sigma: slope times sigma
    }
    const double variance =
        correlation.size() == 0 ? part.squaredNorm() : (part.transpose() * correlation * part).value();
    result.sigma = std::sqrt(std::max(variance, 0.0));
    double denominator = 0;
    for (Eigen::Index i = 0; i < n; ++i)
        if (part[i] != 0) denominator += std::pow(part[i], 4) / inputs[static_cast<std::size_t>(i)].freedom;
    result.freedom =
        denominator > 0 ? variance * variance / denominator : std::numeric_limits<double>::infinity();
    result.contributions.assign(part.begin(), part.end());
    return result;
}

Measured LineFit::at(double x) const {
    const double d = x - origin;
    const double variance = at_origin_sigma * at_origin_sigma + d * d * slope_sigma * slope_sigma +
                            2 * d * correlation * at_origin_sigma * slope_sigma;
    return {at_origin + d * slope, std::sqrt(std::max(variance, 0.0)), freedom};
}

LineFit fit_line(const Eigen::VectorXd& x, const Eigen::VectorXd& y, double origin) {
    assert(x.size() == y.size() && x.size() >= 3);
    const auto n = static_cast<double>(x.size());
    // About the centroid, where height and slope are independent and no digits cancel.
    const double mean_x = x.mean(), mean_y = y.mean();
    const Eigen::ArrayXd dx = x.array() - mean_x;
    const double sxx = dx.square().sum();
    LineFit fit;
    fit.origin = origin;
    fit.slope = (dx * (y.array() - mean_y)).sum() / sxx;
    const double back = origin - mean_x;
    fit.at_origin = mean_y + fit.slope * back;
    fit.freedom = n - 2;
    fit.scatter = std::sqrt((y.array() - mean_y - fit.slope * dx).square().sum() / fit.freedom);
    fit.slope_sigma = fit.scatter / std::sqrt(sxx);
    fit.at_origin_sigma = fit.scatter * std::sqrt(1 / n + back * back / sxx);
    fit.correlation = fit.scatter > 0 ? back * fit.slope_sigma / fit.at_origin_sigma
                                      : back / std::hypot(back, std::sqrt(sxx / n));
    return fit;
}

} // namespace rampwright
