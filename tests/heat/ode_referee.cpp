#include <Eigen/Geometry>
#include <Eigen/LU>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_integration.h>
#include <gsl/gsl_odeiv2.h>

#include <algorithm>
#include <functional>
#include <heat/ode_referee.hpp>
#include <memory>
#include <stdexcept>

namespace rampwright::test {

namespace {

Vec2 left(const Vec2& a) {
    return {-a.y(), a.x()};
}
double cross(const Vec2& a, const Vec2& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// The surface from its slope: psi = psi0 + k s + c s²/2 on each part; X and Z are the integrals of its
/// cosine and sine, by 20-point Gauss-Legendre quadrature over at most a quarter of a radian.
class Surface {
public:
    struct Part {
        double from, slope, curvature, rate;
        Vec2 at;
    };
    struct Place {
        Vec2 at, tangent;
        double curvature, curvature_rate;
    };

    explicit Surface(const TrackPlan& plan) {
        gauss_.reset(gsl_integration_glfixed_table_alloc(20));
        parts_.push_back(
            {-1, plan.first_slope, 0, 0, -Vec2(std::cos(plan.first_slope), std::sin(plan.first_slope))});
        double s = 0;
        const auto add = [&](double length, double k, double k_end) {
            if (length <= 0) return;
            const Place start = place(parts_.size() - 1, s);
            parts_.push_back({s, slope(parts_.size() - 1, s), k, (k_end - k) / length, start.at});
            s += length;
        };
        for (const TrackPiece& piece : plan.pieces) {
            if (const auto* straight = std::get_if<Straight>(&piece)) {
                add(straight->length, 0, 0);
                continue;
            }
            const Arc& arc = std::get<Arc>(piece);
            const double k = std::copysign(1 / arc.radius, arc.turn);
            add(arc.easing, 0, k);
            add(std::abs(arc.turn) * arc.radius - arc.easing, k, k);
            add(arc.easing, k, 0);
        }
        add(1, 0, 0);
    }

    const std::vector<Part>& parts() const { return parts_; }
    std::size_t find(double s) const {
        std::size_t n = 0;
        while (n + 1 < parts_.size() && parts_[n + 1].from <= s)
            ++n;
        return n;
    }
    double slope(std::size_t n, double s) const {
        const Part& part = parts_[n];
        const double d = s - part.from;
        return part.slope + part.curvature * d + part.rate * d * d / 2;
    }
    /// On a part, continued beyond its ends.
    Place place(std::size_t n, double s) const {
        const Part& part = parts_[n];
        const double d = s - part.from;
        Vec2 at = part.at;
        if (part.curvature == 0 && part.rate == 0) { // straight
            const Vec2 tangent(std::cos(part.slope), std::sin(part.slope));
            return {at + d * tangent, tangent, 0, 0};
        }
        const int cuts = 1 + int(std::abs(slope(n, s) - part.slope) * 4);
        for (int cut = 0; cut < cuts; ++cut)
            for (std::size_t i = 0; i < 20; ++i) {
                double x = 0, weight = 0;
                gsl_integration_glfixed_point(part.from + d * cut / cuts, part.from + d * (cut + 1) / cuts, i,
                                              &x, &weight, gauss_.get());
                at += weight * Vec2(std::cos(slope(n, x)), std::sin(slope(n, x)));
            }
        const double psi = slope(n, s);
        return {at, {std::cos(psi), std::sin(psi)}, part.curvature + part.rate * d, part.rate};
    }

private:
    struct Free {
        void operator()(gsl_integration_glfixed_table* table) const {
            gsl_integration_glfixed_table_free(table);
        }
    };
    std::unique_ptr<gsl_integration_glfixed_table, Free> gauss_;
    std::vector<Part> parts_;
};

/// A wheel centre above its contact.
struct Centre {
    Vec2 at, tangent, normal;
    double curvature; ///< of the centre's path
    double stretch;   ///< centre's path over surface, 1 - R k
};
Centre centre(const Surface::Place& place, double radius) {
    const Vec2 normal = left(place.tangent);
    const double stretch = 1 - radius * place.curvature;
    return {place.at + radius * normal, place.tangent, normal, place.curvature / stretch, stretch};
}

class Referee {
public:
    Referee(const TrackPlan& plan, const PlainCar& car) : surface_(plan), plan_(plan), car_(car) {
        const CarOnWheels& c = car.on_wheels;
        distance_ = std::hypot(c.wheelbase, c.front_radius - c.rear_radius);
        tilt_ = std::atan2(c.front_radius - c.rear_radius, c.wheelbase);
        pitch_inertia_ = c.inertia(1, 1);
        const Standing level = car.standing(plan.gravity);
        for (Corner corner : all_corners) {
            const Wheel& wheel = c.wheels[std::size_t(corner)];
            if (!wheel.touches) continue;
            pitch_inertia_ -= wheel.spin_inertia;
            const double axle = is_front(corner) ? level.front : level.rear;
            share_[std::size_t(corner)] = *level.loads[std::size_t(corner)] / axle;
        }
    }

    RefereeHeat run(double tolerance);

private:
    struct Situation {
        Centre rear, front;
        Vec2 line, axis, mass, nose; ///< axle to axle; the body's forward direction; centre of mass; nose
    };
    /// With the axles on these parts; the front contact by Newton's method on the distance.
    Situation situation(std::size_t rear_part, std::size_t front_part, double s) const {
        const CarOnWheels& c = car_.on_wheels;
        Situation now;
        now.rear = centre(surface_.place(rear_part, s), c.rear_radius);
        double ahead = s + distance_;
        for (int n = 0; n < 50; ++n) {
            now.front = centre(surface_.place(front_part, ahead), c.front_radius);
            now.line = now.front.at - now.rear.at;
            const double step = (now.line.norm() - distance_) * distance_ /
                                (now.line.dot(now.front.tangent) * now.front.stretch);
            ahead -= step;
            if (std::abs(step) < 1e-15) break;
        }
        front_contact_ = ahead;
        now.axis = Eigen::Rotation2Dd(-tilt_) * now.line / distance_;
        const auto place = [&](double x, double z) -> Vec2 {
            return now.rear.at + x * now.axis + (z - c.rear_radius) * left(now.axis);
        };
        now.mass = place(c.centre.x(), c.centre.z());
        now.nose = place(c.nose.x(), c.nose.y());
        return now;
    }
    Situation situation(double s) const {
        const std::size_t rear_part = surface_.find(s);
        for (std::size_t n = rear_part;; ++n) {
            const Situation now = situation(rear_part, n, s);
            if (surface_.find(front_contact_) == n || n + 1 == surface_.parts().size()) return now;
        }
    }
    double solve(const std::function<double(double)>& f, double guess) const {
        double a = guess, fa = f(a), b = guess + 1e-3;
        for (int n = 0; n < 100 && std::abs(b - a) > 1e-15; ++n) {
            const double fb = f(b);
            if (fb == fa) break;
            const double next = b - fb * (b - a) / (fb - fa);
            a = b;
            fa = fb;
            b = next;
        }
        return b;
    }
    /// Rear contact with the nose's foot on the line.
    double on_line(double line) const {
        const Surface::Place at = surface_.place(surface_.find(line), line);
        return solve([&](double s) { return (situation(s).nose - at.at).dot(at.tangent); },
                     line - car_.on_wheels.nose.x());
    }
    double acceleration(double s, double v) const;

    Surface surface_;
    const TrackPlan& plan_;
    const PlainCar& car_;
    double distance_ = 0, tilt_ = 0, pitch_inertia_ = 0;
    std::array<double, 4> share_{};
    std::size_t rear_part_ = 0, front_part_ = 0;
    mutable double front_contact_ = 0, stretch_ = 1, mass_speed_ = 0;
    mutable bool lifted_ = false;

public:
    int in_time(const double* y, double* rate) const {
        const double a = acceleration(y[0], y[1]);
        rate[0] = y[1] / stretch_;
        rate[1] = a;
        return GSL_SUCCESS;
    }
    int in_place(double s, const double* y, double* rate) const { // y: time and speed
        const double a = acceleration(s, y[1]);
        rate[0] = stretch_ / y[1];
        rate[1] = a * stretch_ / y[1];
        return GSL_SUCCESS;
    }
};

/// dv/dt of the rear centre.
double Referee::acceleration(double s, double v) const {
    const CarOnWheels& c = car_.on_wheels;
    const Situation now = situation(rear_part_, front_part_, s);
    stretch_ = now.rear.stretch;

    // Velocities: rear + pitch x line = front.
    Eigen::Matrix2d velocities;
    velocities << left(now.line), -now.front.tangent;
    const Vec2 pitch_and_front = velocities.fullPivLu().solve(-v * now.rear.tangent);
    const double pitch = pitch_and_front[0], v_front = pitch_and_front[1];
    const Vec2 arm = now.mass - now.rear.at;
    const Vec2 mass_velocity = v * now.rear.tangent + pitch * left(arm);
    mass_speed_ = mass_velocity.norm();

    // Unknowns: dv_r, dv_f, pitch acceleration, N_r, N_f. Rows: closure X, Z; force X, Z; moment about the
    // mass.
    Eigen::Matrix<double, 5, 5> a = Eigen::Matrix<double, 5, 5>::Zero();
    Eigen::Matrix<double, 5, 1> b = Eigen::Matrix<double, 5, 1>::Zero();
    const Vec2 rear_turning = now.rear.curvature * v * v * now.rear.normal;
    const Vec2 front_turning = now.front.curvature * v_front * v_front * now.front.normal;
    a.block<2, 1>(0, 0) = now.rear.tangent;
    a.block<2, 1>(0, 1) = -now.front.tangent;
    a.block<2, 1>(0, 2) = left(now.line);
    b.head<2>() = front_turning - rear_turning + pitch * pitch * now.line;

    a.block<2, 1>(2, 0) = c.mass * now.rear.tangent;
    a.block<2, 1>(2, 2) = c.mass * left(arm);
    b.segment<2>(2) = c.mass * (pitch * pitch * arm - rear_turning) + Vec2(0, -c.mass * plan_.gravity);
    a(4, 2) = pitch_inertia_;

    const double drag = 0.5 * car_.air_density * c.air_area * mass_speed_ * mass_speed_;
    b.segment<2>(2) -= drag * now.axis;
    b[4] += drag * (c.drag_height - c.centre.z());

    for (Corner corner : all_corners) {
        const Wheel& wheel = c.wheels[std::size_t(corner)];
        if (!wheel.touches) continue;
        const bool front = is_front(corner);
        const WheelLoss& loss = car_.losses[std::size_t(corner)];
        const Centre& at = front ? now.front : now.rear;
        const double speed = front ? v_front : v, radius = front ? c.front_radius : c.rear_radius;
        const int rate_column = front ? 1 : 0, load_column = front ? 4 : 3;
        const Vec2 contact = at.at - radius * at.normal - now.mass;
        const double share = share_[std::size_t(corner)];
        // The load on the tread.
        a.block<2, 1>(2, load_column) -= share * at.normal;
        a(4, load_column) -= share * cross(contact, at.normal);
        // Spin: I dOmega/dt = I (-dv/R) is made by the tread.
        const double spin = wheel.spin_inertia / (radius * radius);
        a.block<2, 1>(2, rate_column) += spin * at.tangent;
        a(4, rate_column) += spin * cross(contact, at.tangent) - spin * radius;
        // Torques against the spin, as forces -t at the tread: bearing and hub (per bearing load), rolling,
        // scrub.
        const double bearing = (loss.journal_arm + loss.hub_arm) / radius;
        const double own_weight =
            wheel.mass * (plan_.gravity * at.tangent.x() + at.curvature * speed * speed);
        const double per_load = share * (bearing + loss.rolling + loss.scrub);
        a.block<2, 1>(2, load_column) += per_load * at.tangent;
        a(4, load_column) += per_load * cross(contact, at.tangent) - share * loss.rolling * radius;
        b.segment<2>(2) += bearing * own_weight * at.tangent;
        b[4] += bearing * own_weight * cross(contact, at.tangent);
        // The air's torque on the wheel comes from outside: it turns the car as well.
        const double torque = loss.windage * std::pow(speed / radius, 1.5);
        b.segment<2>(2) -= torque / radius * at.tangent;
        b[4] += torque - torque / radius * cross(contact, at.tangent);
    }
    if (car_.guide.rail) {
        const double force = car_.guide.force(v_front);
        const Vec2 contact = now.front.at - c.front_radius * now.front.normal - now.mass;
        b.segment<2>(2) -= force * now.front.tangent;
        b[4] -= force * cross(contact, now.front.tangent);
    }
    const Eigen::Matrix<double, 5, 1> x = a.partialPivLu().solve(b);
    lifted_ |= x[3] < 0 || x[4] < 0;
    return x[0];
}

RefereeHeat Referee::run(double tolerance) {
    const double start = on_line(plan_.start_line), finish = on_line(plan_.finish_line);
    // Where either axle passes a joint, as a place of the rear contact.
    std::vector<double> joints{finish};
    for (const Surface::Part& part : surface_.parts()) {
        joints.push_back(part.from);
        const std::size_t n = surface_.find(part.from);
        const Centre joint = centre(surface_.place(n, part.from), car_.on_wheels.front_radius);
        joints.push_back(solve(
            [&](double s) {
                return (joint.at - centre(surface_.place(surface_.find(s), s), car_.on_wheels.rear_radius).at)
                           .norm() -
                       distance_;
            },
            part.from - distance_));
    }
    std::sort(joints.begin(), joints.end());

    double y[2] = {start, 0}, time = 0;
    const auto time_rhs = [](double, const double* state, double* rate, void* self) {
        return static_cast<const Referee*>(self)->in_time(state, rate);
    };
    const auto place_rhs = [](double s, const double* state, double* rate, void* self) {
        return static_cast<const Referee*>(self)->in_place(s, state, rate);
    };
    for (double joint : joints) {
        if (joint <= y[0] + 1e-13 || joint > finish) continue;
        const double middle = 0.5 * (y[0] + joint);
        rear_part_ = surface_.find(middle);
        situation(middle);
        front_part_ = surface_.find(front_contact_);
        // Steps in time until the joint is passed, on the parts continued; then back to it with the place as
        // the independent variable (Henon's way of stopping at a surface).
        gsl_odeiv2_system system{time_rhs, nullptr, 2, this};
        gsl_odeiv2_step* step = gsl_odeiv2_step_alloc(gsl_odeiv2_step_rk8pd, 2);
        gsl_odeiv2_control* control = gsl_odeiv2_control_y_new(tolerance, tolerance);
        gsl_odeiv2_evolve* evolve = gsl_odeiv2_evolve_alloc(2);
        double size = 1e-3;
        while (y[0] < joint) {
            size = std::min(size, 0.01);
            if (gsl_odeiv2_evolve_apply(evolve, control, step, &system, &time, 100, &size, y) != GSL_SUCCESS)
                throw std::runtime_error("the referee's integrator failed");
        }
        gsl_odeiv2_evolve_free(evolve);
        gsl_odeiv2_control_free(control);
        gsl_odeiv2_step_free(step);

        gsl_odeiv2_system by_place{place_rhs, nullptr, 2, this};
        gsl_odeiv2_driver* driver =
            gsl_odeiv2_driver_alloc_y_new(&by_place, gsl_odeiv2_step_rk8pd, -1e-4, tolerance, tolerance);
        double state[2] = {time, y[1]}, s = y[0];
        if (s > joint && gsl_odeiv2_driver_apply(driver, &s, joint, state) != GSL_SUCCESS)
            throw std::runtime_error("the referee's integrator failed at a joint");
        gsl_odeiv2_driver_free(driver);
        time = state[0];
        y[0] = joint;
        y[1] = state[1];
        if (joint == finish) break;
    }
    acceleration(y[0], y[1]);
    return {time, mass_speed_, lifted_};
}

} // namespace

RefereeHeat referee_heat(const TrackPlan& plan, const PlainCar& car, double tolerance) {
    return Referee(plan, car).run(tolerance);
}

} // namespace rampwright::test
