#pragma once

#include "session/session.hpp"

#include <rampwright/study/draws.hpp>

#include <QTimer>

#include <atomic>
#include <thread>

namespace rampwright::ui {

/// What came out of a finished round of draws.
struct DrawsResult {
    std::vector<std::size_t> cars;
    Draws draws;
    std::optional<Versus> versus; ///< where two cars were asked for
};

/// Draws for one car or two, away from the window's thread, always of the open document: a change of it
/// stops what is under way, and the draws begin anew once it has been quiet for a moment. Nothing is drawn
/// while something is dragged. Draws that were cancelled leave no result.
class DrawsJob : public QObject {
    Q_OBJECT

public:
    explicit DrawsJob(Session& session, QObject* parent = nullptr);
    ~DrawsJob() override;

    enum class State {
        idle,      ///< nothing is wanted
        waiting,   ///< the document has just changed
        running,   ///< progress() tells how far
        done,      ///< result() is of the document as it is
        cancelled, ///< by the person; stays so until a change or the next wish
        failed     ///< problem() tells why
    };
    State state() const { return state_; }
    double progress() const { return progress_; }
    /// The last finished round, which in every state but `done` is of an earlier document.
    const DrawsResult* result() const { return result_ ? &*result_ : nullptr; }
    const QString& problem() const { return problem_; }
    std::uint64_t seed() const { return settings_.seed; }

    /// Begins with these; what is under way is dropped, and so is the last result. One car or two.
    void want(std::vector<std::size_t> cars, std::size_t draws, std::uint64_t seed);
    /// Nobody is looking: stops, and begins nothing until the next wish.
    void release();
    /// Stops what is under way at the person's word.
    void cancel();

Q_SIGNALS:
    /// State, progress or result is another.
    void changed();

private:
    struct Outcome {
        std::optional<DrawsResult> result; ///< none where it was cancelled or failed
        QString problem;
    };
    void restart();
    void begin();
    void take(std::uint64_t round, Outcome outcome);
    void halt(State state);
    void set_state(State state);

    Session& session_;
    std::vector<std::size_t> cars_;
    DrawSettings settings_;
    State state_ = State::idle;
    double progress_ = 0;
    std::optional<DrawsResult> result_;
    QString problem_;
    QTimer quiet_;
    bool wanted_ = false;     ///< by whoever looks
    std::uint64_t round_ = 0; ///< what an older one still posts is not listened to
    std::atomic<bool> stop_ = false;
    bool working_ = false; ///< the worker has not reported its end yet
    std::jthread worker_;
};

} // namespace rampwright::ui
