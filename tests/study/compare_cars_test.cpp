#include "project/helpers.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/results/figures.hpp>
#include <rampwright/study/compare_cars.hpp>

#include <catch2/catch.hpp>

#include <algorithm>

using namespace rampwright;
using namespace rampwright::test;

namespace {

const double mm = 1e-3, g = 1e-3;

double figured_time(const Document& document, std::size_t car) {
    return compute_figures(read_project(document), car).heat.time.value();
}

} // namespace

TEST_CASE("a copy differs in nothing; one change is one difference, worth all of the gap") {
    const Document copy = duplicate_car(demo_document(), 0, "Bittern 2").document;
    const std::size_t last = 3;
    const CarComparison none = compare_cars(copy, 0, last);
    CHECK(none.differences.empty());
    CHECK(none.sum == 0);
    CHECK(none.together() == 0.0);
    // Names and notes are no difference.
    CHECK(compare_cars(set_value(copy, "/cars/3/paint", "red", "x").document, 0, last).differences.empty());

    // A drag changes three numbers, which are one place.
    const Document moved = move_ballast(copy, last, 0, Vec3(61, 1, 11) * mm).document;
    const CarComparison one = compare_cars(moved, 0, last);
    REQUIRE(one.differences.size() == 1);
    const CarDifference& found = one.differences.front();
    CHECK(found.keys == std::vector<std::string>{"/ballast/0/at_mm"});
    CHECK(found.what == "tungsten bar 13: place");
    CHECK(found.from == "58, 0, 11.5 mm");
    CHECK(found.to == "61, 1, 11 mm");
    // Against the figures, which come to the time by their own way.
    const double gap = figured_time(moved, last) - figured_time(moved, 0);
    REQUIRE(found.worth);
    CHECK(*found.worth == Approx(gap).margin(1e-9));
    CHECK(*one.together() == Approx(0).margin(1e-12));
    CHECK(*one.second - *one.first == Approx(gap).margin(1e-9));
    // The other way round it costs what it brought.
    CHECK(*compare_cars(moved, last, 0).differences.front().worth == Approx(-gap).margin(1e-9));

    // In the person's units.
    const Document inches = set_units(moved, UnitSystem::inch_ounce).document;
    CHECK_THAT(compare_cars(inches, 0, last).differences.front().to, Catch::EndsWith(" in"));
}

TEST_CASE("each difference is worth what its edit alone gives; what the sum leaves over is told") {
    Document d = duplicate_car(demo_document(), 2, "Swift 2").document;
    d = set_wheel_mass(d, 3, Corner::rear_left, 2.1 * g).document;
    d = set_value(d, "/cars/3/axles/rear_x_mm", 21, "x").document;
    d = set_value(d, "/cars/3/drag/coefficient", 0.9, "x").document;
    const CarComparison all = compare_cars(d, 2, 3);
    REQUIRE(all.differences.size() == 3);
    double sum = 0, last = 1;
    for (const CarDifference& each : all.differences) {
        INFO(each.what);
        REQUIRE(each.keys.size() == 1);
        REQUIRE(each.worth);
        const Json::json_pointer there("/cars/3" + each.keys.front());
        const Document alone = set_value(d, "/cars/2" + each.keys.front(), d.root[there], "x").document;
        CHECK(*each.worth == Approx(figured_time(alone, 2) - figured_time(d, 2)).margin(1e-9));
        CHECK(std::abs(*each.worth) <= last);
        last = std::abs(*each.worth);
        sum += *each.worth;
    }
    CHECK(all.sum == Approx(sum));
    REQUIRE(all.together());
    CHECK(*all.together() == Approx(figured_time(d, 3) - figured_time(d, 2) - sum).margin(1e-9));
}

TEST_CASE("pieces are told apart by what they are, not by their place in the list") {
    const Document copy = duplicate_car(demo_document(), 0, "Bittern 2").document;
    Document turned = copy;
    for (const char* list : {"/cars/3/ballast", "/cars/3/wheels", "/cars/3/body/cuts"}) {
        Json& elements = turned.root[Json::json_pointer(list)];
        std::reverse(elements.begin(), elements.end());
    }
    CHECK(compare_cars(turned, 0, 3).differences.empty());

    // The first of two alike is taken out: that one piece is the difference, whichever car is asked first.
    const Document without = remove_ballast(copy, 3, 0).document;
    const double gap = figured_time(without, 3) - figured_time(without, 0);
    REQUIRE(gap != 0);
    for (const bool forward : {true, false}) {
        const CarComparison c = forward ? compare_cars(without, 0, 3) : compare_cars(without, 3, 0);
        REQUIRE(c.differences.size() == 1);
        const CarDifference& piece = c.differences.front();
        INFO(piece.problem);
        CHECK(piece.what == "tungsten bar 13");
        CHECK(piece.from == (forward ? "tungsten bar 13" : "none"));
        CHECK(piece.to == (forward ? "none" : "tungsten bar 13"));
        REQUIRE(piece.worth);
        CHECK(*piece.worth == Approx(forward ? gap : -gap).margin(1e-9));
    }
    // And the last one.
    const Document shorter = remove_ballast(copy, 3, 1).document;
    const CarComparison c = compare_cars(shorter, 0, 3);
    REQUIRE(c.differences.size() == 1);
    CHECK(*c.differences.front().worth ==
          Approx(figured_time(shorter, 3) - figured_time(shorter, 0)).margin(1e-9));
}

TEST_CASE("what cannot be tried alone says why, and a pocket moves as one") {
    const Document d = demo_document();
    for (const std::size_t other : {std::size_t(1), std::size_t(2)}) {
        const CarComparison c = compare_cars(d, 0, other);
        CHECK(c.differences.size() > 1);
        for (const CarDifference& each : c.differences) {
            INFO(each.what);
            CHECK(each.worth.has_value() == each.problem.empty());
            CHECK_FALSE(each.what.empty());
            CHECK(each.from != "");
            CHECK(each.to != "");
        }
    }
    const CarComparison wagtail = compare_cars(d, 0, 1);
    const auto pocket = std::find_if(wagtail.differences.begin(), wagtail.differences.end(),
                                     [](const auto& each) { return each.what == "weight pocket: place"; });
    REQUIRE(pocket != wagtail.differences.end());
    CHECK(pocket->from == "51, −13, 8 mm to 79, 13, 17 mm"); // the file's own numbers
    CHECK(pocket->to == "2, −13, 8 mm to 30, 13, 17 mm");
    int heats = 0;
    const CarComparison stopped = compare_cars(d, 0, 1, [&] { return ++heats < 2; });
    CHECK(stopped.cancelled);
    CHECK(stopped.differences.size() == 1);
    CHECK(problem_of([&] { compare_cars(d, 0, 9); }));
}
