#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>
#include <gsl/gsl_integration.h>

#include <functional>
#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// Integral by GSL's adaptive quadrature.
double integral(const std::function<double(double)>& f, double from, double to) {
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(1000);
    gsl_function function{
        [](double x, void* p) { return (*static_cast<const std::function<double(double)>*>(p))(x); },
        const_cast<std::function<double(double)>*>(&f)};
    double result = 0, error = 0;
    gsl_integration_qag(&function, from, to, 1e-14, 1e-13, 1000, GSL_INTEG_GAUSS61, space, &result, &error);
    gsl_integration_workspace_free(space);
    return result;
}

std::string where_it_fails(const TrackPlan& plan) {
    try {
        const Track track(plan);
    } catch (const Problem& problem) {
        CHECK(problem.exit() == Exit::could_not);
        CHECK_FALSE(problem.remedy().empty());
        return problem.where();
    }
    return "no problem";
}

} // namespace

// Slope of an eased arc: the curvature is a trapezium of the arc's own turn; place: integrals of cos and sin
// of it.
TEST_CASE("An eased arc follows the integrals of its slope") {
    const double radius = 1.2, turn = 25 * degree, easing = 0.17, first = -turn;
    TrackPlan plan;
    plan.first_slope = first;
    plan.pieces = {Straight{1}, Arc{radius, turn, easing}, Straight{2}};
    plan.finish_line = 2;
    const Track track(plan);
    const double length = radius * turn + easing;
    CHECK(track.length() == Approx(3 + length).epsilon(1e-14));
    const auto curvature = [&](double s) {
        const double d = s - 1;
        return std::clamp(std::min(d, length - d) / easing, 0.0, 1.0) / radius;
    };
    const auto slope = [&](double s) { // integrated by hand
        const double d = std::clamp(s - 1, 0.0, length), rest = length - d;
        if (d < easing) return first + d * d / (2 * easing * radius);
        if (rest < easing) return -rest * rest / (2 * easing * radius);
        return first + (d - easing / 2) / radius;
    };
    for (double s = 0.05; s < 3.4; s += 0.11) {
        const SurfacePoint point = track.point(s);
        INFO("s " << s);
        CHECK(point.curvature == Approx(curvature(s)).margin(1e-12));
        CHECK(track.slope(s) == Approx(slope(s)).margin(1e-13));
        const double joints[] = {0, 1, 1 + easing, 1 + length - easing, 1 + length, 4};
        double x = 0, z = 0;
        for (int n = 0; n < 5 && joints[n] < s; ++n) {
            x +=
                integral([&](double t) { return std::cos(slope(t)); }, joints[n], std::min(s, joints[n + 1]));
            z +=
                integral([&](double t) { return std::sin(slope(t)); }, joints[n], std::min(s, joints[n + 1]));
        }
        CHECK(point.at.real() == Approx(x).margin(1e-13));
        CHECK(point.at.imag() == Approx(z).margin(1e-13));
    }
}

TEST_CASE("The start height follows from the pieces, and is held against what is stated") {
    TrackPlan plan = reference_track(); // 1.2192 m by its own trigonometry
    CHECK(Track(plan).start_height() == Approx(1.2192).margin(1e-13));
    plan.start_height = 1.2192 + 0.4e-3; // said to the nearest millimetre
    CHECK_NOTHROW(Track(plan));
    for (double off : {1e-3, -1e-3, 5e-3}) {
        plan.start_height = 1.2192 + off;
        CHECK(where_it_fails(plan) == "/track/start_height_mm");
    }
    // The lowest point may lie inside a piece: an arc that goes down and up again.
    TrackPlan bowl;
    bowl.first_slope = -30 * degree;
    bowl.pieces = {Arc{2, 50 * degree, 0}};
    bowl.finish_line = 1.5;
    CHECK(Track(bowl).start_height() == Approx(2 * (1 - std::cos(30 * degree))).epsilon(1e-12));
}

TEST_CASE("A track that cannot be is refused with its place") {
    TrackPlan plan = reference_track();
    SECTION("the finish line lies beyond the end") {
        plan.finish_line = Track(plan).length() + 1e-3;
        CHECK(where_it_fails(plan) == "/track/finish_line_mm");
    }
    SECTION("the finish line does not lie behind the start line") {
        plan.finish_line = plan.start_line;
        CHECK(where_it_fails(plan) == "/track/finish_line_mm");
    }
    SECTION("easings too long for their arc") {
        plan.pieces[1] = Arc{1.2, 25 * degree, 1.2 * 25 * degree + 1e-3};
        CHECK(where_it_fails(plan) == "/track/pieces/1/easing_mm");
    }
    SECTION("measured points that do not rise in X") {
        plan = measured(plan, 0.2);
        plan.measured[7].x() = plan.measured[6].x();
        CHECK(where_it_fails(plan) == "/track/measured_mm/7");
    }
    SECTION("too few measured points") {
        plan.measured = {{0, 1}, {1, 0.5}, {2, 0.4}};
        CHECK(where_it_fails(plan) == "/track/measured_mm");
    }
    SECTION("an arc as tight as a wheel") {
        plan.pieces[1] = Arc{0.016, 25 * degree, 0};
        plan.start_height.reset();
        const Track track(plan);
        CHECK_THROWS_AS(Course(track, reference_car().prepared()), Problem);
    }
}

// Points taken from a known surface: the curve through them must come back, and the heat on it.
TEST_CASE("A measured track gives the heat of the track it was measured on") {
    TrackPlan known = hall_track();
    known.rail.reset();
    const double truth = run(known, reference_car()).time;
    SECTION("points without error") {
        const TrackPlan plan = measured(known, 0.1);
        const Track track(plan);
        CHECK(track.fit_max() < 1e-3);
        CHECK(track.fit_rms() <= track.fit_max());
        const double time = run(plan, reference_car()).time;
        CAPTURE(track.fit_rms(), track.fit_max(), time - truth);
        // A height wrong by e all along the ramp changes the time by less than e / (2 h) of it, h the drop.
        CHECK(std::abs(time - truth) < truth * track.fit_max() / (2 * track.start_height()));
        // The curve is as near to the surface between the points as at them.
        const Track surface(known);
        for (double s = 0.2; s < 11; s += 0.037) {
            const auto offset = (track.point(s).at - surface.point(s).at) / surface.point(s).tangent;
            CHECK(std::abs(offset.imag()) < 1.5e-3);
        }
    }
    SECTION("points with the error of a reading") {
        for (unsigned seed = 1; seed <= 5; ++seed) {
            const TrackPlan plan = measured(known, 0.1, 0.2e-3, seed);
            const Track track(plan);
            const double time = run(plan, reference_car()).time;
            CAPTURE(seed, track.fit_rms(), track.fit_max(), time - truth);
            CHECK(track.fit_rms() > 0.05e-3); // it does not follow every error
            CHECK(track.fit_rms() < 0.35e-3);
            CHECK(std::abs(time - truth) < truth * track.fit_max() / (2 * track.start_height()));
        }
    }
}
