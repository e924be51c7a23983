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
/// time. The independent variable is the fourth root of the way from the start: near rest speed goes with its
/// square and windage with its cube, so that everything is smooth from the start on.
class Runner {
public:
    Runner(const Course& course, const HeatCar& car, HeatDetail detail, const HeatOptions& options)
        : course_(course),
          car_(car),
          detail_(detail),
          options_(options),
          setting_(car, course.gravity()),
          rule_(Collocation::rule(options.nodes)) {}

    HeatResult run();

private:
    struct Interval {
        double from, to; ///< roots
        int depth;
    };
    struct Attempt {
        double w_end = 0, time = 0, error = 0;
        bool stalled = false;
        Collocation::Row q{}, w{}, dq{};
        std::array<MotionAt::State, Collocation::most> state;
    };
    MotionAt at(const Course::Stretch& stretch, double q) {
        ++result_.evaluations;
        const double moved = q - last_.q;
        const double guess = last_.front_q + moved * (last_.rate + 0.5 * moved * last_.rate_rate);
        const Pose pose = course_.axles().pose(stretch.rear_piece, stretch.front_piece, q, guess);
        last_ = {q, pose.front_q, pose.front_rate, pose.front_rate_rate};
        return {setting_, pose};
    }
    /// Whatever the course has at a stretch's beginning, for the next guess of the front centre.
    void restart(const Course::Stretch& stretch) { last_ = {stretch.from, stretch.front_q, 1, 0}; }
    void cross(const Course::Stretch& stretch);
    Attempt attempt(const Course::Stretch& stretch, double from, double to);
    double place(double root) const { return course_.start() + root * root * root * root; }
    double root_of(double q) const { return std::sqrt(std::sqrt(q - course_.start())); }
    const MotionAt& node(std::size_t i) const { return nodes_[alike_ ? 0 : i]; }
    void look_at(const Course::Stretch& stretch, double q);
    void accept(const Attempt& attempt);
    void look(const MotionAt& motion, const MotionAt::State& state, double q, double w, double time);
    void close_books();
    void measure_places();

    const Course& course_;
    const HeatCar& car_;
    HeatDetail detail_;
    HeatOptions options_;
    MotionAt::Setting setting_;
    const Collocation& rule_;
    HeatResult result_;
    Integrals integrals_;
    std::vector<MotionAt> nodes_; ///< one for all of them where they are alike
    bool alike_ = false;          ///< both axles on straights of one slope: nothing but the height changes
    std::vector<Interval> waiting_;
    struct Last {
        double q = 0, front_q = 0, rate = 1, rate_rate = 0;
    } last_; ///< pose: the front centre is guessed from it
    double w_ = 0;
    double time_ = 0;
    double stopped_at_ = 0; ///< q
    bool stopped_ = false;
    double top_ = 0; ///< greatest speed squared of the centre of mass
    double least_front_ = 1e300, least_front_q_ = 0, lift_q_ = 0;
};

