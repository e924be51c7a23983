#include "project/helpers.hpp"

#include <rampwright/project/edits.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::test;

TEST_CASE("what was typed of a wheel's swings and spin-down is kept with it, in the file's units") {
    Document document = demo_document();
    PendulumReadings swings;
    swings.wires = 3;
    swings.wheel = Uncertain{2.6e-3, 0.01e-3};
    swings.time = Uncertain{31.4, 0.1};
    document = set_pendulum(document, 2, swings).document;
    SpinDownReadings spin;
    spin.bore = Uncertain{2.6e-3, 0};
    spin.readings = {{0, 200}, {1.5, 190}};
    document = set_spin_down(document, 2, spin).document;
    document = set_spin_down(document, std::nullopt, spin).document;
    const Json& row = document.root["bench"]["wheels"][2];
    CHECK(row["pendulum"]["wheel_g"] == Json{{"value", 2.6}, {"sigma", 0.01}});
    CHECK(row["spin_down"]["speed_in"] == "turns_per_minute");
    // 200 rad/s are 200 / (2 pi) * 60 turns a minute.
    CHECK(row["spin_down"]["readings"][0][1].get<double>() == Approx(1909.859317));

    // Keys that this version does not know stay: in the readings, in the row, and when rows come and go.
    document.root["bench"]["wheels"][2]["pendulum"]["hung_by"] = "silk";
    document.root["bench"]["wheels"][2]["box"] = 7;
    swings.time = Uncertain{31.5, 0.1};
    document = set_pendulum(document, 2, swings).document;
    std::vector<BenchWheel> wheels = read_project(document).bench_wheels;
    wheels[2].name = "third";
    wheels[2].mass.reset();
    document = set_bench_wheels(document, wheels).document;
    wheels.erase(wheels.begin());
    document = set_bench_wheels(document, wheels).document;
    const Json& moved = document.root["bench"]["wheels"][1];
    CHECK(moved["name"] == "third");
    CHECK_FALSE(moved.contains("mass_g"));
    CHECK(moved["box"] == 7);
    CHECK(moved["pendulum"]["hung_by"] == "silk");
    CHECK(moved["pendulum"]["time_s"]["value"] == 31.5);

    const Project project = read_project(document);
    const auto& back = project.bench_wheels[1].pendulum;
    REQUIRE(back);
    CHECK(back->wires == 3);
    CHECK(back->wheel->sigma == Approx(0.01e-3));
    CHECK_FALSE(back->plate);
    REQUIRE(project.spin_down);
    REQUIRE(project.spin_down->readings.size() == 2);
    CHECK(project.spin_down->readings[0].y() == Approx(200).epsilon(1e-9));
    CHECK_FALSE(project.bench_wheels[0].pendulum);
    // Nothing of it is a default that was taken.
    for (const Assumed& assumed : project.assumed)
        CHECK(assumed.key.find("/bench") == std::string::npos);

    spin.readings = {{1, 200}, {1, 190}};
    CHECK_THROWS_AS(set_spin_down(document, std::nullopt, spin), Problem);
    CHECK_THROWS_AS(set_pendulum(document, 99, swings), Problem);
}
