#include <rampwright/bench/weighing.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace rampwright {

Combined balance_on_two_supports(const Measured& front, const Measured& rear, const Measured& distance) {
    return combine([](const Eigen::VectorXd& x) { return x[2] * x[0] / (x[0] + x[1]); },
                   {front, rear, distance});
}

Combined balance_from_whole(const Measured& front, const Measured& whole, const Measured& distance) {
    return combine([](const Eigen::VectorXd& x) { return x[2] * x[0] / x[1]; }, {front, whole, distance});
}

Measured mean_of_weighings(const std::vector<double>& readings, double division) {
    if (readings.empty()) return {0, std::numeric_limits<double>::infinity()};
    const auto count = static_cast<double>(readings.size());
    const Eigen::Map<const Eigen::ArrayXd> all(readings.data(), static_cast<Eigen::Index>(readings.size()));
    Measured mean{all.mean(), division / std::sqrt(12.0)};
    if (readings.size() < 2) return mean;
    const double spread = (all - mean.value).square().sum() / (count - 1) / count; // of the mean, squared
    const double variance = spread + mean.sigma * mean.sigma;
    if (spread > 0) mean.freedom = (count - 1) * variance * variance / (spread * spread);
    mean.sigma = std::sqrt(variance);
    return mean;
}

double spread_of_weighings(const std::vector<double>& readings) {
    if (readings.size() < 2) return 0;
    const auto [least, greatest] = std::minmax_element(readings.begin(), readings.end());
    return *greatest - *least;
}

Combined height_from_tilt(const TiltWeighing& weighing) {
    return combine(
        [](const Eigen::VectorXd& x) { return x[5] + x[3] * (x[1] - x[2]) / (x[0] * std::tan(x[4])); },
        {weighing.whole, weighing.level_front, weighing.tilted_front, weighing.wheelbase, weighing.tilt,
         weighing.radius});
}

} // namespace rampwright
