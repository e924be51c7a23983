#include "panels/step_note.hpp"

#include "look/theme.hpp"
#include "session/follow.hpp"
#include "session/session.hpp"

#include <QCheckBox>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <optional>

namespace rampwright::ui {
namespace {

QString measured_words(Step step) {
    switch (step) {
    case Step::agree:
        break;
    case Step::shape:
        return StepNote::tr("Decided: the block was weighed.");
    case Step::roll:
        return StepNote::tr("Decided: the wheels' spin was measured.");
    case Step::load:
        return StepNote::tr("Decided: the car's balance was measured.");
    case Step::aim:
        return StepNote::tr("Decided: the drift was measured on a board.");
    case Step::run:
        return StepNote::tr("Decided: the lane was measured, or this car was timed on it.");
    case Step::paper:
        return StepNote::tr("Decided: the finished car was weighed.");
    }
    return {};
}

/// What is usually done at a step that is open.
QString usual_thing(Step step) {
    switch (step) {
    case Step::agree:
        return StepNote::tr("Usual: choose the race's rules, then read its own sheet beside them.");
    case Step::shape:
        return StepNote::tr("Usual: weigh the block, choose a shape, then look at the wood that is left.");
    case Step::roll:
        return StepNote::tr("Usual: weigh the wheels, take the best four, then set the axles' places.");
    case Step::load:
        return StepNote::tr("Usual: move weight rearward until the front load or the time says stop.");
    case Step::aim:
        return StepNote::tr("Usual: bend the steering axle, roll the car on a board, and type the drift.");
    case Step::run:
        return StepNote::tr("Usual: choose the lane, compare cars, then type the times of real runs.");
    case Step::paper:
        return StepNote::tr("Usual: print the sheet, build, weigh the finished car, and type the reading.");
    }
    return {};
}

StepState state_of(const Session& session, Step step) {
    return step_state(session.document(), session.project(), session.car(), step);
}

/// The first step from this one on, round the job, that nobody decided.
std::optional<Step> next_open(const Session& session, Step from) {
    const auto first = static_cast<std::size_t>(from);
    for (std::size_t i = 1; i < all_job_steps.size(); ++i) {
        const Step step = all_job_steps[(first + i) % all_job_steps.size()];
        if (!state_of(session, step).decided()) return step;
    }
    return std::nullopt;
}

} // namespace

QString step_name(Step step) {
    switch (step) {
    case Step::agree:
        return StepNote::tr("Agree");
    case Step::shape:
        return StepNote::tr("Shape");
    case Step::roll:
        return StepNote::tr("Roll");
    case Step::load:
        return StepNote::tr("Load");
    case Step::aim:
        return StepNote::tr("Aim");
    case Step::run:
        return StepNote::tr("Run");
    case Step::paper:
        return StepNote::tr("Paper");
    }
    return {};
}

StepNote::StepNote(Session& session, Step step, QWidget* parent)
    : QWidget(parent),
      session_(session),
      step_(step),
      confirmed_(new QCheckBox(tr("I have decided this step"), this)),
      words_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 6, 8);
    column->setSpacing(4);
    column->addWidget(confirmed_);
    column->addWidget(words_);
    const QString word = QString::fromUtf8(to_string(step).data(), qsizetype(to_string(step).size()));
    confirmed_->setObjectName(QStringLiteral("decided.") + word);
    confirmed_->setWhatsThis(tr("The file keeps, for each car, which steps you decided. Nothing is locked by "
                                "it; the mark on the ruler shows how far the plan is."));
    words_->setObjectName(QStringLiteral("decided.words.") + word);
    words_->setWordWrap(true);
    words_->setFont(text_font(0.92));
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    connect(confirmed_, &QCheckBox::clicked, this,
            [this](bool on) { session_.apply(set_decided(session_.document(), session_.car(), step_, on)); });
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void StepNote::refresh() {
    // A drag decides nothing; its frames are kept for what follows the mouse.
    if (session_.in_gesture()) return;
    const StepState state = state_of(session_, step_);
    confirmed_->setChecked(state.confirmed);
    QStringList lines;
    if (!state.measured.empty()) lines << measured_words(step_);
    if (state.confirmed) lines << tr("Decided: you said so.");
    if (!state.decided()) lines << tr("Open: neither confirmed by you nor measured.");
    if (!state.usual.empty())
        lines << tr("Usual values that stand in for yours: %1.").arg(state.usual.size());
    if (!state.decided()) {
        lines << usual_thing(step_);
    } else if (const auto next = next_open(session_, step_)) {
        lines << tr("Next: %1.").arg(step_name(*next));
    } else {
        lines << tr("Every step is decided.");
    }
    words_->setText(lines.join(QLatin1Char('\n')));
}

void mark_decided_steps(StepRuler& ruler, Session& session) {
    const auto mark = [&ruler, &session] {
        if (session.in_gesture()) return;
        for (const Step step : all_job_steps)
            ruler.mark(step, state_of(session, step).decided());
    };
    QObject::connect(&session, &Session::changed, &ruler, mark);
    QObject::connect(&session, &Session::car_chosen, &ruler, mark);
    mark();
}

} // namespace rampwright::ui
