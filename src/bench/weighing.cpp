#include <rampwright/bench/weighing.hpp>

#include <cmath>

namespace rampwright {

Combined balance_on_two_supports(const Measured& front, const Measured& rear, const Measured& distance) {
    return combine([](const Eigen::VectorXd& x) { return x[2] * x[0] / (x[0] + x[1]); },
                   {front, rear, distance});
}

Combined height_from_tilt(const TiltWeighing& weighing) {
    return combine(
        [](const Eigen::VectorXd& x) { return x[5] + x[3] * (x[1] - x[2]) / (x[0] * std::tan(x[4])); },
        {weighing.whole, weighing.level_front, weighing.tilted_front, weighing.wheelbase, weighing.tilt,
         weighing.radius});
}

} // namespace rampwright
