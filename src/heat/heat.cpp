#include "heat/runner.hpp"

#include <algorithm>
#include <limits>

namespace rampwright {

namespace {

/// What wheels stir goes with v^1.5, the one force that is not even in speed: below this, m/s, too little of
/// it is left to be seen.
constexpr double slow = 0.1;

} // namespace

HeatResult Runner::run() {
    restart(course_.stretches().front());
    nodes_.reserve(Collocation::most);
    const double push = at(course_.stretches().front(), course_.start()).solve(0).acceleration;
    if (push > 0) first_root_ = slow / std::sqrt(2 * push);
    for (const Course::Stretch& stretch : course_.stretches()) {
        cross(stretch);
        if (stopped_) break;
    }
    result_.finished = !stopped_;
    result_.time = time_;
    const Course::Stretch& last = course_.stretches().back();
    if (result_.finished)
        result_.finish_speed = at(last, last.to).centre_rate() * std::sqrt(std::max(0.0, w_));
    result_.top_speed = std::max(std::sqrt(top_), result_.finish_speed);
    if (detail_ != HeatDetail::time) {
        close_books();
        measure_places();
    }
    return result_;
}

void Runner::cross(const Course::Stretch& stretch) {
    alike_ = stretch.straight;
    nodes_.clear();
    if (alike_) nodes_.push_back(at(stretch, stretch.from));
    look_at(stretch, stretch.from);
    if (alike_ && coast(stretch)) return look_at(stretch, stretch.to);
    rule_ = &Collocation::rule(nodes_for(stretch));
    divide(root_of(stretch.from), root_of(stretch.to));
    while (!waiting_.empty() && !stopped_) {
        const Interval interval = waiting_.back();
        attempt(stretch, interval.from, interval.to);
        const Attempt& tried = attempt_;
        const bool fine = !tried.stalled && tried.error <= options_.tolerance;
        if (fine || (!tried.stalled && interval.depth >= 24)) {
            accept();
            waiting_.pop_back();
        } else if (tried.stalled && interval.depth >= 40) {
            stopped_ = true;
            stopped_at_ = place(interval.from);
        } else {
            const double middle = 0.5 * (interval.from + interval.to);
            waiting_.back() = {middle, interval.to, interval.depth + 1};
            waiting_.push_back({interval.from, middle, interval.depth + 1});
        }
    }
    if (!stopped_) look_at(stretch, stretch.to);
}

/// Cuts a stretch into the intervals to begin with; they wait with the nearest last. Speed goes with the
/// root, and what air and guide do is even in speed but for the wheels' stirring: intervals that grow from
/// where that begins by a constant factor are alike.
void Runner::divide(double from, double to) {
    waiting_.clear();
    const double widest = options_.nodes > 0 ? std::numeric_limits<double>::infinity() : widest_;
    for (double end = to; end > from;) {
        const double below = end / widest;
        const double begin = below > std::max(from, 0.7 * first_root_) ? below : from;
        for (int part = options_.parts; part-- > 0;)
            waiting_.push_back({begin + (end - begin) * part / options_.parts,
                                begin + (end - begin) * (part + 1) / options_.parts, 0});
        end = begin;
    }
}

/// The ends of a stretch, which the integration itself does not need: it must not notice.
void Runner::look_at(const Course::Stretch& stretch, double q) {
    if (detail_ == HeatDetail::time) return;
    const Last last = last_;
    const MotionAt motion = at(stretch, q);
    last_ = last;
    look(motion, motion.solve(w_), q, w_, time_);
}

void Runner::attempt(const Course::Stretch& stretch, double from, double to) {
    Attempt& a = attempt_;
    const double width = to - from;
    if (!alike_) nodes_.clear();
    Collocation::Row constant{};
    const auto way_since = [from](double root) { return (root - from) * (root + from); }; // near rest too
    for (std::size_t i = 0; i < rule_->stages; ++i) {
        const double root = from + width * rule_->node[i];
        a.q[i] = place(root);
        a.dq[i] = 2 * root * width;
        constant[i] = way_since(root);
        if (!alike_) nodes_.emplace_back(setting_, pose(stretch, a.q[i]));
    }
    // What is integrated is the difference from a constant acceleration: nothing is left to do near rest.
    const double first = 2 * node(0).solve(w_).acceleration;
    for (std::size_t i = 0; i < rule_->stages; ++i)
        constant[i] = w_ + first * constant[i];
    const bool settled = settle(constant, first);
    a.w_end = w_ + first * way_since(to);
    for (std::size_t i = 0; i < rule_->stages; ++i)
        a.w_end += rule_->weight[i] * a.rate[i];
    const double lowest = *std::min_element(a.w.begin(), a.w.begin() + std::ptrdiff_t(rule_->stages));
    a.stalled = !(lowest > 0) || !(a.w_end > 0);
    if (a.stalled) return;
    a.time = 0;
    for (std::size_t i = 0; i < rule_->stages; ++i) {
        a.pace[i] = a.dq[i] / std::sqrt(a.w[i]);
        a.time += rule_->weight[i] * a.pace[i];
    }
    // An error of w is an error of every later time: a heat lasts seconds.
    const double greatest = std::max(a.w_end, a.w[rule_->stages - 1]);
    a.error = settled ? std::max(missed(a.pace), missed(a.rate) / greatest)
                      : std::numeric_limits<double>::infinity();
}

/// Finds w at the nodes, w = constant + integral of what the rate has beyond `first`, by iteration. w enters
/// its own rate only through drag, curvature and windage, all small; after two looks the secant tells how.
/// @returns whether it got there.
bool Runner::settle(const Collocation::Row& constant, double first) {
    Attempt& a = attempt_;
    const std::size_t n = rule_->stages;
    Collocation::Row w{}, w_seen{}, rate_seen{}, slope{};
    for (std::size_t i = 0; i < n; ++i)
        w[i] = std::max(constant[i], 0.0);
    double second_change = 0;
    for (int iteration = 0; iteration < 40; ++iteration) {
        for (std::size_t i = 0; i < n; ++i) {
            const double step = w[i] - w_seen[i];
            a.state[i] = node(i).solve(w[i]);
            const double rate = 2 * a.state[i].acceleration - first;
            if (iteration > 0 && step != 0) slope[i] = (rate - rate_seen[i]) / step;
            rate_seen[i] = rate;
            w_seen[i] = w[i];
        }
        double change = 0, scale = w_, left = 0;
        const int sweeps = iteration == 0 ? 1 : 3;
        for (int sweep = 0; sweep < sweeps && (sweep == 0 || left > settled_ * w_); ++sweep) {
            for (std::size_t i = 0; i < n; ++i)
                a.rate[i] = (rate_seen[i] + slope[i] * (w[i] - w_seen[i])) * a.dq[i];
            const Collocation::Row found = rule_->integrals(constant, a.rate);
            left = 0;
            for (std::size_t i = 0; i < n; ++i)
                left = std::max(left, std::abs(found[i] - w[i]));
            w = found;
        }
        for (std::size_t i = 0; i < n; ++i) {
            change = std::max(change, std::abs(w[i] - w_seen[i]));
            scale = std::max(scale, std::abs(w[i]));
        }
        a.w = w;
        // What the next look would still change: the secant is wrong by how far its ends lie from here, which
        // the second change tells, since it is what the first one did to the rates.
        if (iteration == 1) second_change = change;
        const double next = iteration == 0 ? change : change * std::min(1.0, second_change / scale) + left;
        if (next <= settled_ * scale) return true;
    }
    return false;
}

/// How fast the Legendre coefficients fall tells the first ones that the nodes miss, twice as far up.
double Runner::missed(const Collocation::Row& values) const {
    const std::size_t n = rule_->stages;
    // Where a load passes zero the rates have a kink, and no fall can be counted on.
    const Attempt& a = attempt_;
    const bool smooth =
        std::all_of(a.state.begin(), a.state.begin() + std::ptrdiff_t(n), [&](const MotionAt::State& state) {
            return state.rear == a.state[0].rear && state.front == a.state[0].front;
        });
    const auto coefficient = [&](std::size_t k) {
        double sum = 0;
        for (std::size_t j = 0; j < n; ++j)
            sum += rule_->legendre[k][j] * values[j];
        return std::abs(sum);
    };
    // Two together, since they may vanish by turns.
    const double last = coefficient(n - 1) + coefficient(n - 2);
    const double before = n >= 4 ? coefficient(n - 3) + coefficient(n - 4) : coefficient(0);
    const double fall = before > 0 && smooth ? std::min(1.0, last / before) : 1;
    return last * fall * fall * fall;
}

void Runner::accept() {
    const Attempt& a = attempt_;
    Collocation::Row start{};
    start.fill(time_);
    const Collocation::Row times = rule_->integrals(start, a.pace);
    for (std::size_t i = 0; i < rule_->stages; ++i) {
        const MotionAt& motion = node(i);
        top_ = std::max(top_, motion.centre_rate() * motion.centre_rate() * a.w[i]);
        if (detail_ == HeatDetail::time) continue;
        const MotionAt::State state = motion.solve(a.w[i]);
        integrals_.add(motion.flow(state, a.w[i]), rule_->weight[i] * a.dq[i]);
        look(motion, state, a.q[i], a.w[i], times[i]);
    }
    w_ = a.w_end;
    time_ += a.time;
}

HeatResult run_heat(const Course& course, const HeatCar& car, HeatDetail detail, const HeatOptions& options) {
    return Runner(course, car, detail, options).run();
}

} // namespace rampwright
