#include "paper/paper_slip.hpp"

#include "fields/holding_box.hpp"
#include "fields/quiet_combo_box.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "paper/paper_desk.hpp"
#include "paper/paper_view.hpp"
#include "paper/printing.hpp"
#include "text/figure_text.hpp"

#include <rampwright/units/entry.hpp>

#include <QFileDialog>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace rampwright::ui {

PaperSlip::PaperSlip(PaperDesk& desk, PaperView& view, QWidget* parent)
    : QWidget(parent), desk_(desk), view_(view) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    build_printing();
    build_pages();
    build_race();
    build_holdings();
    column->addStretch(1);
    connect(&desk_.session(), &Session::changed, this, &PaperSlip::refresh);
    connect(&desk_.session(), &Session::car_chosen, this, &PaperSlip::refresh);
    connect(&view_, &PaperView::page_changed, this, &PaperSlip::show_page_count);
    refresh();
}

QWidget* PaperSlip::titled(const QString& title) {
    auto* label = heading_label(title, this);
    layout()->addWidget(label);
    auto* part = new QWidget(this);
    layout()->addWidget(part);
    return part;
}

void PaperSlip::build_printing() {
    QWidget* part = titled(tr("Print and save"));
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    paper_ = new QuietComboBox(part);
    paper_->setObjectName(QStringLiteral("paper-size"));
    paper_->setWhatsThis(tr("The paper in your printer. The templates are laid out for it at full size."));
    paper_->addItem(tr("A4, 210 × 297 mm"), static_cast<int>(paper::Paper::a4));
    paper_->addItem(tr("Letter, 8.5 × 11 in"), static_cast<int>(paper::Paper::letter));
    paper_->setCurrentIndex(paper_->findData(static_cast<int>(desk_.chosen_paper())));
    connect(paper_, &QComboBox::currentIndexChanged, this,
            [this] { desk_.set_paper(static_cast<paper::Paper>(paper_->currentData().toInt())); });
    form->addRow(tr("Pape&r"), paper_);

    const auto button = [&](const QString& text, const char* name, auto slot, const QKeySequence& keys = {}) {
        auto* push = new QPushButton(text, part);
        push->setObjectName(QLatin1String(name));
        push->setShortcut(keys.isEmpty() ? push->shortcut() : keys);
        push->setAutoDefault(true);
        connect(push, &QPushButton::clicked, this, slot);
        form->addRow(push);
        return push;
    };
    button(tr("&Save as PDF…"), "save-pdf", [this] { save_pdf(); });
    button(
        tr("&Print…"), "print", [this] { print(); }, QKeySequence(Qt::CTRL | Qt::Key_P))
        ->setToolTip(tr("Ctrl+P; print at 100 %, actual size"));
    button(tr("Save One Page as Pic&ture…"), "save-picture", [this] {
        save_picture();
    })->setToolTip(tr("The page you are looking at, to send to somebody"));

    bar_ = new QLineEdit(part);
    bar_->setObjectName(QStringLiteral("printed-bar"));
    bar_->setPlaceholderText(tr("100 mm"));
    bar_->setToolTip(
        tr("Print the template page, measure its 100 mm bar with a ruler, and type what you found: the next "
           "print makes up for it."));
    connect(bar_, &QLineEdit::editingFinished, this, &PaperSlip::take_bar);
    form->addRow(tr("Printed &bar measures"), bar_);
    said_ = new QLabel(part);
    said_->setObjectName(QStringLiteral("paper-said"));
    said_->setWordWrap(true);
    form->addRow(said_);
}

