#include "panels/weigh_slip.hpp"

#include "look/labels.hpp"
#include "look/theme.hpp"
#include "panels/reading_list.hpp"
#include "panels/rule_row.hpp"
#include "panels/scale_panel.hpp"
#include "panels/value_slip.hpp"
#include "session/follow.hpp"
#include "text/figure_text.hpp"

#include <rampwright/results/in_units.hpp>

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace rampwright::ui {
WeighSlip::WeighSlip(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      table_(new QWidget(this)),
      advice_(new QLabel(this)),
      words_(new QLabel(this)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 6, 0);
    column->setSpacing(4);
    // What to do comes first: it must be in sight while readings are typed.
    column->addWidget(heading_label(tr("What to trim"), this, 6));
    column->addWidget(advice_);
    column->addWidget(heading_label(tr("Weigh the finished car"), this, 6));
    column->addWidget(new ReadingList(
        session_, &Readings::whole, tr("Whole car"),
        tr("1. Whole car: the empty scale shows zero. Put the car on, read, take it off; three times."),
        this));
    column->addWidget(new ReadingList(
        session_, &Readings::front, tr("Front"),
        tr("2. Front: a block exactly as high as the scale beside it. Front wheels on the scale, rear wheels "
           "on the block, wheels free to roll."),
        this));
    column->addWidget(new ReadingList(session_, &Readings::rear, tr("Rear"),
                                      tr("3. Rear, as a check: the other way round. Front and rear must add "
                                         "up to the whole."),
                                      this));
    column->addWidget(new ValueSlip(session_, measured_fields(), this));
    column->addWidget(heading_label(tr("Plan and car"), this, 6));
    column->addWidget(table_);
    new QGridLayout(table_);
    table_->layout()->setContentsMargins(0, 0, 0, 0);
    column->addWidget(words_);
    advice_->setObjectName(QStringLiteral("built.advice"));
    words_->setObjectName(QStringLiteral("built.words"));
    for (QLabel* each : {advice_, words_}) {
        each->setWordWrap(true);
        each->setTextInteractionFlags(Qt::TextSelectableByMouse);
    }
    advice_->setFont(text_font(1.05, true));
    words_->setFont(text_font(0.9));
    words_->setForegroundRole(QPalette::PlaceholderText);
    column->addWidget(new ScaleWords(session_, QStringLiteral("scale.words.paper"), this));
    auto* decides =
        new QLabel(tr("Local rules and the inspector decide; this list only helps to come prepared."), this);
    decides->setWordWrap(true);
    decides->setFont(text_font(0.9));
    decides->setForegroundRole(QPalette::PlaceholderText);
    column->addWidget(decides);
    column->addStretch(1);
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void WeighSlip::show_comparison(const Built* built) {
    auto* grid = static_cast<QGridLayout*>(table_->layout());
    while (QLayoutItem* item = grid->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    table_->setVisible(built != nullptr);
    if (!built) return;
    const auto cell = [&](int row, int column, const QString& text, bool strong, const QString& name = {}) {
        auto* label = new QLabel(text, table_);
        label->setFont(text_font(0.92, strong));
        if (column == 0) label->setWordWrap(true);
        label->setObjectName(name);
        grid->addWidget(label, row, column, column == 0 ? Qt::AlignLeft : Qt::AlignRight);
    };
    grid->setColumnStretch(0, 1);
    grid->setHorizontalSpacing(8);
    cell(0, 1, tr("plan"), false);
    cell(0, 2, tr("car"), false);
    cell(0, 3, tr("change"), false);
    const UnitSystem units = session_.project().units;
    int row = 1;
    for (const BuiltLine& line : built->lines) {
        const QString code = QString::fromStdString(line.code);
        cell(row, 0, sentence_case(line.name), false);
        cell(row, 1, quantity_text(line.planned, line.quantity, units), false);
        cell(row, 2, quantity_text(line.built, line.quantity, units), true,
             QStringLiteral("built.%1").arg(code));
        const QString change = change_text(line.difference(), line.quantity, units);
        cell(row, 3, change.isEmpty() ? QStringLiteral("–") : change, false);
        ++row;
    }
}

void WeighSlip::refresh() {
    const Figures* figures = session_.figures();
    const Built* built = figures && figures->built ? &*figures->built : nullptr;
    show_comparison(built);
    QStringList advice, words;
    if (built) {
        for (const Trim& trim : built->trims)
            advice << QString::fromStdString(trim.text);
        // Words are, in this order: a line each, front and rear that do not add up, the trims, what they
        // leave.
        const std::size_t lines = built->lines.size();
        const bool apart = built->closure && std::abs(*built->closure) > 2 * built->closure_sigma;
        const std::size_t left = lines + (apart ? 1 : 0) + built->trims.size();
        for (std::size_t i = left; i < built->words.size(); ++i)
            advice << QString::fromStdString(built->words[i]);
        if (advice.isEmpty()) advice << tr("Nothing: the car is as planned, as far as the scale can tell.");
        for (const Finding& reason : built->reasons)
            words << QString::fromStdString(text_of(reason, session_.project().units));
        if (apart) words << QString::fromStdString(built->words[lines]);
    }
    advice_->setText(advice.isEmpty() ? tr("Weigh the car, and this says what to do.")
                                      : advice.join(QStringLiteral("\n")));
    words_->setText(words.join(QStringLiteral("\n")));
    words_->setVisible(!words.isEmpty());
}

} // namespace rampwright::ui
