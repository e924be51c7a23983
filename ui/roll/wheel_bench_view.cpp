#include "roll/wheel_bench_view.hpp"

#include "look/theme.hpp"
#include "roll/wheel_columns.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/bench/axle_groups.hpp>
#include <rampwright/study/wheel_worth.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {
namespace {

constexpr int name_column = 0, mould_column = 1, first_value = 2, verdict_column = 7;

QString entry_text(const std::optional<double>& value, Quantity quantity, UnitSystem units) {
    return value ? QString::fromStdString(format_entry(*value, quantity, units)) : QString();
}

/// Sorts by what a cell holds, not by how it is spelled.
class ValueItem : public QTableWidgetItem {
public:
    ValueItem(const QString& text, std::optional<double> value, int place)
        : QTableWidgetItem(text), value_(value) {
        setData(Qt::UserRole, place);
    }
    bool operator<(const QTableWidgetItem& other) const override {
        const auto* value = dynamic_cast<const ValueItem*>(&other);
        if (!value || !value_ || !value->value_) return value_.has_value() && !(value && value->value_);
        return *value_ < *value->value_;
    }

private:
    std::optional<double> value_;
};

QString wheel_name(const BenchWheel& wheel, std::size_t place) {
    return wheel.name.empty() ? WheelBenchView::tr("wheel %1").arg(place + 1)
                              : QString::fromStdString(wheel.name);
}

} // namespace

WheelBenchView::WheelBenchView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      wheels_(new QTableWidget(this)),
      axles_(new QTableWidget(this)),
      choice_(new QLabel(this)),
      trouble_(new QLabel(this)),
      fit_(new QPushButton(tr("&Put These Four on the Car"), this)),
      remove_(new QPushButton(tr("Remo&ve the Wheel"), this)) {
    setObjectName(QStringLiteral("wheelbench"));
    wheels_->setObjectName(QStringLiteral("bench.wheels"));
    wheels_->setAccessibleName(tr("Measured wheels"));
    wheels_->setColumnCount(verdict_column + 1);
    wheels_->setHorizontalHeaderLabels({tr("Wheel"), tr("Mould mark"), tr("Weighs"), tr("Diameter"),
                                        tr("Run-out"), tr("Bore"), tr("Spins for"), tr("Notes")});
    axles_->setObjectName(QStringLiteral("bench.axles"));
    axles_->setAccessibleName(tr("Measured axles, grouped"));
    axles_->setColumnCount(5);
    axles_->setHorizontalHeaderLabels({tr("Axle"), tr("Finish"), tr("Diameter"), tr("Bow"), tr("Group")});
    axles_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    for (QTableWidget* table : {wheels_, axles_}) {
        table->verticalHeader()->hide();
        table->setSelectionBehavior(QAbstractItemView::SelectRows);
        table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
        table->horizontalHeader()->setStretchLastSection(true);
    }
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
    auto* open = new QPushButton(tr("From a &File…"), this);
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
    column->addWidget(wheels_, 3);
    column->addLayout(choice_row);
    column->addWidget(axles_, 1);

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
    show_axles();
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
        const auto text_item = [&](int column, const std::string& text) {
            auto* item = new QTableWidgetItem(QString::fromStdString(text));
            item->setData(Qt::UserRole, row);
            wheels_->setItem(row, column, item);
        };
        text_item(name_column, wheels[i].name);
        text_item(mould_column, wheels[i].mould);
        QStringList notes;
        for (std::size_t c = 0; c < all_wheel_columns.size(); ++c) {
            const auto& value = value_of(wheels[i], all_wheel_columns[c]);
            const int column = first_value + static_cast<int>(c);
            wheels_->setItem(row, column,
                             new ValueItem(entry_text(value, wheel_column_quantity[c], units), value, row));
            const bool odd = std::any_of(outliers.begin(), outliers.end(), [&](const Outlier& outlier) {
                return outlier.wheel == i && outlier.column == all_wheel_columns[c];
            });
            if (odd) notes << tr("odd %1").arg(wheels_->horizontalHeaderItem(column)->text().toLower());
        }
        auto* note = new QTableWidgetItem(notes.join(QStringLiteral(", ")));
        note->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        note->setData(Qt::UserRole, row);
        wheels_->setItem(row, verdict_column, note);
    }
    wheels_->setSortingEnabled(true);
    remove_->setEnabled(!wheels.empty());
}

