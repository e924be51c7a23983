#include <bench/bench.hpp>
#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// What is asked of the time: a microsecond. What comes out is better.
constexpr HeatOptions to_a_microsecond{.tolerance = 1e-7};

/// Heats of drawn cars, each of its own masses, losses and geometry, so that nothing is shared between heats
/// but the track. Drawing and preparing the cars is not counted: the course of each is.
bench::Result heats_per_second(const TrackPlan& plan, int heats) {
    const Track track(plan);
    Draw draw(20);
    std::vector<HeatCar> cars;
    for (int n = 0; n < heats; ++n)
        cars.push_back(draw_car(draw).prepared(track.gravity()));
    double sum = 0;
    int evaluations = 0;
    const auto all = [&] {
        for (const HeatCar& car : cars) {
            const Course course(track, car);
            const HeatResult heat = run_heat(course, car, HeatDetail::time, to_a_microsecond);
            sum += heat.time;
            evaluations += heat.evaluations;
        }
    };
    const double seconds = bench::least(3, [&] { return bench::core_seconds(all); });
    // The error of the time: against a tolerance far below, on every tenth car.
    double worst = 0;
    for (std::size_t n = 0; n < cars.size(); n += 10) {
        const Course course(track, cars[n]);
        const double tight =
            run_heat(course, cars[n], HeatDetail::time, {.tolerance = 1e-14, .nodes = 8, .parts = 4}).time;
        worst = std::max(
            worst, std::abs(run_heat(course, cars[n], HeatDetail::time, to_a_microsecond).time - tight));
    }
    const std::string against = "one core, every heat another car and course, windage, guide, easing; " +
                                bench::digits(evaluations / 3.0 / heats, 3) +
                                " evaluations a heat; greatest error " + bench::digits(worst * 1e6, 2) +
                                " us against a 1e-14 s solution; mean heat " +
                                bench::digits(sum / 3 / heats) + " s";
    return {heats / seconds, "1/s", against};
}

const bench::Registered heats{"heats-per-second", [] { return heats_per_second(hall_track(), 20000); }};
const bench::Registered measured_heats{"heats-per-second-measured-track", [] {
                                           return heats_per_second(measured(hall_track(), 0.1, 0.2e-3), 3000);
                                       }};

} // namespace
