#pragma once

#include <rampwright/project/project.hpp>

#include <array>
#include <complex>
#include <vector>

namespace rampwright {

/// A point of the running surface. Track frame: X downtrack, Z up; slope negative downhill; curvature
/// dslope/ds, positive where the surface is concave upward. A complex number is X + iZ.
struct SurfacePoint {
    std::complex<double> at;
    std::complex<double> tangent; ///< unit, downtrack
    double curvature = 0;         ///< 1/m
};

/// A stretch whose curvature is linear in arc length: a straight, an arc, or an easing between them
/// (a clothoid). Position and tangent are power series about its middle, exact to rounding, so that one
/// evaluation is two short polynomials and no trigonometric function.
class SurfacePiece {
public:
    static constexpr double longest_turn = 0.5; ///< rad; a piece that turns more is split by the track
    SurfacePiece(double start, double length, std::complex<double> at, std::complex<double> tangent,
                 double curvature, double curvature_rate);

    double start() const { return start_; }
    double length() const { return length_; }
    double end() const { return start_ + length_; }
    double curvature() const { return curvature_; }
    double curvature_rate() const { return rate_; }
    bool straight() const { return curvature_ == 0 && rate_ == 0; }
    /// @param along arc length from the piece's own start; outside the piece the series is continued.
    SurfacePoint point(double along) const;
    /// Slope gained from the start to `along`, rad.
    double turn(double along) const { return along * (curvature_ + 0.5 * rate_ * along); }

private:
    static constexpr std::size_t most_terms = 18;
    double start_, length_, curvature_, rate_;
    std::complex<double> at_, tangent_; ///< in the middle
    using Term = std::array<double, 4>; ///< of the tangent and of its integral, real and imaginary parts
    std::size_t pairs_ = 1;             ///< of terms in use
    std::array<Term, most_terms> terms_{};
};

/// The running surface from before the start gate to beyond the end: the first piece is continued
/// straight backward, the last one forward, as far as wheels need.
class Track {
public:
    /// @throws Problem (`where` a pointer below /track): a start height that is not its shape's, lines out of
    ///         order or off the track, an arc too short for its easing, a measured table that runs backward.
    explicit Track(const TrackPlan& plan);

    /// Pieces in order; the first and the last are the straight continuations.
    const std::vector<SurfacePiece>& pieces() const { return pieces_; }
    double start_line() const { return start_line_; }
    double finish_line() const { return finish_line_; }
    double length() const { return length_; } ///< of the described surface
    double start_height() const {
        return start_height_;
    } ///< surface at the start line above its lowest point
    double gravity() const { return gravity_; }
    double clock_offset() const { return clock_offset_; }

    std::size_t find_piece(double s) const;
    SurfacePoint point(double s) const;
    double slope(double s) const;

    /// Measured tracks: root mean square and greatest distance of the points from the curve, m; else 0.
    double fit_rms() const { return fit_rms_; }
    double fit_max() const { return fit_max_; }

private:
    void append(double length, double curvature, double curvature_end);
    void set_lines(const TrackPlan& plan);
    std::vector<SurfacePiece> pieces_;
    double start_line_ = 0, finish_line_ = 0, length_ = 0, start_height_ = 0, gravity_ = 9.80665,
           clock_offset_ = 0;
    double fit_rms_ = 0, fit_max_ = 0;
};

} // namespace rampwright
