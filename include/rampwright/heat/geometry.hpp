#pragma once

#include <rampwright/track/track.hpp>

#include <complex>
#include <vector>

namespace rampwright {

/// The path of a wheel's centre above the surface: the curve at constant distance `radius`. Its arc length
/// is used rather than the surface's, because the centre's speed is continuous where curvature jumps and
/// the contact point's is not.
class CentrePath {
public:
    /// @throws Problem where the surface curves upward more tightly than the wheel.
    CentrePath(const Track& track, double radius);

    struct Point {
        std::complex<double> at, tangent;
        double curvature = 0, curvature_rate = 0; ///< 1/m; its derivative by the centre's arc length, 1/m²
    };
    double radius() const { return radius_; }
    std::size_t count() const { return starts_.size(); }
    double start(std::size_t piece) const { return starts_[piece]; }
    /// On the piece, continued beyond its ends where asked.
    Point point(std::size_t piece, double q) const;
    std::size_t find_piece(double q) const;
    /// Arc length along the centre's path above a place of the surface.
    double above(double s) const;

private:
    const Track* track_;
    double radius_;
    std::vector<double> starts_;
};

/// Where a car with both axles on the surface is and how it moves with its one coordinate q, the arc
/// length of the rear wheel centre's path. Primes are d/dq, exact on each smooth piece.
struct Pose {
    CentrePath::Point rear, front;
    std::complex<double> along;                 ///< unit, from rear centre to front centre
    double front_rate = 0, front_rate_rate = 0; ///< s_f', s_f'' of the front centre's path
    double pitch_rate = 0, pitch_rate_rate = 0; ///< theta', theta''
    double front_q = 0;
};

/// The pair of centre paths at a fixed straight distance apart.
class AxlePair {
public:
    /// @param distance between rear and front wheel centres, m.
    AxlePair(const Track& track, double rear_radius, double front_radius, double distance);

    const CentrePath& rear() const { return rear_; }
    const CentrePath& front() const { return front_; }
    double distance() const { return distance_; }
    /// @param front_q a guess of the front centre's arc length, the better the cheaper; the result holds the
    /// true one.
    Pose pose(std::size_t rear_piece, std::size_t front_piece, double q, double front_q) const;
    /// With the pieces found as well.
    Pose pose(double q) const;
    /// The rear coordinate at which the front centre is at front_q.
    double rear_of_front(double front_q) const;

private:
    CentrePath rear_, front_;
    double distance_;
};

} // namespace rampwright
