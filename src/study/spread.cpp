#include "study/moved_inputs.hpp"

#include <boost/math/distributions/normal.hpp>
#include <boost/random/sobol.hpp>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace rampwright {

namespace {

/// How many inputs bend one by one. On the demo's cars the eighth is worth a twentieth of the strongest.
constexpr std::size_t bent_count = 7;
constexpr std::size_t point_count = 4095;
/// From this sigma of the logarithm on, three points do not tell how an input bends.
constexpr double wide = 0.5;
/// An input whose parabola is this small against its slope is straight, but for rounding.
constexpr double least_bend = 1e-6;
/// No loss grows faster than this power of an input; what looks so is a parabola near its foot.
constexpr double greatest_power = 2.5;
constexpr double normal_95 = 1.959963984540054;

/// How a quantity bends along one input.
class Bend {
public:
    static Bend through(const Axis& axis) {
        Bend bend;
        bend.linear_ = 0.5 * (axis.high - axis.low);
        bend.square_ = 0.5 * (axis.high + axis.low);
        if (axis.log_sigma > 0 && axis.high * axis.low < 0) {
            const double rate = std::log(-axis.high / axis.low);
            if (std::abs(rate) > 1e-4 && std::abs(rate) < greatest_power * axis.log_sigma) {
                bend.rate_ = rate;
                bend.scale_ = axis.high / std::expm1(rate);
            }
        }
        return bend;
    }

    static Bend through(const Axis& axis, double at_minus_two, double at_plus_two) {
        Bend bend;
        const double odd = 0.5 * (axis.high - axis.low), even = 0.5 * (axis.high + axis.low);
        const double odd_two = 0.5 * (at_plus_two - at_minus_two),
                     even_two = 0.5 * (at_plus_two + at_minus_two);
        bend.cube_ = (odd_two - 2 * odd) / 6;
        bend.linear_ = odd - bend.cube_;
        bend.fourth_ = (even_two - 4 * even) / 12;
        bend.square_ = even - bend.fourth_;
        return bend;
    }

    double operator()(double z) const {
        if (rate_ != 0) return scale_ * std::expm1(rate_ * z);
        // Straight on beyond what the points tell.
        const double held = std::clamp(z, -known, known);
        const double slope = ((4 * fourth_ * held + 3 * cube_) * held + 2 * square_) * held + linear_;
        return (((fourth_ * held + cube_) * held + square_) * held + linear_) * held + slope * (z - held);
    }

private:
    static constexpr double known = 2.5;
    double linear_ = 0, square_ = 0, cube_ = 0, fourth_ = 0;
    double rate_ = 0, scale_ = 0; ///< of the power law, where it is one
};

/// Standard normal points of a Sobol' sequence, one row of bent_count + 1 each.
const std::vector<std::array<double, bent_count + 1>>& normal_points() {
    static const auto points = [] {
        boost::random::sobol sequence(bent_count + 1);
        const boost::math::normal normal;
        const double least = double(boost::random::sobol::min()), most = double(boost::random::sobol::max());
        std::vector<std::array<double, bent_count + 1>> rows(point_count);
        for (auto& row : rows)
            for (double& z : row)
                z = quantile(normal, (double(sequence()) - least + 0.5) / (most - least + 1));
        return rows;
    }();
    return points;
}

struct Surface {
    std::vector<Bend> bends;
    std::vector<std::vector<double>> products; ///< [i][j], j < i: what the changes' product is multiplied by
    double rest_shift = 0, rest_sigma = 0;

