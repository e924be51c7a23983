#include <rampwright/bench/axle_groups.hpp>

#include <algorithm>
#include <numeric>

namespace rampwright {

std::vector<AxleGroup> group_axles(const std::vector<BenchAxle>& axles) {
    const auto straight = [&](std::size_t i) { return axles[i].bow.value_or(0) <= straight_bow; };
    const auto diameter = [&](std::size_t i) { return axles[i].diameter.value_or(0); };
    std::vector<std::size_t> order(axles.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        if (straight(a) != straight(b)) return straight(a);
        if (axles[a].finish != axles[b].finish) return axles[a].finish < axles[b].finish;
        return diameter(a) < diameter(b);
    });
    std::vector<AxleGroup> groups;
    for (const std::size_t axle : order) {
        if (!groups.empty()) {
            // Sorted by diameter: the first of a group is its least.
            const std::size_t least = groups.back().axles.front();
            if (straight(axle) == groups.back().straight && axles[axle].finish == axles[least].finish &&
                diameter(axle) - diameter(least) <= alike_diameter) {
                groups.back().axles.push_back(axle);
                continue;
            }
        }
        groups.push_back({straight(axle), {axle}});
    }
    for (AxleGroup& group : groups)
        std::stable_sort(group.axles.begin(), group.axles.end(), [&](std::size_t a, std::size_t b) {
            return axles[a].bow.value_or(0) < axles[b].bow.value_or(0);
        });
    std::stable_sort(groups.begin(), groups.end(), [](const AxleGroup& a, const AxleGroup& b) {
        if (a.straight != b.straight) return a.straight;
        return a.axles.size() > b.axles.size();
    });
    return groups;
}

} // namespace rampwright
