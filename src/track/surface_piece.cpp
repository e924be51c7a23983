#include <rampwright/track/track.hpp>

#include <cmath>

namespace rampwright {

SurfacePiece::SurfacePiece(double start, double length, std::complex<double> at, std::complex<double> tangent,
                           double curvature, double curvature_rate)
    : start_(start),
      length_(length),
      curvature_(curvature),
      rate_(curvature_rate),
      at_(at),
      tangent_(tangent) {
    // The tangent e^{i psi(s)} obeys f' = i (k + c s) f: a recurrence for its power series.
    const std::complex<double> i(0, 1);
    series_[0] = 1;
    terms_ = 1;
    if (!straight()) {
        series_[1] = i * curvature_;
        for (std::size_t n = 1; n + 1 < most_terms; ++n)
            series_[n + 1] = i * (curvature_ * series_[n] + rate_ * series_[n - 1]) / double(n + 1);
        // As many terms as reach rounding at the far end: the two last ones may vanish by turns.
        double power = 1;
        for (std::size_t n = 0; n < most_terms; ++n, power *= length_)
            if (std::abs(series_[n]) * power > 1e-18) terms_ = n + 1;
    }
    for (std::size_t n = 0; n < terms_; ++n)
        integral_[n] = series_[n] / double(n + 1);
}

SurfacePoint SurfacePiece::point(double along) const {
    std::complex<double> f = series_[terms_ - 1], g = integral_[terms_ - 1];
    for (std::size_t n = terms_ - 1; n-- > 0;) {
        f = f * along + series_[n];
        g = g * along + integral_[n];
    }
    return {at_ + tangent_ * (g * along), tangent_ * f, curvature_ + rate_ * along};
}

} // namespace rampwright
