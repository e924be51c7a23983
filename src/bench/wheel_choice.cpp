#include <rampwright/bench/wheel_choice.hpp>
#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace rampwright {

namespace {

/// One wheel that may be chosen: its costs by place.
struct Candidate {
    std::size_t wheel;
    double mass, runout, diameter;
    double guide, raised, rear; ///< s
};

double median_or_zero(const std::vector<MeasuredWheel>& wheels, WheelColumn column) {
    std::vector<double> known;
    for (const MeasuredWheel& wheel : wheels)
        if (const auto& value = value_of(wheel, column)) known.push_back(*value);
    if (known.empty()) return 0;
    const auto middle = known.begin() + static_cast<std::ptrdiff_t>(known.size() / 2);
    std::nth_element(known.begin(), middle, known.end());
    return *middle;
}

std::vector<Candidate> candidates_of(const std::vector<MeasuredWheel>& wheels, const WheelWorth& worth) {
    const double runout = median_or_zero(wheels, WheelColumn::runout);
    const double diameter = median_or_zero(wheels, WheelColumn::diameter);
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        const MeasuredWheel& wheel = wheels[i];
        if (!wheel.mass) continue;
        Candidate c{i, *wheel.mass, wheel.runout.value_or(runout), wheel.diameter.value_or(diameter), 0, 0,
                    0};
        const double touching = worth.touching_mass.value * c.mass;
        c.guide = touching + worth.guide_runout * c.runout;
        c.raised = worth.raised_mass.value * c.mass;
        c.rear = touching + worth.rear_runout * c.runout;
        candidates.push_back(c);
    }
    return candidates;
}

/// The places of the four least by a cost: whatever three others are taken, the best that is left is among
/// them.
std::vector<std::size_t> least_four(const std::vector<Candidate>& candidates, double Candidate::*cost) {
    std::vector<std::size_t> order(candidates.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::partial_sort(order.begin(), order.begin() + 4, order.end(), [&](std::size_t a, std::size_t b) {
        return candidates[a].*cost < candidates[b].*cost;
    });
    order.resize(4);
    return order;
}

struct Pair {
    std::size_t first = 0, second = 0;
    double cost = std::numeric_limits<double>::infinity();
};

/// The best rear pair without those two. Sorted by diameter the difference has no sign to ask about, so one
/// pass that remembers the best first wheel so far meets every pair's best.
Pair best_pair(const std::vector<Candidate>& by_diameter, double weight, std::size_t guide,
               std::size_t raised) {
    Pair best;
    std::size_t first = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < by_diameter.size(); ++i) {
        if (i == guide || i == raised) continue;
        const Candidate& c = by_diameter[i];
        if (const double cost = least + c.rear + weight * c.diameter; cost < best.cost)
            best = {first, i, cost};
        if (const double cost = c.rear - weight * c.diameter; cost < least) {
            least = cost;
            first = i;
        }
    }
    return best;
}

} // namespace

WheelChoice choose_wheels(const std::vector<MeasuredWheel>& wheels, const WheelWorth& worth) {
    std::vector<Candidate> c = candidates_of(wheels, worth);
    if (c.size() < 4)
        throw Problem(Exit::could_not, "-", Core::tr("fewer than four wheels have a mass"),
                      Core::tr("weigh at least four wheels"));
    std::sort(c.begin(), c.end(), [](const Candidate& a, const Candidate& b) {
        return a.diameter != b.diameter ? a.diameter < b.diameter : a.wheel < b.wheel;
    });

    WheelChoice choice;
    choice.rank = std::numeric_limits<double>::infinity();
    std::array<std::size_t, 4> taken{}; // guide, raised, rear, rear
    for (const std::size_t guide : least_four(c, &Candidate::guide))
        for (const std::size_t raised : least_four(c, &Candidate::raised)) {
            if (guide == raised) continue;
            const Pair pair = best_pair(c, worth.pair_difference, guide, raised);
            const double rank = c[guide].guide + c[raised].raised + pair.cost;
            if (rank < choice.rank) {
                choice.rank = rank;
                taken = {guide, raised, pair.first, pair.second};
            }
        }
    choice.guide = c[taken[0]].wheel;
    choice.raised = c[taken[1]].wheel;
    choice.rear = {c[taken[2]].wheel, c[taken[3]].wheel};

    // Against wheels taken blindly: three touching and one raised of the mean mass.
    double mean = 0;
    for (const Candidate& one : c)
        mean += one.mass / static_cast<double>(c.size());
    const double touching = c[taken[0]].mass + c[taken[2]].mass + c[taken[3]].mass, raised = c[taken[1]].mass;
    choice.time = worth.touching_mass.value * touching + worth.raised_mass.value * raised;
    const double less_touching = 3 * mean - touching, less_raised = mean - raised;
    choice.saved.value = worth.touching_mass.value * less_touching + worth.raised_mass.value * less_raised;
    // The two worths come from the same heat and err together; weighings err each on its own, and the mean's
    // error is small beside theirs.
    const double from_worth =
        worth.touching_mass.sigma * less_touching + worth.raised_mass.sigma * less_raised;
    const double from_weighing =
        worth.mass_sigma * std::hypot(std::sqrt(3.0) * worth.touching_mass.value, worth.raised_mass.value);
    choice.saved.sigma = std::hypot(from_worth, from_weighing);
    return choice;
}

} // namespace rampwright
