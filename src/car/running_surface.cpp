#include "car/running_surface.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/core/say.hpp>

#include <cmath>

namespace rampwright {

namespace {

/// Mean radius of the wheels of an axle that touch.
double touching_radius(const CarModel& car, bool front) {
    double sum = 0;
    int count = 0;
    for (const Wheel& wheel : car.wheels)
        if (wheel.touches && is_front(wheel.corner) == front) {
            sum += wheel.radius;
            ++count;
        }
    if (count == 0)
        throw Problem(Exit::could_not, car.key + "/wheels",
                      front ? "no front wheel touches the track" : "no rear wheel touches the track",
                      Core::tr("set \"touches\" of at least one of them to true"));
    return sum / count;
}

} // namespace

double RunningSurface::height(const Vec3& point) const {
    return level(point).z();
}

Vec3 RunningSurface::level(const Vec3& point) const {
    const Vec3 away = point - origin;
    return {away.x() * along.x() + away.z() * along.y(), away.y(),
            away.z() * along.x() - away.x() * along.y()};
}

Eigen::Matrix3d RunningSurface::from_car() const {
    Eigen::Matrix3d turn;
    turn << along.x(), 0, along.y(), 0, 1, 0, -along.y(), 0, along.x();
    return turn;
}

RunningSurface find_running_surface(const CarModel& car) {
    RunningSurface surface;
    surface.rear_radius = touching_radius(car, false);
    surface.front_radius = touching_radius(car, true);
    if (!(car.front_x > car.rear_x))
        throw Problem(Exit::could_not, car.key + "/axles",
                      Core::tr("the rear axle is not behind the front axle"),
                      Core::tr("make \"front_x_mm\" larger than \"rear_x_mm\""));

    const Vec2 between(car.front_x - car.rear_x, car.front_z - car.rear_z);
    const double distance = between.norm();
    const double rise = (surface.front_radius - surface.rear_radius) / distance;
    if (!(std::abs(rise) < 1))
        throw Problem(Exit::could_not, car.key + "/wheels",
                      Core::tr("a wheel is larger than the wheelbase allows"),
                      Core::tr("check \"outer_diameter_mm\" and the axles' places"));
    const double angle = std::atan2(between.y(), between.x()) - std::asin(rise);
    surface.along = {std::cos(angle), std::sin(angle)};
    surface.wheelbase = distance * std::sqrt(1 - rise * rise);
    surface.origin = {car.rear_x + surface.rear_radius * surface.along.y(), 0,
                      car.rear_z - surface.rear_radius * surface.along.x()};
    return surface;
}

} // namespace rampwright
