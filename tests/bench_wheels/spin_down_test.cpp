#include <rampwright/bench/spin_down.hpp>
#include <rampwright/core/constants.hpp>
#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>

#include <cmath>
#include <random>

using namespace rampwright;

namespace {

constexpr double inertia = 3.2e-7, mass = 0.0026, bore = 0.00114;

SpinDown wheel_on_axle(double windage) {
    SpinDown spin;
    spin.time = Eigen::VectorXd::LinSpaced(25, 0, 12);
    spin.inertia = {inertia, 0.01e-7};
    spin.mass = {mass, 0.01e-3};
    spin.bore_radius = {bore, 0.01e-3};
    spin.windage = {windage, 0.1 * windage};
    spin.gravity = standard_gravity;
    return spin;
}

struct Truth {
    double journal, windage;
};

int slowing(double, const double y[], double out[], void* parameters) {
    const auto& truth = *static_cast<const Truth*>(parameters);
    out[0] =
        -(truth.journal * mass * standard_gravity * bore + truth.windage * std::pow(y[0], 1.5)) / inertia;
    return GSL_SUCCESS;
}

/// Referee: GSL's RK8 along the readings.
Eigen::VectorXd referee(const Eigen::VectorXd& time, double first, Truth truth) {
    gsl_odeiv2_system system{&slowing, nullptr, 1, &truth};
    gsl_odeiv2_driver* driver =
        gsl_odeiv2_driver_alloc_y_new(&system, gsl_odeiv2_step_rk8pd, 1e-3, 1e-10, 1e-12);
    double y = first, t = 0;
    Eigen::VectorXd speed(time.size());
    for (Eigen::Index i = 0; i < time.size(); ++i) {
        if (time[i] > t) gsl_odeiv2_driver_apply(driver, &t, time[i], &y);
        speed[i] = y;
    }
    gsl_odeiv2_driver_free(driver);
    return speed;
}

} // namespace

TEST_CASE("a curve without scatter gives the friction that made it") {
    for (double journal : {0.05, 0.1, 0.2})
        for (double windage : {0.0, 4.7e-10}) {
            SpinDown spin = wheel_on_axle(windage);
            const double stops = 300 * inertia / (journal * mass * standard_gravity * bore);
            spin.time *= 0.6 * stops / 12;
            spin.speed = referee(spin.time, 300, {journal, windage});
            const SpinDownFit fit = fit_spin_down(spin);
            CAPTURE(journal, windage);
            CHECK(fit.journal.value == Approx(journal).epsilon(1e-6));
            CHECK(fit.first_speed == Approx(300).epsilon(1e-8));
        }
}

TEST_CASE("without windage the fit is the straight line of least squares") {
    SpinDown spin = wheel_on_axle(0);
    std::mt19937_64 random(4);
    std::normal_distribution<double> normal;
    spin.speed = referee(spin.time, 300, {0.1, 0});
    for (double& speed : spin.speed)
        speed += 2 * normal(random);
    const SpinDownFit fit = fit_spin_down(spin);
    const LineFit line = fit_line(spin.time, spin.speed);
    CHECK(fit.deceleration == Approx(-line.slope).epsilon(1e-11));
    CHECK(fit.first_speed == Approx(line.at_origin).epsilon(1e-12));
    CHECK(fit.scatter == Approx(line.scatter).epsilon(1e-10));
    const double per_deceleration = inertia / (mass * standard_gravity * bore);
    CHECK(std::abs(fit.journal.contributions[0]) ==
          Approx(line.slope_sigma * per_deceleration).epsilon(1e-9));
    // By hand: relative shares of inertia, mass and bore.
    CHECK(fit.journal.contributions[1] == Approx(fit.journal.value * 0.01 / 3.2).epsilon(1e-6));
    CHECK(std::abs(fit.journal.contributions[2]) == Approx(fit.journal.value * 0.01 / 2.6).epsilon(1e-4));
    CHECK(std::abs(fit.journal.contributions[3]) == Approx(fit.journal.value * 0.01 / 1.14).epsilon(1e-4));
}

TEST_CASE("the interval of a spin-down holds the truth as often as it says") {
    std::mt19937_64 random(9);
    std::normal_distribution<double> normal;
    int held = 0;
    constexpr int curves = 1000;
    for (int i = 0; i < curves; ++i) {
        SpinDown spin = wheel_on_axle(4.7e-10);
        spin.time *= 0.4;
        spin.speed = referee(spin.time, 300, {0.1, 4.7e-10});
        for (double& speed : spin.speed)
            speed += 3 * normal(random);
        // What the bench believes of inertia, mass and bore misses too.
        spin.inertia.value += spin.inertia.sigma * normal(random);
        spin.mass.value += spin.mass.sigma * normal(random);
        spin.bore_radius.value += spin.bore_radius.sigma * normal(random);
        spin.windage.value += spin.windage.sigma * normal(random);
        const SpinDownFit fit = fit_spin_down(spin);
        held += std::abs(fit.journal.value - 0.1) < fit.journal.expanded(0.95);
    }
    CHECK(held > 0.93 * curves);
    CHECK(held < 0.97 * curves);
}

TEST_CASE("readings that are no spin-down are refused") {
    SpinDown spin = wheel_on_axle(0);
    spin.speed = Eigen::VectorXd::LinSpaced(25, 100, 200);
    CHECK_THROWS_AS(fit_spin_down(spin), Problem);
    spin.time.setZero();
    CHECK_THROWS_AS(fit_spin_down(spin), Problem);
    spin.time.resize(2);
    CHECK_THROWS_AS(fit_spin_down(spin), Problem);
}
