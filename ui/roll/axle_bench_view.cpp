#include "roll/axle_bench_view.hpp"

#include "roll/bench_table.hpp"

#include <rampwright/bench/axle_groups.hpp>
#include <rampwright/bench/axle_table.hpp>

#include <algorithm>

namespace rampwright::ui {
namespace {

enum AxleColumn { axle_name, axle_finish, axle_diameter, axle_bow, axle_group };

} // namespace

AxleBenchView::Words AxleBenchView::words() {
    return {
        QStringLiteral("axles"),
        QStringLiteral("axles.table"),
        tr("Measured axles, grouped"),
        tr("Type into a cell. The bow is what a gauge shows from least to most while the axle "
           "turns between two rests: zero where it is straight. Axles of one group can stand "
           "for each other."),
        {tr("Axle"), tr("Finish"), tr("Diameter"), tr("Bow"), tr("Group")},
        tr("Takes axles from a table on the clipboard. Its first line names the columns: name, "
           "finish, diameter, bow."),
        tr("Open a Table of Axles"),
        tr("A&dd an Axle"),
        tr("Rem&ove the Axle"),
    };
}

AxleBenchView::AxleBenchView(Session& session, QWidget* parent)
    : BenchTableView(session, words(), parent), groups_(new QLabel(this)) {
    setObjectName(QStringLiteral("axlebench"));
    groups_->setObjectName(QStringLiteral("axles.groups"));
    groups_->setWordWrap(true);
    put_below(groups_);
}

void AxleBenchView::refresh() {
    const UnitSystem units = session().project().units;
    const auto& axles = session().project().bench_axles;
    const auto current = bench_place(table().currentItem());
    const int current_column = std::max(table().currentColumn(), 0);
    const auto groups = group_axles(axles);
    table().setRowCount(static_cast<int>(axles.size()));
    int row = 0;
    for (std::size_t g = 0; g < groups.size(); ++g)
        for (const std::size_t place : groups[g].axles) {
            const BenchAxle& axle = axles[place];
            const QString group = !groups[g].straight ? tr("%1, bowed").arg(g + 1)
                                  : axle.bow          ? tr("%1, alike and straight").arg(g + 1)
                                                      : tr("%1, alike, bow not measured").arg(g + 1);
            table().setItem(row, axle_name, bench_text_cell(axle.name, place));
            table().setItem(row, axle_finish, bench_text_cell(axle.finish, place));
            table().setItem(row, axle_diameter,
                            bench_value_cell(axle.diameter, Quantity::length, units, place));
            table().setItem(row, axle_bow, bench_value_cell(axle.bow, Quantity::length, units, place));
            table().setItem(row, axle_group, bench_note_cell(group, place));
            if (current == place) table().setCurrentCell(row, current_column);
            ++row;
        }
    constexpr std::size_t on_a_car = 4;
    groups_->setText(!groups.empty() && groups[0].straight && groups[0].axles.size() >= on_a_car
                         ? tr("Group 1 has four or more that are alike: enough for a car.")
                         : tr("No group has four straight axles that are alike."));
}

QStringList AxleBenchView::take(const std::string& text) {
    const AxleTable read = read_axle_table(text);
    std::vector<BenchAxle> axles = session().project().bench_axles;
    axles.insert(axles.end(), read.axles.begin(), read.axles.end());
    session().apply(set_bench_axles(session().document(), axles));
    return QStringList{tr("%n axle(s) taken.", nullptr, static_cast<int>(read.axles.size()))}
           << table_faults_text(read.faults, read.ignored);
}

void AxleBenchView::set_cell(std::size_t place, const QTableWidgetItem& item) {
    std::vector<BenchAxle> axles = session().project().bench_axles;
    BenchAxle& axle = axles[place];
    const auto text = [&] { return item.text().trimmed().toStdString(); };
    const auto length = [&] { return bench_cell_value(item, Quantity::length, session().project().units); };
    if (item.column() == axle_name) axle.name = text();
    if (item.column() == axle_finish) axle.finish = text();
    if (item.column() == axle_diameter) axle.diameter = length();
    if (item.column() == axle_bow) axle.bow = length();
    session().apply(set_bench_axles(session().document(), axles));
}

void AxleBenchView::add_row() {
    std::vector<BenchAxle> axles = session().project().bench_axles;
    axles.push_back({std::to_string(axles.size() + 1), {}, {}, {}});
    session().apply(set_bench_axles(session().document(), axles));
    go_to(axles.size() - 1);
}

void AxleBenchView::remove_row(std::size_t place) {
    std::vector<BenchAxle> axles = session().project().bench_axles;
    axles.erase(axles.begin() + static_cast<std::ptrdiff_t>(place));
    session().apply(set_bench_axles(session().document(), axles));
}

void AxleBenchView::go_to(std::size_t place) {
    for (int row = 0; row < table().rowCount(); ++row)
        if (bench_place(table().item(row, axle_name)) == place) table().setCurrentCell(row, axle_name);
}

} // namespace rampwright::ui
