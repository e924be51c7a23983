#include <catch2/catch.hpp>

#include <heat/heat_cars.hpp>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// Height of the centre of mass above the level, with the nose's foot on the start line of a straight ramp.
double start_height(const Track& track, const HeatCar& car) {
    const double slope = -track.slope(track.start_line());
    return track.start_height() + (car.nose.x() - car.centre.x()) * std::sin(slope) +
           car.centre.y() * std::cos(slope);
}

} // namespace

// Energy alone: m g (drop of the centre of mass) = 1/2 (m + sum I/R²) v² where the car ends on the level. The
// drop follows from the surface and the standing car, without any path between.
TEST_CASE("Without losses the finish speed follows from energy alone") {
    Draw draw(1);
    for (int n = 0; n < 300; ++n) {
        const TrackPlan plan = draw_track(draw);
        PlainCar plain = draw_car(draw);
        std::array<double, 4> spin{};
        for (Corner corner : all_corners)
            spin[std::size_t(corner)] = plain.wheel(corner).spin_inertia;
        make_lossless(plain);
        if (n % 2 == 0) // half of them with the wheels' spin
            for (Corner corner : all_corners)
                if (Wheel& wheel = plain.wheel(corner); wheel.touches) {
                    wheel.spin_inertia = spin[std::size_t(corner)];
                    plain.on_wheels.inertia(1, 1) += wheel.spin_inertia;
                }
        const Track track(plan);
        const HeatCar car = plain.prepared(track.gravity());
        const HeatResult heat = run_heat(Course(track, car), car);
        REQUIRE(heat.finished);
        const double drop = start_height(track, car) - car.centre.y();
        const double mass = car.mass + car.rear.spin_mass + car.front.spin_mass;
        INFO("draw " << n);
        CHECK(heat.finish_speed ==
              Approx(std::sqrt(2 * car.mass * track.gravity() * drop / mass)).epsilon(1e-9));
        CHECK(heat.budget.released == Approx(car.mass * track.gravity() * drop).epsilon(1e-11));
    }
}

namespace {

/// The lossless reference car on its own way, with u = (speed of the chosen coordinate)² integrated along
/// that coordinate by the fourth-order Runge-Kutta rule from d(M u)/dq = -2 V' + M' u: the motion of one
/// coordinate with an inertia M(q) and a potential V(q). Here the coordinate is the arc length under the rear
/// wheel's contact.
struct ByContact {
    const Track& track;
    const HeatCar& car;
    const Course& course;
    bool keeps_contact_speed; ///< across the joints, which is wrong: the centre's speed is what is kept

    double finish_speed() const {
        double u = 0; // of the contact's arc length
        double stretch_before = 1;
        for (const Course::Stretch& part : course.stretches()) {
            const SurfacePiece& piece = track.pieces()[part.rear_piece];
            const double stretch =
                1 - car.rear.radius * piece.curvature(); // centre's path over the contact's
            if (!keeps_contact_speed) u *= (stretch_before / stretch) * (stretch_before / stretch);
            stretch_before = stretch;
            constexpr int steps = 400;
            const double h = (part.to - part.from) / stretch / steps;
            for (int n = 0; n < steps; ++n) {
                const double s = n * h;
                const double k1 = rate(part, stretch, s, u);
                const double k2 = rate(part, stretch, s + h / 2, u + h / 2 * k1);
                const double k3 = rate(part, stretch, s + h / 2, u + h / 2 * k2);
                const double k4 = rate(part, stretch, s + h, u + h * k3);
                u += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            }
        }
        return std::sqrt(u);
    }

private:
    struct Terms {
        double inertia, potential;
    };
    /// Twice the kinetic energy per u, and the potential, at a place of the contact from the part's
    /// beginning.
    Terms terms(const Course::Stretch& part, double stretch, double s) const {
        const double q = part.from + s * stretch;
        const Pose pose =
            course.axles().pose(part.rear_piece, part.front_piece, q, part.front_q + s * stretch);
        const std::complex<double> arm = pose.along * in_axle_frame(car, car.centre);
        const std::complex<double> velocity =
            pose.rear.tangent + pose.pitch_rate * std::complex<double>(-arm.imag(), arm.real());
        const double m =
            car.mass * std::norm(velocity) + car.pitch_inertia * pose.pitch_rate * pose.pitch_rate;
        return {m * stretch * stretch, car.mass * course.gravity() * (pose.rear.at + arm).imag()};
    }
    double rate(const Course::Stretch& part, double stretch, double s, double u) const {
        constexpr double d = 1e-4;
        const Terms now = terms(part, stretch, s), before = terms(part, stretch, s - d),
                    after = terms(part, stretch, s + d);
        return (-(after.potential - before.potential) / d - (after.inertia - before.inertia) / (2 * d) * u) /
               now.inertia;
    }
};

} // namespace

