#include "roll/bench_table.hpp"

#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <QHeaderView>

namespace rampwright::ui {
namespace {

class ValueItem : public QTableWidgetItem {
public:
    ValueItem(const QString& text, std::optional<double> value) : QTableWidgetItem(text), value_(value) {}
    bool operator<(const QTableWidgetItem& other) const override {
        const auto* value = dynamic_cast<const ValueItem*>(&other);
        if (!value || !value_ || !value->value_) return value_.has_value() && !(value && value->value_);
        return *value_ < *value->value_;
    }

private:
    std::optional<double> value_;
};

QTableWidgetItem* placed(QTableWidgetItem* item, std::size_t place) {
    item->setData(Qt::UserRole, static_cast<int>(place));
    return item;
}

} // namespace

void set_up_bench_table(QTableWidget& table, const QStringList& headings) {
    table.setColumnCount(static_cast<int>(headings.size()));
    table.setHorizontalHeaderLabels(headings);
    table.verticalHeader()->hide();
    table.setSelectionBehavior(QAbstractItemView::SelectRows);
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setStretchLastSection(true);
}

QTableWidgetItem* bench_text_cell(const std::string& text, std::size_t place) {
    return placed(new QTableWidgetItem(QString::fromStdString(text)), place);
}

QTableWidgetItem* bench_value_cell(const std::optional<double>& value, Quantity quantity, UnitSystem units,
                                   std::size_t place) {
    const QString text = value ? QString::fromStdString(format_entry(*value, quantity, units)) : QString();
    return placed(new ValueItem(text, value), place);
}

QTableWidgetItem* bench_note_cell(const QString& text, std::size_t place) {
    auto* item = new QTableWidgetItem(text);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return placed(item, place);
}

std::optional<std::size_t> bench_place(const QTableWidgetItem* item) {
    if (!item) return {};
    return static_cast<std::size_t>(item->data(Qt::UserRole).toInt());
}

std::optional<double> bench_cell_value(const QTableWidgetItem& item, Quantity quantity, UnitSystem units) {
    const std::string text = item.text().trimmed().toStdString();
    if (text.empty()) return {};
    return parse_entry(text, quantity, units);
}

QStringList table_faults_text(const std::vector<TableFault>& faults,
                              const std::vector<std::string>& ignored) {
    QStringList said;
    for (const TableFault& fault : faults)
        said << QCoreApplication::translate("rampwright::ui::BenchTable",
                                            "Line %1, %2: “%3” is left out: %4.")
                    .arg(fault.line)
                    .arg(QString::fromStdString(fault.column), QString::fromStdString(fault.text),
                         QString::fromStdString(fault.why));
    for (const std::string& heading : ignored)
        said << QCoreApplication::translate("rampwright::ui::BenchTable",
                                            "The column “%1” means nothing here.")
                    .arg(QString::fromStdString(heading));
    return said;
}

std::optional<QString> ask_for_table(QWidget& parent, const QString& title, QLabel& trouble) {
    const QString name = QFileDialog::getOpenFileName(
        &parent, title, {},
        QCoreApplication::translate("rampwright::ui::BenchTable",
                                    "Tables (*.csv *.tsv *.txt);;All files (*)"));
    QFile file(name);
    if (name.isEmpty()) return {};
    constexpr qint64 most_bytes = 4 << 20;
    if (file.open(QIODevice::ReadOnly)) return QString::fromUtf8(file.read(most_bytes));
    trouble.setText(QCoreApplication::translate("rampwright::ui::BenchTable", "%1 cannot be read: %2")
                        .arg(name, file.errorString()));
    return {};
}

} // namespace rampwright::ui
