#pragma once

#include <Eigen/Core>

#include <functional>
#include <limits>
#include <vector>

namespace rampwright {

/// A measured value: estimate, standard uncertainty, degrees of freedom behind that uncertainty.
struct Measured {
    double value = 0;
    double sigma = 0;
    double freedom = std::numeric_limits<double>::infinity();
};

/// What a formula of measured values gives.
struct Combined {
    double value = 0;
    double sigma = 0;                  ///< combined standard uncertainty
    double freedom = 0;                ///< effective, by Welch and Satterthwaite; infinite where all are
    std::vector<double> contributions; ///< of each input alone: slope times its sigma, signed

    /// Half width of the interval that holds the value with this probability (Student's t).
    double expanded(double probability) const;
    operator Measured() const { return {value, sigma, freedom}; }
};

using Formula = std::function<double(const Eigen::VectorXd&)>;

/// The law of propagation of uncertainty, first order: slopes by central differences of one sigma's width.
/// Source: JCGM 100:2008 (GUM), 5.1.2, 5.2.2 and G.4.
/// @param correlation of the inputs; empty for uncorrelated ones.
Combined combine(const Formula& formula, const std::vector<Measured>& inputs,
                 const Eigen::MatrixXd& correlation = {});

/// A straight line y = at_origin + slope (x - origin) through points, by least squares.
struct LineFit {
    double origin = 0, at_origin = 0, slope = 0;
    double scatter = 0;     ///< standard deviation of y about the line, n - 2 degrees of freedom
    double correlation = 0; ///< of at_origin and slope
    double at_origin_sigma = 0, slope_sigma = 0;
    double freedom = 0;
    /// The line's height at x with its standard uncertainty.
    Measured at(double x) const;
};

/// At least three points. Source: GUM H.3.
LineFit fit_line(const Eigen::VectorXd& x, const Eigen::VectorXd& y, double origin = 0);

} // namespace rampwright
