// What the runner does on a straight.
#include "heat/runner.hpp"

#include <algorithm>

namespace rampwright {

/// A straight by quadrature. The acceleration a depends on the speed v alone, so way and time are the
/// integrals of v/a and 1/a over it, without any iteration but for the speed at the end. Variable: the root
/// of the speed, in which windage and guide are smooth from rest on.
/// @returns false, and nothing done, where the speed does not serve as a variable: the acceleration nearly
///          vanishes or changes its sign, or a load passes zero; or where it is not good enough.
bool Runner::coast(const Course::Stretch& stretch) {
    const MotionAt& motion = nodes_[0];
    const double length = stretch.to - stretch.from;
    const double before = motion.solve(w_).acceleration;
    // The speed at the end, by the mean of both ends' accelerations.
    double end = w_ + 2 * before * length;
    for (int round = 0; round < 2; ++round) {
        if (!(end > 0)) return false;
        const double after = motion.solve(end).acceleration;
        if (!(after * before > 0) || std::abs(after) < 0.25 * std::abs(before) ||
            std::abs(after) > 4 * std::abs(before))
            return false;
        end = w_ + (before + after) * length;
    }
    if (!(end > 0)) return false;
    const double root_from = std::sqrt(std::sqrt(std::max(w_, 0.0))), root_to = std::sqrt(std::sqrt(end));
    cut(root_from, root_to);
    rule_ = &Collocation::rule(options_.nodes > 0                                          ? options_.nodes
                               : root_to - root_from > far_ || options_.tolerance < loose_ ? 8
                                                                                           : 5);
    way_ = stretch.from;
    rides_.resize(edges_.size());
    double way = 0;
    for (std::size_t n = 0; n + 1 < edges_.size(); ++n) {
        if (!ride(edges_[n], edges_[n + 1], rides_[n])) return false;
        way += rides_[n].way;
    }
    // What is left of the way, or too much of it: a short ride more, and what that leaves in one step.
    const double left = length - way;
    const double corrected = end + 2 * motion.solve(end).acceleration * left;
    if (!(corrected > 0)) return false;
    const double root_end = std::sqrt(std::sqrt(corrected));
    rule_ = &Collocation::rule(3);
    if (!ride(root_to, root_end, rides_.back())) return false;
    const double rest = left - rides_.back().way;
    for (const Ride& each : rides_)
        accept(each);
    const double speed = root_end * root_end;
    if (detail_ != HeatDetail::time)
        integrals_.add(motion.flow(motion.solve(speed * speed), speed * speed), rest);
    w_ = speed * speed + 2 * motion.solve(speed * speed).acceleration * rest;
    time_ += rest / speed;
    return true;
}

/// Cuts the way between two roots of the speed into rides. From rest the guide's force has its own scale of
/// speed near the start; the rest is alike.
void Runner::cut(double from, double to) {
    edges_.assign(1, from);
    const auto add = [&](double end) {
        const double begin = edges_.back();
        for (int part = 1; part <= options_.parts; ++part)
            edges_.push_back(part == options_.parts ? end : begin + (end - begin) * part / options_.parts);
    };
    if (options_.nodes == 0 && to - from > far_) {
        if (options_.tolerance < loose_)
            for (const double part : {0.2, 0.5})
                add(from + part * (to - from));
        else
            add(from + 0.35 * (to - from));
    }
    add(to);
}

bool Runner::ride(double from, double to, Ride& ride) {
    ride = {};
    const MotionAt& motion = nodes_[0];
    const double width = to - from;
    Attempt& a = attempt_; // for missed()
    ride.rule = rule_;
    for (std::size_t i = 0; i < ride.rule->stages; ++i) {
        const double root = from + width * rule_->node[i];
        const double speed = root * root;
        ride.w[i] = speed * speed;
        ride.state[i] = a.state[i] = motion.solve(ride.w[i]);
        const double acceleration = ride.state[i].acceleration;
        if (!(acceleration * (ride.state[0].acceleration) > 0)) return false;
        if (!(ride.state[i].rear == ride.state[0].rear && ride.state[i].front == ride.state[0].front))
            return false;
        ride.pace[i] = 2 * root * width / acceleration;
        ride.dq[i] = speed * ride.pace[i];
        ride.time += rule_->weight[i] * ride.pace[i];
        ride.way += rule_->weight[i] * ride.dq[i];
    }
    const double fastest = std::max(from, to) * std::max(from, to);
    return std::max(missed(ride.pace), missed(ride.dq) / fastest) <= options_.tolerance;
}

void Runner::accept(const Ride& ride) {
    const MotionAt& motion = nodes_[0];
    const std::size_t last = ride.rule->stages - 1;
    top_ = std::max(top_, motion.centre_rate() * motion.centre_rate() * std::max(ride.w[0], ride.w[last]));
    if (detail_ != HeatDetail::time) {
        Collocation::Row time{}, way{};
        time.fill(time_);
        way.fill(way_);
        const Collocation::Row times = ride.rule->integrals(time, ride.pace),
                               ways = ride.rule->integrals(way, ride.dq);
        for (std::size_t i = 0; i < ride.rule->stages; ++i) {
            integrals_.add(motion.flow(ride.state[i], ride.w[i]), ride.rule->weight[i] * ride.dq[i]);
            look(motion, ride.state[i], ways[i], ride.w[i], times[i]);
        }
    }
    time_ += ride.time;
    way_ += ride.way;
}

} // namespace rampwright
