#include <rampwright/car/car_model.hpp>
#include <rampwright/core/constants.hpp>

#include <catch2/catch.hpp>

#include <random>

using namespace rampwright;

namespace {

/// A car on a level frame given directly: wheels' feet, centre of mass, weight.
CarOnWheels make_car(double weight, const Vec3& centre, double wheelbase, const std::array<Vec2, 4>& feet,
                     std::array<bool, 4> touches = {true, true, true, true}) {
    CarOnWheels car;
    car.mass = weight; // with gravity 1
    car.centre = centre;
    car.wheelbase = wheelbase;
    for (const Corner corner : all_corners) {
        const auto i = static_cast<std::size_t>(corner);
        car.wheels[i].corner = corner;
        car.wheels[i].touches = touches[i];
        car.wheels[i].centre = {feet[i].x(), feet[i].y(), 0.015};
    }
    return car;
}

constexpr std::size_t rear_left = 0, rear_right = 1, front_left = 2, front_right = 3;

/// Forces and moments that the loads leave unbalanced, relative to the weight.
double imbalance(const CarOnWheels& car, const Standing& standing, double weight, const Vec2& point) {
    Eigen::Vector3d sum(-weight, -weight * point.x(), -weight * point.y());
    for (std::size_t i = 0; i < 4; ++i)
        if (standing.loads[i]) {
            const Vec3& foot = car.wheels[i].centre;
            sum += *standing.loads[i] * Eigen::Vector3d(1, foot.x(), foot.y());
        }
    return sum.cwiseAbs().maxCoeff() / weight;
}

} // namespace

TEST_CASE("a three-legged table carries a load as published", "[car][standing]") {
    // askanewquestion.com/questions/1509729 (seen): equilateral side 900 mm, 500 N at 325 mm from A and 625
    // mm from B; its coordinates 291.6667 and 143.37209 mm, loads 291.9763, 116.0504, 91.9732 N.
    const double side = 0.9, x = 0.2916667, h = 0.14337209;
    // A and B are the rear pair (y to the left), C the single front wheel in the middle of them.
    const double rise = side * std::sqrt(3.0) / 2;
    const CarOnWheels car =
        make_car(500, {h, -x, 0}, rise, {Vec2(0, 0), Vec2(0, -side), Vec2(rise, -side / 2), Vec2(rise, 0)},
                 {true, true, true, false});
    const Standing standing = stand(car, 0, 1);
    CHECK(*standing.loads[rear_left] == Approx(291.9763).epsilon(1e-5));
    CHECK(*standing.loads[rear_right] == Approx(116.0504).epsilon(1e-5));
    CHECK(*standing.loads[front_left] == Approx(91.9732).epsilon(1e-5));
    CHECK_FALSE(standing.loads[front_right]);
    CHECK_FALSE(standing.tips);
    CHECK_FALSE(standing.idealised);
    CHECK(standing.tipping_margin == Approx(h).epsilon(1e-6)); // to the line A-B, the nearest
}

TEST_CASE("axle loads follow the lever arms", "[car][standing]") {
    // OpenStax University Physics 1, example 12.1 (seen): 52 % on the front of a 2.5 m wheelbase puts the
    // centre of mass 1.3 m ahead of the rear axle; and a 3.0 m one with 60 %, 1.2 m behind the front.
    const std::array<Vec2, 4> feet{Vec2(0, 0.7), Vec2(0, -0.7), Vec2(2.5, 0.7), Vec2(2.5, -0.7)};
    CHECK(stand(make_car(1, {1.3, 0, 0.5}, 2.5, feet), 0, 1).front == Approx(0.52).epsilon(1e-12));
    const std::array<Vec2, 4> longer{Vec2(0, 0.7), Vec2(0, -0.7), Vec2(3, 0.7), Vec2(3, -0.7)};
    CHECK(stand(make_car(1, {3.0 - 1.2, 0, 0.5}, 3.0, longer), 0, 1).front == Approx(0.60).epsilon(1e-12));
}

TEST_CASE("three and four wheels of a small car", "[car][standing]") {
    // Closed forms of statics evaluated apart from this program: weight 1.39 N, wheelbase 0.110 m, track
    // 0.045 m, centre 0.025 m ahead of the rear axle and 3 mm to the left.
    const double half = 0.0225;
    const std::array<Vec2, 4> feet{Vec2(0, half), Vec2(0, -half), Vec2(0.110, half), Vec2(0.110, -half)};
    const Vec3 centre(0.025, 0.003, 0.016);

    const Standing three = stand(make_car(1.39, centre, 0.110, feet, {true, true, true, false}), 0, 1);
    CHECK(*three.loads[front_left] == Approx(0.315909091).epsilon(1e-9));
    CHECK(*three.loads[rear_left] == Approx(0.471757576).epsilon(1e-9));
    CHECK(*three.loads[rear_right] == Approx(0.602333333).epsilon(1e-9));

    const CarOnWheels on_four = make_car(1.39, centre, 0.110, feet);
    const Standing four = stand(on_four, 0, 1);
    CHECK(four.idealised);
    CHECK(four.front == Approx(0.315909091).epsilon(1e-9));
    CHECK(four.rear == Approx(1.07409091).epsilon(1e-8));
    CHECK(imbalance(on_four, four, 1.39, {0.025, 0.003}) < 1e-12);
    // Equal vertical stiffness on a rectangle: the four tilt as a plane, so the diagonals carry alike.
    CHECK(*four.loads[0] + *four.loads[3] == Approx(*four.loads[1] + *four.loads[2]).epsilon(1e-12));
}

