#include "motion.hpp"

#include <cmath>

namespace rampwright {

namespace {

double dot(std::complex<double> a, std::complex<double> b) {
    return a.real() * b.real() + a.imag() * b.imag();
}
double cross(std::complex<double> a, std::complex<double> b) {
    return a.real() * b.imag() - a.imag() * b.real();
}
std::complex<double> turned_left(std::complex<double> a) {
    return {-a.imag(), a.real()};
}
/// Without the standard's care for infinities, which costs a branch.
std::complex<double> times(std::complex<double> a, std::complex<double> b) {
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

} // namespace

MotionAt::Contact MotionAt::contact(const HeatAxle& axle, const CentrePath::Point& at, double rate,
                                    double rate_rate, std::complex<double> centre, double gravity) {
    Contact c;
    c.rate = rate;
    c.rate_rate = rate_rate;
    c.tangent = at.tangent;
    c.normal = turned_left(at.tangent);
    const std::complex<double> arm = at.at - axle.radius * c.normal - centre;
    c.normal_moment = cross(arm, c.normal);
    c.tangent_moment = cross(arm, c.tangent);
    c.cosine_weight = gravity * at.tangent.real();
    c.curvature_weight = at.curvature * rate * rate;
    c.rate15 = rate == 1 ? 1 : rate * std::sqrt(rate);
    c.windage = axle.windage * c.rate15;
    return c;
}

MotionAt::Setting::Setting(const HeatCar& heat_car, double acceleration_of_gravity)
    : car(&heat_car), gravity(acceleration_of_gravity), centre(in_axle_frame(heat_car, heat_car.centre)) {
    const std::complex<double> line(car->wheelbase, car->front.radius - car->rear.radius);
    forward = std::conj(line) / std::abs(line);
}

MotionAt::MotionAt(const Setting& setting, const Pose& pose)
    : car_(setting.car),
      pitch_rate_(pose.pitch_rate),
      pitch_rate_rate_(pose.pitch_rate_rate),
      gravity_(setting.gravity) {
    const HeatCar& car = *car_;
    const double gravity = gravity_;
    const std::complex<double> arm = times(pose.along, setting.centre);
    const std::complex<double> at = pose.rear.at + arm;
    centre_first_ = pose.rear.tangent + pitch_rate_ * turned_left(arm);
    centre_second_ = pose.rear.curvature * turned_left(pose.rear.tangent) +
                     pitch_rate_rate_ * turned_left(arm) - pitch_rate_ * pitch_rate_ * arm;
    height_ = at.imag();
    rear_ = contact(car.rear, pose.rear, 1, 0, at, gravity);
    front_ = contact(car.front, pose.front, pose.front_rate, pose.front_rate_rate, at, gravity);

    body_axis_ = times(pose.along, setting.forward);
    centre_rate_ = std::sqrt(dot(centre_first_, centre_first_));
    drag_ = 0.5 * car.air_density * car.air_area * centre_rate_ * centre_rate_;
    drag_offset_ = car.drag_height - car.centre.y();
    usual_ = solve_linear({}, {});
}

MotionAt::Solution MotionAt::solve_linear(Acting rear, Acting front) const {
    const HeatCar& car = *car_;
    // Unknowns q'', N_r, N_f; rows: forces along X and Z, moment about the centre of mass, nose-up positive.
    double column[3][3];
    double right[4][3] = {};
    std::complex<double> force = car.mass * centre_first_;
    double moment = car.pitch_inertia * pitch_rate_;
    std::complex<double> constant(0, -car.mass * gravity_),
        by_w = -car.mass * centre_second_ - drag_ * body_axis_;
    std::complex<double> by_34 = 0;
    double moment_constant = 0, moment_w = -car.pitch_inertia * pitch_rate_rate_ + drag_ * drag_offset_,
           moment_34 = 0;

    auto add = [&](const HeatAxle& axle, const Contact& c, Acting acting, double* load_column) {
        force += axle.spin_mass * c.rate * c.tangent;
        moment += axle.spin_mass * c.rate * (c.tangent_moment - axle.radius);
        const double rolling = acting.treads ? axle.rolling : 0;
        const double resistance =
            (acting.bearings ? axle.journal + axle.hub : 0) + (acting.treads ? axle.scrub : 0) + rolling;
        const std::complex<double> per_load = c.normal - resistance * c.tangent;
        load_column[0] = -per_load.real();
        load_column[1] = -per_load.imag();
        load_column[2] = -(c.normal_moment - resistance * c.tangent_moment + rolling * axle.radius);
        // The wheel's own weight does not press on its bearing.
        const double lightened = acting.bearings ? axle.journal_wheel + axle.hub_wheel : 0;
        constant += lightened * c.cosine_weight * c.tangent;
        moment_constant += lightened * c.cosine_weight * c.tangent_moment;
        const double w_force = lightened * c.curvature_weight - axle.spin_mass * c.rate_rate;
        by_w += w_force * c.tangent;
        moment_w += w_force * c.tangent_moment + axle.spin_mass * axle.radius * c.rate_rate;
        by_34 -= c.windage * c.tangent;
        moment_34 += c.windage * (axle.radius - c.tangent_moment);
    };
    add(car.rear, rear_, rear, column[1]);
    add(car.front, front_, front, column[2]);
    column[0][0] = force.real();
    column[0][1] = force.imag();
    column[0][2] = moment;
    const auto fill = [](double* row, std::complex<double> f, double m) {
        row[0] = f.real();
        row[1] = f.imag();
        row[2] = m;
    };
    fill(right[0], constant, moment_constant);
    fill(right[1], by_w, moment_w);
    fill(right[2], by_34, moment_34);
    fill(right[3], -front_.tangent, -front_.tangent_moment);

    // Cramer's rule, with the three cross products that every right-hand side shares.
    const auto crossed = [](const double* a, const double* b) {
        return std::array{a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    };
    const auto times_row = [](const std::array<double, 3>& a, const double* b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    };
    const auto for_acceleration = crossed(column[1], column[2]);
    const auto for_rear = crossed(column[2], column[0]);
    const auto for_front = crossed(column[0], column[1]);
    const double scale = 1 / times_row(for_acceleration, column[0]);
    Solution solution;
    for (int n = 0; n < 4; ++n) {
        solution.acceleration[n] = times_row(for_acceleration, right[n]) * scale;
        solution.rear[n] = times_row(for_rear, right[n]) * scale;
        solution.front[n] = times_row(for_front, right[n]) * scale;
    }
    return solution;
}

MotionAt::State MotionAt::solve(double w) const {
    State state;
    const double speed_squared = w > 0 ? w : 0;
    const double speed = std::sqrt(speed_squared);
    state.power34 = speed * std::sqrt(speed);
    state.guide_force = car_->guide.rail && w > 0 ? car_->guide.force(speed * front_.rate) : 0;
    const auto fill = [&](const Solution& s) {
        const auto sum = [&](const double* c) {
            return c[0] + c[1] * speed_squared + c[2] * state.power34 + c[3] * state.guide_force;
        };
        state.acceleration = sum(s.acceleration);
        state.rear_load = sum(s.rear);
        state.front_load = sum(s.front);
    };
    fill(usual_);
    // An axle that would have to be pulled down rubs on nothing; the heat runs on as if it were held.
    // With its friction gone the other axle may change too: a few rounds settle it.
    for (int round = 0; round < 4; ++round) {
        const auto acts = [&](const HeatAxle& axle, const Contact& c, double load) {
            return Acting{load > axle.wheel_mass * (c.cosine_weight + c.curvature_weight * speed_squared),
                          load > 0};
        };
        const Acting rear = acts(car_->rear, rear_, state.rear_load);
        const Acting front = acts(car_->front, front_, state.front_load);
        if (rear == state.rear && front == state.front) break;
        state.rear = rear;
        state.front = front;
        fill(rear == Acting{} && front == Acting{} ? usual_ : solve_linear(rear, front));
    }
    return state;
}

MotionAt::AxleFlow MotionAt::axle_flow(const HeatAxle& axle, const Contact& c, double load, Acting acting,
                                       double w, double power34) const {
    AxleFlow flow;
    const double relative = c.rate + axle.radius * pitch_rate_;
    flow.windage = c.rate15 * power34 * c.rate;
    if (acting.treads) {
        flow.load = load * c.rate;
        flow.tread_relative = load * relative;
    }
    if (acting.bearings) {
        flow.load_relative = load * relative;
        flow.weight_relative = (c.cosine_weight + c.curvature_weight * w) * relative;
    }
    return flow;
}

MotionAt::Flow MotionAt::flow(const State& state, double w) const {
    Flow flow;
    flow.rear = axle_flow(car_->rear, rear_, state.rear_load, state.rear, w, state.power34);
    flow.front = axle_flow(car_->front, front_, state.front_load, state.front, w, state.power34);
    flow.rail = state.guide_force * (front_.rate + car_->front.radius * pitch_rate_);
    flow.drag = drag_ * w * (dot(body_axis_, centre_first_) - drag_offset_ * pitch_rate_);
    return flow;
}

} // namespace rampwright
