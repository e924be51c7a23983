#include "panels/step_note.hpp"

#include "fields/field_spec.hpp"
#include "look/theme.hpp"
#include "session/follow.hpp"
#include "session/session.hpp"

#include <QCheckBox>
#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <optional>

namespace rampwright::ui {
namespace {

struct StepWords {
    const char* name;
    const char* measured; ///< what decided it, where a measured value did
    const char* usual;    ///< what is usually done while it is open
};

/// In the order of the job. Rules are read, not measured.
constexpr std::array<StepWords, all_job_steps.size()> step_words{{
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Agree"), "",
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: choose the race's rules, then read its own sheet beside them.")},
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Shape"),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Decided: the block was weighed."),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: weigh the block, choose a shape, then look at the wood that is left.")},
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Roll"),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Decided: the wheels' spin was measured."),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: weigh the wheels, take the best four, then set the axles' places.")},
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Load"),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Decided: the car's balance was measured."),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: move weight rearward until the front load or the time says stop.")},
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Aim"),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Decided: the drift was measured on a board."),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: bend the steering axle, roll the car on a board, and type the drift.")},
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Run"),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Decided: the lane was measured, or this car was timed on it."),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: choose the lane, compare cars, then type the times of real runs.")},
    {QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Paper"),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote", "Decided: the finished car was weighed."),
     QT_TRANSLATE_NOOP("rampwright::ui::StepNote",
                       "Usual: print the sheet, build, weigh the finished car, and type the reading.")},
}};

const StepWords& words_of(Step step) {
    return step_words[static_cast<std::size_t>(step)];
}

/// What the fields of these values are labelled, each label once, in the order of the slips.
QStringList labels_of(const Session& session, const std::vector<std::string>& pointers) {
    QStringList labels;
    for (const auto& groups :
         {scale_fields(), shape_fields(), roll_fields(), aim_fields(), run_fields(), measured_fields()})
        for (const FieldGroup& group : groups)
            for (const FieldSpec& field : group.fields) {
                const auto pointer = resolve_pointer(session, field.pointer);
                if (!pointer || std::find(pointers.begin(), pointers.end(), *pointer) == pointers.end())
                    continue;
                const QString label = QCoreApplication::translate("Fields", field.label);
                if (!labels.contains(label)) labels << label;
            }
    return labels;
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
    return StepNote::tr(words_of(step).name);
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
    if (!state.measured.empty()) lines << tr(words_of(step_).measured);
    if (state.confirmed) lines << tr("Decided: you said so.");
    if (!state.decided()) lines << tr("Open: neither confirmed by you nor measured.");
    if (!state.usual.empty()) {
        const QStringList named = labels_of(session_, state.usual);
        const QString count = QString::number(state.usual.size());
        lines << (named.isEmpty() ? tr("Usual values that stand in for yours: %1.").arg(count)
                                  : tr("Usual values that stand in for yours: %1, among them %2.")
                                        .arg(count, named.mid(0, 4).join(QStringLiteral(", "))));
    }
    if (!state.decided()) {
        lines << tr(words_of(step_).usual);
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
