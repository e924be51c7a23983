#pragma once

#include "heat/collocation.hpp"
#include "heat/motion.hpp"

#include <cmath>

namespace rampwright {

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
    double first_root_ = 0; ///< where the wheels begin to stir the air
    double w_ = 0;
    double time_ = 0;
    double way_ = 0;        ///< q, on a straight
    double stopped_at_ = 0; ///< q
    bool stopped_ = false;
    double top_ = 0; ///< greatest speed squared of the centre of mass
    double least_front_ = 1e300, least_front_q_ = 0, lift_q_ = 0;
};

} // namespace rampwright
