#include <rampwright/bench/weighing.hpp>
#include <rampwright/core/constants.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

TEST_CASE("two supports give the balance point") {
    // OpenStax University Physics, example 12.1 (seen): 52 % on the front axle of 2.5 m: 1.3 m ahead of the
    // rear.
    CHECK(balance_on_two_supports({52, 0}, {48, 0}, {2.5, 0}).value == Approx(1.3).epsilon(1e-14));
    // Its problem with 60 % in front of 3.0 m (seen): 1.2 m behind the front axle.
    CHECK(3 - balance_on_two_supports({60, 0}, {40, 0}, {3, 0}).value == Approx(1.2).epsilon(1e-14));

    // By hand: d/dF = D R / (F + R)², d/dR = -D F / (F + R)².
    const Combined x = balance_on_two_supports({28, 0.1}, {113.7, 0.1}, {0.1111, 0.0003});
    const double whole = 141.7;
    CHECK(x.contributions[0] == Approx(0.1111 * 113.7 / (whole * whole) * 0.1).epsilon(1e-6));
    CHECK(x.contributions[1] == Approx(-0.1111 * 28 / (whole * whole) * 0.1).epsilon(1e-6));
    CHECK(x.contributions[2] == Approx(28 / whole * 0.0003).epsilon(1e-9));
}

TEST_CASE("a tilted car gives the height of its centre of mass") {
    // Referee: moments taken with positions turned by the tilt, about the rear wheels' contact.
    const double wheelbase = 0.1111, radius = 0.0151, ahead = 0.022, height = 0.0175, whole = 141.7;
    for (double tilt : {5.0, 20.0, 45.0}) {
        const double c = std::cos(tilt * degree), s = std::sin(tilt * degree);
        // Rear wheel centre at (0, R); car axes turned nose up.
        const double centre_x = ahead * c - (height - radius) * s;
        const double front_x = wheelbase * c;
        TiltWeighing weighing;
        weighing.whole = {whole, 0.1};
        weighing.level_front = {whole * ahead / wheelbase, 0.1};
        weighing.tilted_front = {whole * centre_x / front_x, 0.1};
        weighing.wheelbase = {wheelbase, 0.0003};
        weighing.tilt = {tilt * degree, 0.2 * degree};
        weighing.radius = {radius, 0.00005};
        const Combined z = height_from_tilt(weighing);
        CAPTURE(tilt);
        CHECK(z.value == Approx(height).epsilon(1e-12));
        // By hand: the two front loads count alike.
        CHECK(z.contributions[1] ==
              Approx(wheelbase / (whole * std::tan(tilt * degree)) * 0.1).epsilon(1e-9));
        CHECK(z.contributions[2] == Approx(-z.contributions[1]).epsilon(1e-9));
    }
}
