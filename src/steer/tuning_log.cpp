#include <rampwright/core/constants.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/steer/tuning_log.hpp>

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

double normal_probability(double x) {
    return std::erfc(-x / std::numbers::sqrt2) / 2;
}

constexpr double least_bend = 0.05 * degree;

// As far as a turn goes where it still moves the toe enough to learn from.
constexpr double most_turn = 75 * degree;

// Of the tolerance: nearer to the target than this, rolling again is worth more than turning.
constexpr double well_within = 0.6;

} // namespace

TuningLog::TuningLog(const TuningPlan& plan) : plan_(plan), state_(plan.bend, plan.turn) {
    covariance_ << plan.bend_sigma * plan.bend_sigma, 0, 0, plan.turn_sigma * plan.turn_sigma;
}

Eigen::RowVector2d TuningLog::gradient() const {
    const double slope = std::tan(state_[0]), side = slope * std::sin(state_[1]);
    const double toe_per_slope = std::sin(state_[1]) / (1 + side * side);
    return {toe_per_slope * (1 + slope * slope), toe_per_turn(axle())};
}

void TuningLog::add_roll(double drift) {
    const double measured = steer_from_drift(plan_.wheelbase, drift, plan_.over, plan_.watched_ahead);
    const double slope = steer_per_drift(plan_.wheelbase, drift, plan_.over, plan_.watched_ahead);
    const double noise = slope * std::hypot(plan_.reading_sigma, plan_.scatter * drift);

    const Eigen::RowVector2d h = gradient();
    const double variance = (h * covariance_ * h.transpose()).value() + noise * noise;
    const double miss = measured - steer();
    surprise_ = miss / std::sqrt(variance);
    ++rolls_;

    const Eigen::Vector2d gain = covariance_ * h.transpose() / variance;
    state_ += gain * miss;
    // A bend is positive; where a roll says otherwise the axle was turned the other way.
    state_[0] = std::max(state_[0], least_bend);
    // Joseph's form keeps the covariance positive.
    const Eigen::Matrix2d keep = Eigen::Matrix2d::Identity() - gain * h;
    covariance_ = keep * covariance_ * keep.transpose() + noise * noise * gain * gain.transpose();
}

void TuningLog::add_turn(double by) {
    state_[1] += by;
    covariance_(1, 1) += plan_.hand_sigma * plan_.hand_sigma;
}

double TuningLog::steer() const {
    return alignment_of(axle()).toe;
}

double TuningLog::steer_sigma() const {
    const Eigen::RowVector2d h = gradient();
    return std::sqrt((h * covariance_ * h.transpose()).value());
}

double TuningLog::drift() const {
    // A steer so great that the car turns back before the board's end shows at least the board's length.
    return drift_from_steer(plan_.wheelbase, steer(), plan_.over, plan_.watched_ahead)
        .value_or(std::copysign(plan_.over, steer()));
}

double TuningLog::drift_sigma() const {
    return steer_sigma() /
           std::abs(steer_per_drift(plan_.wheelbase, drift(), plan_.over, plan_.watched_ahead));
}

double TuningLog::probability_within() const {
    if (rolls_ == 0) return 0; // belief alone is no measurement
    const double off = drift() - plan_.target, sigma = drift_sigma();
    if (!(sigma > 0)) return std::abs(off) <= plan_.tolerance ? 1 : 0;
    return normal_probability((plan_.tolerance - off) / sigma) -
           normal_probability((-plan_.tolerance - off) / sigma);
}

bool TuningLog::bend_too_small() const {
    const double wanted = steer_from_drift(plan_.wheelbase, plan_.target, plan_.over, plan_.watched_ahead);
    return !turn_for_toe(state_[0] + 2 * std::sqrt(covariance_(0, 0)), wanted);
}

std::optional<double> TuningLog::next_turn() const {
    if (done() || bend_too_small()) return std::nullopt;
    if (rolls_ > 0 && std::abs(drift() - plan_.target) < well_within * plan_.tolerance) return std::nullopt;
    const double wanted = steer_from_drift(plan_.wheelbase, plan_.target, plan_.over, plan_.watched_ahead);
    // A bend believed a little too small may still do: turned well to the side, the next roll will tell.
    const double turn = turn_for_toe(state_[0], wanted).value_or(std::copysign(most_turn, wanted));
    return turn - state_[1];
}

RailSearch::RailSearch(double guess, double guess_sigma, double width) : width_(width) {
    constexpr Eigen::Index points = 601;
    place_ = Eigen::ArrayXd::LinSpaced(points, guess - 5 * guess_sigma, guess + 5 * guess_sigma);
    belief_ = (-0.5 * ((place_ - guess) / guess_sigma).square()).exp();
    belief_ /= belief_.sum();
}

void RailSearch::add_run(double steer, bool held) {
    for (Eigen::Index i = 0; i < place_.size(); ++i) {
        const double holds = normal_probability((steer - place_[i]) / width_);
        belief_[i] *= held ? holds : 1 - holds;
    }
    belief_ /= belief_.sum();
}

double RailSearch::threshold() const {
    return (belief_ * place_).sum();
}

double RailSearch::threshold_sigma() const {
    return std::sqrt((belief_ * (place_ - threshold()).square()).sum());
}

} // namespace rampwright
