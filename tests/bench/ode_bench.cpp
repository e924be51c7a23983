#include "../../src/heat/motion.hpp"

#include <gsl/gsl_errno.h>
#include <gsl/gsl_odeiv2.h>

#include <bench/bench.hpp>
#include <heat/heat_cars.hpp>
#include <memory>
#include <stdexcept>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// One heat by GSL's odeiv2, given every help the program gives itself: the same equations of motion, the
/// root of the way as variable, one evaluation of the geometry for a straight, a good guess for the front
/// axle, a stop at every joint. State: w = q'^2 and time.
class SuiteHeat {
public:
    SuiteHeat(const Course& course, const HeatCar& car) : course_(course), setting_(car, course.gravity()) {}

    double time(gsl_odeiv2_driver* driver, gsl_odeiv2_system& system) {
        system.params = this;
        double y[2] = {0, 0};
        for (const Course::Stretch& stretch : course_.stretches()) {
            stretch_ = &stretch;
            if (stretch.straight) {
                const Pose pose = course_.axles().pose(stretch.rear_piece, stretch.front_piece, stretch.from,
                                                       stretch.front_q);
                straight_ = std::make_unique<MotionAt>(setting_, pose);
            }
            if (last_front_ == 0) last_front_ = stretch.front_q - stretch.from;
            double root = std::sqrt(stretch.from - course_.start());
            const double to = std::sqrt(stretch.to - course_.start());
            gsl_odeiv2_driver_reset_hstart(driver, 0.1 * (to - root));
            if (gsl_odeiv2_driver_apply(driver, &root, to, y) != GSL_SUCCESS)
                throw std::runtime_error("the suite's integrator failed");
        }
        return y[1];
    }

    static int rates(double root, const double* y, double* rate, void* self) {
        return static_cast<SuiteHeat*>(self)->rates(root, y, rate);
    }

private:
    int rates(double root, const double* y, double* rate) {
        double acceleration = 0;
        if (stretch_->straight) {
            acceleration = straight_->solve(y[0]).acceleration;
        } else {
            const double q = course_.start() + root * root;
            const Pose pose =
                course_.axles().pose(stretch_->rear_piece, stretch_->front_piece, q, q + last_front_);
            last_front_ = pose.front_q - q;
            acceleration = MotionAt(setting_, pose).solve(y[0]).acceleration;
        }
        rate[0] = 4 * acceleration * root;
        // At rest w = 2 a root².
        rate[1] = y[0] > 0 ? 2 * root / std::sqrt(y[0]) : std::sqrt(2 / acceleration);
        return GSL_SUCCESS;
    }

    const Course& course_;
    MotionAt::Setting setting_;
    const Course::Stretch* stretch_ = nullptr;
    std::unique_ptr<MotionAt> straight_;
    double last_front_ = 0; ///< ahead of the rear axle, along the paths
};

struct Driver {
    Driver(const gsl_odeiv2_step_type* method, double tolerance)
        : system{&SuiteHeat::rates, nullptr, 2, nullptr},
          driver(gsl_odeiv2_driver_alloc_y_new(&system, method, 1e-3, tolerance, tolerance)) {}
    ~Driver() { gsl_odeiv2_driver_free(driver); }
    Driver(const Driver&) = delete;
    Driver& operator=(const Driver&) = delete;
    gsl_odeiv2_system system;
    gsl_odeiv2_driver* driver;
};

bench::Result heat_against_suite() {
    gsl_set_error_handler_off();
    const Track track(hall_track());
    Draw draw(21);
    std::vector<HeatCar> cars;
    std::vector<Course> courses;
    std::vector<double> truth;
    while (cars.size() < 100) {
        const HeatCar car = draw_car(draw).prepared(track.gravity());
        const Course course(track, car);
        const HeatResult heat = run_heat(course, car);
        // A wheel that comes off makes the equations less smooth for both; the truth would be in doubt.
        if (heat.lifted_front || heat.lifted_rear) continue;
        cars.push_back(car);
        courses.push_back(course);
        Driver exact(gsl_odeiv2_step_rk8pd, 1e-12);
        truth.push_back(SuiteHeat(courses.back(), cars.back()).time(exact.driver, exact.system));
    }
    const auto mean_error = [&](auto&& time_of) {
        double sum = 0;
        for (std::size_t n = 0; n < cars.size(); ++n)
            sum += std::abs(time_of(n) - truth[n]);
        return sum / double(cars.size());
    };
    const auto seconds_a_heat = [&](auto&& time_of, int rounds) {
        double sum = 0;
        const double seconds = bench::least(3, [&] {
            return bench::core_seconds([&] {
                for (int round = 0; round < rounds; ++round)
                    for (std::size_t n = 0; n < cars.size(); ++n)
                        sum += time_of(n);
            });
        });
        return seconds / rounds / double(cars.size()) + 0 * sum;
    };
    const auto ours = [&](std::size_t n) { return run_heat(courses[n], cars[n], HeatDetail::time).time; };
    const double our_error = mean_error(ours), our_seconds = seconds_a_heat(ours, 20);

    double best = 1e9, best_error = 0;
    std::string text;
    const std::pair<const char*, const gsl_odeiv2_step_type*> methods[] = {
        {"rk8pd", gsl_odeiv2_step_rk8pd},
        {"rkck", gsl_odeiv2_step_rkck},
        {"msadams", gsl_odeiv2_step_msadams}};
    for (const auto& [name, method] : methods)
        // The loosest tolerance whose error is no greater than ours.
        for (double tolerance = 1e-4; tolerance > 1e-13; tolerance /= 2) {
            Driver driver(method, tolerance);
            const auto theirs = [&](std::size_t n) {
                return SuiteHeat(courses[n], cars[n]).time(driver.driver, driver.system);
            };
            const double error = mean_error(theirs);
            if (error > our_error) continue;
            const double seconds = seconds_a_heat(theirs, 2);
            text += std::string(", ") + name + ' ' + bench::digits(seconds * 1e6, 3) + " us";
            if (seconds < best) {
                best = seconds;
                best_error = error;
            }
            break;
        }
    return {best / our_seconds, "times faster",
            "GSL odeiv2 on the same equations, stops at joints, best of three" + text + "; ours " +
                bench::digits(our_seconds * 1e6, 3) + " us; mean error " + bench::digits(our_error * 1e9, 2) +
                " ns, theirs " + bench::digits(best_error * 1e9, 2) + " ns, against rk8pd at 1e-12"};
}

const bench::Registered suite{"heat-vs-ode-suite", heat_against_suite};

} // namespace
