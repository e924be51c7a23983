#include "aim/tuning_view.hpp"

#include "aim/aim_pictures.hpp"
#include "look/theme.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/results/next_move.hpp>
#include <rampwright/steer/drift_board.hpp>
#include <rampwright/steer/tuning_state.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QFormLayout>
#include <QHeaderView>
#include <QVBoxLayout>

#include <cmath>

namespace rampwright::ui {
namespace {

QString sided(double value, Quantity quantity, UnitSystem units) {
    const QString size = quantity_text(std::abs(value), quantity, units);
    if (size == quantity_text(0, quantity, units)) return size;
    return value > 0 ? TuningView::tr("%1 to the left").arg(size)
                     : TuningView::tr("%1 to the right").arg(size);
}

QString turned(double by, UnitSystem units) {
    const QString size = quantity_text(std::abs(by), Quantity::angle, units);
    return by > 0 ? TuningView::tr("%1 clockwise").arg(size) : TuningView::tr("%1 anticlockwise").arg(size);
}

} // namespace

TuningView::TuningView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      board_(new BoardPicture(this)),
      head_(new AxleHeadPicture(this)),
      belief_(new QLabel(this)),
      move_(new QLabel(this)),
      trouble_(new QLabel(this)),
      roll_(new QLineEdit(this)),
      turn_(new QLineEdit(this)),
      table_(new QTableWidget(this)),
      remove_(new QPushButton(tr("&Remove the Entry"), this)),
      use_(new QPushButton(tr("&Set the Wheel to What the Board Showed"), this)) {
    setObjectName(QStringLiteral("tuning"));
    belief_->setObjectName(QStringLiteral("tuning.belief"));
    move_->setObjectName(QStringLiteral("tuning.move"));
    trouble_->setObjectName(QStringLiteral("tuning.trouble"));
    roll_->setObjectName(QStringLiteral("tuning.roll"));
    turn_->setObjectName(QStringLiteral("tuning.turn"));
    table_->setObjectName(QStringLiteral("tuning.table"));
    remove_->setObjectName(QStringLiteral("tuning.remove"));
    use_->setObjectName(QStringLiteral("tuning.use"));
    for (QLabel* label : {belief_, move_, trouble_})
        label->setWordWrap(true);
    move_->setFont(text_font(1.1, true));
    roll_->setPlaceholderText(tr("left is positive"));
    turn_->setPlaceholderText(tr("clockwise is positive"));
    roll_->setWhatsThis(
        tr("How far the watched mark went sideways on this roll: positive to the car's left. Press "
           "Return to log it."));
    table_->setWhatsThis(
        tr("Every roll and turn in the order they happened. One that is far off what the log "
           "expected is marked: look for dust, a wheel that rubs, a board that is not level."));
    remove_->setWhatsThis(tr("Takes the chosen line out of the log, as if it had not happened."));
    use_->setWhatsThis(
        tr("Sets the steer of the touching front wheel in the plan to what the log believes."));
    turn_->setWhatsThis(
        tr("How far you turned the guide wheel's axle, seen from its head: positive clockwise. Press "
           "Return to log it."));
    table_->setAccessibleName(tr("Tuning log"));
    table_->setColumnCount(2);
    table_->setHorizontalHeaderLabels({tr("What was done"), tr("Unusual?")});
    table_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);

