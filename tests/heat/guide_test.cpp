#include <rampwright/heat/guide.hpp>

#include <catch2/catch.hpp>
#include <gsl/gsl_integration.h>

#include <chrono>
#include <cmath>
#include <heat/losses_cars.hpp>
#include <numbers>

using namespace rampwright;
using namespace rampwright::test;

namespace {

constexpr double gap = 0.003, newton_of_gram = 9.80665e-3;

GuideSetup usual(double steer_deg, double grams_in_front = 15) {
    CarOnWheels car = usual_car();
    wheel(car, Corner::front_right).toe = steer_deg * degree;
    return guide_setup(car, gap, grams_in_front * newton_of_gram);
}

struct Touch {
    const GuideSetup* setup;
    double speed;
};

/// The force of one net steer, written out touch by touch: distance between touches, angle, what each takes.
double touch_force(double x, void* parameters) {
    const auto& [s, v] = *static_cast<const Touch*>(parameters);
    const double spread = std::hypot(s->align, s->need);
    const double net = std::abs(s->steer - s->rear_toe - spread * x);
    const double energy = s->effective_mass * v * v;
    const double steered = net > 0 ? 1 / (s->wheelbase / net + energy / (s->grip * s->front_load *
                                                                         std::tanh(s->creep * net / s->grip)))
                                   : 0;
    const double curvature = std::hypot(steered, s->kick / (s->wheelbase * energy));
    const double apart = std::sqrt(2 * s->side_gap / curvature);
    const double angle = curvature * apart;
    const double e = s->restitution;
    const double rub = s->touch_share * s->rail_friction * energy * angle * (1 + e);
    // The hold of the second term towards rest, stated in the header.
    const double hold = v / std::hypot(v, bounce_hold_speed);
    const double lost = energy / 2 * angle * angle * (1 - e * e) * hold;
    return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi) * (rub + lost) / apart;
}

/// Mean over the rear toe by GSL's adaptive quadrature, broken at zero net steer.
double gsl_bounce(const GuideSetup& s, double speed) {
    Touch touch{&s, speed};
    gsl_function f{&touch_force, &touch};
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(4000);
    const double kink = std::clamp((s.steer - s.rear_toe) / std::hypot(s.align, s.need), -9.0, 9.0);
    double below = 0, above = 0, error = 0;
    gsl_integration_qag(&f, -9, kink, 1e-14, 1e-10, 4000, GSL_INTEG_GAUSS31, space, &below, &error);
    gsl_integration_qag(&f, kink, 9, 1e-14, 1e-10, 4000, GSL_INTEG_GAUSS31, space, &above, &error);
    gsl_integration_workspace_free(space);
    return below + above;
}

double expected_force(const GuideSetup& s, double speed) {
    return guide_force_at(s, speed);
}

} // namespace

TEST_CASE("bouncing agrees with the touches summed one by one") {
    // Referee: the formulas of docs/model.md, "Going straight", written out in this file, GSL's QAG over the
    // toe.
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> uniform;
    double worst = 0;
    for (int i = 0; i < 400; ++i) {
        const CarOnWheels car = random_car(random);
        const double load = (2 + 40 * uniform(random)) * newton_of_gram;
        GuideSetup s = guide_setup(car, 0.001 + 0.004 * uniform(random), load);
        if (i % 10 == 0) s.kick *= 0.01; // a lane almost without joints: the sharpest turn at zero net steer
        const double speed = 0.05 + 5 * uniform(random);
        CAPTURE(i, speed, s.steer / degree, s.rear_toe / degree, s.kick, s.creep);
        const double want = gsl_bounce(s, speed);
        REQUIRE(bounce_force_at(s, speed) == Approx(want).epsilon(1e-6));
        worst = std::max(worst, std::abs(bounce_force_at(s, speed) / want - 1));
    }
    INFO("worst relative error " << worst);
    CHECK(worst < 1e-6);
}

