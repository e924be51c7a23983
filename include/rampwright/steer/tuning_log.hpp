#pragma once

#include <rampwright/core/constants.hpp>
#include <rampwright/steer/bent_axle.hpp>

#include <Eigen/Core>

#include <optional>

namespace rampwright {

/// How tuning on a drift board goes: what is measured, how well, and what is wanted. SI; steer and drift are
/// positive towards the rail.
struct TuningPlan {
    double wheelbase = 0;            ///< m
    double over = 0;                 ///< m along the board
    double watched_ahead = 0;        ///< m, mark ahead of the rear axle
    double target = 0;               ///< m of drift
    double tolerance = 0;            ///< m of drift, either way
    double reading_sigma = 0.001;    ///< m, reading the mark
    double scatter = 0.05;           ///< of the drift, roll to roll
    double hand_sigma = 2 * degree;  ///< what a turn by hand misses
    double confidence = 0.9;         ///< done when the steer is within tolerance with this probability
    double bend = 0, bend_sigma = 0; ///< rad, the axle's bend as believed at the start
    double turn = 0, turn_sigma = 0; ///< rad, its turn as believed at the start
};

/// Tuning with no track: each roll's drift becomes an estimate of the steer, each estimate the next turn.
///
/// An extended Kalman filter on the axle's bend and its turn in the hole: a roll measures the toe that both
/// make, a turn of the axle moves the second and adds what a hand misses. Because the bend is part of the
/// state, the filter learns how much a degree of this axle is worth. Kalman, J. Basic Eng. 82 (1960), from
/// memory.
class TuningLog {
public:
    explicit TuningLog(const TuningPlan& plan);

    /// A roll's drift, m. Where it is far off what was expected (`surprise` above 3), look for a cause.
    void add_roll(double drift);
    /// The axle was turned by so much (as read off at its head), rad.
    void add_turn(double by);

    double steer() const;       ///< rad, estimated
    double steer_sigma() const; ///< rad
    double drift() const;       ///< m, that this steer shows
    double drift_sigma() const; ///< m
    int rolls() const { return rolls_; }
    /// The last roll less what was expected, in its own sigma; zero before the first.
    double surprise() const { return surprise_; }

    /// Probability that the drift is within tolerance of the target.
    double probability_within() const;
    bool done() const { return probability_within() >= plan_.confidence; }

    /// The turn to make next, rad. None: it is done; or leave the axle and roll again, because it is believed
    /// well within tolerance and only more rolls can make sure; or this bend cannot give the target.
    std::optional<double> next_turn() const;
    /// Whether even two sigma more than the believed bend is too small for the target's steer.
    bool bend_too_small() const;

    BentAxle axle() const { return {state_[0], state_[1]}; }

private:
    Eigen::RowVector2d gradient() const;

    TuningPlan plan_;
    Eigen::Vector2d state_; ///< bend, turn
    Eigen::Matrix2d covariance_;
    double surprise_ = 0;
    int rolls_ = 0;
};

/// Tuning on a track: which steer only just holds the rail, from settings that held it and settings that
/// wiggled. The chance of holding is a normal distribution's about the wanted threshold, as in the guide's
/// model.
class RailSearch {
public:
    /// @param guess, guess_sigma rad, threshold believed before the first run.
    /// @param width rad, how gradually holding sets in.
    RailSearch(double guess, double guess_sigma, double width);

    void add_run(double steer, bool held);

    double threshold() const;       ///< rad, mean of what is believed now
    double threshold_sigma() const; ///< rad
    /// Steer to try next: the believed threshold, where a run tells most.
    double next_trial() const { return threshold(); }

private:
    Eigen::ArrayXd place_, belief_;
    double width_;
};

} // namespace rampwright
