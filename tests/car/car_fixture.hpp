#pragma once

#include <rampwright/project/project.hpp>

namespace rampwright::test {

/// A plain block with one pocket and a brass weight in it, on four wheels; SI. Every number is given here,
/// none is a default of the project reader.
inline Project plain_project() {
    constexpr double mm = 1e-3, g = 1e-3;
    CarPlan car;
    car.name = "Plover";
    car.body.density = 400;
    car.body.block = {180 * mm, 45 * mm, 30 * mm};
    car.body.profile = {{{0, 0}}, {{180 * mm, 0}}, {{180 * mm, 30 * mm}}, {{0, 30 * mm}}};
    car.body.plan = {{{0, -22.5 * mm}}, {{180 * mm, -22.5 * mm}}, {{180 * mm, 22.5 * mm}}, {{0, 22.5 * mm}}};
    CutPlan pocket;
    pocket.name = "rear pocket";
    pocket.from = {40 * mm, -10 * mm, 14 * mm};
    pocket.to = {80 * mm, 10 * mm, 40 * mm};
    car.body.cuts = {pocket};
    car.axles.rear_x = 25 * mm;
    car.axles.front_x = 136 * mm;
    car.axles.rear_z = car.axles.front_z = 6 * mm;
    car.axles.shank_diameter = 2.2 * mm;
    car.axles.length = 28 * mm;
    car.axles.head_diameter = 4.5 * mm;
    car.axles.mass_each = 0.9 * g;
    car.axles.hole_diameter = 2.3 * mm;
    for (const Corner corner : all_corners) {
        WheelPlan& wheel = car.wheels[static_cast<std::size_t>(corner)];
        wheel.corner = corner;
        wheel.row = static_cast<std::size_t>(corner);
        wheel.mass = 2.6 * g;
        wheel.outer_diameter = 30.2 * mm;
        wheel.bore_diameter = 2.6 * mm;
        wheel.width = 8 * mm;
        wheel.gap_to_body = 0.8 * mm;
    }
    BallastPlan weight;
    weight.name = "brass bar";
    weight.size = {30 * mm, 16 * mm, 12 * mm};
    weight.material = "brass";
    weight.mass = 48.8 * g;
    weight.mass_given = true;
    weight.at = {60 * mm, 0, 20 * mm};
    weight.in = "rear pocket";
    car.ballast = {weight};
    car.drag.coefficient = {0.9, 0.18};
    Project project;
    project.cars = {car};
    return project;
}

/// Tungsten putty pressed into a cut.
inline BallastPlan tungsten_putty(const std::string& cut, double mass) {
    BallastPlan putty;
    putty.name = "putty";
    putty.shape = PieceShape::putty;
    putty.material = "tungsten putty";
    putty.mass = mass;
    putty.mass_given = true;
    putty.in = cut;
    return putty;
}

/// The same car seen in a mirror: left for right.
inline Project mirrored(Project project) {
    for (CarPlan& car : project.cars) {
        for (PlanPoint& point : car.body.plan)
            point.at.y() = -point.at.y();
        for (CutPlan& cut : car.body.cuts) {
            cut.from.y() = -cut.from.y();
            cut.to.y() = -cut.to.y();
        }
        std::swap(car.wheels[0], car.wheels[1]);
        std::swap(car.wheels[2], car.wheels[3]);
        for (const Corner corner : all_corners) {
            WheelPlan& wheel = car.wheels[static_cast<std::size_t>(corner)];
            wheel.corner = corner;
            wheel.toe = -wheel.toe;
        }
        for (BallastPlan& piece : car.ballast) {
            piece.at.y() = -piece.at.y();
            piece.turned = -piece.turned;
        }
    }
    return project;
}

} // namespace rampwright::test
