#pragma once

#include <rampwright/body/outline.hpp>

#include <string>
#include <vector>

namespace rampwright::body_detail {

/// An edge of an outline as the second coordinate over the first: a straight line, or a stretch of a cubic
/// Bézier curve along which the first coordinate only grows.
struct Edge {
    double x0, x1;                          ///< x0 < x1
    std::array<Eigen::Vector2d, 4> control; ///< from x0 to x1
    bool straight;
    double at0, slope; ///< of a straight edge: at0 + slope (x - x0)

    double at(double x) const;
    double lowest() const;
    double highest() const;
};

/// An outline cut into strips at every vertex and at every place where a curve turns back in x: within a
/// strip, the inside lies between fixed pairs of edges, lower and upper.
class Strips {
public:
    /// Checks the outline first; `where` names it in a Problem.
    Strips(const Outline& outline, const std::string& where);

    struct Strip {
        double x0, x1;
        std::vector<std::array<int, 2>> pairs;
    };
    const std::vector<Strip>& strips() const { return strips_; }
    const std::vector<Edge>& edges() const { return edges_; }
    bool straight() const { return straight_; }
    /// The strip that holds x (x0 <= x < x1), or none.
    const Strip* find(double x) const;
    /// Whether the curve stands upright at one end of this edge, where sections change like a root.
    bool sharp(double x) const;

private:
    std::vector<Edge> edges_;
    std::vector<Strip> strips_;
    std::vector<double> sharp_;
    bool straight_ = true;
};

} // namespace rampwright::body_detail
