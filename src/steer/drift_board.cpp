#include <rampwright/steer/drift_board.hpp>

#include <cmath>

namespace rampwright {

double turn_radius(double wheelbase, double steer) {
    return wheelbase / std::tan(steer);
}

double steer_of_radius(double wheelbase, double radius) {
    return std::atan(wheelbase / radius);
}

// The mark stays on a circle about the turn's centre (0, R) of radius hypot(R, a). From (a, 0) to (a + s, d):
// a² + R² = (a + s)² + (d - R)², so 1/R = 2 d / (s² + 2 a s + d²).
double steer_from_drift(double wheelbase, double drift, double over, double watched_ahead) {
    const double reach = over * (over + 2 * watched_ahead);
    return std::atan(2 * wheelbase * drift / (reach + drift * drift));
}

std::optional<double> drift_from_steer(double wheelbase, double steer, double over, double watched_ahead) {
    const double curvature = std::tan(steer) / wheelbase;
    const double reach = over * (over + 2 * watched_ahead);
    const double under_root = 1 - curvature * curvature * reach;
    if (under_root < 0) return std::nullopt;
    return curvature * reach / (1 + std::sqrt(under_root));
}

double steer_per_drift(double wheelbase, double drift, double over, double watched_ahead) {
    const double reach = over * (over + 2 * watched_ahead);
    const double sum = reach + drift * drift;
    const double tangent = 2 * wheelbase * drift / sum;
    return 2 * wheelbase * (reach - drift * drift) / (sum * sum) / (1 + tangent * tangent);
}

BothWays split_cross_fall(double first, double second) {
    return {(first - second) / 2, (first + second) / 2};
}

} // namespace rampwright
