#include <rampwright/heat/guide.hpp>

#include <catch2/catch.hpp>
#include <gsl/gsl_cdf.h>
#include <gsl/gsl_integration.h>

#include <cmath>
#include <heat/losses_cars.hpp>
#include <numbers>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// Between the faces of the usual car's wheels and a rail 41 mm wide.
constexpr double gap = 0.00225, newton_of_gram = 9.80665e-3;

GuideSetup usual(double steer_deg, double grams_in_front = 15) {
    CarOnWheels car = usual_car();
    car.centre.x() = grams_in_front * 1e-3 * car.wheelbase / car.mass;
    wheel(car, Corner::front_right).toe = steer_deg * degree;
    return guide_setup(car, gap, grams_in_front * newton_of_gram);
}

struct Lane {
    const GuideSetup* setup;
    double net;
};

double density(double x) {
    return std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi);
}

/// What one net steer x spreads off the mean costs, by its share of the way: rubbing with |F + M/L| on one
/// rail or the other, the tread's slip.
double leaning(double x, void* parameters) {
    const auto& [s, mean] = *static_cast<const Lane*>(parameters);
    const double net = mean + std::hypot(s->align, s->need) * x;
    const double side = s->grip * s->front_load * std::tanh(s->creep * net / s->grip);
    const double joints = s->kick / s->wheelbase;
    // Mean of max(F + J, 0), J normal: the first moment of a censored normal variable, J phi(F/J) + F
    // Phi(F/J).
    const double towards = joints * density(side / joints) + side * gsl_cdf_ugaussian_P(side / joints);
    const double away = towards - side;
    return density(x) * (s->rail_friction * (s->ride_share * towards + s->touch_share * away) + side * net);
}

/// Probability that one joint's moment and the next leave the sum of either sign, doubled so that a toss
/// makes 1.
double crossing(double x, void* parameters) {
    const auto& [s, mean] = *static_cast<const Lane*>(parameters);
    const double net = mean + std::hypot(s->align, s->need) * x;
    const double side = s->grip * s->front_load * std::tanh(s->creep * net / s->grip);
    const double own = gsl_cdf_ugaussian_P(side * s->wheelbase / s->kick);
    return density(x) * 4 * own * (1 - own);
}

/// Mean over the net steer by GSL's adaptive quadrature, broken at zero net steer.
double gsl_mean(double (*f)(double, void*), const GuideSetup& s) {
    Lane lane{&s, s.steer - s.rear_toe};
    gsl_function function{f, &lane};
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(4000);
    // Around zero net steer, where it changes sides, in pieces as narrow as weak joints make that.
    const double spread = std::hypot(s.align, s.need);
    const double zero = -lane.net / spread,
                 near = 10 * s.kick / s.wheelbase / (s.creep * s.front_load) / spread;
    double sum = 0, from = -9;
    for (double to : {zero - 4 * near, zero - near, zero, zero + near, zero + 4 * near, 9.0}) {
        to = std::clamp(to, from, 9.0);
        double part = 0, error = 0;
        if (to > from)
            gsl_integration_qag(&function, from, to, 1e-14, 1e-10, 4000, GSL_INTEG_GAUSS31, space, &part,
                                &error);
        sum += part;
        from = to;
    }
    gsl_integration_workspace_free(space);
    return sum;
}

double expected_force(const GuideSetup& s, double speed) {
    return make_guide(s).force(speed);
}

} // namespace

TEST_CASE("leaning and changing sides agree with the integrals of docs/model.md") {
    // Referee: the formulas of docs/model.md, "Going straight", written out in this file, GSL's QAG over the
    // net steer.
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> uniform;
    double worst = 0;
    for (int i = 0; i < 400; ++i) {
        const CarOnWheels car = random_car(random);
        const double load = (2 + 40 * uniform(random)) * newton_of_gram;
        GuideSetup s = guide_setup(car, 0.001 + 0.004 * uniform(random), load);
        if (i % 10 == 0) s.kick *= 0.01; // a lane almost without joints: the sharpest turn at zero net steer
        CAPTURE(i, s.steer / degree, s.rear_toe / degree, s.kick, s.creep);
        const Guide guide = make_guide(s);
        const double lean = gsl_mean(&leaning, s), changes = gsl_mean(&crossing, s);
        REQUIRE(guide.lean_force == Approx(lean).epsilon(1e-6));
        REQUIRE(guide.crossing == Approx(changes).epsilon(1e-6).margin(1e-7));
        worst = std::max(worst, std::abs(guide.lean_force / lean - 1));

        // And what changing all the time costs, in the words of docs/model.md.
        const double speed = 0.05 + 5 * uniform(random), energy = s.effective_mass * speed * speed;
        const double swing = (1 + s.restitution) * energy / (s.creep * s.front_load * s.wheelbase);
        const double all = 0.5 * s.touch_share * s.rail_friction * energy * s.side_gap /
                           (s.wheelbase * s.wheelbase) * swing * swing / (swing * swing + 2.25);
        REQUIRE(guide.crossing_force(speed) == Approx(all).epsilon(1e-12));
        REQUIRE(guide.force(speed) == Approx(lean + changes * all).epsilon(1e-6));
    }
    INFO("worst relative error " << worst);
    CHECK(worst < 1e-6);
}

