#include "roll/axle_bench_view.hpp"

#include "roll/bench_table.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/bench/axle_groups.hpp>
#include <rampwright/bench/axle_table.hpp>
#include <rampwright/units/entry.hpp>

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {
namespace {

enum AxleColumn { axle_name, axle_finish, axle_diameter, axle_bow, axle_group };

} // namespace

AxleBenchView::AxleBenchView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      axles_(new QTableWidget(this)),
      groups_(new QLabel(this)),
      trouble_(new QLabel(this)),
      remove_(new QPushButton(tr("Rem&ove the Axle"), this)) {
    setObjectName(QStringLiteral("axlebench"));
    axles_->setObjectName(QStringLiteral("axles.table"));
    axles_->setAccessibleName(tr("Measured axles, grouped"));
    set_up_bench_table(*axles_, {tr("Axle"), tr("Finish"), tr("Diameter"), tr("Bow"), tr("Group")});
    axles_->setWhatsThis(
        tr("Type into a cell. The bow is what a gauge shows from least to most while the axle "
           "turns between two rests: zero where it is straight. Axles of one group can stand "
           "for each other."));
    groups_->setObjectName(QStringLiteral("axles.groups"));
    trouble_->setObjectName(QStringLiteral("axles.trouble"));
    for (QLabel* label : {groups_, trouble_})
        label->setWordWrap(true);
    remove_->setObjectName(QStringLiteral("axles.remove"));
    auto* paste = new QPushButton(tr("P&aste a Table"), this);
    paste->setObjectName(QStringLiteral("axles.paste"));
    paste->setWhatsThis(
        tr("Takes axles from a table on the clipboard. Its first line names the columns: name, "
           "finish, diameter, bow."));
    auto* open = new QPushButton(tr("Fro&m a File…"), this);
    open->setObjectName(QStringLiteral("axles.open"));
    auto* add = new QPushButton(tr("A&dd an Axle"), this);
    add->setObjectName(QStringLiteral("axles.add"));
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {paste, open, add, remove_})
        buttons->addWidget(button);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(buttons);
    column->addWidget(trouble_);
    column->addWidget(axles_, 1);
    column->addWidget(groups_);
    connect(paste, &QPushButton::clicked, this, [this] { take_table(QApplication::clipboard()->text()); });
    connect(open, &QPushButton::clicked, this, [this] {
        if (const auto text = ask_for_table(*this, tr("Open a Table of Axles"), *trouble_)) take_table(*text);
    });
    connect(add, &QPushButton::clicked, this, &AxleBenchView::add_axle);
    connect(remove_, &QPushButton::clicked, this, &AxleBenchView::remove_axle);
    connect(axles_, &QTableWidget::cellChanged, this, &AxleBenchView::edit_cell);
    follow_while_seen(*this, session_, [this] { refresh(); });
}

void AxleBenchView::refresh() {
    if (session_.in_gesture()) return;
    const QSignalBlocker blocker(axles_);
    const UnitSystem units = session_.project().units;
    const auto& axles = session_.project().bench_axles;
    const auto current = bench_place(axles_->currentItem());
    const int current_column = std::max(axles_->currentColumn(), 0);
    const auto groups = group_axles(axles);
    axles_->setRowCount(static_cast<int>(axles.size()));
    int row = 0;
    for (std::size_t g = 0; g < groups.size(); ++g)
        for (const std::size_t place : groups[g].axles) {
            const BenchAxle& axle = axles[place];
            const QString group = !groups[g].straight ? tr("%1, bowed").arg(g + 1)
                                  : axle.bow          ? tr("%1, alike and straight").arg(g + 1)
                                                      : tr("%1, alike, bow not measured").arg(g + 1);
            axles_->setItem(row, axle_name, bench_text_cell(axle.name, place));
            axles_->setItem(row, axle_finish, bench_text_cell(axle.finish, place));
            axles_->setItem(row, axle_diameter,
                            bench_value_cell(axle.diameter, Quantity::length, units, place));
            axles_->setItem(row, axle_bow, bench_value_cell(axle.bow, Quantity::length, units, place));
            axles_->setItem(row, axle_group, bench_note_cell(group, place));
            if (current == place) axles_->setCurrentCell(row, current_column);
            ++row;
        }
    constexpr std::size_t on_a_car = 4;
    groups_->setText(!groups.empty() && groups[0].straight && groups[0].axles.size() >= on_a_car
                         ? tr("Group 1 has four or more that are alike: enough for a car.")
                         : tr("No group has four straight axles that are alike."));
    remove_->setEnabled(!axles.empty());
}

void AxleBenchView::take_table(const QString& text) {
    try {
        const AxleTable table = read_axle_table(text.toStdString());
        std::vector<BenchAxle> axles = session_.project().bench_axles;
        axles.insert(axles.end(), table.axles.begin(), table.axles.end());
        session_.apply(set_bench_axles(session_.document(), axles));
        QStringList said{tr("%n axle(s) taken.", nullptr, static_cast<int>(table.axles.size()))};
        said << table_faults_text(table.faults, table.ignored);
        trouble_->setText(said.join(QLatin1Char(' ')));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void AxleBenchView::edit_cell(int row, int column) {
    const QTableWidgetItem* item = axles_->item(row, column);
    std::vector<BenchAxle> axles = session_.project().bench_axles;
    const std::size_t place = bench_place(item).value_or(axles.size());
    if (place >= axles.size()) return;
    BenchAxle& axle = axles[place];
    try {
        const auto length = [&] {
            return bench_cell_value(*item, Quantity::length, session_.project().units);
        };
        if (column == axle_name) axle.name = item->text().trimmed().toStdString();
        if (column == axle_finish) axle.finish = item->text().trimmed().toStdString();
        if (column == axle_diameter) axle.diameter = length();
        if (column == axle_bow) axle.bow = length();
        session_.apply(set_bench_axles(session_.document(), axles));
        trouble_->clear();
    } catch (const EntryError& error) {
        // The text stays to be mended; the table of the project is as it was.
        trouble_->setText(QString::fromUtf8(error.what()));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void AxleBenchView::add_axle() {
    std::vector<BenchAxle> axles = session_.project().bench_axles;
    axles.push_back({std::to_string(axles.size() + 1), {}, {}, {}});
    session_.apply(set_bench_axles(session_.document(), axles));
    go_to(axles.size() - 1);
}

void AxleBenchView::remove_axle() {
    std::vector<BenchAxle> axles = session_.project().bench_axles;
    const auto place = bench_place(axles_->currentItem());
    if (!place || *place >= axles.size()) return;
    axles.erase(axles.begin() + static_cast<std::ptrdiff_t>(*place));
    session_.apply(set_bench_axles(session_.document(), axles));
}

void AxleBenchView::go_to(std::size_t place) {
    for (int row = 0; row < axles_->rowCount(); ++row)
        if (bench_place(axles_->item(row, axle_name)) == place) axles_->setCurrentCell(row, axle_name);
}

} // namespace rampwright::ui