TEST_CASE("the table reads what the integral gives") {
    std::mt19937_64 random(3);
    std::uniform_real_distribution<double> uniform;
    double worst = 0;
    for (int i = 0; i < 1000; ++i) {
        const CarOnWheels car = random_car(random);
        const GuideSetup s =
            guide_setup(car, 0.001 + 0.004 * uniform(random), (2 + 40 * uniform(random)) * newton_of_gram);
        const Guide guide = make_guide(s, 5.5);
        for (double v = 0; v <= 5.5; v += 0.05)
            worst = std::max(worst, std::abs(guide.force(v) / expected_force(s, v) - 1));
    }
    INFO("worst relative error " << worst);
    CHECK(worst < 1e-6);
}

TEST_CASE("riding follows the side force of the tread") {
    const GuideSetup s = usual(0.9);
    const Guide guide = make_guide(s, 5);
    // By hand: F = 0.3 * 0.1471 * tanh(10 * 0.015708 / 0.3), margin F L / 1.4 N mm.
    const double force = 0.3 * 15 * newton_of_gram * std::tanh(10 * 0.9 * degree / 0.3);
    CHECK(guide.ride_force == Approx(force * (0.25 * 0.2 + std::sin(0.9 * degree))).epsilon(1e-12));
    CHECK(guide.margin == Approx(force * 0.1111 / 1.4e-3).epsilon(1e-12));
    // Phi(1.25) and Phi((G - 1) / 0.35) from tables of the normal distribution.
    const double phi = 0.5 * std::erfc(-(guide.margin - 1) / 0.35 / std::numbers::sqrt2);
    CHECK(guide.ride_probability == Approx(0.8944 * phi).margin(5e-5));
    CHECK(guide.force(3) == Approx(guide.ride_probability * guide.ride_force +
                                   (1 - guide.ride_probability) * guide.bounce_force(3)));
    CHECK(s.effective_mass == Approx((2.7e-4 + 0.1417 * 0.022 * 0.022) / (0.1111 * 0.1111)).epsilon(1e-14));
}

TEST_CASE("steer counts towards the rail that is ridden") {
    CarOnWheels car =
        usual_car(); // left front raised: the right wheel's inner face meets the rail going left
    wheel(car, Corner::front_right).toe = 1 * degree;
    wheel(car, Corner::rear_left).toe = 0.2 * degree;
    CHECK(guide_setup(car, gap, 0.15).steer == 1 * degree);
    CHECK(guide_setup(car, gap, 0.15).rear_toe == Approx(0.1 * degree));

    CarOnWheels mirrored = car;
    wheel(mirrored, Corner::front_left).touches = true;
    wheel(mirrored, Corner::front_right).touches = false;
    wheel(mirrored, Corner::front_left).toe = -1 * degree;
    wheel(mirrored, Corner::rear_left).toe = 0;
    wheel(mirrored, Corner::rear_right).toe = -0.2 * degree;
    const GuideSetup a = guide_setup(car, gap, 0.15), b = guide_setup(mirrored, gap, 0.15);
    CHECK(b.steer == a.steer);
    CHECK(b.rear_toe == a.rear_toe);
    CHECK(guide_force_at(a, 3) == guide_force_at(b, 3));

    // The wrong way round it hardly ever rides.
    wheel(car, Corner::front_right).toe = -1 * degree;
    CHECK(make_guide(guide_setup(car, gap, 0.15), 5).ride_probability < 1e-4);

    // With both front wheels down, towards the side they point.
    wheel(car, Corner::front_left).touches = true;
    wheel(car, Corner::front_left).toe = -0.6 * degree;
    CHECK(guide_setup(car, gap, 0.15).steer == Approx(0.8 * degree));
    CHECK(guide_setup(car, gap, 0.15).rear_toe == Approx(-0.1 * degree));
}