TEST_CASE("riding follows the side force of the tread") {
    const GuideSetup s = usual(0.9);
    const Guide guide = make_guide(s);
    // By hand: F = 0.3 * 0.1471 * tanh(10 * 0.015708 / 0.3), margin F L / 1.4 N mm.
    const double force = 0.3 * 15 * newton_of_gram * std::tanh(10 * 0.9 * degree / 0.3);
    CHECK(guide.ride_force == Approx(force * (0.25 * 0.2 + std::sin(0.9 * degree))).epsilon(1e-12));
    CHECK(guide.margin == Approx(force * 0.1111 / 1.4e-3).epsilon(1e-12));
    // By hand: G = 1.6826; holes 0.4 and lane 0.4 deg make 0.5657, of 0.9 steer 0.6285 of G, 1.0576; with
    // 0.35 1.1140; (G - 1.3) over that 0.3435, where tables of the normal distribution have 0.6344.
    CHECK(guide.ride_probability == Approx(0.6344).margin(5e-5));
    CHECK(s.effective_mass ==
          Approx((2.7e-4 + 0.1417 * 0.01176 * 0.01176) / (0.1111 * 0.1111)).epsilon(1e-5));
}

TEST_CASE("without joints and waves the guide is the closed form of riding") {
    // Nothing to lean away from: the ridden rail alone, or the other one where the steer points there.
    GuideSetup s = usual(0.9);
    s.align = s.need = 0;
    s.kick = 0;
    const double side = s.side_force(0.9 * degree);
    CHECK(make_guide(s).force(4) == Approx(side * (0.25 * 0.2 + 0.9 * degree)).epsilon(1e-9));
    CHECK(make_guide(s).ride_probability == 1);
    s.steer = -0.9 * degree;
    CHECK(make_guide(s).force(4) == Approx(side * (0.6 * 0.2 + 0.9 * degree)).epsilon(1e-9));
    CHECK(make_guide(s).ride_probability == 0);
    // A lane that takes up steer and knows no joints: the chance that some is left.
    s.need = 0.4 * degree;
    s.steer = 0.4 * degree;
    CHECK(make_guide(s).ride_probability == Approx(0.8413).margin(5e-5)); // Phi(1), tables
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
    CHECK(expected_force(a, 3) == expected_force(b, 3));

    // The wrong way round it hardly ever rides.
    wheel(car, Corner::front_right).toe = -1 * degree;
    CHECK(make_guide(guide_setup(car, gap, 0.15)).ride_probability < 0.01);

    // With both front wheels down, towards the side they point.
    wheel(car, Corner::front_left).touches = true;
    wheel(car, Corner::front_left).toe = -0.6 * degree;
    CHECK(guide_setup(car, gap, 0.15).steer == Approx(0.8 * degree));
    CHECK(guide_setup(car, gap, 0.15).rear_toe == Approx(-0.1 * degree));
}

