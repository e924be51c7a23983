#include <rampwright/heat/regained.hpp>

namespace rampwright {

namespace {

/// A microsecond is a thousandth of what is shown; a hundredth of that is kept.
constexpr double tolerance = 1e-8;

double time_of(const Course& course, const HeatCar& car) {
    return run_heat(course, car, HeatDetail::time, {.tolerance = tolerance}).time;
}

void take_out(HeatAxle& axle, Loss loss) {
    switch (loss) {
    case Loss::journal:
        axle.journal = axle.journal_wheel = 0;
        break;
    case Loss::hub:
        axle.hub = axle.hub_wheel = 0;
        break;
    case Loss::rolling:
        axle.rolling = 0;
        break;
    case Loss::scrub:
        axle.scrub = 0;
        break;
    case Loss::air:
        axle.windage = 0;
        break;
    case Loss::rail:
        break;
    }
}

} // namespace

HeatCar without(HeatCar car, Loss loss) {
    take_out(car.rear, loss);
    take_out(car.front, loss);
    if (loss == Loss::air) car.air_area = 0;
    if (loss == Loss::rail) car.guide.rail = false;
    return car;
}

HeatCar without(HeatCar car, Loss loss, Corner corner) {
    const HeatCar::WheelPart& part = car.parts[std::size_t(corner)];
    HeatAxle& axle = is_front(corner) ? car.front : car.rear;
    if (!part.touches) return car;
    switch (loss) {
    case Loss::journal:
        axle.journal -= part.load_share * part.journal_arm / axle.radius;
        axle.journal_wheel -= part.mass * part.journal_arm / axle.radius;
        break;
    case Loss::hub:
        axle.hub -= part.load_share * part.hub_arm / axle.radius;
        axle.hub_wheel -= part.mass * part.hub_arm / axle.radius;
        break;
    case Loss::rolling:
        axle.rolling -= part.load_share * part.rolling;
        break;
    case Loss::scrub:
        axle.scrub -= part.load_share * part.scrub;
        break;
    case Loss::air:
        axle.windage -= part.windage;
        break;
    case Loss::rail:
        break;
    }
    return car;
}

LossTimes regained(const Course& course, const HeatCar& car, double time) {
    const auto less = [&](Loss loss) { return time - time_of(course, without(car, loss)); };
    LossTimes times{less(Loss::journal), less(Loss::hub), less(Loss::rolling),
                    less(Loss::scrub),   less(Loss::air), {}};
    if (car.guide.rail) times.rail = less(Loss::rail);
    return times;
}

std::array<WheelLossTimes, 4> regained_by_wheel(const Course& course, const HeatCar& car, double time) {
    std::array<WheelLossTimes, 4> times{};
    for (Corner corner : all_corners) {
        if (!car.parts[std::size_t(corner)].touches) continue;
        const auto less = [&](Loss loss) { return time - time_of(course, without(car, loss, corner)); };
        times[std::size_t(corner)] = {less(Loss::journal), less(Loss::hub), less(Loss::rolling),
                                      less(Loss::scrub), less(Loss::air)};
    }
    return times;
}

} // namespace rampwright
