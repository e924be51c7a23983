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
    // The tangent e^{i psi(d)} about the middle obeys f' = i (k + c d) f: a recurrence for its power series.
    const std::complex<double> i(0, 1);
    const double reach = length_ / 2, k = curvature_ + rate_ * reach;
    std::array<std::complex<double>, most_terms> series{1};
    std::size_t count = 1;
    if (!straight()) {
        series[1] = i * k;
        for (std::size_t n = 1; n + 1 < most_terms; ++n)
            series[n + 1] = i * (k * series[n] + rate_ * series[n - 1]) / double(n + 1);
        // As many terms as reach rounding at the ends: the two last ones may vanish by turns.
        double power = 1;
        for (std::size_t n = 0; n < most_terms; ++n, power *= reach)
            if (std::norm(series[n]) * power * power > 1e-36) count = n + 1;
    }
    pairs_ = (count + 1) / 2;
    for (std::size_t n = 0; n < count; ++n) {
        const std::complex<double> integral = series[n] / double(n + 1);
        terms_[n] = {series[n].real(), series[n].imag(), integral.real(), integral.imag()};
    }
    tangent_ *= std::polar(1.0, turn(reach));
    at_ += at - point(0).at;
}

SurfacePoint SurfacePiece::point(double along) const {
    // Even and odd powers apart: two short chains of sums instead of one long one.
    const double d = along - length_ / 2, square = d * d;
    const Term *term = terms_.data(), *even = term + pairs_ * 2 - 2;
    Term sum = even[0], odd = even[1];
    for (std::size_t n = pairs_ - 1; n-- > 0;) {
        even -= 2;
        for (std::size_t i = 0; i < 4; ++i) {
            sum[i] = sum[i] * square + even[0][i];
            odd[i] = odd[i] * square + even[1][i];
        }
    }
    for (std::size_t i = 0; i < 4; ++i)
        sum[i] += d * odd[i];
    const auto turned = [this](double real, double imaginary) { // by the tangent in the middle
        return std::complex<double>(tangent_.real() * real - tangent_.imag() * imaginary,
                                    tangent_.real() * imaginary + tangent_.imag() * real);
    };
    return {at_ + d * turned(sum[2], sum[3]), turned(sum[0], sum[1]), curvature_ + rate_ * along};
}

} // namespace rampwright
