#pragma once

#include <rampwright/heat/guide.hpp>

#include <Eigen/Core>

namespace rampwright {

/// The mean over the rear pair's toe, laid out once for a car and good for every speed.
///
/// The bouncing force depends on the net steer's size y alone, so the normal density is folded about zero.
/// With p = m v² kappa, the force that bends the car's path, it is
///     touch * E[p] + loss * E[p^1.5] / v.
/// p = hypot(steered, kicked): steered p = v² m F / (L r + v² m), F the tread's side force at y and r = F /
/// y; kicked p = kick / L.
class BounceMean {
public:
    explicit BounceMean(const GuideSetup& setup);

    /// (touch * E[p], loss * E[p^1.5]) where m v² is `energy`, J.
    Eigen::Vector2d parts(double energy) const;

    /// Energy on whose scale the parts change, J; zero where they do not.
    double natural_energy() const { return natural_energy_; }

private:
    static constexpr int most = 40;
    using Nodes = Eigen::Array<double, Eigen::Dynamic, 1, 0, most, 1>;
    Nodes weight_, force_, stiffness_; ///< probability; N; L r, J
    double kicked_ = 0, touch_ = 0, loss_ = 0, natural_energy_ = 0;
};

} // namespace rampwright