TEST_CASE("what must come out of steer, holes and lane") {
    // Directions and sizes the model is built to give; they check the code, they are no evidence for the
    // model.
    // The mean speed of the reference heat; what a heat's best steer is meant for (figures.cpp).
    const double racing = 3.56;
    const auto best = [&](double align, double need, double kick, double speed, double room = gap) {
        GuideSetup s = usual(0);
        s.align = align * degree;
        s.need = need * degree;
        s.kick = kick * 1e-3;
        s.side_gap = room;
        return best_steer(s, speed) / degree;
    };
    // A fair track, jig holes, 15 g in front: interior, 0.6 to 1.1 deg.
    const double fair = best(0.2, 0.4, 1.4, racing);
    CHECK(fair > 0.6);
    CHECK(fair < 1.1);
    CHECK(best(0.2, 0.7, 2.0, racing) > fair); // rough
    CHECK(best(0.2, 0.2, 0.9, racing) < fair); // smooth
    // Looser holes want more where changing sides is dear: a wider gap, more speed. Elsewhere they hardly
    // matter, and the planar simulation has it the same way.
    const double jig = best(0.2, 0.4, 1.4, 4, 0.003), drilled = best(0.4, 0.4, 1.4, 4, 0.003);
    CHECK(drilled > jig);
    CHECK(best(0.8, 0.4, 1.4, 4, 0.003) > drilled); // slots
    CHECK(best(0.8, 0.4, 1.4, racing) == Approx(fair).margin(0.1));

    // Far beyond the best costs time: at 3 degrees a few millinewtons more.
    GuideSetup s = usual(fair);
    s.align = 0.2 * degree;
    const double least = expected_force(s, racing);
    s.steer = 3 * degree;
    CHECK(expected_force(s, racing) > least + 1.5e-3);

    // At 1.0 degree there is a best front load, lower on a smoother track.
    const auto best_load = [&](double need, double kick) {
        double at = 0, least_force = 1;
        for (double grams = 1; grams <= 60; grams += 0.1) {
            GuideSetup load = usual(1.0, grams);
            load.need = need * degree;
            load.kick = kick * 1e-3;
            if (const double f = expected_force(load, racing); f < least_force) {
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

    // Sizes: riding 1 to 2 mN, bouncing 2 to 6 mN at racing speed.
    for (double steer : {0.7, 0.9, 1.1}) {
        CHECK(make_guide(usual(steer)).ride_force > 1e-3);
        CHECK(make_guide(usual(steer)).ride_force < 2e-3);
    }
    for (double v : {3.0, 4.0, 5.0}) {
        CHECK(bounce_force(usual(0.9), v) > 2e-3);
        CHECK(bounce_force(usual(0.9), v) < 6e-3);
    }
}

TEST_CASE("best steer is a minimum") {
    GuideSetup s = usual(0);
    const double best = best_steer(s, 4);
    const auto at = [&](double steer) {
        s.steer = steer;
        return expected_force(s, 4);
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
        const Guide guide = make_guide(s);
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
            const double here = expected_force(s, 3);
            for (double nudge : {-1e-9, 1e-9}) {
                s.steer = steer + nudge;
                REQUIRE(std::abs(expected_force(s, 3) - here) < 1e-6 * here + 1e-8);
            }
        }
    }
}

TEST_CASE("steer through zero is continuous") {
    CarOnWheels car = usual_car();
    const auto force = [&](double toe) {
        wheel(car, Corner::front_right).toe = toe;
        return expected_force(guide_setup(car, gap, 0.147), 4);
    };
    CHECK(force(1e-9) == Approx(force(0)).epsilon(1e-6));
    CHECK(force(-1e-9) == Approx(force(0)).epsilon(1e-6));
    wheel(car, Corner::front_left).touches = true;
    CHECK(force(1e-9) == Approx(force(-1e-9)).epsilon(1e-6));
}

TEST_CASE("a start from rest meets a finite, smooth force") {
    const Guide guide = make_guide(usual(0.9));
    CHECK(guide.force(0) == guide.lean_force);
    // Even in speed: no slope at rest.
    CHECK(guide.force(1e-3) == Approx(guide.force(0)).epsilon(1e-9));
    // With nothing on the front wheel the swing is never taken out, at rest there is none.
    const Guide light = make_guide(usual(0.9, 0));
    CHECK(light.force(0) == light.lean_force);
    CHECK(light.crossing_force(2) == Approx(4 * light.crossing_force(1)).epsilon(1e-12));
}

TEST_CASE("no rail, no guide") {
    TrackPlan track;
    const CarOnWheels car = usual_car();
    const Guide none = make_guide(car, track, gap, 0.147);
    CHECK_FALSE(none.rail);
    CHECK(none.force(3) == 0);
    CHECK(none.crossing_force(3) == 0);
    track.rail = LaneRail{0.041, 0.006};
    CHECK(make_guide(car, track, gap, 0.147).rail);
}
