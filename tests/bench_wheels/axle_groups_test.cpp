#include <rampwright/bench/axle_groups.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <random>
#include <set>

using namespace rampwright;

TEST_CASE("axle groups: every axle once, alike within, straight ones first") {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> diameter(2.15e-3, 2.25e-3), bow(0, 0.08e-3);
    for (int round = 0; round < 50; ++round) {
        std::vector<BenchAxle> axles;
        for (int i = 0; i < 12; ++i)
            axles.push_back(
                {std::to_string(i), i % 3 ? "polished" : "as bought", diameter(random), bow(random)});
        std::set<std::size_t> seen;
        bool bowed = false;
        for (const AxleGroup& group : group_axles(axles)) {
            CHECK_FALSE((bowed && group.straight));
            bowed = bowed || !group.straight;
            double least = 1, greatest = 0, last_bow = -1;
            for (const std::size_t i : group.axles) {
                CHECK(seen.insert(i).second);
                CHECK(axles[i].finish == axles[group.axles.front()].finish);
                CHECK((*axles[i].bow <= straight_bow) == group.straight);
                CHECK(*axles[i].bow >= last_bow);
                last_bow = *axles[i].bow;
                least = std::min(least, *axles[i].diameter);
                greatest = std::max(greatest, *axles[i].diameter);
            }
            CHECK(greatest - least <= alike_diameter + 1e-12);
        }
        CHECK(seen.size() == axles.size());
    }
}
