#include "run/difference_table.hpp"

#include "look/labels.hpp"
#include "look/theme.hpp"
#include "session/aside.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/format.hpp>

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QTimer>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

constexpr int difference_settling_ms = 200;

/// A change of the time in words and a sign: never by colour.
QString change_text(double seconds, UnitSystem units) {
    const QString amount = QString::fromStdString(format_milliseconds(seconds, units, 2));
    return seconds > 0 ? QLatin1Char('+') + amount : amount;
}

QTableWidgetItem* fixed_item(const QString& text, bool number = false) {
    auto* item = new QTableWidgetItem(text);
    item->setFlags(Qt::ItemIsSelectable | Qt::ItemIsEnabled);
    if (number) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    item->setToolTip(text);
    return item;
}

} // namespace

DifferenceTable::DifferenceTable(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      settle_(new QTimer(this)),
      said_(new QLabel(this)),
      table_(new QTableWidget(0, 4, this)),
      wanted_(std::make_shared<std::atomic<unsigned>>(1)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addWidget(heading_label(tr("What differs, and what it is worth"), this));
    column->addWidget(table_, 1);
    column->addWidget(said_);
    table_->setObjectName(QStringLiteral("differences"));
    table_->setAccessibleName(tr("What differs between the two cars"));
    table_->setWhatsThis(tr("Each line gives the first car that one difference alone and runs the heat: what "
                            "the time becomes longer (+) or shorter by."));
    table_->verticalHeader()->hide();
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setTabKeyNavigation(false);
    table_->setMinimumSize(240, 90);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::ResizeToContents);
    said_->setObjectName(QStringLiteral("differences.said"));
    said_->setWordWrap(true);
    said_->setTextInteractionFlags(Qt::TextSelectableByMouse);

    settle_->setSingleShot(true);
    settle_->setInterval(difference_settling_ms);
    connect(settle_, &QTimer::timeout, this, &DifferenceTable::start);
    connect(&session_, &Session::changed, this, &DifferenceTable::ask);
}

DifferenceTable::~DifferenceTable() {
    ++*wanted_; // a worker under way stops at its next heat
}

void DifferenceTable::want(std::size_t first, std::size_t second) {
    if (first == first_ && second == second_ && fresh()) return;
    first_ = first;
    second_ = second;
    ask();
}

void DifferenceTable::ask() {
    ++*wanted_;
    table_->setEnabled(false);
    if (isVisible()) settle_->start();
}

void DifferenceTable::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!fresh()) settle_->start();
}

void DifferenceTable::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    settle_->stop();
    if (!fresh()) ++*wanted_;
}

void DifferenceTable::start() {
    // While a piece is under a finger nothing is worked out.
    if (session_.in_gesture()) return settle_->start();
    if (fresh()) return;
    const std::size_t count = session_.project().cars.size();
    if (first_ >= count || second_ >= count || first_ == second_) {
        shown_ = wanted_->load();
        table_->setRowCount(0);
        return say(tr("Two different cars are needed."));
    }
    say(tr("Working it out…"));
    struct Outcome {
        CarComparison comparison;
        QString problem;
    };
    const unsigned asked = wanted_->load();
    work_aside(
        this,
        [document = session_.shared_document(), first = first_, second = second_, asked, wanted = wanted_] {
            Outcome outcome;
            try {
                outcome.comparison =
                    compare_cars(*document, first, second, [&] { return wanted->load() == asked; });
            } catch (const Problem& wrong) {
                outcome.problem = problem_text(wrong);
            }
            return outcome;
        },
        [this, asked](const Outcome& outcome) {
            if (wanted_->load() != asked || outcome.comparison.cancelled) return;
            shown_ = asked;
            if (outcome.problem.isEmpty()) return fill(outcome.comparison);
            table_->setRowCount(0);
            say(outcome.problem);
        });
}

void DifferenceTable::fill(const CarComparison& comparison) {
    const auto& project = session_.project();
    const auto name = [&](std::size_t car) { return QString::fromStdString(project.cars[car].name); };
    table_->setHorizontalHeaderLabels({tr("What"), name(first_), name(second_), tr("Alone worth")});
    table_->setRowCount(static_cast<int>(comparison.differences.size()));
    int row = 0;
    for (const CarDifference& each : comparison.differences) {
        table_->setItem(row, 0, fixed_item(QString::fromStdString(each.what)));
        table_->setItem(row, 1, fixed_item(QString::fromStdString(each.from)));
        table_->setItem(row, 2, fixed_item(QString::fromStdString(each.to)));
        auto* worth =
            fixed_item(each.worth ? change_text(*each.worth, project.units) : tr("not alone"), true);
        if (!each.worth) worth->setToolTip(QString::fromStdString(each.problem));
        table_->setItem(row, 3, worth);
        ++row;
    }
    table_->setEnabled(true);
    if (comparison.differences.empty()) return say(tr("The two cars differ in nothing that is built."));
    const auto together = comparison.together();
    if (!together)
        return say(tr("One of the cars stops short of the finish: there is no whole to compare with."));
    say(tr("Each alone adds up to %1; all together %2 changes by %3. The %4 between is what the differences "
           "do to each other, or what cannot be tried alone.")
            .arg(change_text(comparison.sum, project.units), name(first_),
                 change_text(*comparison.second - *comparison.first, project.units),
                 change_text(*together, project.units)));
}

void DifferenceTable::say(const QString& text) {
    said_->setText(text);
}

} // namespace rampwright::ui
