#include "session/draws_job.hpp"

#include "text/figure_text.hpp"

#include <algorithm>
#include <utility>

#ifdef __linux__
#include <sys/resource.h>
#endif

namespace rampwright::ui {
namespace {

/// After a change: long enough that typing and dragging begin nothing, short enough to seem at once.
constexpr int quiet_ms = 250;

/// Draws take both cores; the window's own thread comes first. Threads begun from here inherit it.
void step_back() {
#ifdef __linux__
    constexpr int niceness = 10;
    // Linux means the calling thread by 0, whatever POSIX says of processes.
    setpriority(PRIO_PROCESS, 0, niceness);
#endif
}

} // namespace

DrawsJob::DrawsJob(Session& session, QObject* parent) : QObject(parent), session_(session) {
    quiet_.setSingleShot(true);
    quiet_.setInterval(quiet_ms);
    connect(&quiet_, &QTimer::timeout, this, &DrawsJob::begin);
    connect(&session_, &Session::changed, this, &DrawsJob::restart);
}

DrawsJob::~DrawsJob() {
    stop_ = true; // the worker looks at it every 30 ms; jthread joins
}

void DrawsJob::want(std::vector<std::size_t> cars, std::size_t draws, std::uint64_t seed) {
    cars_ = std::move(cars);
    settings_.draws = draws;
    settings_.seed = seed;
    wanted_ = true;
    result_.reset();
    restart();
    quiet_.stop();
    begin();
}

void DrawsJob::release() {
    wanted_ = false;
    halt(State::idle);
}

void DrawsJob::cancel() {
    if (state_ == State::running || state_ == State::waiting) halt(State::cancelled);
}

void DrawsJob::halt(State state) {
    stop_ = true;
    quiet_.stop();
    ++round_;
    set_state(state);
}

void DrawsJob::restart() {
    if (!wanted_) return;
    stop_ = true;
    ++round_;
    quiet_.start();
    set_state(State::waiting);
}

void DrawsJob::begin() {
    // The worker before has yet to end, or a piece is under a finger: look again soon.
    if (working_ || session_.in_gesture()) return quiet_.start();
    if (std::any_of(cars_.begin(), cars_.end(),
                    [this](std::size_t car) { return car >= session_.project().cars.size(); }))
        return; // a car is gone: whoever looks will want another
    stop_ = false;
    working_ = true;
    progress_ = 0;
    const std::uint64_t round = ++round_;
    DrawSettings settings = settings_;
    settings.keep_going = [this, round](double part) {
        QMetaObject::invokeMethod(this, [this, round, part] {
            if (round != round_) return;
            progress_ = part;
            Q_EMIT changed();
        });
        return !stop_;
    };
    worker_ = std::jthread([this, round, settings, project = session_.project(), cars = cars_] {
        step_back();
        Outcome outcome;
        try {
            DrawsResult result{cars, run_draws(project, cars, settings), {}};
            if (!result.draws.cancelled) {
                if (cars.size() == 2)
                    result.versus = compare(project, cars[0], cars[1], result.draws, settings.seed);
                outcome.result = std::move(result);
            }
        } catch (const Problem& problem) {
            outcome.problem = problem_text(problem);
        }
        QMetaObject::invokeMethod(
            this, [this, round, outcome = std::move(outcome)]() mutable { take(round, std::move(outcome)); });
    });
    set_state(State::running);
}

void DrawsJob::take(std::uint64_t round, Outcome outcome) {
    working_ = false;
    if (round != round_) return;
    if (outcome.result) {
        result_ = std::move(outcome.result);
        progress_ = 1;
        set_state(State::done);
    } else if (!outcome.problem.isEmpty()) {
        problem_ = outcome.problem;
        set_state(State::failed);
    }
}

void DrawsJob::set_state(State state) {
    state_ = state;
    Q_EMIT changed();
}

} // namespace rampwright::ui