    double operator()(const std::array<double, bent_count + 1>& z) const {
        std::array<double, bent_count> change;
        double sum = rest_shift + rest_sigma * z.back();
        for (std::size_t i = 0; i < bends.size(); ++i) {
            change[i] = bends[i](z[i]);
            sum += change[i];
            for (std::size_t j = 0; j < i; ++j)
                sum += products[i][j] * change[i] * change[j];
        }
        return sum;
    }
};

/// The side on which an input is worth more, and what it is worth there.
std::pair<double, double> stronger_side(const Axis& axis) {
    return std::abs(axis.high) >= std::abs(axis.low) ? std::pair{1.0, axis.high} : std::pair{-1.0, axis.low};
}

Bend find_bend(std::size_t input, const Axis& axis, const Change& change) {
    if (axis.log_sigma > wide) {
        const Deviation down{input, -2}, up{input, 2};
        const std::optional<double> low = change({&down, 1}), high = change({&up, 1});
        if (low && high) return Bend::through(axis, *low, *high);
    }
    return Bend::through(axis);
}

double find_product(std::size_t i, const Axis& first, std::size_t j, const Axis& second,
                    const Change& change) {
    const auto [z_first, worth_first] = stronger_side(first);
    const auto [z_second, worth_second] = stronger_side(second);
    const std::array<Deviation, 2> both{{{i, z_first}, {j, z_second}}};
    const std::optional<double> together = change(both);
    if (!together || worth_first * worth_second == 0) return 0;
    return (*together - worth_first - worth_second) / (worth_first * worth_second);
}

} // namespace

std::array<double, 2> curved_interval95(const std::vector<Axis>& axes, double noise, const Change& change) {
    const auto worth = [&](std::size_t n) { return axes[n].low * axes[n].low + axes[n].high * axes[n].high; };
    std::vector<std::size_t> ranked(axes.size());
    std::iota(ranked.begin(), ranked.end(), std::size_t{0});
    std::stable_sort(ranked.begin(), ranked.end(),
                     [&](std::size_t a, std::size_t b) { return worth(a) > worth(b); });

    Surface surface;
    double rest = noise * noise;
    std::vector<std::size_t> bent;
    for (const std::size_t n : ranked) {
        const double linear = 0.5 * (axes[n].high - axes[n].low), square = 0.5 * (axes[n].high + axes[n].low);
        if (bent.size() < bent_count && std::abs(square) > least_bend * std::abs(linear)) {
            bent.push_back(n);
            continue;
        }
        surface.rest_shift += square;
        rest += linear * linear + 2 * square * square;
    }
    surface.rest_sigma = std::sqrt(rest);
    if (bent.empty()) return {-normal_95 * surface.rest_sigma, normal_95 * surface.rest_sigma};

    for (std::size_t i = 0; i < bent.size(); ++i) {
        surface.bends.push_back(find_bend(bent[i], axes[bent[i]], change));
        surface.products.emplace_back();
        for (std::size_t j = 0; j < i; ++j)
            surface.products[i].push_back(
                find_product(bent[i], axes[bent[i]], bent[j], axes[bent[j]], change));
    }
    std::vector<double> values;
    values.reserve(point_count);
    for (const auto& z : normal_points())
        values.push_back(surface(z));
    const auto quantile = [&](double part) {
        // Between the two values around the place: the interval moves smoothly with its inputs.
        const double place = part * double(point_count) - 0.5;
        const auto below = values.begin() + std::ptrdiff_t(place);
        std::nth_element(values.begin(), below, values.end());
        const double next = *std::min_element(below + 1, values.end());
        return *below + (place - std::floor(place)) * (next - *below);
    };
    return {quantile(0.025), quantile(0.975)};
}

HeatSpread spread_heat(const Project& project, const HeatCase& heat_case) {
    MovedInputs moved(project, heat_case);
    HeatSpread spread{propagate(moved, heat_case.track), {}};
    if (!moved.nominal()) return spread;
    const double nominal = *moved.nominal();
    std::vector<Axis> axes;
    std::vector<std::size_t> places; // of the axes among the inputs
    double noise = 0;
    for (const FirstOrder::Term& term : spread.first_order.terms) {
        if (!term.input) {
            noise = std::hypot(noise, term.per_sigma);
            continue;
        }
        axes.push_back({term.low - nominal, term.high - nominal, moved.inputs()[*term.input].log_sigma});
        places.push_back(*term.input);
    }
    std::vector<Deviation> deviations;
    spread.interval95 = curved_interval95(axes, noise, [&](std::span<const Deviation> on_axes) {
        deviations.assign(on_axes.begin(), on_axes.end());
        for (Deviation& each : deviations)
            each.input = places[each.input];
        std::optional<double> time = moved.time(deviations);
        if (time) *time -= nominal;
        return time;
    });
    for (double& end : spread.interval95)
        end += nominal;
    return spread;
}

} // namespace rampwright
