#include "car/car_fixture.hpp"

#include <rampwright/study/first_order.hpp>
#include <rampwright/study/inputs.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

namespace {

constexpr double mm = 1e-3, g = 1e-3;

/// Two weights, each held by what was weighed: screws of 3.5 g and 1.5 g.
Project held_project() {
    Project project = test::plain_project();
    CarPlan& car = project.cars[0];
    BallastPlan second = car.ballast[0];
    second.name = "second bar";
    second.size[0] = 8 * mm;
    second.at.x() = 44 * mm;
    second.mass = 12 * g;
    car.ballast.push_back(second);
    car.ballast[0].held = car.ballast[1].held = "screw";
    car.ballast[0].held_mass = 3.5 * g;
    car.ballast[1].held_mass = 1.5 * g;
    return project;
}

/// The sigma of the centre of mass along an axis by the places of the weights alone.
double place_share(const HeatCase& nominal, const std::vector<Input>& inputs, int axis) {
    std::vector<std::string> keys;
    std::vector<const Input*> places;
    for (const Input& input : inputs)
        if (input.key.starts_with("place-")) {
            keys.push_back(input.key);
            places.push_back(&input);
        }
    return propagate(keys,
                     [&](std::size_t n, double z) -> std::optional<double> {
                         HeatCase varied = nominal;
                         places[n]->set(varied, places[n]->at(z));
                         return total(varied.car).centre[axis];
                     })
        .sigma;
}

} // namespace

TEST_CASE("what holds a weight is off by as much as its weight: one draw for both", "[inputs][holding]") {
    const Project project = held_project();
    const HeatCase nominal = make_case(project, 0);
    const std::vector<Input> inputs = list_inputs(project, nominal);
    // JCGM 100:2008 (GUM), 5.2.2 note 1: fully correlated inputs add up before they are squared. The centre
    // is (sum m x) / M, so a weight and its screw count (m + h) / M times their common place; the two weights
    // are independent of each other. Places are known to 0.3 mm.
    const double mass = total(nominal.car).mass;
    const double by_hand = 0.3 * mm * std::hypot((48.8 + 3.5) * g, (12 + 1.5) * g) / mass;
    CHECK(place_share(nominal, inputs, 0) == Approx(by_hand).epsilon(1e-9));
    CHECK(place_share(nominal, inputs, 2) == Approx(by_hand).epsilon(1e-9));
    // No input moves a screw away from its weight, and none moves another's.
    for (const Input& input : inputs) {
        if (!input.key.starts_with("place-")) continue;
        CAPTURE(input.key);
        HeatCase varied = nominal;
        input.set(varied, input.at(2));
        int moved = 0;
        for (std::size_t n = 0; n < varied.car.parts.size(); ++n) {
            const Vec3 by = varied.car.parts[n].properties.centre - nominal.car.parts[n].properties.centre;
            if (by.norm() == 0) continue;
            ++moved;
            CHECK(by.norm() == Approx(0.6 * mm).epsilon(1e-9));
        }
        CHECK(moved == 2);
    }
}
