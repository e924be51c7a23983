#include <rampwright/heat/losses.hpp>

#include <catch2/catch.hpp>
#include <gsl/gsl_integration.h>

#include <chrono>
#include <cmath>
#include <heat/losses_cars.hpp>
#include <numbers>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// The three means by GSL's adaptive quadrature, broken at the kink.
struct Means {
    double head, wood, scrub;
};

struct Integrand {
    double sine, grip, creep, mean, spread;
    int which;
};

double integrand(double x, void* parameters) {
    const auto& p = *static_cast<const Integrand*>(parameters);
    const double toe = p.mean + p.spread * x;
    const double side = p.grip * std::tanh(p.creep * toe / p.grip);
    const double load = p.sine + side;
    const double density = std::exp(-x * x / 2) / std::sqrt(2 * std::numbers::pi);
    const double what = p.which == 0   ? std::max(load, 0.0)
                        : p.which == 1 ? std::max(-load, 0.0)
                                       : side * std::sin(toe);
    return density * what;
}

Means gsl_means(double sine, double grip, double creep, double mean, double spread) {
    gsl_integration_workspace* space = gsl_integration_workspace_alloc(2000);
    std::vector<double> points{-9, -mean / spread, 9};
    if (std::abs(sine) < grip) points.push_back((-grip / creep * std::atanh(sine / grip) - mean) / spread);
    for (double& point : points)
        point = std::clamp(point, -9.0, 9.0);
    std::sort(points.begin(), points.end());
    points.erase(std::unique(points.begin(), points.end()), points.end());
    Means means{};
    for (int which = 0; which < 3; ++which) {
        Integrand p{sine, grip, creep, mean, spread, which};
        gsl_function f{&integrand, &p};
        double total = 0;
        for (std::size_t i = 1; i < points.size(); ++i) {
            double part = 0, error = 0;
            gsl_integration_qag(&f, points[i - 1], points[i], 1e-13, 1e-11, 2000, GSL_INTEG_GAUSS31, space,
                                &part, &error);
            total += part;
        }
        (which == 0 ? means.head : which == 1 ? means.wood : means.scrub) = total;
    }
    gsl_integration_workspace_free(space);
    return means;
}

/// A car whose left rear wheel's hub_arm is the mean outward (or inward) side load itself.
CarOnWheels bare_hub(bool head) {
    CarOnWheels car = usual_car();
    set(car.model, ModelName::hub_on_head, head ? 1 : 0);
    set(car.model, ModelName::hub_on_wood, head ? 0 : 1);
    for (Wheel& w : car.wheels)
        w.hub_ring = w.body_ring = {1, 1};
    return car;
}

const WheelLoss& at(const std::array<WheelLoss, 4>& losses, Corner corner) {
    return losses[static_cast<std::size_t>(corner)];
}

constexpr double air_density = 1.19, air_viscosity = 1.82e-5;

} // namespace

TEST_CASE("collar arms agree with statics texts") {
    // Engineering Statics (Baker and Haynes), section on collar bearings: M = 2/3 mu P (ro³-ri³)/(ro²-ri²);
    // seen.
    CHECK(0.1 * 0.05 * collar_arm(0.00115, 0.003) == Approx(1.10622490e-5).epsilon(1e-9)); // closed form
    // Beer and Johnston, polisher of problem 8.93: 50 lb, mu 0.25, disc of 18 in: 75.0 lb in (inputs seen).
    CHECK(0.25 * 50 * collar_arm(0, 9) == Approx(75).epsilon(1e-15));
    CHECK(collar_arm(0.002, 0.002) == Approx(0.002).epsilon(1e-15));
    CHECK(collar_arm(0.002, 0.002 * (1 + 1e-12)) == Approx(0.002).epsilon(1e-11));
    CHECK(collar_arm(0, 0) == 0);
}

TEST_CASE("journal and rolling add up to the resistance of a vehicle") {
    // Molesworth, Pocketbook: R = f (W + w) + F W d/D; seen as a scan. Sample W + w 10 000 N, W 9 000 N,
    // f 0.001, F 0.035, d/D 0.1: 41.5 N.
    CarOnWheels car = usual_car();
    set(car.model, ModelName::journal, 0.035);
    set(car.model, ModelName::rolling, 0.001);
    wheel(car, Corner::rear_left).bore_radius = 0.05;
    wheel(car, Corner::rear_left).radius = 0.5;
    const WheelLoss loss = at(wheel_losses(car, true, air_density, air_viscosity), Corner::rear_left);
    CHECK(loss.rolling * 10000 + loss.journal_arm / 0.5 * 9000 == Approx(41.5).epsilon(1e-14));
}

