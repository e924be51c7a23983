#include <rampwright/body/mass_properties.hpp>

#include <Eigen/Dense>

namespace rampwright {

namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// What a point mass of 1 kg at `arm` adds to a tensor about the origin.
Matrix3d steiner(const Vector3d& arm) {
    return arm.squaredNorm() * Matrix3d::Identity() - arm * arm.transpose();
}

/// Inertia tensor from ∫ r rᵀ dm.
Matrix3d tensor(const Matrix3d& second) {
    return second.trace() * Matrix3d::Identity() - second;
}

} // namespace

MassProperties combine(std::span<const MassProperties> parts) {
    MassProperties whole;
    Vector3d first = Vector3d::Zero();
    for (const auto& part : parts) {
        whole.mass += part.mass;
        first += part.mass * part.centre;
    }
    if (whole.mass == 0) return {};
    whole.centre = first / whole.mass;
    for (const auto& part : parts)
        whole.inertia += part.inertia + part.mass * steiner(part.centre - whole.centre);
    return whole;
}

MassProperties moved(MassProperties part, const Vector3d& by) {
    part.centre += by;
    return part;
}

Moments& Moments::operator+=(const Moments& other) {
    volume += other.volume;
    first += other.first;
    second += other.second;
    return *this;
}

Moments& Moments::operator-=(const Moments& other) {
    volume -= other.volume;
    first -= other.first;
    second -= other.second;
    return *this;
}

MassProperties with_density(const Moments& region, double density) {
    if (region.volume == 0) return {};
    MassProperties body;
    body.mass = density * region.volume;
    body.centre = region.first / region.volume;
    body.inertia = density * tensor(region.second - region.first * body.centre.transpose());
    return body;
}

MassProperties box(double mass, const Vector3d& size, const Vector3d& centre) {
    return {mass, centre, tensor(mass / 12 * size.cwiseAbs2().asDiagonal().toDenseMatrix())};
}

MassProperties cylinder(double mass, double diameter, double length, const Vector3d& axis,
                        const Vector3d& centre) {
    return tube(mass, 0, diameter, length, axis, centre);
}

MassProperties tube(double mass, double inner_diameter, double outer_diameter, double length,
                    const Vector3d& axis, const Vector3d& centre) {
    const Vector3d along = axis.normalized();
    const double across = (inner_diameter * inner_diameter + outer_diameter * outer_diameter) / 16;
    const Matrix3d outer = along * along.transpose();
    return {mass, centre,
            tensor(mass * (across * (Matrix3d::Identity() - outer) + length * length / 12 * outer))};
}

MassProperties sphere(double mass, double diameter, const Vector3d& centre) {
    return {mass, centre, mass * diameter * diameter / 10 * Matrix3d::Identity()};
}

} // namespace rampwright
