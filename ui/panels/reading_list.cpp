#include "panels/reading_list.hpp"

#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <rampwright/bench/weighing.hpp>
#include <rampwright/units/entry.hpp>
#include <rampwright/units/format.hpp>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

constexpr int chip_columns = 3;

} // namespace

ReadingList::ReadingList(Session& session, std::vector<double> Readings::*member, const QString& what,
                         const QString& guide, QWidget* parent)
    : QWidget(parent),
      session_(session),
      member_(member),
      what_(what),
      entry_(new QLineEdit(this)),
      chips_(new QWidget(this)),
      row_(new QGridLayout(chips_)),
      mean_(new QLabel(this)),
      fault_(new QLabel(this)) {
    const QString name = QStringLiteral("readings.%1").arg(what.section(QLatin1Char(' '), 0, 0).toLower());
    setWhatsThis(guide);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 4);
    column->setSpacing(2);
    auto* text = new QLabel(guide, this);
    text->setWordWrap(true);
    text->setFont(text_font(0.92));
    column->addWidget(text);
    auto* line = new QHBoxLayout;
    entry_->setObjectName(name);
    entry_->setAccessibleName(tr("%1, a reading").arg(what_));
    entry_->setPlaceholderText(tr("a reading, then Enter"));
    auto* take = new QPushButton(tr("Add"), this);
    take->setObjectName(name + QStringLiteral(".add"));
    take->setAccessibleName(tr("%1, add the reading").arg(what_));
    take->setAutoDefault(false);
    line->addWidget(entry_, 1);
    line->addWidget(take);
    column->addLayout(line);
    row_->setContentsMargins(0, 0, 0, 0);
    row_->setSpacing(4);
    row_->setColumnStretch(chip_columns, 1);
    column->addWidget(chips_);
    mean_->setObjectName(name + QStringLiteral(".mean"));
    mean_->setFont(text_font(0.92));
    mean_->setWordWrap(true);
    fault_->setWordWrap(true);
    fault_->hide();
    column->addWidget(mean_);
    column->addWidget(fault_);
    connect(entry_, &QLineEdit::returnPressed, this, &ReadingList::add);
    connect(take, &QPushButton::clicked, this, &ReadingList::add);
    connect(&session_, &Session::changed, this, &ReadingList::refresh);
    connect(&session_, &Session::car_chosen, this, &ReadingList::refresh);
    refresh();
}

void ReadingList::apply(const Readings& readings) {
    try {
        session_.apply(set_readings(session_.document(), session_.car(), readings));
        fault_->hide();
        entry_->clear();
    } catch (const Problem& problem) {
        refuse(problem);
    }
}

void ReadingList::refuse(const Problem& problem) {
    fault_->setText(not_taken(plain_text(problem)));
    fault_->show();
}

void ReadingList::add() {
    const QString typed = entry_->text().trimmed();
    if (typed.isEmpty()) return;
    try {
        Readings readings = session_.plan().readings;
        (readings.*member_)
            .push_back(parse_entry(typed.toStdString(), Quantity::mass, session_.project().units));
        apply(readings);
    } catch (const Problem& problem) {
        refuse(problem);
    }
    entry_->setAccessibleDescription(fault_->isHidden() ? QString() : fault_->text());
}

void ReadingList::take_back(std::size_t index) {
    Readings readings = session_.plan().readings;
    auto& list = readings.*member_;
    if (index < list.size()) list.erase(list.begin() + static_cast<std::ptrdiff_t>(index));
    entry_->setFocus();
    apply(readings);
}

void ReadingList::refresh() {
    const auto& list = session_.plan().readings.*member_;
    const UnitSystem units = session_.project().units;
    while (QLayoutItem* item = row_->takeAt(0)) {
        item->widget()->deleteLater();
        delete item;
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        const QString text = QString::fromStdString(format_entry(list[i], Quantity::mass, units));
        auto* chip = new QPushButton(text + QStringLiteral(" ×"), chips_);
        chip->setAutoDefault(false);
        chip->setObjectName(entry_->objectName() + QStringLiteral(".%1").arg(i));
        chip->setAccessibleName(tr("%1, take back the reading %2").arg(what_, text));
        chip->setToolTip(tr("Take this reading back"));
        chip->setFlat(true);
        connect(chip, &QPushButton::clicked, this, [this, i] { take_back(i); });
        row_->addWidget(chip, static_cast<int>(i) / chip_columns, static_cast<int>(i) % chip_columns);
    }
    chips_->setVisible(!list.empty());
    mean_->setVisible(!list.empty());
    if (list.empty()) return;
    const Measured mean = mean_of_weighings(list, session_.project().scale.division);
    QString text = tr("%1: %2").arg(
        what_, QString::fromStdString(format_with_sigma(mean.value, mean.sigma, Quantity::mass, units)));
    if (list.size() > 1)
        text = tr("%1; readings %2 apart")
                   .arg(text, quantity_text(spread_of_weighings(list), Quantity::mass, units));
    mean_->setText(text);
}

} // namespace rampwright::ui
