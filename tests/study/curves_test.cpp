#include "support/demo.hpp"

#include <rampwright/project/edits.hpp>
#include <rampwright/study/curves.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <functional>

using namespace rampwright;

TEST_CASE("powers along the track sum to the books, loads to the axles") {
    const Project project = demo_project();
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const Figures figures = compute_figures(project, car);
        const Curves curves = curves_along_track(project, car);
        CAPTURE(figures.name, curves.points.size());
        REQUIRE(curves.finished);
        const auto energy = [&](const std::function<double(const CurvePoint&)>& power) {
            double sum = 0;
            for (std::size_t n = 1; n < curves.points.size(); ++n)
                sum += 0.5 * (power(curves.points[n - 1]) + power(curves.points[n])) *
                       (curves.points[n].time - curves.points[n - 1].time);
            return sum;
        };
        const Budget& books = figures.budget;
        CHECK(energy([](const CurvePoint& p) { return p.power.journal; }) ==
              Approx(books.journal).epsilon(1e-3));
        CHECK(energy([](const CurvePoint& p) { return p.power.hub; }) == Approx(books.hub).epsilon(1e-3));
        CHECK(energy([](const CurvePoint& p) { return p.power.rolling; }) ==
              Approx(books.rolling).epsilon(1e-3));
        CHECK(energy([](const CurvePoint& p) { return p.power.scrub; }) == Approx(books.scrub).epsilon(1e-3));
        CHECK(energy([](const CurvePoint& p) { return p.power.air; }) == Approx(books.air).epsilon(1e-3));
        CHECK(energy([](const CurvePoint& p) { return p.power.rail.value(); }) ==
              Approx(books.rail.value()).epsilon(1e-3));
        CHECK(curves.points.front().at == Approx(0).margin(1e-9));
        CHECK(curves.points.front().speed == 0);
        CHECK(curves.points.back().at == Approx(curves.length));
        CHECK(curves.points.back().speed == Approx(figures.heat.finish_speed));
        CHECK(curves.points.back().time + project.track.clock_offset.value ==
              Approx(*figures.heat.time).margin(1e-8));
        double gap = 0;
        for (std::size_t n = 0; n < curves.points.size(); ++n) {
            const CurvePoint& p = curves.points[n];
            double rear = 0, front = 0;
            for (Corner corner : all_corners)
                (is_front(corner) ? front : rear) += p.wheel_load[std::size_t(corner)].value_or(0);
            CHECK(rear == Approx(p.rear_load));
            CHECK(front == Approx(p.front_load));
            if (n > 0) gap = std::max(gap, p.at - curves.points[n - 1].at);
        }
        CHECK(gap < 0.02 * curves.length); // fine enough to draw
    }
}

TEST_CASE("a car without loss has at each place the speed of its fall") {
    // v² = 2 g h times m / (m + I / R²) on a straight slope (energy alone).
    Document document = demo_document();
    document.root["track"] = {{"first_slope_deg", -15},
                              {"pieces", Json::array({Json{{"kind", "straight"}, {"length_mm", 6000}}})},
                              {"start_line_mm", 300},
                              {"finish_line_mm", 5800},
                              {"rail", nullptr}};
    Json& model = document.root["model"];
    for (const char* name : {"journal", "hub_on_head", "hub_on_wood", "rolling", "tread_grip", "windage"})
        model[name] = {{"value", 0}, {"sigma", 0}};
    Json& car = document.root["cars"][0];
    car.erase("model");
    car["drag"]["coefficient"] = 0;
    const Project project = read_project(document);
    const Curves curves = curves_along_track(project, 0);
    const ReadyHeat ready = make_ready(make_case(project, 0));
    double spin = 0;
    for (const Wheel& wheel : ready.wheels.wheels)
        if (wheel.touches) spin += wheel.spin_inertia / (wheel.radius * wheel.radius);
    const double part = ready.wheels.mass / (ready.wheels.mass + spin);
    for (const double at : {0.2, 1.0, 3.3, 5.5}) {
        const CurvePoint p = curve_at(curves, at);
        const double fall = at * std::sin(15 * 3.14159265358979323846 / 180);
        CHECK(p.speed == Approx(std::sqrt(2 * 9.80665 * fall * part)).epsilon(1e-5)); // read between points
    }
    CHECK(curve_at(curves, -1).at == curves.points.front().at);
    CHECK(curve_at(curves, 99).at == curves.points.back().at);
}
