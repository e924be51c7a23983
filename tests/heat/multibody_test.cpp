#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>
#include <multibody/multibody.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

multibody::Car to_multibody(const PlainCar& plain) {
    const CarOnWheels& c = plain.on_wheels;
    multibody::Car car;
    car.mass = c.mass;
    car.pitch_inertia = plain.prepared().pitch_inertia;
    car.wheelbase = c.wheelbase;
    car.radius = c.rear_radius;
    car.centre_x = c.centre.x();
    car.centre_z = c.centre.z();
    car.nose_x = c.nose.x();
    car.nose_z = c.nose.y();
    car.drag = 0.5 * plain.air_density * c.air_area;
    car.drag_z = c.drag_height;
    for (Corner corner : all_corners) {
        const Wheel& wheel = c.wheels[std::size_t(corner)];
        if (!wheel.touches) continue;
        const WheelLoss& loss = plain.losses[std::size_t(corner)];
        const double right = plain.right_share[is_front(corner)];
        car.wheels.push_back({is_front(corner), wheel.mass, wheel.spin_inertia,
                              is_left(corner) ? 1 - right : right, loss.journal_arm + loss.hub_arm,
                              loss.rolling});
    }
    return car;
}

multibody::Lane to_lane(const TrackPlan& plan) {
    const Arc& arc = std::get<Arc>(plan.pieces[1]);
    const double before = std::get<Straight>(plan.pieces[0]).length;
    multibody::Lane lane;
    lane.slope = -plan.first_slope;
    lane.ramp = before - plan.start_line;
    lane.radius = arc.radius;
    lane.level = plan.finish_line - before - arc.radius * arc.turn;
    lane.gravity = plan.gravity;
    return lane;
}

} // namespace

// Simbody 3.6, a general multibody library: rigid body, wheels on revolute joints, axle centres held to the
// path, wheels coupled to it. It knows nothing of this program's equations.
TEST_CASE("A general multibody library finds the same heat") {
    const TrackPlan plan = reference_track();
    PlainCar usual = reference_car();
    SECTION("the reference car") {}
    SECTION("four wheels, heavier, with hubs that rub") {
        usual.on_wheels.mass = 0.19;
        usual.on_wheels.centre.x() = 0.045;
        usual.right_share = {0.45, 0.6};
        for (Corner corner : all_corners) {
            Wheel& wheel = usual.wheel(corner);
            wheel = usual.wheel(Corner::rear_left);
            wheel.corner = corner;
            wheel.mass = 0.0035;
            usual.loss(corner) = {};
            usual.loss(corner).journal_arm = is_left(corner) ? 0.2e-3 : 0.15e-3;
            usual.loss(corner).hub_arm = 0.03e-3;
            usual.loss(corner).rolling = is_front(corner) ? 0.003 : 0.001;
        }
    }
    const multibody::Heat other = multibody::run(to_multibody(usual), to_lane(plan), 1e-7);
    const HeatResult heat = run(plan, usual);
    CHECK(heat.time == Approx(other.time).margin(1e-5));
    CHECK(heat.finish_speed == Approx(other.finish_speed).margin(1e-4));
}
