#include <rampwright/heat/regained.hpp>

#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

constexpr double slope = 12 * degree, way = 6.0;

struct Bench {
    explicit Bench(const PlainCar& plain)
        : track(slope_track(slope, way)),
          car(plain.prepared()),
          course(track, car),
          time(run_heat(course, car, HeatDetail::time).time) {}
    Track track;
    HeatCar car;
    Course course;
    double time;
};

} // namespace

TEST_CASE("time regained on a straight slope is the difference of two closed forms") {
    // t = sqrt(2 s / a), a = [m g sin - (journal arm / R)(m - m_wheels) g cos - C_rr m g cos] / (m + I / R²)
    // (elementary mechanics; the same form as in straight_test.cpp).
    PlainCar plain = reference_car();
    plain.on_wheels.air_area = 0;
    const Bench bench(plain);
    double wheels = 0, spin = 0;
    for (const Wheel& wheel : plain.on_wheels.wheels)
        if (wheel.touches) {
            wheels += wheel.mass;
            spin += wheel.spin_inertia / (wheel.radius * wheel.radius);
        }
    const auto closed = [&](double journal_arm, double rolling) {
        const double m = plain.on_wheels.mass, g = standard_gravity;
        const double a =
            (m * g * std::sin(slope) - journal_arm / 0.0151 * (m - wheels) * g * std::cos(slope) -
             rolling * m * g * std::cos(slope)) /
            (m + spin);
        return std::sqrt(2 * way / a);
    };
    const double arm = 0.114e-3, rolling = 0.0015;
    const LossTimes times = regained(bench.course, bench.car, bench.time);
    CHECK(bench.time == Approx(closed(arm, rolling)).margin(1e-8));
    CHECK(times.journal == Approx(closed(arm, rolling) - closed(0, rolling)).margin(5e-8));
    CHECK(times.rolling == Approx(closed(arm, rolling) - closed(arm, 0)).margin(5e-8));
    CHECK(times.hub == Approx(0).margin(5e-8));
    CHECK(times.scrub == Approx(0).margin(5e-8));
    CHECK(times.air == Approx(0).margin(5e-8));
    CHECK_FALSE(times.rail.has_value());

    // Wheel by wheel: the rear pair are twins, the raised wheel takes nothing, and small losses nearly add
    // up.
    const auto by_wheel = regained_by_wheel(bench.course, bench.car, bench.time);
    CHECK(by_wheel[0].journal == Approx(by_wheel[1].journal).margin(5e-8));
    CHECK(by_wheel[std::size_t(Corner::front_left)].journal == 0);
    double sum = 0;
    for (const WheelLossTimes& wheel : by_wheel)
        sum += wheel.journal;
    CHECK(sum == Approx(times.journal).epsilon(0.02));
    // t = sqrt(2 s / (a - f)) is convex in the friction f: taken out alone each gains more than its part.
    CHECK(sum > times.journal);
}

TEST_CASE("air regained is the difference of ln cosh and the free fall") {
    // With drag alone x = ln cosh(sqrt(a b) t) / b (elementary integration).
    PlainCar plain = reference_car();
    make_lossless(plain);
    plain.on_wheels.air_area = 8e-4;
    const Bench bench(plain);
    const double a = standard_gravity * std::sin(slope);
    const double b = 0.5 * plain.air_density * 8e-4 / plain.on_wheels.mass;
    const double with = std::acosh(std::exp(b * way)) / std::sqrt(a * b);
    CHECK(regained(bench.course, bench.car, bench.time).air ==
          Approx(with - std::sqrt(2 * way / a)).margin(5e-8));
}

TEST_CASE("without a loss nothing else of the car changes") {
    const PlainCar plain = reference_car();
    const HeatCar car = plain.prepared();
    const HeatCar gone = without(car, Loss::journal);
    CHECK(gone.rear.journal == 0);
    CHECK(gone.rear.rolling == car.rear.rolling);
    CHECK(gone.mass == car.mass);
    CHECK(gone.air_area == car.air_area);
    CHECK(without(car, Loss::air).air_area == 0);
    HeatCar both = without(without(car, Loss::rolling, Corner::rear_left), Loss::rolling, Corner::rear_right);
    CHECK(both.rear.rolling == Approx(0).margin(1e-18));
    CHECK(both.front.rolling == car.front.rolling);
}
