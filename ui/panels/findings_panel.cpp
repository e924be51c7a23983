#include "panels/findings_panel.hpp"

#include "drawing/finding_marks.hpp"
#include "look/icon.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "text/figure_text.hpp"

#include <rampwright/results/in_units.hpp>

#include <QEvent>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace rampwright::ui {
namespace {

QIcon mark_icon(std::size_t number, Severity severity, double ratio) {
    return drawn_icon({28, 28}, ratio, [&](QPainter& painter) {
        paint_finding_mark(painter, {14, 15}, number, severity, false);
    });
}

} // namespace

FindingsPanel::FindingsPanel(Session& session, QWidget* parent) : QFrame(parent), session_(session) {
    setObjectName(QStringLiteral("findings"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setFrameShape(QFrame::StyledPanel);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 8, 6, 6);
    column->setSpacing(3);
    title_ = heading_label({}, this);
    list_ = new QListWidget(this);
    list_->setObjectName(QStringLiteral("findings.list"));
    list_->setAccessibleName(tr("Findings"));
    list_->setFrameShape(QFrame::NoFrame);
    list_->setIconSize({28, 28});
    list_->setWordWrap(true);
    list_->setUniformItemSizes(false);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setWhatsThis(tr("What does not fit, what breaks a rule, and what to keep an eye on. Each has the "
                           "same number on the drawing."));
    column->addWidget(title_);
    column->addWidget(list_, 1);
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!filling_) Q_EMIT selected(row < 0 ? std::nullopt : std::optional(static_cast<std::size_t>(row)));
    });
    connect(&session_, &Session::changed, this, &FindingsPanel::refresh);
    connect(&session_, &Session::car_chosen, this, &FindingsPanel::refresh);
    refresh();
}

void FindingsPanel::select(std::optional<std::size_t> finding) {
    const QScopedValueRollback guard(filling_, true);
    list_->setCurrentRow(finding ? static_cast<int>(*finding) : -1);
}

void FindingsPanel::changeEvent(QEvent* event) {
    if (list_ && event->type() == QEvent::PaletteChange) refresh();
    QFrame::changeEvent(event);
}

void FindingsPanel::refresh() {
    const QScopedValueRollback guard(filling_, true);
    const Figures* figures = session_.figures();
    const int count = figures ? static_cast<int>(figures->findings.size()) : 0;
    title_->setText(figures && count == 0 ? tr("Nothing to put right") : tr("To look at"));
    const int row = list_->currentRow();
    // Rows are reused: the list must not flicker while a piece is dragged.
    while (list_->count() > count)
        delete list_->takeItem(list_->count() - 1);
    for (int i = 0; i < count; ++i) {
        const auto& finding = figures->findings[static_cast<std::size_t>(i)];
        if (i == list_->count()) list_->addItem(new QListWidgetItem);
        auto* item = list_->item(i);
        item->setText(tr("%1: %2").arg(severity_word(finding.severity),
                                       QString::fromStdString(text_of(finding, session_.project().units))));
        item->setIcon(mark_icon(static_cast<std::size_t>(i) + 1, finding.severity, devicePixelRatioF()));
    }
    if (!figures)
        if (const Problem* problem = session_.problem()) {
            title_->setText(tr("This car cannot be computed"));
            list_->addItem(problem_text(*problem));
        }
    list_->setCurrentRow(row < list_->count() ? row : -1);
}

} // namespace rampwright::ui
