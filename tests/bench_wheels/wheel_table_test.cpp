#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>

#include <clocale>
#include <cmath>

using namespace rampwright;

TEST_CASE("a pasted table is read whatever parts its columns") {
    const char* tables[] = {
        "name,mass_g,diameter_mm,runout_mm,bore_mm,spin_s,mould\n"
        "Heron,2.61,30.10,0.05,2.44,41.5,7\n\nCurlew,2.58,30.08,0.02,2.43,44,12\n",
        "\xEF\xBB\xBFName;Mass (g);Diameter (mm);Run-out (mm);Bore (mm);Spin time (s);Mould mark\r\n"
        "Heron;2,61;30,10;0,05;2,44;41,5;7\r\nCurlew;2,58;30,08;0,02;2,43;44;12\r\n",
        "Wheel\tweight\tdiameter\trunout\tbore\tspin\tmold\tcolour\n"
        "\"Heron\"\t2.61 g\t3.010 cm\t0.05\t2.44\t41.5\t7\tred\nCurlew\t0.00258 "
        "kg\t30.08\t0.02\t2.43\t44\t12\tblue\n",
        "name,spin_time_s,mass_kg,diameter_mm,runout_mm,bore_mm,mark\n"
        "Heron,41.5,0.00261,30.1,0.05,2.44,7\nCurlew,44,0.00258,30.08,0.02,2.43,12"};
    for (const char* text : tables) {
        CAPTURE(text);
        const WheelTable table = read_wheel_table(text);
        CHECK(table.faults.empty());
        REQUIRE(table.wheels.size() == 2);
        const MeasuredWheel& heron = table.wheels[0];
        CHECK(heron.name == "Heron");
        CHECK(heron.mould == "7");
        CHECK(*heron.mass == Approx(2.61e-3).epsilon(1e-14));
        CHECK(*heron.diameter == Approx(30.1e-3).epsilon(1e-14));
        CHECK(*heron.runout == Approx(0.05e-3).epsilon(1e-14));
        CHECK(*heron.bore == Approx(2.44e-3).epsilon(1e-14));
        CHECK(*heron.spin_time == 41.5);
        CHECK(*table.wheels[1].mass == Approx(2.58e-3).epsilon(1e-14));
    }
    CHECK(read_wheel_table(tables[2]).ignored == std::vector<std::string>{"colour"});
}

TEST_CASE("the locale does not change what a table means") {
    // Whatever of these a machine has; with none the test still holds in the C locale.
    for (const char* locale : {"de_DE.UTF-8", "fr_FR.UTF-8", "C"}) {
        std::setlocale(LC_ALL, locale);
        CHECK(*read_wheel_table("mass_g\n2.61\n").wheels[0].mass == Approx(2.61e-3).epsilon(1e-14));
    }
    std::setlocale(LC_ALL, "C");
}

TEST_CASE("cells that cannot be read are named, not guessed") {
    const WheelTable table =
        read_wheel_table("name,mass_g,runout_mm\nHeron,about 2,0\nCurlew,-1,-\nDipper,2,61,0.1\n");
    REQUIRE(table.wheels.size() == 3);
    CHECK_FALSE(table.wheels[0].mass);
    CHECK(*table.wheels[0].runout == 0);
    CHECK_FALSE(table.wheels[1].mass);
    CHECK_FALSE(table.wheels[1].runout);
    REQUIRE(table.faults.size() == 3);
    CHECK(table.faults[0].line == 2);
    CHECK(table.faults[0].column == "mass_g");
    CHECK(table.faults[0].text == "about 2");
    CHECK(table.faults[2].line == 4);
    CHECK_THROWS_AS(read_wheel_table("Heron,2.61\n"), Problem);
    CHECK_THROWS_AS(read_wheel_table(""), Problem);
}

TEST_CASE("robust z follows its definition") {
    // By hand: median 3, absolute deviations 2 1 0 1 97, median 1.
    const auto z = robust_z({1, 2, 3, 4, 100});
    CHECK(*z[0] == Approx(-1.349));
    CHECK(*z[4] == Approx(0.6745 * 97));
    // Half alike: median 5, mean absolute deviation 1/6.
    const auto flat = robust_z({5, 5, 5, 5, 5, 6});
    CHECK(*flat[5] == Approx(6 / 1.2533));
    CHECK(*flat[0] == 0);
    CHECK(*robust_z({2, 2, 2, 2, 2})[0] == 0);
    CHECK_FALSE(robust_z({std::nullopt, 1.0})[0]);

    std::vector<MeasuredWheel> wheels(8);
    const double grams[] = {2.60, 2.61, 2.59, 2.62, 2.58, 2.60, 2.61, 2.95};
    for (std::size_t i = 0; i < 8; ++i)
        wheels[i].mass = grams[i] * 1e-3;
    wheels[2].runout = 1e-3; // one alone cannot stand out
    const auto outliers = find_outliers(wheels);
    REQUIRE(outliers.size() == 1);
    CHECK(outliers[0].wheel == 7);
    CHECK(outliers[0].column == WheelColumn::mass);
    CHECK(outliers[0].z > outlier_z);
}
