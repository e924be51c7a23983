#include "collocation.hpp"
#include "motion.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace rampwright {

namespace {

/// Integrals along the way, from which every entry of the books is made.
struct Integrals {
    MotionAt::Flow sum;
    void add(const MotionAt::Flow& f, double weight) {
        const auto axle = [weight](MotionAt::AxleFlow& to, const MotionAt::AxleFlow& from) {
            to.load_relative += weight * from.load_relative;
            to.weight_relative += weight * from.weight_relative;
            to.tread_relative += weight * from.tread_relative;
            to.load += weight * from.load;
            to.windage += weight * from.windage;
        };
        axle(sum.rear, f.rear);
        axle(sum.front, f.front);
        sum.drag += weight * f.drag;
        sum.rail += weight * f.rail;
    }
};

/// Integrates one heat: q is the coordinate, w = q'^2 the state, time and books are quadratures on the same
/// nodes. With w rather than q' the equation is nearly linear, and the finish, a place, needs no search in
/// time. The independent
/// variable is the root of the way from the start: near rest it goes as time, and everything is smooth in it.
class Runner {
public:
    Runner(const Course& course, const HeatCar& car, HeatDetail detail, const HeatOptions& options)
        : course_(course), car_(car), detail_(detail), options_(options), setting_(car, course.gravity()) {}

    HeatResult run();

private:
    static constexpr double widest_ = 3.5;    ///< an interval to begin with: end over beginning
    static constexpr double settled_ = 1e-10; ///< w relative: far below what an interval's error may be
    static constexpr double far_ = 0.5;       ///< (m/s)^1/2, a change of the root of the speed that is long
    static constexpr double loose_ = 5e-9;    ///< s, a tolerance from which on fewer nodes will do
    struct Interval {
        double from, to; ///< roots
        int depth;
    };
    struct Attempt {
        double w_end = 0, time = 0, error = 0;
        bool stalled = false;
        Collocation::Row q{}, w{}, dq{}, rate{}, pace{}; ///< per unit of the interval
        std::array<MotionAt::State, Collocation::most> state;
    };
    /// A stretch of a straight between two speeds: everything depends on the speed alone.
    struct Ride {
        double time = 0, way = 0;
        const Collocation* rule = nullptr;
        Collocation::Row w{}, pace{}, dq{}; ///< at the nodes, per unit of the interval
        std::array<MotionAt::State, Collocation::most> state;
    };
    void accept(const Ride& ride);
    MotionAt at(const Course::Stretch& stretch, double q) { return {setting_, pose(stretch, q)}; }
    Pose pose(const Course::Stretch& stretch, double q) {
        ++result_.evaluations;
        const double moved = q - last_.q;
        const double guess = last_.front_q + moved * (last_.rate + 0.5 * moved * last_.rate_rate);
        const Pose found = course_.axles().pose(stretch.rear_piece, stretch.front_piece, q, guess);
        last_ = {q, found.front_q, found.front_rate, found.front_rate_rate};
        return found;
    }
    /// Whatever the course has at a stretch's beginning, for the next guess of the front centre.
    void restart(const Course::Stretch& stretch) { last_ = {stretch.from, stretch.front_q, 1, 0}; }
    void cross(const Course::Stretch& stretch);
    void divide(double from, double to);
    void attempt(const Course::Stretch& stretch, double from, double to);
    bool coast(const Course::Stretch& stretch);
    void cut(double from, double to);
    bool ride(double from, double to, Ride& ride);
    bool settle(const Collocation::Row& constant, double first);
    double missed(const Collocation::Row& values) const;
    double place(double root) const { return course_.start() + root * root; }
    double root_of(double q) const { return std::sqrt(q - course_.start()); }
    const MotionAt& node(std::size_t i) const { return nodes_[alike_ ? 0 : i]; }
    /// Short stretches are smooth: fewer nodes carry them.
    std::size_t nodes_for(const Course::Stretch& stretch) const {
        if (options_.nodes > 0) return options_.nodes;
        const double length = stretch.to - stretch.from;
        if (options_.tolerance < loose_) return stretch.straight || length > 0.07 ? 8 : length > 0.02 ? 5 : 4;
        return stretch.straight || length > 0.15 ? 6 : length > 0.02 ? 5 : 4;
    }
    void look_at(const Course::Stretch& stretch, double q);
    void accept();
    void look(const MotionAt& motion, const MotionAt::State& state, double q, double w, double time);
    void close_books();
    void measure_places();

    const Course& course_;
    const HeatCar& car_;
    HeatDetail detail_;
    HeatOptions options_;
    MotionAt::Setting setting_;
    const Collocation* rule_ = nullptr;
    HeatResult result_;
    Integrals integrals_;
    std::vector<MotionAt> nodes_; ///< one for all of them where they are alike
    bool alike_ = false;          ///< both axles on straights of one slope: nothing but the height changes
    Attempt attempt_;             ///< the one under way
    std::vector<Interval> waiting_;
    std::vector<double> edges_; ///< roots of the speed between which a straight is ridden
    std::vector<Ride> rides_;
    struct Last {
        double q = 0, front_q = 0, rate = 1, rate_rate = 0;
    } last_;                ///< pose: the front centre is guessed from it
    double first_root_ = 0; ///< where the guide's force is past what it does near rest
    double w_ = 0;
    double time_ = 0;
    double way_ = 0;        ///< q, on a straight
    double stopped_at_ = 0; ///< q
    bool stopped_ = false;
    double top_ = 0; ///< greatest speed squared of the centre of mass
    double least_front_ = 1e300, least_front_q_ = 0, lift_q_ = 0;
};

HeatResult Runner::run() {
    restart(course_.stretches().front());
    nodes_.reserve(Collocation::most);
    const double push = at(course_.stretches().front(), course_.start()).solve(0).acceleration;
    if (push > 0) first_root_ = bounce_hold_speed / std::sqrt(2 * push);
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

/// Cuts a stretch into the intervals to begin with; they wait with the nearest last. Speed goes with the
/// root, and what air and guide do is even in speed but for a scale near rest: intervals that grow from there
/// by a constant factor are alike.
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
    for (const auto& [axle, f] : {std::pair{&car_.rear, &flow.rear}, std::pair{&car_.front, &flow.front}}) {
        point.power_journal +=
            (axle->journal * f->load_relative - axle->journal_wheel * f->weight_relative) * speed;
        point.power_hub += (axle->hub * f->load_relative - axle->hub_wheel * f->weight_relative) * speed;
        point.power_rolling += axle->rolling * f->load * speed;
        point.power_scrub += axle->scrub * f->tread_relative * speed;
        point.power_air += axle->windage * f->windage * speed;
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
    const auto axle = [&](const HeatAxle& a, const MotionAt::AxleFlow& f) {
        books.journal += a.journal * f.load_relative - a.journal_wheel * f.weight_relative;
        books.hub += a.hub * f.load_relative - a.hub_wheel * f.weight_relative;
        books.rolling += a.rolling * f.load;
        books.scrub += a.scrub * f.tread_relative;
        books.air += a.windage * f.windage;
    };
    axle(car_.rear, integrals_.sum.rear);
    axle(car_.front, integrals_.sum.front);
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

} // namespace

HeatResult run_heat(const Course& course, const HeatCar& car, HeatDetail detail, const HeatOptions& options) {
    return Runner(course, car, detail, options).run();
}

} // namespace rampwright
