#pragma once

#include <Eigen/Core>

#include <span>

namespace rampwright {

/// Mass, centre of mass and inertia tensor of a rigid body. Car frame: x forward from the tail of the block,
/// y to the left, z up from its bottom. SI units: kg, m, kg m².
struct MassProperties {
    double mass = 0;
    Eigen::Vector3d centre = Eigen::Vector3d::Zero();
    /// About `centre`, along the car's axes, as a tensor: the off-diagonal terms are -∫xy dm.
    Eigen::Matrix3d inertia = Eigen::Matrix3d::Zero();
};

/// Several rigid bodies as one, by the parallel-axis theorem. No parts, or parts of no mass in all: zero,
/// with the centre at the origin.
MassProperties combine(std::span<const MassProperties> parts);

/// The same body moved by `by`, not turned.
MassProperties moved(MassProperties part, const Eigen::Vector3d& by);

/// Volume integrals of a region about the origin of the car frame; m³, m⁴, m⁵.
struct Moments {
    double volume = 0;
    Eigen::Vector3d first = Eigen::Vector3d::Zero();  ///< ∫ r dV
    Eigen::Matrix3d second = Eigen::Matrix3d::Zero(); ///< ∫ r rᵀ dV

    Moments& operator+=(const Moments& other);
    Moments& operator-=(const Moments& other);
    friend Moments operator+(Moments left, const Moments& right) { return left += right; }
    friend Moments operator-(Moments left, const Moments& right) { return left -= right; }
};

/// A region of uniform density, kg/m³. A region of no volume has no mass and its centre at the origin.
MassProperties with_density(const Moments& region, double density);

/// Uniform solids of a known mass, kg, by outer size, m.
MassProperties box(double mass, const Eigen::Vector3d& size, const Eigen::Vector3d& centre);
MassProperties cylinder(double mass, double diameter, double length, const Eigen::Vector3d& axis,
                        const Eigen::Vector3d& centre);
MassProperties tube(double mass, double inner_diameter, double outer_diameter, double length,
                    const Eigen::Vector3d& axis, const Eigen::Vector3d& centre);
MassProperties sphere(double mass, double diameter, const Eigen::Vector3d& centre);

} // namespace rampwright