void PaperSlip::build_pages() {
    QWidget* part = titled(tr("Pages"));
    auto* row = new QHBoxLayout(part);
    row->setContentsMargins(0, 0, 0, 0);
    const auto button = [&](const QString& text, const QString& name, auto slot) {
        auto* push = new QToolButton(part);
        push->setText(text);
        push->setAccessibleName(name);
        push->setToolTip(name);
        connect(push, &QToolButton::clicked, this, slot);
        row->addWidget(push);
    };
    button(QStringLiteral("◂"), tr("Page back"), [this] {
        const std::size_t now = view_.page();
        view_.show_page(now == 0 ? 0 : now - 1);
    });
    count_ = new QLabel(part);
    count_->setObjectName(QStringLiteral("page-count"));
    count_->setAlignment(Qt::AlignCenter);
    row->addWidget(count_, 1);
    button(QStringLiteral("▸"), tr("Page on"), [this] {
        view_.show_page(std::min(view_.page() + 1, std::max<std::size_t>(view_.page_count(), 1) - 1));
    });
    button(QStringLiteral("−"), tr("Smaller"), [this] { view_.zoom_by(1 / 1.2); });
    button(QStringLiteral("+"), tr("Larger"), [this] { view_.zoom_by(1.2); });
}

void PaperSlip::build_race() {
    QWidget* part = titled(tr("The race"));
    auto* form = new QFormLayout(part);
    form->setContentsMargins(0, 0, 0, 0);
    const auto field = [&](const QString& label, const char* name, const QString& hint, const char* pointer,
                           const QString& what) {
        auto* edit = new QLineEdit(part);
        edit->setObjectName(QLatin1String(name));
        edit->setPlaceholderText(hint);
        edit->setToolTip(tr("The sheet counts back from it: paint, glue, tuning."));
        connect(edit, &QLineEdit::editingFinished, this,
                [this, edit, pointer, what] { take_race(*edit, pointer, what); });
        form->addRow(label, edit);
        return edit;
    };
    race_date_ = field(tr("&Date"), "race-date", tr("YYYY-MM-DD"), "/race/date", tr("race date"));
    race_hour_ =
        field(tr("First heat &at"), "race-hour", tr("HH:MM"), "/race/starts", tr("hour of the first heat"));
}

void PaperSlip::build_holdings() {
    held_ = new QFormLayout(titled(tr("What holds each weight")));
    held_->setContentsMargins(0, 0, 0, 0);
}

void PaperSlip::refresh() {
    const Project& project = desk_.session().project();
    for (const auto& [field, text] :
         {std::pair{race_date_, &project.race.date}, {race_hour_, &project.race.starts}})
        if (!field->isModified()) field->setText(QString::fromStdString(*text));
    refresh_holdings();
}

void PaperSlip::refresh_holdings() {
    const CarPlan& plan = desk_.session().plan();
    while (held_->rowCount() > static_cast<int>(plan.ballast.size()))
        held_->removeRow(held_->rowCount() - 1);
    for (std::size_t i = 0; i < plan.ballast.size(); ++i) {
        const int row = static_cast<int>(i);
        if (row == held_->rowCount()) {
            auto* choice = new HoldingBox(12, held_->parentWidget());
            choice->setObjectName(QStringLiteral("held-%1").arg(row));
            connect(choice, &QComboBox::currentIndexChanged, this, [this, i, choice] {
                try {
                    desk_.session().apply(
                        set_holding(desk_.session().document(), desk_.session().car(), i, choice->holding()));
                } catch (const Problem& problem) {
                    say(problem_text(problem));
                }
            });
            held_->addRow(new QLabel(held_->parentWidget()), choice);
        }
        const QString name = QString::fromStdString(plan.ballast[i].name);
        auto* label = static_cast<QLabel*>(held_->itemAt(row, QFormLayout::LabelRole)->widget());
        auto* choice = static_cast<HoldingBox*>(held_->itemAt(row, QFormLayout::FieldRole)->widget());
        label->setText(
            tr("%1. %2").arg(i + 1).arg(label->fontMetrics().elidedText(name, Qt::ElideRight, 110)));
        label->setToolTip(name);
        choice->setAccessibleName(tr("What holds %1").arg(name));
        const QSignalBlocker blocker(choice);
        choice->show_holding(plan.ballast[i].held);
    }
}

