#include <rampwright/core/constants.hpp>
#include <rampwright/steer/bent_axle.hpp>
#include <rampwright/steer/drift_board.hpp>

#include <Eigen/Geometry>
#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

TEST_CASE("turning circle and chord agree with closed forms") {
    // Closed forms evaluated to 25 digits outside the project; R = L / tan(steer), sagitta, chord.
    const double radius = turn_radius(0.110, 0.5 * degree);
    CHECK(radius == Approx(12.6047515142).epsilon(1e-11));
    // Drift after 4 ft of arc; the straight run of that arc is R sin(s/R).
    const double arc = 48 * inch;
    const auto drift = drift_from_steer(0.110, 0.5 * degree, radius * std::sin(arc / radius));
    REQUIRE(drift);
    CHECK(*drift == Approx(58.9178647801e-3).epsilon(1e-10));
    // Chord 1 m on R 5 m: sagitta 25.0628144669 mm over half the chord.
    CHECK(*drift_from_steer(0.110, steer_of_radius(0.110, 5), 0.5) ==
          Approx(25.0628144669e-3).epsilon(1e-10));
    CHECK(steer_from_drift(0.110, 25.0628144669e-3, 0.5) == Approx(steer_of_radius(0.110, 5)).epsilon(1e-10));
    // Ackermann's single-track car: L 110 mm on R 5 m to mid rear steers 1.2603038465 deg.
    CHECK(steer_of_radius(0.110, 5) / degree == Approx(1.2603038465).epsilon(1e-10));
}

TEST_CASE("a watched mark ahead follows the car's own circle") {
    // Referee: the car moved along its circle step by step, p the angle turned.
    const double wheelbase = 0.1111, steer = 1 * degree, ahead = 0.153;
    const double radius = turn_radius(wheelbase, steer);
    for (double p : {0.01, 0.05, 0.2}) {
        const double over = radius * std::sin(p) - ahead * (1 - std::cos(p));
        const double seen = radius * (1 - std::cos(p)) + ahead * std::sin(p);
        CHECK(*drift_from_steer(wheelbase, steer, over, ahead) == Approx(seen).epsilon(1e-12));
        CHECK(steer_from_drift(wheelbase, seen, over, ahead) == Approx(steer).epsilon(1e-12));
        CHECK(steer_from_drift(wheelbase, -seen, over, ahead) == Approx(-steer).epsilon(1e-12));
    }
    // At 1 deg over 1.2 m the nose shows about a quarter more than the rear axle.
    CHECK(*drift_from_steer(wheelbase, steer, 1.2, ahead) / *drift_from_steer(wheelbase, steer, 1.2) ==
          Approx(1.25).margin(0.02));
}

TEST_CASE("drift and steer go both ways, through zero") {
    for (double drift : {-0.2, -0.05, -1e-6, 0.0, 1e-6, 0.03, 0.1016, 0.3})
        for (double ahead : {0.0, 0.11}) {
            const double steer = steer_from_drift(0.1111, drift, 1.2192, ahead);
            CHECK(*drift_from_steer(0.1111, steer, 1.2192, ahead) ==
                  Approx(drift).epsilon(1e-11).margin(1e-16));
            const double e = 1e-5;
            const double slope = (steer_from_drift(0.1111, drift + e, 1.2192, ahead) -
                                  steer_from_drift(0.1111, drift - e, 1.2192, ahead)) /
                                 (2 * e);
            CHECK(steer_per_drift(0.1111, drift, 1.2192, ahead) == Approx(slope).epsilon(1e-7));
        }
    CHECK_FALSE(drift_from_steer(0.1111, 10 * degree, 1.2)); // turns back before
    // Common practice, no source: 4 in over 48 in is usual where there is no track to test on; 0.8 to 0.9 deg
    // here.
    const double usual = steer_from_drift(0.1111, 4 * inch, 48 * inch) / degree;
    CHECK(usual > 0.8);
    CHECK(usual < 0.95);
}

TEST_CASE("rolling both ways round halves the cross fall away") {
    // A car that drifts 30 mm to its left on a board that takes every car 12 mm towards its north edge.
    const BothWays both = split_cross_fall(30e-3 + 12e-3, -30e-3 + 12e-3);
    CHECK(both.drift == Approx(30e-3));
    CHECK(both.cross_fall == Approx(12e-3));
}

TEST_CASE("a bent axle points where a turned vector points") {
    // Referee: the bent end as a vector, turned in its hole about the shank by Eigen's rotation, y left, z
    // up.
    for (double bend : {0.5, 2.0, 5.0})
        for (double turn : {-170.0, -60.0, -8.0, 0.0, 20.0, 90.0, 135.0})
            for (bool left_side : {true, false}) {
                const Eigen::Vector3d outward(0, left_side ? 1 : -1, 0);
                const Eigen::Vector3d up_bent =
                    outward * std::cos(bend * degree) + Eigen::Vector3d(0, 0, std::sin(bend * degree));
                // Clockwise seen from outside: against the right-hand rule about the outward direction.
                const Eigen::Vector3d end = Eigen::AngleAxisd(-turn * degree, outward) * up_bent;
                // The wheel rolls square to its axle, forward.
                const Eigen::Vector3d ahead = (left_side ? 1 : -1) * end.cross(Eigen::Vector3d::UnitZ());
                const double toe = std::atan2(ahead.y(), ahead.x());
                const double cant = std::atan2(end.z(), std::abs(end.y()));
                const Alignment got = alignment_of({bend * degree, turn * degree});
                CAPTURE(bend, turn, left_side);
                CHECK(got.toe == Approx(toe).epsilon(1e-12).margin(1e-15));
                CHECK(got.cant == Approx(cant).epsilon(1e-12).margin(1e-15));
                const BentAxle back = bent_axle_of(got);
                CHECK(back.bend == Approx(bend * degree).epsilon(1e-12));
                CHECK(back.turn == Approx(turn * degree).epsilon(1e-12).margin(1e-14));
            }
}

TEST_CASE("the next move at the axle's head") {
    const BentAxle axle{1.5 * degree, 20 * degree};
    const auto move = move_to_steer(axle, 0.7 * degree, true);
    REQUIRE(move);
    CHECK(alignment_of({axle.bend, axle.turn + move->by}).toe == Approx(0.7 * degree).epsilon(1e-12));
    CHECK(move->towards_rail);
    CHECK(move->by > 0);
    // 20 deg of turn steer 0.513 deg; sin(turn) = tan 0.7 / tan 1.5 at 27.8 deg: about eight degrees on.
    CHECK(move->by / degree == Approx(7.82).margin(0.01));
    CHECK(move->next_change / degree == Approx(5 * toe_per_turn({axle.bend, 30.3 * degree})).epsilon(0.01));
    CHECK(toe_per_turn(axle) ==
          Approx((change_by(axle, 1e-5).toe - change_by(axle, -1e-5).toe) / 2e-5).epsilon(1e-8));
    // The mirrored car makes the mirrored move.
    const auto mirrored = move_to_steer({axle.bend, -axle.turn}, 0.7 * degree, false);
    REQUIRE(mirrored);
    CHECK(mirrored->by == Approx(-move->by));
    CHECK(mirrored->towards_rail);
    // Less steer is a move away from the rail; more than the bend cannot be had.
    CHECK_FALSE(move_to_steer(axle, 0.3 * degree, true)->towards_rail);
    CHECK_FALSE(move_to_steer(axle, 1.6 * degree, true));
    CHECK(*turn_for_toe(0, 0) == 0);
}
