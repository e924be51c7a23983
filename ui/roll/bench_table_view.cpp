#include "roll/bench_table_view.hpp"

#include "roll/bench_table.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/entry.hpp>

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace rampwright::ui {

BenchTableView::BenchTableView(Session& session, const Words& words, QWidget* parent)
    : QWidget(parent),
      session_(session),
      table_(new QTableWidget(this)),
      trouble_(new QLabel(this)),
      remove_(new QPushButton(words.remove, this)) {
    const auto named = [&](const char* what) { return words.key + QLatin1String(what); };
    table_->setObjectName(words.table_key);
    table_->setAccessibleName(words.table);
    table_->setWhatsThis(words.table_why);
    set_up_bench_table(*table_, words.headings);
    trouble_->setObjectName(named(".trouble"));
    trouble_->setWordWrap(true);
    auto* paste = new QPushButton(tr("P&aste a Table"), this);
    paste->setObjectName(named(".paste"));
    paste->setWhatsThis(words.paste_why);
    auto* open = new QPushButton(tr("Fro&m a File…"), this);
    open->setObjectName(named(".open"));
    auto* add = new QPushButton(words.add, this);
    add->setObjectName(named(".add"));
    remove_->setObjectName(named(".remove"));
    auto* buttons = new QHBoxLayout;
    for (QPushButton* button : {paste, open, add, remove_})
        buttons->addWidget(button);
    buttons->addStretch(1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    column->addLayout(buttons);
    column->addWidget(trouble_);
    column->addWidget(table_, 1);

    connect(paste, &QPushButton::clicked, this, [this] { take_table(QApplication::clipboard()->text()); });
    connect(open, &QPushButton::clicked, this, [this, title = words.open_title] {
        if (const auto text = ask_for_table(*this, title, *trouble_)) take_table(*text);
    });
    connect(add, &QPushButton::clicked, this, [this] { add_row(); });
    connect(remove_, &QPushButton::clicked, this, [this] {
        const auto place = bench_place(table_->currentItem());
        if (place && *place < count()) remove_row(*place);
    });
    connect(table_, &QTableWidget::cellChanged, this, &BenchTableView::edit_cell);
    follow_while_seen(*this, session_, [this] {
        if (session_.in_gesture()) return;
        const QSignalBlocker blocker(table_);
        refresh();
        remove_->setEnabled(count() > 0);
    });
}

void BenchTableView::put_below(QWidget* widget) {
    layout()->addWidget(widget);
}

void BenchTableView::put_below(QLayout* row) {
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
}

void BenchTableView::take_table(const QString& text) {
    try {
        trouble_->setText(take(text.toStdString()).join(QLatin1Char(' ')));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

void BenchTableView::edit_cell(int row, int column) {
    const QTableWidgetItem* item = table_->item(row, column);
    const auto place = bench_place(item);
    if (!place || *place >= count()) return;
    try {
        set_cell(*place, *item);
        trouble_->clear();
    } catch (const EntryError& error) {
        // The text stays to be mended; the table of the project is as it was.
        trouble_->setText(QString::fromUtf8(error.what()));
    } catch (const Problem& problem) {
        trouble_->setText(problem_text(problem));
    }
}

} // namespace rampwright::ui
