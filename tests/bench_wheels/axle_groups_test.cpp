#include <rampwright/bench/axle_groups.hpp>
#include <rampwright/bench/axle_table.hpp>
#include <rampwright/core/problem.hpp>

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

TEST_CASE("a pasted table of axles is read, its faults named") {
    for (const char* text : {"name,finish,diameter_mm,bow_mm\nA,polished,2.20,0.01\nB,as bought,2.25,0\n",
                             "Axle;Polish;Diameter (mm);Straightness [mm]\nA;polished;2,20;0,01\nB;as "
                             "bought;2,25;0\n"}) {
        CAPTURE(text);
        const AxleTable table = read_axle_table(text);
        REQUIRE(table.axles.size() == 2);
        CHECK(table.faults.empty());
        CHECK(table.axles[0].name == "A");
        CHECK(table.axles[0].finish == "polished");
        CHECK(table.axles[0].diameter.value_or(0) == Approx(2.2e-3));
        CHECK(table.axles[0].bow.value_or(0) == Approx(0.01e-3));
        CHECK(table.axles[1].bow.value_or(1) == 0);
    }
    const AxleTable poor = read_axle_table("diameter_mm\tcolour\tbow_mm\nthick\tred\t-\n0\tblue\t0.02\n");
    REQUIRE(poor.axles.size() == 2);
    CHECK(poor.axles[1].name == "2");
    CHECK_FALSE(poor.axles[0].diameter);
    CHECK_FALSE(poor.axles[0].bow);
    REQUIRE(poor.faults.size() == 2); // "thick", and a diameter of zero
    CHECK(poor.faults[0].text == "thick");
    CHECK(poor.faults[1].line == 3);
    CHECK(poor.ignored == std::vector<std::string>{"colour"});
    CHECK_THROWS_AS(read_axle_table("name,colour\nA,red\n"), Problem);
}