void PaperSlip::show_page_count() {
    const std::size_t count = view_.page_count();
    count_->setText(count == 0 ? QStringLiteral("–") : tr("Page %1 of %2").arg(view_.page() + 1).arg(count));
}

void PaperSlip::take_bar() {
    const QString typed = bar_->text().trimmed();
    try {
        const double bar = typed.isEmpty()
                               ? paper::bar_length
                               : parse_entry(typed.toStdString(), Quantity::length, UnitSystem::metric) * 1e3;
        if (!(bar >= paper::least_bar && bar <= paper::greatest_bar))
            return say(tr("A 100 mm bar that comes out at %1 was fitted to the page: print at actual size "
                          "and measure again.")
                           .arg(typed));
        desk_.set_printed_bar(bar);
        say(bar == paper::bar_length
                ? QString()
                : tr("Templates and bars are drawn %1 % of their size to make up for it.")
                      .arg(100 * paper::bar_length / bar, 0, 'f', 1));
    } catch (const EntryError& error) {
        say(problem_text(error));
    }
}

void PaperSlip::take_race(QLineEdit& field, const char* pointer, const QString& name) {
    if (!field.isModified()) return;
    const std::string typed = field.text().trimmed().toStdString();
    try {
        const Edit edit = set_value(desk_.session().document(), pointer, typed.empty() ? Json() : Json(typed),
                                    tr("Set %1").arg(name).toStdString());
        field.setModified(false);
        desk_.session().apply(edit);
        say({});
    } catch (const Problem& problem) {
        // The text stays as typed, and the project as it was.
        say(problem_text(problem));
    }
}

void PaperSlip::say(const QString& text) {
    said_->setText(text);
}

namespace {

/// A name to save under, or nothing.
QString ask_for_name(QWidget* parent, const QString& title, const QString& filter, const QString& suffix,
                     const QString& suggested) {
    QFileDialog dialog(parent, title, {}, filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setDefaultSuffix(suffix);
    dialog.selectFile(suggested + QLatin1Char('.') + suffix);
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty()) return {};
    return dialog.selectedFiles().constFirst();
}

} // namespace

void PaperSlip::save(const QString& name, const std::function<void()>& write) {
    if (name.isEmpty()) return;
    try {
        write();
        say(tr("Saved %1").arg(name));
    } catch (const Problem& problem) {
        say(problem_text(problem));
    }
}

void PaperSlip::save_pdf() {
    const QString name = ask_for_name(window(), tr("Save the Build Sheet"), tr("PDF (*.pdf)"),
                                      QStringLiteral("pdf"), desk_.suggested_name());
    save(name, [&] { desk_.save_pdf(name); });
}

void PaperSlip::save_picture() {
    const std::size_t page = view_.page();
    const QString name = ask_for_name(window(), tr("Save Page %1 as a Picture").arg(page + 1),
                                      tr("Picture (*.png)"), QStringLiteral("png"),
                                      QStringLiteral("%1-%2").arg(desk_.suggested_name()).arg(page + 1));
    save(name, [&] { desk_.save_picture(name, page); });
}

void PaperSlip::print() {
    const paper::Sheet* sheet = desk_.sheet();
    if (!sheet) return say(desk_.problem());
    QPrinter printer;
    set_up_printer(printer, *sheet);
    QPrintDialog dialog(&printer, window());
    dialog.setWindowTitle(tr("Print the Build Sheet"));
    dialog.setMinMax(1, static_cast<int>(sheet->pages.size()));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    if (dialog.exec() != QDialog::Accepted) return;
    say(print_sheet(printer, *sheet)
            ? tr("Sent to the printer. Measure the bars before you cut.")
            : tr("The printer did not take the pages: see whether it is on and has paper."));
}

} // namespace rampwright::ui
