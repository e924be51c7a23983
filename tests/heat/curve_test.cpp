#include <boost/math/special_functions/ellint_1.hpp>
#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

constexpr double aim = 2e-9; // twice the integrator's own, s

} // namespace

// Both axles on one arc: the car is a compound pendulum about the arc's centre, with the wheels' spin as
// further inertia. From rest at angle a0 its time to angle a1 is sqrt(J / m g d) (K(k) - F(p, k)), k =
// sin(a0/2), sin p = sin(a1/2) / k (textbook; elliptic integrals by Boost.Math).
TEST_CASE("A car on an arc swings as a compound pendulum") {
    const double arc = 1.5, first_slope = -80 * degree;
    PlainCar plain = reference_car();
    plain.on_wheels.air_area = 0;
    for (WheelLoss& loss : plain.losses)
        loss = {};
    const CarOnWheels& c = plain.on_wheels;

    const double path = arc - c.rear_radius;
    const double chord =
        std::sqrt(path * path - c.wheelbase * c.wheelbase / 4); // its distance from the centre
    const auto ahead = [&](double x,
                           double z) { // angle about the centre, ahead of the middle between the axles
        return std::atan2(x - c.wheelbase / 2, chord - (z - c.rear_radius));
    };
    const double mass_angle = ahead(c.centre.x(), c.centre.z()), nose_angle = ahead(c.nose.x(), c.nose.y());
    const double arm = std::hypot(c.centre.x() - c.wheelbase / 2, chord - (c.centre.z() - c.rear_radius));
    const HeatCar car = plain.prepared();
    const double spin_mass = car.rear.spin_mass + car.front.spin_mass;
    const double inertia = c.mass * arm * arm + car.pitch_inertia + spin_mass * path * path;
    const double rate = std::sqrt(c.mass * standard_gravity * arm / inertia);

    const double start_slope = -60 * degree;
    const double a0 = start_slope - nose_angle + mass_angle;
    for (double a1 : {-40 * degree, -15 * degree, 0.0, 12 * degree}) {
        TrackPlan plan;
        plan.first_slope = first_slope;
        plan.pieces = {Arc{arc, 120 * degree, 0}};
        plan.start_line = arc * (start_slope - first_slope);
        plan.finish_line = arc * (a1 - mass_angle + nose_angle - first_slope);
        const HeatResult heat = run(plan, plain);
        const double k = std::sin(std::abs(a0) / 2), p = std::asin(std::sin(a1 / 2) / k);
        const double expected = (boost::math::ellint_1(k) +
                                 (a1 < 0 ? -boost::math::ellint_1(k, -p) : boost::math::ellint_1(k, p))) /
                                rate;
        INFO("to " << a1 / degree << " degrees");
        CHECK(heat.time == Approx(expected).margin(aim));
        const double speed = rate * arm * std::sqrt(2 * (std::cos(a1) - std::cos(a0)));
        CHECK(heat.finish_speed == Approx(speed).epsilon(1e-10));
    }
}

// Release on an arc of 1 m, 60 degrees above its bottom, to the bottom (computed apart from this program): a
// point, then bodies whose rolling adds a half and two fifths of their mass. A car of 1 mm follows the arc
// within size²/8 = 1.3e-7 of its radius, and its wheels' centres run 1e-6 inside it.
TEST_CASE("Points roll down an arc as the pendulum formula says") {
    TrackPlan plan;
    plan.first_slope = -70 * degree;
    plan.pieces = {Arc{1, 80 * degree, 0}};
    plan.start_line = 10 * degree;
    plan.finish_line = 70 * degree;
    struct Case {
        double rotary, time, speed;
    };
    for (const Case& c : {Case{0, 0.538310587946, 3.13155712067}, Case{0.5, 0.659293131803, 2.55690568200},
                          Case{0.4, 0.636937677275, 2.64664882446}}) {
        const HeatResult heat = run(plan, point_car(c.rotary));
        CHECK(heat.time == Approx(c.time).epsilon(5e-7));
        CHECK(heat.finish_speed == Approx(c.speed).epsilon(5e-7));
    }
}

// Incline of 20 degrees, tangent arc of 2 m, level of 8 m, drop 1.2 m, a point without friction (computed
// apart from this program, section by section): 3.1672548696 s, and sqrt(1.03) times that where rolling adds
// 3 %.
TEST_CASE("A ramp, an arc and a level add up to the worked time") {
    TrackPlan plan;
    plan.first_slope = -20 * degree;
    plan.pieces = {Straight{0.5 + 3.15591131878}, Arc{2, 20 * degree, 0}, Straight{9}};
    plan.start_line = 0.5;
    plan.finish_line = 0.5 + 3.15591131878 + 2 * 20 * degree + 8;
    plan.start_height = 1.2;
    const double expected = 3.1672548696;
    const auto error = [&](double size) { return run(plan, point_car(0, size)).time - expected; };
    CHECK(std::abs(error(1e-3)) < 3e-7);
    CHECK(run(plan, point_car(0.03)).time == Approx(3.21441262306).margin(3e-7));
    CHECK(run(plan, point_car()).finish_speed == Approx(4.85138743042).margin(3e-7));
    // What is left is the car's size: it falls with its square.
    CHECK(error(2e-2) / error(1e-2) == Approx(4).margin(0.2));
}

