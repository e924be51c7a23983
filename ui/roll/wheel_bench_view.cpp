#include "roll/wheel_bench_view.hpp"

#include "roll/bench_table.hpp"
#include "roll/bench_wheel_box.hpp"
#include "roll/wheel_columns.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/study/wheel_worth.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr int name_column = 0, mould_column = 1, first_value = 2, verdict_column = 7;

} // namespace

WheelBenchView::WheelBenchView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      wheels_(new QTableWidget(this)),
      choice_(new QLabel(this)),
      trouble_(new QLabel(this)),
      fit_(new QPushButton(tr("&Put These Four on the Car"), this)),
      remove_(new QPushButton(tr("Rem&ove the Wheel"), this)) {
    setObjectName(QStringLiteral("wheelbench"));
    wheels_->setObjectName(QStringLiteral("bench.wheels"));
    wheels_->setAccessibleName(tr("Measured wheels"));
    set_up_bench_table(*wheels_, {tr("Wheel"), tr("Mould mark"), tr("Weighs"), tr("Diameter"), tr("Run-out"),
                                  tr("Bore"), tr("Spins for"), tr("Notes")});
    wheels_->setWhatsThis(
        tr("Type into a cell, in any unit; a click on a heading sorts. The run-out is what a gauge "
           "on the tread shows from least to most in a turn. What is odd is noted, never "
           "dropped."));
    choice_->setObjectName(QStringLiteral("bench.choice"));
    trouble_->setObjectName(QStringLiteral("bench.trouble"));
    fit_->setObjectName(QStringLiteral("bench.fit"));
    remove_->setObjectName(QStringLiteral("bench.remove"));
    for (QLabel* label : {choice_, trouble_})
        label->setWordWrap(true);

    auto* paste = new QPushButton(tr("P&aste a Table"), this);
    paste->setObjectName(QStringLiteral("bench.paste"));
    paste->setWhatsThis(
        tr("Takes wheels from a table on the clipboard. Its first line names the columns: name, mould, "
           "mass, diameter, runout, bore, spin."));
    auto* open = new QPushButton(tr("Fro&m a File…"), this);
    open->setObjectName(QStringLiteral("bench.open"));
    auto* add = new QPushButton(tr("A&dd a Wheel"), this);
    add->setObjectName(QStringLiteral("bench.add"));
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {paste, open, add, remove_})
        buttons->addWidget(button);
    buttons->addStretch(1);
    auto* choice_row = new QHBoxLayout;
    choice_row->addWidget(choice_, 1);
    choice_row->addWidget(fit_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(buttons);
    column->addWidget(trouble_);
    column->addWidget(wheels_, 1);
    column->addLayout(choice_row);

    connect(paste, &QPushButton::clicked, this, [this] { take_table(QApplication::clipboard()->text()); });
    connect(open, &QPushButton::clicked, this, &WheelBenchView::open_table);
    connect(add, &QPushButton::clicked, this, &WheelBenchView::add_wheel);
    connect(remove_, &QPushButton::clicked, this, &WheelBenchView::remove_wheel);
    connect(fit_, &QPushButton::clicked, this, &WheelBenchView::fit_choice);
    connect(wheels_, &QTableWidget::cellChanged, this, &WheelBenchView::edit_cell);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void WheelBenchView::refresh() {
    if (session_.in_gesture()) return;
    show_wheels();
    show_choice();
}

void WheelBenchView::show_wheels() {
    const QSignalBlocker blocker(wheels_);
    const auto& wheels = session_.project().bench_wheels;
    const UnitSystem units = session_.project().units;
    const auto outliers = find_outliers(wheels);
    wheels_->setSortingEnabled(false);
    wheels_->setRowCount(static_cast<int>(wheels.size()));
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        const int row = static_cast<int>(i);
        wheels_->setItem(row, name_column, bench_text_cell(wheels[i].name, i));
        wheels_->setItem(row, mould_column, bench_text_cell(wheels[i].mould, i));
        QStringList notes;
        for (std::size_t c = 0; c < all_wheel_columns.size(); ++c) {
            const auto& value = value_of(wheels[i], all_wheel_columns[c]);
            const int column = first_value + static_cast<int>(c);
            wheels_->setItem(row, column, bench_value_cell(value, wheel_column_quantity[c], units, i));
            const bool odd = std::any_of(outliers.begin(), outliers.end(), [&](const Outlier& outlier) {
                return outlier.wheel == i && outlier.column == all_wheel_columns[c];
            });
            if (odd) notes << tr("odd %1").arg(wheels_->horizontalHeaderItem(column)->text().toLower());
        }
        wheels_->setItem(row, verdict_column, bench_note_cell(notes.join(QStringLiteral(", ")), i));
    }
    wheels_->setSortingEnabled(true);
    remove_->setEnabled(!wheels.empty());
}