TEST_CASE("means over the toe agree with adaptive quadrature") {
    // Referee: GSL's QAG, broken at the kink, 1e-11.
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> uniform;
    std::normal_distribution<double> normal;
    double worst = 0;
    for (int i = 0; i < 1500; ++i) {
        const double cant = (i % 5 == 0 ? 0.3 : 5) * (2 * uniform(random) - 1) * degree;
        const double grip = 0.3 * std::exp(0.5 * normal(random));
        const double creep = 10 * std::exp(std::log(3) * normal(random));
        const double toe = (i % 3 == 0 ? 0 : 2) * (2 * uniform(random) - 1) * degree;
        const double align = 0.02 + 1.5 * uniform(random);
        CAPTURE(i, cant / degree, grip, creep, toe / degree, align);
        Means got{};
        for (bool head : {true, false}) {
            CarOnWheels car = bare_hub(head);
            set(car.model, ModelName::tread_grip, grip);
            set(car.model, ModelName::creep_per_rad, creep);
            set(car.model, ModelName::align_deg, align);
            wheel(car, Corner::rear_left).cant = cant;
            wheel(car, Corner::rear_left).toe = toe;
            wheel(car, Corner::rear_right).toe = -toe;
            const WheelLoss loss = at(wheel_losses(car, true, 0, 0), Corner::rear_left);
            (head ? got.head : got.wood) = loss.hub_arm;
            got.scrub = loss.scrub;
        }
        const double spread = align * degree / std::numbers::sqrt2;
        const Means want = gsl_means(std::sin(cant), grip, creep, toe, spread);
        const double whole = want.head + want.wood;
        REQUIRE(std::abs(got.head - want.head) < 1e-7 * whole);
        REQUIRE(std::abs(got.wood - want.wood) < 1e-7 * whole);
        REQUIRE(got.scrub == Approx(want.scrub).epsilon(1e-6));
        worst = std::max({worst, std::abs(got.head - want.head) / whole,
                          std::abs(got.wood - want.wood) / whole, std::abs(got.scrub / want.scrub - 1)});
    }
    CHECK(worst < 1e-6);
}

TEST_CASE("a perfect hole leaves the stated toe alone") {
    CarOnWheels car = bare_hub(true);
    set(car.model, ModelName::align_deg, 0);
    wheel(car, Corner::rear_left).cant = wheel(car, Corner::rear_right).cant = 3 * degree;
    auto losses = wheel_losses(car, true, air_density, air_viscosity);
    CHECK(at(losses, Corner::rear_left).hub_arm == Approx(std::sin(3 * degree)).epsilon(1e-14));
    CHECK(at(losses, Corner::rear_left).scrub == 0);
    // Half the pair's difference, outward for both: toe-out of one degree in all.
    wheel(car, Corner::rear_left).toe = 1.5 * degree;
    wheel(car, Corner::rear_right).toe = 0.5 * degree;
    losses = wheel_losses(car, true, air_density, air_viscosity);
    const double side = 0.3 * std::tanh(10 * 0.5 * degree / 0.3);
    for (Corner corner : {Corner::rear_left, Corner::rear_right}) {
        CHECK(at(losses, corner).hub_arm == Approx(std::sin(3 * degree) + side).epsilon(1e-14));
        CHECK(at(losses, corner).scrub == Approx(side * std::sin(0.5 * degree)).epsilon(1e-14));
    }
    // A spread that shrinks tends to the same.
    set(car.model, ModelName::align_deg, 1e-6);
    const auto nearly = wheel_losses(car, true, air_density, air_viscosity);
    CHECK(at(nearly, Corner::rear_left).hub_arm ==
          Approx(at(losses, Corner::rear_left).hub_arm).epsilon(1e-9));
}

TEST_CASE("who pays for toe") {
    CarOnWheels car = usual_car();
    // The rear pair's mean toe only makes the car crab.
    const auto straight = wheel_losses(car, true, air_density, air_viscosity);
    wheel(car, Corner::rear_left).toe = wheel(car, Corner::rear_right).toe = 2 * degree;
    wheel(car, Corner::front_right).toe = 2 * degree;
    const auto crab = wheel_losses(car, true, air_density, air_viscosity);
    for (Corner corner : all_corners) {
        CHECK(at(crab, corner).scrub == at(straight, corner).scrub);
        CHECK(at(crab, corner).hub_arm == at(straight, corner).hub_arm);
    }
    // The steered front wheel's toe is the guide's while there is a rail, its own where there is none.
    CHECK(at(crab, Corner::front_right).scrub == 0);
    const auto open = wheel_losses(car, false, air_density, air_viscosity);
    CHECK(at(open, Corner::front_right).scrub > 2e-3);
    // Steering right drives a right wheel to its head, left to the wood, where friction is more.
    wheel(car, Corner::front_right).toe = -2 * degree;
    const auto outward = wheel_losses(car, false, air_density, air_viscosity);
    CHECK(at(outward, Corner::front_right).hub_arm < 0.5 * at(open, Corner::front_right).hub_arm);
    CHECK(at(outward, Corner::front_right).scrub ==
          Approx(at(open, Corner::front_right).scrub).epsilon(1e-12));
    // A raised wheel pays nothing.
    const WheelLoss raised = at(open, Corner::front_left);
    CHECK(raised.journal_arm + raised.hub_arm + raised.scrub + raised.rolling + raised.windage == 0);
}

