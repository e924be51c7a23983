// What the runner writes down on the way, and the books at the end.
#include "heat/runner.hpp"

#include <algorithm>

namespace rampwright {

namespace {

/// What an axle's contacts take: of the flow at a moment, N along the way; of the flow's integral, J.
struct AxleLosses {
    double journal, hub, rolling, scrub, windage;
};

AxleLosses losses_of(const HeatAxle& axle, const MotionAt::AxleFlow& flow) {
    return {axle.journal * flow.load_relative - axle.journal_wheel * flow.weight_relative,
            axle.hub * flow.load_relative - axle.hub_wheel * flow.weight_relative, axle.rolling * flow.load,
            axle.scrub * flow.tread_relative, axle.windage * flow.windage};
}

} // namespace

void Runner::look(const MotionAt& motion, const MotionAt::State& state, double q, double w, double time) {
    if (state.front_load < least_front_) {
        least_front_ = state.front_load;
        least_front_q_ = q;
    }
    if ((state.front_load < 0 && !result_.lifted_front && !result_.lifted_rear) ||
        (state.rear_load < 0 && !result_.lifted_rear && !result_.lifted_front))
        lift_q_ = q;
    result_.lifted_front |= state.front_load < 0;
    result_.lifted_rear |= state.rear_load < 0;
    const double speed = std::sqrt(std::max(0.0, w));
    top_ = std::max(top_, motion.centre_rate() * motion.centre_rate() * w);
    if (detail_ != HeatDetail::trace) return;
    const MotionAt::Flow flow = motion.flow(state, w);
    HeatPoint point;
    point.q = q;
    point.time = time;
    point.speed = motion.centre_rate() * speed;
    point.rear_load = state.rear_load;
    point.front_load = state.front_load;
    for (const AxleLosses& axle : {losses_of(car_.rear, flow.rear), losses_of(car_.front, flow.front)}) {
        point.power_journal += axle.journal * speed;
        point.power_hub += axle.hub * speed;
        point.power_rolling += axle.rolling * speed;
        point.power_scrub += axle.scrub * speed;
        point.power_air += axle.windage * speed;
    }
    point.power_air += flow.drag * speed;
    point.power_rail = flow.rail * speed;
    result_.trace.push_back(point);
}

void Runner::close_books() {
    const double end = stopped_ ? stopped_at_ : course_.finish();
    const double w = stopped_ ? 0 : std::max(w_, 0.0);
    const Course::Stretch& first = course_.stretches().front();
    auto stretch = std::find_if(course_.stretches().begin(), course_.stretches().end(),
                                [end](const Course::Stretch& s) { return end <= s.to; });
    if (stretch == course_.stretches().end()) --stretch;
    restart(first);
    const MotionAt start = at(first, first.from);
    restart(*stretch);
    const MotionAt finish = at(*stretch, end);

    Budget& books = result_.budget;
    books.released = car_.mass * course_.gravity() * (start.height() - finish.height());
    books.forward = 0.5 * car_.mass * finish.centre_rate() * finish.centre_rate() * w;
    books.pitch = 0.5 * car_.pitch_inertia * finish.pitch_rate() * finish.pitch_rate() * w;
    const double rear_speed2 = w * finish.rear_rate() * finish.rear_rate();
    const double front_speed2 = w * finish.front_rate() * finish.front_rate();
    books.spin = 0.5 * (car_.rear.spin_mass * rear_speed2 + car_.front.spin_mass * front_speed2);
    for (const AxleLosses& axle :
         {losses_of(car_.rear, integrals_.sum.rear), losses_of(car_.front, integrals_.sum.front)}) {
        books.journal += axle.journal;
        books.hub += axle.hub;
        books.rolling += axle.rolling;
        books.scrub += axle.scrub;
        books.air += axle.windage;
    }
    books.air += integrals_.sum.drag;
    if (car_.guide.rail) books.rail = integrals_.sum.rail;
    if (options_.drop_journal_from_books) books.journal = 0;
    result_.residual =
        books.released != 0 ? (books.released - books.kept() - books.lost()) / books.released : 0;

    for (Corner corner : all_corners) {
        const HeatCar::WheelPart& part = car_.parts[std::size_t(corner)];
        if (!part.touches) continue;
        const MotionAt::AxleFlow& f = is_front(corner) ? integrals_.sum.front : integrals_.sum.rear;
        const double radius = is_front(corner) ? car_.front.radius : car_.rear.radius;
        const double bearing = (part.load_share * f.load_relative - part.mass * f.weight_relative) / radius;
        WheelBudget& wheel = result_.by_wheel[std::size_t(corner)];
        wheel.spin = 0.5 * part.spin_mass * (is_front(corner) ? front_speed2 : rear_speed2);
        wheel.journal = part.journal_arm * bearing;
        wheel.hub = part.hub_arm * bearing;
        wheel.rolling = part.rolling * part.load_share * f.load;
        wheel.scrub = part.scrub * part.load_share * f.tread_relative;
        wheel.windage = part.windage * f.windage;
    }
}

void Runner::measure_places() {
    result_.reached = course_.foot(stopped_ ? stopped_at_ : course_.finish());
    result_.smallest_front_load = least_front_;
    result_.smallest_front_load_at = course_.foot(least_front_q_);
    if (result_.lifted_front || result_.lifted_rear) result_.lifted_at = course_.foot(lift_q_);
    for (HeatPoint& point : result_.trace)
        point.at = course_.foot(point.q);
}

} // namespace rampwright