TEST_CASE("what must come out of steer, holes and lane") {
    // Directions and sizes the model is built to give; they check the code, they are no evidence for the
    // model.
    const double racing = 4.0;
    const auto best = [&](double align, double need, double kick) {
        GuideSetup s = usual(0);
        s.align = align * degree;
        s.need = need * degree;
        s.kick = kick * 1e-3;
        return best_steer(s, racing) / degree;
    };
    // A fair track, jig holes, 15 g in front: interior, 0.6 to 1.1 deg.
    const double fair = best(0.2, 0.4, 1.4);
    CHECK(fair > 0.6);
    CHECK(fair < 1.1);
    CHECK(best(0.2, 0.7, 2.0) > fair);                // rough
    CHECK(best(0.2, 0.2, 0.9) < fair);                // smooth
    CHECK(best(0.4, 0.4, 1.4) > fair);                // drill press
    CHECK(best(0.8, 0.4, 1.4) > best(0.4, 0.4, 1.4)); // slots

    // Far beyond the best costs time: at 3 degrees a few millinewtons more.
    GuideSetup s = usual(fair);
    s.align = 0.2 * degree;
    const double least = guide_force_at(s, racing);
    s.steer = 3 * degree;
    CHECK(guide_force_at(s, racing) > least + 1.5e-3);

    // At 1.0 degree there is a best front load, lower on a smoother track.
    const auto best_load = [&](double need, double kick) {
        double at = 0, least_force = 1;
        for (double grams = 1; grams <= 60; grams += 0.1) {
            GuideSetup load = usual(1.0, grams);
            load.need = need * degree;
            load.kick = kick * 1e-3;
            if (const double f = guide_force_at(load, racing); f < least_force) {
                least_force = f;
                at = grams;
            }
        }
        return at;
    };
    const double fair_load = best_load(0.4, 1.4);
    CHECK(fair_load > 2);
    CHECK(fair_load < 40);
    CHECK(best_load(0.2, 0.9) < fair_load);

    // Sizes: riding 1 to 2 mN, bouncing 2 to 6 mN.
    for (double steer : {0.7, 0.9, 1.1}) {
        const Guide guide = make_guide(usual(steer), 5);
        CHECK(guide.ride_force > 1e-3);
        CHECK(guide.ride_force < 2e-3);
        for (double v : {2.0, 3.0, 4.0, 5.0}) {
            CHECK(guide.bounce_force(v) > 2e-3);
            CHECK(guide.bounce_force(v) < 6e-3);
        }
    }
}

TEST_CASE("best steer is a minimum") {
    GuideSetup s = usual(0);
    const double best = best_steer(s, 4);
    const auto at = [&](double steer) {
        s.steer = steer;
        return guide_force_at(s, 4);
    };
    for (double d = 0.05; d < 3; d += 0.05) {
        CHECK(at(best + d * degree) > at(best));
        CHECK(at(std::max(0.0, best - d * degree)) > at(best));
    }
}

TEST_CASE("the guide stays whole on a thousand random cars") {
    std::mt19937_64 random(17);
    std::uniform_real_distribution<double> uniform;
    for (int i = 0; i < 1000; ++i) {
        const CarOnWheels car = random_car(random);
        GuideSetup s = guide_setup(car, 0.004 * uniform(random), 60 * uniform(random) * newton_of_gram);
        if (i % 50 == 0) s.front_load = 0;
        if (i % 50 == 1) s.kick = 0;
        if (i % 50 == 2) s.steer = s.rear_toe = 0;
        CAPTURE(i);
        const Guide guide = make_guide(s, 5);
        REQUIRE(guide.ride_probability >= 0);
        REQUIRE(guide.ride_probability <= 1);
        REQUIRE(guide.ride_force >= 0);
        for (double v : {0.0, 1e-9, 1e-3, 0.1, 1.0, 3.0, 5.0, 7.0}) {
            REQUIRE(std::isfinite(guide.force(v)));
            REQUIRE(guide.force(v) >= 0);
            REQUIRE(guide.force(v) < 0.5);
        }
        if (s.kick == 0)
            continue; // without any joints the least steer holds the rail: a step, as it should be
        // No jump in steer, at zero or elsewhere.
        for (double steer : {0.0, s.steer, s.rear_toe}) {
            s.steer = steer;
            const double here = guide_force_at(s, 3);
            for (double nudge : {-1e-9, 1e-9}) {
                s.steer = steer + nudge;
                REQUIRE(std::abs(guide_force_at(s, 3) - here) < 1e-6 * here + 1e-8);
            }
        }
    }
}