TEST_CASE("cant keeps the hub off the wood") {
    CarOnWheels car = usual_car();
    set(car.model, ModelName::align_deg, 0.8);
    const auto hub = [&](double cant) {
        wheel(car, Corner::rear_left).cant = cant;
        return at(wheel_losses(car, true, air_density, air_viscosity), Corner::rear_left).hub_arm;
    };
    CHECK(hub(1 * degree) < hub(0));
    CHECK(hub(-1 * degree) > hub(0));
    // Smooth at zero cant: one-sided slopes agree, and so do the second differences at two steps.
    const double step = 1e-4;
    const double right = (hub(step) - hub(0)) / step, left = (hub(0) - hub(-step)) / step;
    const double right2 = (hub(step / 2) - hub(0)) / (step / 2),
                 left2 = (hub(0) - hub(-step / 2)) / (step / 2);
    CHECK(std::abs(right2 - left2) == Approx(std::abs(right - left) / 2).epsilon(0.01));
}

TEST_CASE("the edge factor comes in smoothly by about one degree") {
    CarOnWheels car = usual_car();
    set(car.model, ModelName::edge_factor, 0.7);
    const auto rolling = [&](double cant) {
        wheel(car, Corner::rear_left).cant = cant;
        return at(wheel_losses(car, true, air_density, air_viscosity), Corner::rear_left).rolling / 0.0015;
    };
    CHECK(rolling(0) == 1);
    CHECK(rolling(1 * degree) == Approx(0.7).margin(0.01));
    CHECK(rolling(3 * degree) == Approx(0.7).epsilon(1e-9));
    CHECK(rolling(-0.4 * degree) == rolling(0.4 * degree));
    CHECK(1 - rolling(1e-4 * degree) < 1e-7);
}

TEST_CASE("losses stay whole on a thousand random cars") {
    std::mt19937_64 random(11);
    for (int i = 0; i < 1000; ++i) {
        CarOnWheels car = random_car(random);
        const bool rail = i % 2 == 0;
        const auto losses = wheel_losses(car, rail, air_density, air_viscosity);
        CAPTURE(i);
        for (Corner corner : all_corners) {
            const WheelLoss& loss = at(losses, corner);
            for (double part : {loss.journal_arm, loss.hub_arm, loss.scrub, loss.rolling, loss.windage}) {
                REQUIRE(std::isfinite(part));
                REQUIRE(part >= 0);
            }
            REQUIRE(loss.rolling <= car.model[ModelName::rolling].value *
                                        std::max(1.0, car.model[ModelName::edge_factor].value));
        }
        // No jump: a nudge of every angle moves nothing by more than it should.
        CarOnWheels nudged = car;
        for (Wheel& w : nudged.wheels) {
            w.cant += 1e-7;
            w.toe += 1e-7;
        }
        const auto after = wheel_losses(nudged, rail, air_density, air_viscosity);
        const double creep = car.model[ModelName::creep_per_rad].value;
        for (std::size_t w = 0; w < 4; ++w) {
            REQUIRE(std::abs(after[w].hub_arm - losses[w].hub_arm) < 1e-7 * (1 + creep) * 0.02);
            REQUIRE(std::abs(after[w].scrub - losses[w].scrub) < 1e-7 * (1 + creep));
        }
    }
}

TEST_CASE("losses cost about a microsecond") {
    const CarOnWheels car = usual_car();
    double sum = 0;
    const auto start = std::chrono::steady_clock::now();
    constexpr int times = 2000;
    for (int i = 0; i < times; ++i)
        sum += wheel_losses(car, true, air_density, air_viscosity)[0].hub_arm;
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    INFO("per car " << took.count() / times * 1e6 << " us");
    CHECK(sum > 0);
#ifdef NDEBUG
    CHECK(took.count() / times < 20e-6); // generous: other work may share the machine
#endif
}