HeatResult Runner::run() {
    restart(course_.stretches().front());
    nodes_.reserve(rule_.stages);
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
    // Intervals wait with the nearest last.
    const double root_from = root_of(stretch.from), root_to = root_of(stretch.to);
    const double width = (root_to - root_from) / options_.parts;
    waiting_.clear();
    for (int part = options_.parts; part-- > 0;)
        waiting_.push_back({root_from + part * width, root_from + (part + 1) * width, 0});
    waiting_.front().to = root_to;
    look_at(stretch, stretch.from);
    while (!waiting_.empty() && !stopped_) {
        const Interval interval = waiting_.back();
        const Attempt tried = attempt(stretch, interval.from, interval.to);
        const bool fine = !tried.stalled && tried.error <= options_.tolerance;
        if (fine || (!tried.stalled && interval.depth >= 24)) {
            accept(tried);
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

/// The ends of a stretch, which the integration itself does not need: it must not notice.
void Runner::look_at(const Course::Stretch& stretch, double q) {
    if (detail_ == HeatDetail::time) return;
    const Last last = last_;
    const MotionAt motion = at(stretch, q);
    last_ = last;
    look(motion, motion.solve(w_), q, w_, time_);
}

Runner::Attempt Runner::attempt(const Course::Stretch& stretch, double from, double to) {
    Attempt a;
    const double width = to - from;
    if (!alike_) nodes_.clear();
    for (std::size_t i = 0; i < rule_.stages; ++i) {
        const double root = from + width * rule_.node[i];
        a.q[i] = place(root);
        a.dq[i] = 4 * root * root * root * width;
        if (!alike_) nodes_.push_back(at(stretch, a.q[i]));
    }
    // What is integrated is the difference from a constant acceleration, which leaves nothing to do near
    // rest.
    const double first = 2 * node(0).solve(w_).acceleration;
    const auto way_since = [from](double root) { // root^4 - from^4, near rest too
        return (root - from) * (root + from) * (root * root + from * from);
    };
    Collocation::Row constant{};
    for (std::size_t i = 0; i < rule_.stages; ++i) {
        constant[i] = w_ + first * way_since(from + width * rule_.node[i]);
        a.w[i] = std::max(constant[i], 0.0);
    }
    // Fixed-point iteration: w enters its own rate only through drag, curvature and windage, all small.
    Collocation::Row rate{};
    double scale = 0, change_before = 0;
    bool settled = false;
    for (int iteration = 0; iteration < 40 && !settled; ++iteration) {
        for (std::size_t i = 0; i < rule_.stages; ++i) {
            a.state[i] = node(i).solve(a.w[i]);
            rate[i] = (2 * a.state[i].acceleration - first) * a.dq[i];
        }
        double change = 0;
        scale = std::abs(w_);
        for (std::size_t i = 0; i < rule_.stages; ++i) {
            double w = constant[i];
            for (std::size_t j = 0; j < rule_.stages; ++j)
                w += rule_.to_node[i][j] * rate[j];
            change = std::max(change, std::abs(w - a.w[i]));
            scale = std::max(scale, std::abs(w));
            a.w[i] = w;
        }
        // Each round shrinks what is wrong by about the same factor, so the next change is known beforehand.
        const double next = iteration > 0 ? change * std::min(1.0, change / change_before) : change;
        settled = next <= 1e-13 * scale;
        change_before = change;
    }
    a.w_end = w_ + first * way_since(to);
    for (std::size_t i = 0; i < rule_.stages; ++i)
        a.w_end += rule_.weight[i] * rate[i];
    const double lowest = *std::min_element(a.w.begin(), a.w.begin() + std::ptrdiff_t(rule_.stages));
    a.stalled = !(lowest > 0) || !(a.w_end > 0);
    if (a.stalled) return a;
    if (!settled) {
        a.error = std::numeric_limits<double>::infinity();
        return a;
    }

    Collocation::Row pace{};
    for (std::size_t i = 0; i < rule_.stages; ++i) {
        pace[i] = a.dq[i] / std::sqrt(a.w[i]);
        a.time += rule_.weight[i] * pace[i];
    }
    // Where a load passes zero the rates have a kink, and no fall of coefficients can be counted on.
    const bool smooth = std::all_of(
        a.state.begin(), a.state.begin() + std::ptrdiff_t(rule_.stages), [&](const MotionAt::State& state) {
            return state.rear == a.state[0].rear && state.front == a.state[0].front;
        });
    // How fast the Legendre coefficients fall tells the first ones that six nodes miss, twice as far up.
    const auto missed = [&](const Collocation::Row& values) {
        Collocation::Row coefficient{};
        double mean = 0;
        for (std::size_t k = rule_.stages > 4 ? rule_.stages - 4 : 0; k < rule_.stages; ++k)
            for (std::size_t j = 0; j < rule_.stages; ++j)
                coefficient[k] += rule_.legendre[k][j] * values[j];
        for (std::size_t j = 0; j < rule_.stages; ++j)
            mean += rule_.weight[j] * std::abs(values[j]);
        const auto pair = [&](std::size_t back) { // two together, since they may vanish by turns
            return std::abs(coefficient[rule_.stages - back]) +
                   std::abs(coefficient[rule_.stages - back - 1]);
        };
        const double last = pair(1), before = rule_.stages >= 4 ? pair(3) : mean;
        const double fall = before > 0 && smooth ? std::min(1.0, last / before) : 1;
        return last * fall * fall * fall;
    };
    // An error of w is an error of every later time: a heat lasts seconds.
    a.error = std::max(missed(pace), missed(rate) / std::max(a.w_end, scale));
    return a;
}

void Runner::accept(const Attempt& a) {
    Collocation::Row pace{};
    for (std::size_t i = 0; i < rule_.stages; ++i)
        pace[i] = a.dq[i] / std::sqrt(a.w[i]);
    for (std::size_t i = 0; i < rule_.stages; ++i) {
        const MotionAt& motion = node(i);
        top_ = std::max(top_, motion.centre_rate() * motion.centre_rate() * a.w[i]);
        if (detail_ == HeatDetail::time) continue;
        integrals_.add(motion.flow(a.state[i], a.w[i]), rule_.weight[i] * a.dq[i]);
        double time = time_;
        for (std::size_t j = 0; j < rule_.stages; ++j)
            time += rule_.to_node[i][j] * pace[j];
        look(motion, a.state[i], a.q[i], a.w[i], time);
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

HeatCar prepare(const CarOnWheels& car, const std::array<WheelLoss, 4>& losses, const Standing& level,
                double air_density, const Guide& guide) {
    HeatCar heat;
    heat.mass = car.mass;
    heat.wheelbase = car.wheelbase;
    heat.centre = {car.centre.x(), car.centre.z()};
    heat.nose = car.nose;
    heat.air_area = car.air_area;
    heat.air_density = air_density;
    heat.drag_height = car.drag_height;
    heat.guide = guide;
    heat.pitch_inertia = car.inertia(1, 1);
    heat.rear.radius = car.rear_radius;
    heat.front.radius = car.front_radius;
    for (Corner corner : all_corners) {
        const Wheel& wheel = car.wheels[std::size_t(corner)];
        if (!wheel.touches) continue;
        const WheelLoss& loss = losses[std::size_t(corner)];
        HeatAxle& axle = is_front(corner) ? heat.front : heat.rear;
        HeatCar::WheelPart& part = heat.parts[std::size_t(corner)];
        const double load = is_front(corner) ? level.front : level.rear;
        part.touches = true;
        part.load_share = load > 0 ? level.loads[std::size_t(corner)].value_or(0) / load : 0;
        part.mass = wheel.mass;
        part.spin_mass = wheel.spin_inertia / (axle.radius * axle.radius);
        part.journal_arm = loss.journal_arm;
        part.hub_arm = loss.hub_arm;
        part.rolling = loss.rolling;
        part.scrub = loss.scrub;
        part.windage = loss.windage / std::pow(axle.radius, 2.5);
        heat.pitch_inertia -= wheel.spin_inertia;
        axle.wheel_mass += part.mass;
        axle.spin_mass += part.spin_mass;
        axle.journal += part.load_share * part.journal_arm / axle.radius;
        axle.hub += part.load_share * part.hub_arm / axle.radius;
        axle.journal_wheel += part.mass * part.journal_arm / axle.radius;
        axle.hub_wheel += part.mass * part.hub_arm / axle.radius;
        axle.rolling += part.load_share * part.rolling;
        axle.scrub += part.load_share * part.scrub;
        axle.windage += part.windage;
    }
    return heat;
}

} // namespace rampwright