void WheelBenchView::show_choice() {
    chosen_ = {};
    fit_->setEnabled(false);
    const auto& wheels = session_.project().bench_wheels;
    try {
        const HeatCase heat_case = make_case(session_.project(), session_.car());
        const WheelChoice choice = choose_wheels(wheels, wheel_worth(heat_case));
        const bool left_guides = heat_case.car.wheels[std::size_t(Corner::front_left)].touches;
        const Corner guide = left_guides ? Corner::front_left : Corner::front_right;
        const Corner other = left_guides ? Corner::front_right : Corner::front_left;
        chosen_[std::size_t(guide)] = choice.guide;
        chosen_[std::size_t(other)] = choice.raised;
        chosen_[std::size_t(Corner::rear_left)] = choice.rear[0];
        chosen_[std::size_t(Corner::rear_right)] = choice.rear[1];
        const auto name = [&](std::size_t place) { return bench_wheel_name(wheels[place], place); };
        FormatOptions options;
        options.unit = find_unit("ms");
        const QString saved = QString::fromStdString(format_with_sigma(
            choice.saved.value, choice.saved.sigma, Quantity::time, session_.project().units, options));
        const bool raised = !heat_case.car.wheels[std::size_t(other)].touches;
        choice_->setText((raised ? tr("Take %1 for the wheel that meets the rail, %2 for the raised one, %3 "
                                      "and %4 at the rear. Worth "
                                      "%5 against four taken blindly.")
                                 : tr("Take %1 for the wheel that meets the rail, %2 beside it, %3 and %4 at "
                                      "the rear. Worth %5 "
                                      "against four taken blindly."))
                             .arg(name(choice.guide), name(choice.raised), name(choice.rear[0]),
                                  name(choice.rear[1]), saved));
        fit_->setEnabled(true);
    } catch (const Problem& problem) {
        choice_->setText(problem_text(problem));
    }
}

void WheelBenchView::take_table(const QString& text) {
    try {
        const WheelTable table = read_wheel_table(text.toStdString());
        std::vector<BenchWheel> wheels = session_.project().bench_wheels;
        wheels.insert(wheels.end(), table.wheels.begin(), table.wheels.end());
        session_.apply(set_bench_wheels(session_.document(), wheels));
        QStringList said{tr("%n wheel(s) taken.", nullptr, static_cast<int>(table.wheels.size()))};
        said << table_faults_text(table.faults, table.ignored);
        trouble_->setText(said.join(QLatin1Char(' ')));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void WheelBenchView::open_table() {
    if (const auto text = ask_for_table(*this, tr("Open a Table of Wheels"), *trouble_)) take_table(*text);
}

void WheelBenchView::edit_cell(int row, int column) {
    const QTableWidgetItem* item = wheels_->item(row, column);
    std::vector<BenchWheel> wheels = session_.project().bench_wheels;
    const std::size_t place = bench_place(item).value_or(wheels.size());
    if (place >= wheels.size()) return;
    const std::string text = item->text().trimmed().toStdString();
    try {
        if (column == name_column) {
            wheels[place].name = text;
        } else if (column == mould_column) {
            wheels[place].mould = text;
        } else {
            const auto which = static_cast<std::size_t>(column - first_value);
            value_of(wheels[place], all_wheel_columns.at(which)) =
                bench_cell_value(*item, wheel_column_quantity[which], session_.project().units);
        }
        session_.apply(set_bench_wheels(session_.document(), wheels));
        trouble_->clear();
    } catch (const EntryError& error) {
        // The text stays to be mended; the table of the project is as it was.
        trouble_->setText(QString::fromUtf8(error.what()));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void WheelBenchView::add_wheel() {
    std::vector<BenchWheel> wheels = session_.project().bench_wheels;
    BenchWheel wheel;
    wheel.name = std::to_string(wheels.size() + 1);
    wheels.push_back(wheel);
    session_.apply(set_bench_wheels(session_.document(), wheels));
}

void WheelBenchView::remove_wheel() {
    std::vector<BenchWheel> wheels = session_.project().bench_wheels;
    const auto place = bench_place(wheels_->currentItem());
    if (!place || *place >= wheels.size()) return;
    wheels.erase(wheels.begin() + static_cast<std::ptrdiff_t>(*place));
    session_.apply(set_bench_wheels(session_.document(), wheels));
}

void WheelBenchView::fit_choice() {
    Edit edit{session_.document(), tr("Fit four bench wheels").toStdString(), {}};
    for (const Corner corner : all_corners)
        if (const auto place = chosen_[std::size_t(corner)])
            edit.document = use_bench_wheel(edit.document, session_.car(), corner, *place).document;
    edit.keys = difference(session_.document(), edit.document);
    session_.apply(edit);
}

} // namespace rampwright::ui