    auto* words = new QVBoxLayout;
    words->addWidget(move_);
    words->addWidget(belief_);
    auto* form = new QFormLayout;
    form->addRow(tr("A ro&ll drifted"), roll_);
    form->addRow(tr("Axle &turned by"), turn_);
    words->addLayout(form);
    words->addWidget(trouble_);
    words->addWidget(table_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(remove_);
    buttons->addWidget(use_);
    words->addLayout(buttons);
    auto* lower = new QHBoxLayout;
    lower->addWidget(head_, 1);
    lower->addLayout(words, 2);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addWidget(board_, 2);
    column->addLayout(lower, 3);

    connect(roll_, &QLineEdit::returnPressed, this, [this] { add(*roll_, Quantity::length); });
    connect(turn_, &QLineEdit::returnPressed, this, [this] { add(*turn_, Quantity::angle); });
    connect(remove_, &QPushButton::clicked, this, &TuningView::remove_selected);
    connect(use_, &QPushButton::clicked, this, &TuningView::set_wheel_from_board);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void TuningView::add(QLineEdit& field, Quantity quantity) {
    try {
        const double value = parse_entry(field.text().toStdString(), quantity, session_.project().units);
        TuningEvent event;
        (quantity == Quantity::length ? event.drift : event.turned) = value;
        session_.apply(add_tuning_event(session_.document(), session_.car(), event));
        field.clear();
        trouble_->clear();
    } catch (const EntryError& error) {
        // What was typed stays, to be mended.
        trouble_->setText(QString::fromUtf8(error.what()));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void TuningView::remove_selected() {
    const int row = table_->currentRow();
    if (row >= 0)
        session_.apply(
            remove_tuning_event(session_.document(), session_.car(), static_cast<std::size_t>(row)));
}

void TuningView::set_wheel_from_board() {
    const CarPlan& plan = session_.plan();
    const TuningState state = follow_tuning_log(plan, practice_target);
    // The log knows more than a single reading; without one the noted drift is what was seen.
    const double steer = state.log.rolls() > 0
                             ? state.steer()
                             : steer_from_drift(state.plan.wheelbase, plan.steer.drift.value_or(0),
                                                state.plan.over, plan.steer.watched_ahead);
    Edit edit{session_.document(), {}, {}};
    for (const Corner corner : {Corner::front_left, Corner::front_right})
        if (plan.wheels[std::size_t(corner)].touches)
            edit = set_toe(edit.document, session_.car(), corner, steer);
    edit.keys = difference(session_.document(), edit.document);
    session_.apply(edit);
}

void TuningView::refresh() {
    const UnitSystem units = session_.project().units;
    const CarPlan& plan = session_.plan();
    const Figures* figures = session_.figures();
    const double usual =
        figures && figures->steer.best_drift ? std::abs(*figures->steer.best_drift) : practice_target;
    const TuningState state = follow_tuning_log(plan, usual);

    BoardPicture::Board board;
    board.over = state.plan.over;
    board.target = state.target();
    board.tolerance = state.plan.tolerance;
    if (state.log.rolls() > 0) board.believed = state.drift();
    for (const TuningEvent& event : plan.steer.log)
        if (event.drift) board.rolls.push_back(*event.drift);
    board_->set(board);

    const auto next = state.next_turn();
    head_->set(state.side * state.log.axle().turn, next);
    move_->setText(QString::fromStdString(next_move_text(state.next(), next, state.towards_rail(), units)));
    belief_->setText(
        tr("Believed drift %1 over %2, target %3. Steer %4. Within tolerance with a chance of %5.")
            .arg(tr("%1 ± %2").arg(sided(state.drift(), Quantity::length, units),
                                   quantity_text(state.log.drift_sigma(), Quantity::length, units)),
                 quantity_text(state.plan.over, Quantity::length, units),
                 sided(state.target(), Quantity::length, units),
                 tr("%1 ± %2").arg(sided(state.steer(), Quantity::angle, units),
                                   quantity_text(state.log.steer_sigma(), Quantity::angle, units)),
                 quantity_text(state.log.probability_within(), Quantity::percent, units)));

    table_->setRowCount(static_cast<int>(plan.steer.log.size()));
    for (int i = 0; i < table_->rowCount(); ++i) {
        const TuningEvent& event = plan.steer.log[static_cast<std::size_t>(i)];
        const QString what = event.drift
                                 ? tr("rolled: %1").arg(sided(*event.drift, Quantity::length, units))
                                 : tr("turned the axle %1").arg(turned(event.turned.value_or(0), units));
        constexpr double unusual = 3;
        const bool odd = std::abs(state.surprises[static_cast<std::size_t>(i)]) > unusual;
        table_->setItem(i, 0, new QTableWidgetItem(what));
        table_->setItem(i, 1, new QTableWidgetItem(odd ? tr("yes: look for a cause") : QString()));
    }
    remove_->setEnabled(table_->rowCount() > 0);
    use_->setEnabled(state.log.rolls() > 0 || plan.steer.drift);
}

} // namespace rampwright::ui
