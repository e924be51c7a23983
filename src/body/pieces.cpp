#include "body/pieces.hpp"

#include <cmath>

namespace rampwright::body_detail {

using Eigen::Vector3d;

namespace {

/// Two unit vectors that complete `along` to a frame.
std::array<Vector3d, 2> across(const Vector3d& along) {
    const Vector3d one = along.unitOrthogonal();
    return {one, along.cross(one)};
}

std::array<Vector3d, 3> sides(const Block& b) {
    return {Vector3d(b.along.x(), b.along.y(), 0), Vector3d(-b.along.y(), b.along.x(), 0), Vector3d::UnitZ()};
}

/// Both the point and the unit normal of a face.
struct Spot {
    Vector3d at, outward;
};

Spot spot(const Block& b, int face, double u, double v) {
    const auto side = sides(b);
    const int i = face / 2, j = (i + 1) % 3, k = (i + 2) % 3;
    const double sign = face % 2 == 0 ? -1 : 1;
    return {b.centre + sign * b.half[i] * side[i] + (2 * u - 1) * b.half[j] * side[j] +
                (2 * v - 1) * b.half[k] * side[k],
            sign * side[i]};
}

/// Faces of a rod: wall, start, end (flat or cone).
Spot spot(const Rod& r, int face, double u, double v) {
    const auto [one, two] = across(r.along);
    const double angle = 2 * std::numbers::pi * u;
    const Vector3d radial = std::cos(angle) * one + std::sin(angle) * two;
    if (face == 0) return {r.from + v * r.length * r.along + r.radius * radial, radial};
    if (face == 1) return {r.from + v * r.radius * radial, -r.along};
    const Vector3d slant = r.tip > 0 ? Vector3d(r.tip * radial + r.radius * r.along).normalized() : r.along;
    return {r.from + (r.length + (1 - v) * r.tip) * r.along + v * r.radius * radial, slant};
}

Spot spot(const Ball& b, int, double u, double v) {
    const double angle = 2 * std::numbers::pi * u, height = std::numbers::pi * (v - 0.5);
    const Vector3d out(std::cos(height) * std::cos(angle), std::cos(height) * std::sin(angle),
                       std::sin(height));
    return {b.centre + b.radius * out, out};
}

} // namespace

Convex convex(const Piece& piece) {
    const double c = std::cos(piece.turned), s = std::sin(piece.turned);
    if (piece.kind == Piece::Kind::sphere) return Ball{piece.centre, piece.size.x() / 2};
    if (piece.kind == Piece::Kind::box) return Block{piece.centre, piece.size.cwiseAbs() / 2, {c, s}};
    Rod rod;
    const Vector3d a = piece.axis.normalized();
    rod.along = Vector3d(c * a.x() - s * a.y(), s * a.x() + c * a.y(), a.z());
    rod.length = piece.size.y();
    rod.radius = piece.size.x() / 2;
    rod.from = piece.centre - rod.length / 2 * rod.along;
    return rod;
}

Vector3d Face::at(double u, double v) const {
    return std::visit([&](const auto& s) { return spot(s, index, u, v).at; }, solid->shape());
}

Vector3d Face::outward(double u, double v) const {
    return std::visit([&](const auto& s) { return spot(s, index, u, v).outward; }, solid->shape());
}

std::vector<Face> faces(const Convex& solid) {
    const int count = std::holds_alternative<Block>(solid.shape()) ? 6
                      : std::holds_alternative<Rod>(solid.shape()) ? 3
                                                                   : 1;
    std::vector<Face> all;
    for (int i = 0; i < count; ++i)
        all.push_back({&solid, i});
    return all;
}

} // namespace rampwright::body_detail