TEST_CASE("steer through zero is continuous") {
    CarOnWheels car = usual_car();
    const auto force = [&](double toe) {
        wheel(car, Corner::front_right).toe = toe;
        return guide_force_at(guide_setup(car, gap, 0.147), 4);
    };
    CHECK(force(1e-9) == Approx(force(0)).epsilon(1e-6));
    CHECK(force(-1e-9) == Approx(force(0)).epsilon(1e-6));
    wheel(car, Corner::front_left).touches = true;
    CHECK(force(1e-9) == Approx(force(-1e-9)).epsilon(1e-6));
}

TEST_CASE("a start from rest meets a finite, smooth force") {
    const GuideSetup s = usual(0.9);
    const Guide guide = make_guide(s, 5);
    // At rest what is left is small against the drive of a ramp (0.6 N).
    CHECK(guide.bounce_force(0) > 0);
    CHECK(guide.bounce_force(0) < 0.02);
    // Even in speed: no slope at rest.
    CHECK(guide.bounce_force(1e-4) == Approx(guide.bounce_force(0)).epsilon(1e-5));
    // The hold itself changes the force little at speed ...
    const double free =
        bounce_force_at(s, 2) + (std::hypot(2, bounce_hold_speed) / 2 - 1) * bounce_force_at(s, 2);
    CHECK(free / bounce_force_at(s, 2) - 1 < 1.3e-3);
    // ... and little energy near rest: at 4 m/s² below 1 m/s, against 1/v, under 2e-5 of 1.8 J.
    double missing = 0;
    const double a = 4, c = bounce_force_at(s, 0) * bounce_hold_speed; // bounds the second part's factor
    for (double v = 5e-4; v < 1; v += 1e-3)
        missing += c * (1 / v - 1 / std::hypot(v, bounce_hold_speed)) * v / a * 1e-3;
    CHECK(missing < 2e-5 * 1.8);
}

TEST_CASE("no rail, no guide") {
    TrackPlan track;
    const CarOnWheels car = usual_car();
    const Guide none = make_guide(car, track, gap, 0.147, 5);
    CHECK_FALSE(none.rail);
    CHECK(none.force(3) == 0);
    CHECK(none.bounce_force(3) == 0);
    track.rail = LaneRail{0.041, 0.006};
    CHECK(make_guide(car, track, gap, 0.147, 5).rail);
}

TEST_CASE("a guide is made in microseconds and read in nanoseconds") {
    GuideSetup s = usual(0.9);
    using Clock = std::chrono::steady_clock;
    double sum = 0;
    const auto start = Clock::now();
    constexpr int makes = 2000, reads = 200000;
    for (int i = 0; i < makes; ++i) {
        s.steer += 1e-9;
        sum += make_guide(s, 5).ride_force;
    }
    const auto made = Clock::now();
    const Guide guide = make_guide(s, 5);
    for (int i = 0; i < reads; ++i)
        sum += guide.force(i * 2e-5);
    const auto read = Clock::now();
    const auto seconds = [](auto d) { return std::chrono::duration<double>(d).count(); };
    INFO("made in " << seconds(made - start) / makes * 1e6 << " us, read in "
                    << seconds(read - made) / reads * 1e9 << " ns");
    CHECK(sum > 0);
#ifdef NDEBUG
    CHECK(seconds(made - start) / makes < 50e-6); // generous: other work may share the machine
    CHECK(seconds(read - made) / reads < 200e-9);
#endif
}