TEST_CASE("a wheel that would pull is in the air", "[car][standing]") {
    const std::array<Vec2, 4> feet{Vec2(0, 0.03), Vec2(0, -0.03), Vec2(0.1, 0.03), Vec2(0.1, -0.03)};
    // Beyond the diagonals' diamond towards the rear left, still inside the rectangle: front right lifts.
    const CarOnWheels car = make_car(1, {0.015, 0.02, 0.016}, 0.1, feet);
    const Standing standing = stand(car, 0, 1);
    CHECK_FALSE(standing.loads[front_right]);
    CHECK_FALSE(standing.tips);
    CHECK(imbalance(car, standing, 1, {0.015, 0.02}) < 1e-12);
    CHECK(standing.tipping_margin == Approx(0.01).epsilon(1e-12));
}

TEST_CASE("a car whose weight is outside its wheels tips", "[car][standing]") {
    const std::array<Vec2, 4> feet{Vec2(0, 0.03), Vec2(0, -0.03), Vec2(0.1, 0.03), Vec2(0.1, -0.03)};
    const Standing behind = stand(make_car(1, {-0.004, 0, 0.016}, 0.1, feet), 0, 1);
    CHECK(behind.tips);
    CHECK(behind.tipping_margin == Approx(-0.004).epsilon(1e-12));
    CHECK(behind.front == Approx(-0.04).epsilon(1e-12));
    CHECK(*behind.loads[rear_left] == Approx(0.5).epsilon(1e-12));
    CHECK_FALSE(behind.loads[front_left]);

    // Three wheels: over the line from the rear left to the single front right wheel.
    const Standing over = stand(make_car(1, {0.08, 0.01, 0.016}, 0.1, feet, {true, true, false, true}), 0, 1);
    CHECK(over.tips);
    CHECK(over.tipping_margin < 0);
    const Standing within =
        stand(make_car(1, {0.08, -0.02, 0.016}, 0.1, feet, {true, true, false, true}), 0, 1);
    CHECK_FALSE(within.tips);
}

TEST_CASE("loads on a ramp balance every moment", "[car][standing]") {
    // Moments of each force about the rear contact, written out apart from stand(): gravity at the centre of
    // mass, the pin's force along the slope at the nose (or the rear wheels' at the surface), front load at
    // L.
    std::mt19937 random(20);
    std::uniform_real_distribution<double> unit(0, 1);
    for (int i = 0; i < 200; ++i) {
        const double length = 0.1 + 0.05 * unit(random), half = 0.02 + 0.01 * unit(random);
        const double slope = -0.6 * unit(random), mass = 0.1 + 0.1 * unit(random), g = standard_gravity;
        CarOnWheels car =
            make_car(mass, {0.015 + 0.03 * unit(random), 0.002 * unit(random), 0.01 + 0.01 * unit(random)},
                     length, {Vec2(0, half), Vec2(0, -half), Vec2(length, half), Vec2(length, -half)},
                     {true, true, unit(random) < 0.5, true});
        car.nose = {length + 0.04, 0.002 + 0.02 * unit(random)};
        for (const Held held : {Held::by_pin, Held::by_rear_wheels}) {
            const Standing standing = stand(car, slope, g, held);
            const double along = -mass * g * std::sin(slope),
                         into = mass * g * std::cos(slope); // along: downhill
            const double hold = held == Held::by_pin ? car.nose.y() : 0;
            const double nose_up =
                -into * car.centre.x() - along * car.centre.z() + along * hold + standing.front * length;
            CHECK(nose_up / (mass * g * length) == Approx(0).margin(1e-12));
            CHECK(standing.front + standing.rear == Approx(into).epsilon(1e-12));
            double sum = 0;
            for (const auto& load : standing.loads)
                sum += load.value_or(0);
            CHECK(sum == Approx(into).epsilon(1e-12));
        }
    }
}

TEST_CASE("a mirrored car's loads are mirrored", "[car][standing]") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> unit(-1, 1);
    for (int i = 0; i < 200; ++i) {
        const double front_half = 0.025 + 0.004 * unit(random);
        const std::array<Vec2, 4> feet{Vec2(0, 0.03), Vec2(0, -0.03), Vec2(0.11, front_half),
                                       Vec2(0.11, -front_half)};
        Vec3 centre(0.055 + 0.06 * unit(random), 0.03 * unit(random), 0.016);
        const bool left_touches = unit(random) > 0;
        const Standing one =
            stand(make_car(1, centre, 0.11, feet, {true, true, left_touches, true}), -0.4, 1);
        centre.y() = -centre.y();
        const Standing other =
            stand(make_car(1, centre, 0.11, feet, {true, true, true, left_touches}), -0.4, 1);
        CHECK(one.tips == other.tips);
        CHECK(one.tipping_margin == Approx(other.tipping_margin).epsilon(1e-9).margin(1e-12));
        for (const std::size_t k : {0u, 2u}) {
            CHECK(one.loads[k].value_or(0) == Approx(other.loads[k + 1].value_or(0)).margin(1e-12));
            CHECK(one.loads[k + 1].value_or(0) == Approx(other.loads[k].value_or(0)).margin(1e-12));
        }
    }
}