void WheelBenchView::show_axles() {
    const UnitSystem units = session_.project().units;
    const auto& axles = session_.project().bench_axles;
    const auto groups = group_axles(axles);
    int rows = 0;
    for (const AxleGroup& group : groups)
        rows += static_cast<int>(group.axles.size());
    axles_->setRowCount(rows);
    int row = 0;
    for (std::size_t g = 0; g < groups.size(); ++g)
        for (const std::size_t place : groups[g].axles) {
            const BenchAxle& axle = axles[place];
            const QStringList cells{QString::fromStdString(axle.name), QString::fromStdString(axle.finish),
                                    entry_text(axle.diameter, Quantity::length, units),
                                    entry_text(axle.bow, Quantity::length, units),
                                    groups[g].straight ? tr("%1, alike and straight").arg(g + 1)
                                                       : tr("%1, bowed").arg(g + 1)};
            for (int column = 0; column < cells.size(); ++column)
                axles_->setItem(row, column, new QTableWidgetItem(cells[column]));
            ++row;
        }
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
        const auto name = [&](std::size_t place) { return wheel_name(wheels[place], place); };
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
        for (const TableFault& fault : table.faults)
            said << tr("Line %1, %2: “%3” is left out: %4.")
                        .arg(fault.line)
                        .arg(QString::fromStdString(fault.column), QString::fromStdString(fault.text),
                             QString::fromStdString(fault.why));
        for (const std::string& heading : table.ignored)
            said << tr("The column “%1” means nothing here.").arg(QString::fromStdString(heading));
        trouble_->setText(said.join(QLatin1Char(' ')));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void WheelBenchView::open_table() {
    const QString name = QFileDialog::getOpenFileName(this, tr("Open a Table of Wheels"), {},
                                                      tr("Tables (*.csv *.tsv *.txt);;All files (*)"));
    QFile file(name);
    if (name.isEmpty()) return;
    constexpr qint64 most_bytes = 4 << 20;
    if (file.open(QIODevice::ReadOnly))
        take_table(QString::fromUtf8(file.read(most_bytes)));
    else
        trouble_->setText(tr("%1 cannot be read: %2").arg(name, file.errorString()));
}

void WheelBenchView::edit_cell(int row, int column) {
    const QTableWidgetItem* item = wheels_->item(row, column);
    std::vector<BenchWheel> wheels = session_.project().bench_wheels;
    const auto place = static_cast<std::size_t>(item->data(Qt::UserRole).toInt());
    if (place >= wheels.size()) return;
    const std::string text = item->text().trimmed().toStdString();
    try {
        if (column == name_column) {
            wheels[place].name = text;
        } else if (column == mould_column) {
            wheels[place].mould = text;
        } else {
            const auto which = static_cast<std::size_t>(column - first_value);
            auto& slot = value_of(wheels[place], all_wheel_columns.at(which));
            slot = text.empty() ? std::nullopt
                                : std::optional(parse_entry(text, wheel_column_quantity[which],
                                                            session_.project().units));
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
    const QTableWidgetItem* item = wheels_->currentItem();
    std::vector<BenchWheel> wheels = session_.project().bench_wheels;
    if (!item) return;
    const int place = item->data(Qt::UserRole).toInt();
    if (place < 0 || static_cast<std::size_t>(place) >= wheels.size()) return;
    wheels.erase(wheels.begin() + place);
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