namespace {

/// A cycloid from slope -first to its bottom, made of arcs: along it s = 4 R sin(slope), so that each stretch
/// of equal turn has its true length and turn, and the arcs differ from the curve by the square of the turn.
TrackPlan cycloid(double radius, double first, int arcs) {
    TrackPlan plan;
    plan.first_slope = -first;
    double length = 0;
    for (int n = 0; n < arcs; ++n) {
        const double from = first * (arcs - n) / arcs, to = first * (arcs - n - 1) / arcs;
        const double stretch = 4 * radius * (std::sin(from) - std::sin(to));
        plan.pieces.push_back(Arc{stretch / (from - to), from - to, 0});
        length += stretch;
    }
    plan.pieces.push_back(Straight{0.1});
    plan.finish_line = length;
    return plan;
}

constexpr double cycloid_radius = 0.6096; // half the drop of 1.2192 m from cusp to bottom

} // namespace

// Huygens: the time to the bottom of a cycloid is pi sqrt(R/g) from wherever it starts; 0.783270939846 s
// here, and 0.959307066486 s where rolling adds half the mass.
TEST_CASE("Every start on a cycloid takes the same time") {
    for (double first : {75 * degree, 50 * degree, 20 * degree}) {
        INFO("from " << first / degree << " degrees");
        const auto time = [&](int arcs, double rotary) {
            return run(cycloid(cycloid_radius, first, arcs), point_car(rotary, 1e-4)).time;
        };
        const double coarse = time(20, 0), fine = time(40, 0);
        const double expected = 0.783270939846;
        CHECK((coarse - expected) / (fine - expected) == Approx(4).margin(0.5));
        // With the leading error of the arcs taken out.
        CHECK(fine + (fine - coarse) / 3 == Approx(expected).margin(2e-6));
        const double rolling = time(40, 0.5) + (time(40, 0.5) - time(20, 0.5)) / 3;
        CHECK(rolling == Approx(0.959307066486).margin(2e-6));
    }
}

// Bernoulli: between the cusp and the bottom nothing is faster. The straight line takes sqrt(pi² + 4)/pi
// times as long: 0.928526233652 s.
TEST_CASE("No other way down is faster than the cycloid") {
    const double drop = 2 * cycloid_radius, run_out = std::numbers::pi * cycloid_radius;
    const double chord = std::hypot(drop, run_out), chord_slope = std::atan2(drop, run_out);
    const PlainCar car = point_car(0, 1e-4);
    const double best = run(cycloid(cycloid_radius, 89.9 * degree, 60), car).time;
    CHECK(best == Approx(0.783270939846).margin(2e-4)); // the arcs of the curve, and 0.1 degree from the cusp

    TrackPlan line = slope_track(chord_slope, chord);
    CHECK(run(line, car).time == Approx(0.928526233652).margin(aim));

    // Arcs through both points, from nearly straight to steep: the best of them is close, and slower.
    double best_arc = 1e9;
    for (double first = chord_slope + 0.02; first < 88 * degree; first += 0.05) {
        TrackPlan arc;
        const double turn = 2 * (first - chord_slope);
        arc.first_slope = -first;
        arc.pieces = {Arc{chord / 2 / std::sin(turn / 2), turn, 0}, Straight{0.1}};
        arc.finish_line = chord / 2 / std::sin(turn / 2) * turn;
        best_arc = std::min(best_arc, run(arc, car).time);
    }
    CHECK(best_arc > best);
    CHECK(best_arc < 1.03 * best);
    // Steep, then level: a corner rounded by an arc, through the same two points.
    for (double first : {60 * degree, 75 * degree}) {
        const double radius = 0.1, straight = (drop - radius * (1 - std::cos(first))) / std::sin(first);
        const double level = run_out - straight * std::cos(first) - radius * std::sin(first);
        REQUIRE(level > 0);
        TrackPlan corner;
        corner.first_slope = -first;
        corner.pieces = {Straight{straight}, Arc{radius, first, 0}, Straight{level + 0.1}};
        corner.finish_line = straight + radius * first + level;
        CHECK(run(corner, car).time > best);
    }
}