// The contact point's speed jumps where curvature jumps; the wheel centre's does not. An integration of the
// contact's arc length that misses the jump loses (R/r) of the energy where the wheel enters the arc and
// gains as much of the greater energy where it leaves: in all 1/(1 - R/r)² - 1 of what is released between.
// For a car that is short against the arc that is 0.24 % on the reference track, a figure of the
// implementations that gave its times.
TEST_CASE("Energy is kept where curvature jumps") {
    const Track track(reference_track());
    PlainCar plain = reference_car();
    make_lossless(plain);
    double expected = 0.0024, margin = 0.00005;
    SECTION("a short car") {
        plain.on_wheels.wheelbase = 1e-3;
        plain.on_wheels.centre = {0.5e-3, 0, 0};
        plain.on_wheels.nose = {0.5e-3, 0};
    }
    SECTION("the reference car") {
        const HeatCar car = plain.prepared();
        const Course course(track, car);
        const auto height = [&](double q) {
            const Pose pose = course.axles().pose(q);
            return (pose.rear.at + pose.along * in_axle_frame(car, car.centre)).imag();
        };
        const double top = height(course.start()), bottom = height(course.finish());
        const double entry = height(course.axles().rear().start(2)); // of the rear axle into the arc
        const double shrink = 1 - car.rear.radius / 1.2;
        expected = (1 / (shrink * shrink) - 1) * (entry - bottom) / (top - bottom);
        margin = 1e-6;
        CHECK(expected > 0.002);
    }
    const HeatCar car = plain.prepared();
    const Course course(track, car);
    const double drop = start_height(track, car) - car.centre.y();
    const double from_energy = std::sqrt(2 * track.gravity() * drop);
    const auto energy_error = [&](double speed) { return speed * speed / (from_energy * from_energy) - 1; };
    // The formulation that forgets the jump fails, and fails by that much ...
    CHECK(energy_error(ByContact{track, car, course, true}.finish_speed()) ==
          Approx(expected).margin(margin));
    // ... the same integration with the jump put in does not (1e-6: its differences and steps) ...
    CHECK(std::abs(energy_error(ByContact{track, car, course, false}.finish_speed())) < 1e-6);
    // ... and the program, which works on the centre's path, has nothing to put in.
    CHECK(std::abs(energy_error(run_heat(course, car).finish_speed)) < 1e-9);
}

TEST_CASE("The books close on a thousand drawn cars and tracks") {
    Draw draw(2);
    int unfinished = 0;
    for (int n = 0; n < 1000; ++n) {
        TrackPlan plan = draw_track(draw);
        if (n % 50 == 0) plan = measured(plan, 0.08, 0.1e-3, unsigned(n));
        const PlainCar plain = draw_car(draw);
        const HeatResult heat = run(plan, plain);
        unfinished += !heat.finished;
        INFO("draw " << n);
        CHECK(std::abs(heat.residual) < 1e-9);
        const Budget& b = heat.budget;
        CHECK(b.rail.has_value());
        CHECK(std::min({b.journal, b.hub, b.rolling, b.scrub, b.air, *b.rail}) >= 0);
        // A wheel's books add up to the axles'.
        WheelBudget sum;
        for (const WheelBudget& wheel : heat.by_wheel) {
            sum.spin += wheel.spin;
            sum.journal += wheel.journal;
            sum.hub += wheel.hub;
            sum.rolling += wheel.rolling;
            sum.scrub += wheel.scrub;
        }
        const double scale = 1e-12 * b.released;
        CHECK(sum.spin == Approx(b.spin).margin(scale));
        CHECK(sum.journal == Approx(b.journal).margin(scale));
        CHECK(sum.hub == Approx(b.hub).margin(scale));
        CHECK(sum.rolling == Approx(b.rolling).margin(scale));
        CHECK(sum.scrub == Approx(b.scrub).margin(scale));
    }
    CHECK(unfinished < 50);
}

// Gauss collocation of two nodes is of order four (Hairer, Norsett, Wanner, Solving Ordinary Differential
// Equations I, II.7): halving the parts divides the residual by sixteen. Were an entry a remainder, it would
// not grow at all.
TEST_CASE("Loosening the integrator opens the books at its own order") {
    const auto residual = [](int parts) {
        const HeatOptions loose{.tolerance = 1, .nodes = 2, .parts = parts};
        return std::abs(run(reference_track(), reference_car(), HeatDetail::books, loose).residual);
    };
    CHECK(residual(1) > 1e-6);
    for (int parts : {2, 4, 8}) {
        INFO("parts " << parts);
        CHECK(std::log2(residual(parts) / residual(2 * parts)) == Approx(4).margin(0.5));
    }
    const HeatOptions usual{};
    CHECK(std::abs(run(reference_track(), reference_car(), HeatDetail::books, usual).residual) < 1e-9);
}

TEST_CASE("The books notice an entry that is missing") {
    const HeatOptions dropped{.drop_journal_from_books = true};
    const HeatResult whole = run(reference_track(), reference_car());
    const HeatResult lacking = run(reference_track(), reference_car(), HeatDetail::books, dropped);
    CHECK(lacking.residual == Approx(whole.budget.journal / whole.budget.released).epsilon(1e-9));
    CHECK(lacking.residual > 0.05);
    CHECK(lacking.time == whole.time);
}
