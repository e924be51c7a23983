#include "roll/wheel_bench_view.hpp"

#include "roll/bench_table.hpp"
#include "roll/bench_wheel_box.hpp"
#include "roll/wheel_columns.hpp"
#include "text/figure_text.hpp"

#include <rampwright/study/wheel_worth.hpp>
#include <rampwright/units/format.hpp>

#include <QHBoxLayout>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr int name_column = 0, mould_column = 1, first_value = 2, verdict_column = 7;

} // namespace

WheelBenchView::Words WheelBenchView::words() {
    return {
        QStringLiteral("bench"),
        QStringLiteral("bench.wheels"),
        tr("Measured wheels"),
        tr("Type into a cell, in any unit; a click on a heading sorts. The run-out is what a gauge "
           "on the tread shows from least to most in a turn. What is odd is noted, never "
           "dropped."),
        {tr("Wheel"), tr("Mould mark"), tr("Weighs"), tr("Diameter"), tr("Run-out"), tr("Bore"),
         tr("Spins for"), tr("Notes")},
        tr("Takes wheels from a table on the clipboard. Its first line names the columns: name, mould, "
           "mass, diameter, runout, bore, spin."),
        tr("Open a Table of Wheels"),
        tr("A&dd a Wheel"),
        tr("Rem&ove the Wheel"),
    };
}

WheelBenchView::WheelBenchView(Session& session, QWidget* parent)
    : BenchTableView(session, words(), parent),
      choice_(new QLabel(this)),
      fit_(new QPushButton(tr("&Put These Four on the Car"), this)) {
    setObjectName(QStringLiteral("wheelbench"));
    choice_->setObjectName(QStringLiteral("bench.choice"));
    choice_->setWordWrap(true);
    fit_->setObjectName(QStringLiteral("bench.fit"));
    auto* choice_row = new QHBoxLayout;
    choice_row->addWidget(choice_, 1);
    choice_row->addWidget(fit_);
    put_below(choice_row);
    connect(fit_, &QPushButton::clicked, this, &WheelBenchView::fit_choice);
}

void WheelBenchView::refresh() {
    show_wheels();
    show_choice();
}

void WheelBenchView::show_wheels() {
    const auto& wheels = session().project().bench_wheels;
    const UnitSystem units = session().project().units;
    const auto outliers = find_outliers(wheels);
    table().setSortingEnabled(false);
    table().setRowCount(static_cast<int>(wheels.size()));
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        const int row = static_cast<int>(i);
        table().setItem(row, name_column, bench_text_cell(wheels[i].name, i));
        table().setItem(row, mould_column, bench_text_cell(wheels[i].mould, i));
        QStringList notes;
        for (std::size_t c = 0; c < all_wheel_columns.size(); ++c) {
            const auto& value = value_of(wheels[i], all_wheel_columns[c]);
            const int column = first_value + static_cast<int>(c);
            table().setItem(row, column, bench_value_cell(value, wheel_column_quantity[c], units, i));
            const bool odd = std::any_of(outliers.begin(), outliers.end(), [&](const Outlier& outlier) {
                return outlier.wheel == i && outlier.column == all_wheel_columns[c];
            });
            if (odd) notes << tr("odd %1").arg(table().horizontalHeaderItem(column)->text().toLower());
        }
        table().setItem(row, verdict_column, bench_note_cell(notes.join(QStringLiteral(", ")), i));
    }
    table().setSortingEnabled(true);
}

void WheelBenchView::show_choice() {
    chosen_ = {};
    fit_->setEnabled(false);
    const auto& wheels = session().project().bench_wheels;
    try {
        const HeatCase heat_case = make_case(session().project(), session().car());
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
            choice.saved.value, choice.saved.sigma, Quantity::time, session().project().units, options));
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

QStringList WheelBenchView::take(const std::string& text) {
    const WheelTable read = read_wheel_table(text);
    std::vector<BenchWheel> wheels = session().project().bench_wheels;
    wheels.insert(wheels.end(), read.wheels.begin(), read.wheels.end());
    session().apply(set_bench_wheels(session().document(), wheels));
    return QStringList{tr("%n wheel(s) taken.", nullptr, static_cast<int>(read.wheels.size()))}
           << table_faults_text(read.faults, read.ignored);
}

void WheelBenchView::set_cell(std::size_t place, const QTableWidgetItem& item) {
    std::vector<BenchWheel> wheels = session().project().bench_wheels;
    const std::string text = item.text().trimmed().toStdString();
    if (item.column() == name_column) {
        wheels[place].name = text;
    } else if (item.column() == mould_column) {
        wheels[place].mould = text;
    } else {
        const auto which = static_cast<std::size_t>(item.column() - first_value);
        value_of(wheels[place], all_wheel_columns.at(which)) =
            bench_cell_value(item, wheel_column_quantity[which], session().project().units);
    }
    session().apply(set_bench_wheels(session().document(), wheels));
}

void WheelBenchView::add_row() {
    std::vector<BenchWheel> wheels = session().project().bench_wheels;
    BenchWheel wheel;
    wheel.name = std::to_string(wheels.size() + 1);
    wheels.push_back(wheel);
    session().apply(set_bench_wheels(session().document(), wheels));
}

void WheelBenchView::remove_row(std::size_t place) {
    std::vector<BenchWheel> wheels = session().project().bench_wheels;
    wheels.erase(wheels.begin() + static_cast<std::ptrdiff_t>(place));
    session().apply(set_bench_wheels(session().document(), wheels));
}

void WheelBenchView::fit_choice() {
    Edit edit{session().document(), tr("Fit four bench wheels").toStdString(), {}};
    for (const Corner corner : all_corners)
        if (const auto place = chosen_[std::size_t(corner)])
            edit.document = use_bench_wheel(edit.document, session().car(), corner, *place).document;
    edit.keys = difference(session().document(), edit.document);
    session().apply(edit);
}

} // namespace rampwright::ui
