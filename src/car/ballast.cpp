#include "car/car_parts.hpp"

#include <rampwright/materials/materials.hpp>

#include <Eigen/Geometry>

#include <cmath>

namespace rampwright {

namespace {

Vec3 axis_of(const BallastPlan& piece) {
    return Eigen::AngleAxisd(piece.turned, Vec3::UnitZ()) * Vec3::Unit(piece.axis);
}

} // namespace

double putty_density(std::string_view material) {
    const Material* known = find_material(material);
    if (known == nullptr) known = find_material("tungsten-putty");
    return known->density.value;
}

MassProperties ballast_properties(const BallastPlan& piece, const std::vector<CutPlan>& cuts,
                                  const BodyOutlines& outlines) {
    switch (piece.shape) {
    case PieceShape::box:
    case PieceShape::sheet: {
        MassProperties straight = box(piece.mass, {piece.size[0], piece.size[1], piece.size[2]}, piece.at);
        const Eigen::Matrix3d turn = Eigen::AngleAxisd(piece.turned, Vec3::UnitZ()).toRotationMatrix();
        straight.inertia = turn * straight.inertia * turn.transpose();
        return straight;
    }
    case PieceShape::cylinder:
        return cylinder(piece.mass, piece.size[0], piece.size[1], axis_of(piece), piece.at);
    case PieceShape::sphere:
        return sphere(piece.mass, piece.size[0], piece.at);
    case PieceShape::putty:
        if (const auto holder = find_cut(cuts, piece.in))
            return fill_with_putty(piece, cuts[*holder], outlines).properties;
        break;
    }
    return {piece.mass, piece.at, Eigen::Matrix3d::Zero()}; // putty in no known cut: a point where it is put
}

std::optional<Eigen::AlignedBox3d> box_around(const BallastPlan& piece) {
    Vec3 half;
    const double c = std::abs(std::cos(piece.turned)), s = std::abs(std::sin(piece.turned));
    switch (piece.shape) {
    case PieceShape::box:
    case PieceShape::sheet:
        half = {(c * piece.size[0] + s * piece.size[1]) / 2, (s * piece.size[0] + c * piece.size[1]) / 2,
                piece.size[2] / 2};
        break;
    case PieceShape::cylinder: {
        const Vec3 axis = axis_of(piece);
        for (int i = 0; i < 3; ++i)
            half[i] = (std::abs(axis[i]) * piece.size[1] +
                       std::sqrt(std::max(0.0, 1 - axis[i] * axis[i])) * piece.size[0]) /
                      2;
        break;
    }
    case PieceShape::sphere:
        half = Vec3::Constant(piece.size[0] / 2);
        break;
    case PieceShape::putty:
        return std::nullopt;
    }
    return Eigen::AlignedBox3d(piece.at - half, piece.at + half);
}

std::optional<ViewShape> front_of(const BallastPlan& piece) {
    const auto around = box_around(piece);
    if (!around) return std::nullopt;
    const bool along_x = piece.shape == PieceShape::cylinder && std::abs(axis_of(piece).x()) > 1 - 1e-12;
    if (piece.shape == PieceShape::sphere || along_x)
        return ViewDisc{{piece.at.y(), piece.at.z()}, piece.size[0] / 2};
    return ViewRectangle{{around->min().y(), around->min().z()}, {around->max().y(), around->max().z()}};
}

} // namespace rampwright
