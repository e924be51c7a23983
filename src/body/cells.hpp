#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>

#include <cstdint>
#include <span>
#include <unordered_map>
#include <vector>

namespace rampwright::body_detail {

/// The half space normal · p <= offset; `normal` is of unit length and points out of it.
struct Plane {
    Eigen::Vector3d normal = Eigen::Vector3d::UnitZ();
    double offset = 0;
    double at(const Eigen::Vector3d& p) const { return normal.dot(p) - offset; }
};

/// What is common to some half spaces.
using ConvexSolid = std::vector<Plane>;

/// Thrown where rounding has left a cell that a plane cannot cut in two: another `hair` may help.
struct CellTrouble {};

/// A part of space divided into convex cells that share their faces, edges and corners.
///
/// A cut by a plane goes through one cell, and divides the faces and edges that it shares with its neighbours
/// for them as well. Whatever rounding does to the corners' places, the cells fit together without a gap, so
/// the boundary between any cells and the rest is closed: no place is ever computed twice. Corners nearer to
/// a plane than `hair` count as on it, so that faces which coincide are one.
class Cells {
public:
    static constexpr int air = -1; ///< beyond everything, and whatever was given away

    explicit Cells(double hair) : hair_(hair) {}

    /// Starts with a row of boxes between consecutive x. @return their numbers.
    std::vector<int> stack_boxes(std::span<const double> x, const Eigen::Vector2d& low_yz,
                                 const Eigen::Vector2d& high_yz);

    /// Divides a cell into what lies inside the solid and pieces outside of it, which are appended.
    /// @return the cell inside, or `air` where there is nothing.
    int carve(int cell, const ConvexSolid& solid, std::vector<int>& outside);
    /// Whether the solid can have anything in common with a cell.
    bool may_meet(int cell, const ConvexSolid& solid) const;
    /// The cell is no longer looked at; its neighbours border on air.
    void give_to_air(int cell);

    const std::vector<Eigen::Vector3d>& corners() const { return corners_; }
    /// The faces between cells and air, as rings of corners, counter-clockwise seen from the air.
    std::vector<std::vector<int>> surface() const;
    Eigen::Vector3d middle(int cell) const;

private:
    struct Face {
        std::vector<int> ring; ///< counter-clockwise seen from `front`
        int back = air, front = air;
        bool dead() const { return back == air && front == air; }
    };
    struct Split {
        int inside = air, outside = air;
    };

    Split split(int cell, const Plane& plane);
    int side(int corner, const Plane& plane);
    int add_face(std::vector<int> ring, int back, int front);
    void split_edge(int a, int b, const Plane& plane);
    int split_face(int face);
    std::vector<int> cap_ring(int cell, const std::vector<int>& faces) const;
    static std::uint64_t edge(int a, int b) {
        return static_cast<std::uint64_t>(std::min(a, b)) << 32 | static_cast<std::uint32_t>(std::max(a, b));
    }
    void forget(int face);

    double hair_;
    std::vector<Eigen::Vector3d> corners_;
    std::vector<Face> faces_;
    std::vector<std::vector<int>> cells_;                       ///< faces of each
    std::unordered_map<std::uint64_t, std::vector<int>> edges_; ///< faces around each
    std::vector<std::pair<std::uint32_t, std::int8_t>> side_;   ///< of each corner, if of the present cut
    std::uint32_t cut_ = 0;
};

} // namespace rampwright::body_detail
