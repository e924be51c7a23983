#include "panels/agree_slip.hpp"

#include "fields/quiet_combo_box.hpp"
#include "look/labels.hpp"
#include "look/theme.hpp"
#include "panels/house_rule.hpp"
#include "panels/rule_row.hpp"
#include "panels/scale_panel.hpp"
#include "panels/verdict_mark.hpp"
#include "session/follow.hpp"
#include "text/said.hpp"

#include <rampwright/rules/rule_sets.hpp>

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <array>

namespace rampwright::ui {
namespace {

QLabel* make_small(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setFont(text_font(0.9));
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

/// Where the list of kinds goes from one heading to the next.
struct Heading {
    const char* first_kind;
    const char* text;
};
constexpr std::array headings{
    Heading{"max_mass_g", QT_TRANSLATE_NOOP("rampwright::ui::AgreeSlip", "Size")},
    Heading{"min_ground_clearance_mm", QT_TRANSLATE_NOOP("rampwright::ui::AgreeSlip", "On the lane")},
    Heading{"wheel_min_mass_g", QT_TRANSLATE_NOOP("rampwright::ui::AgreeSlip", "Wheels")},
    Heading{"max_nose_height_mm", QT_TRANSLATE_NOOP("rampwright::ui::AgreeSlip", "Start, date, lubricant")},
    Heading{"allow/raised_wheel", QT_TRANSLATE_NOOP("rampwright::ui::AgreeSlip", "What may be done")}};

} // namespace

std::optional<Inspection> inspect_shown(const Session& session) {
    const Figures* figures = session.figures();
    if (!figures) return std::nullopt;
    return inspect(session.project(), build_car(session.project(), session.car()), *figures);
}

AgreeSlip::AgreeSlip(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 6, 0);
    column->setSpacing(3);
    build_sets(*column);
    detail_ = make_small(this);
    detail_->setObjectName(QStringLiteral("rules.detail"));
    column->addWidget(detail_);
    build_rules(*column);
    build_house(*column);
    column->addWidget(heading_label(tr("Race scale"), this, 8));
    column->addWidget(new ScaleFields(session_, this));
    column->addWidget(new ScaleWords(session_, QStringLiteral("scale.words.agree"), this));
    column->addStretch(1);
    follow_while_seen(*this, session_, [this] { refresh(); });
    refresh();
}

void AgreeSlip::build_sets(QVBoxLayout& column) {
    auto* label = heading_label(tr("&Rules of the race"), this, 8);
    sets_ = new QuietComboBox(this);
    sets_->setObjectName(QStringLiteral("rules.sets"));
    sets_->setAccessibleName(tr("Rules of the race"));
    sets_->setWhatsThis(
        tr("Starts from a ready set of limits; each can then be changed below. Your race's own "
           "rules decide."));
    sets_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    label->setBuddy(sets_);
    about_ = make_small(this);
    counts_ = new QLabel(this);
    counts_->setObjectName(QStringLiteral("rules.counts"));
    counts_->setWordWrap(true);
    for (QWidget* each : {static_cast<QWidget*>(label), static_cast<QWidget*>(sets_),
                          static_cast<QWidget*>(about_), static_cast<QWidget*>(counts_)})
        column.addWidget(each);
    auto* decides = make_small(this);
    decides->setObjectName(QStringLiteral("rules.decides"));
    decides->setText(inspector_decides_text());
    column.addWidget(decides);
    connect(sets_, &QComboBox::activated, this, &AgreeSlip::choose_set);
}

void AgreeSlip::build_rules(QVBoxLayout& column) {
    for (const RuleKind& kind : rule_kinds()) {
        for (const Heading& heading : headings)
            if (kind.id == heading.first_kind) column.addWidget(heading_label(tr(heading.text), this, 8));
        auto* row = new RuleRow(session_, kind, this);
        rows_.push_back(row);
        column.addWidget(row);
    }
}

void AgreeSlip::build_house(QVBoxLayout& column) {
    column.addWidget(heading_label(tr("Rules of the house"), this, 8));
    house_ = new QVBoxLayout;
    house_->setSpacing(2);
    column.addLayout(house_);
    auto* add = new QPushButton(tr("Add a Rule &of the House"), this);
    add->setObjectName(QStringLiteral("rules.house.add"));
    add->setWhatsThis(tr("A rule that only a person can look at. It stands on the inspection list."));
    connect(add, &QPushButton::clicked, this, &AgreeSlip::add_house_rule);
    column.addWidget(add);
}

void AgreeSlip::choose_set(int index) {
    if (index <= 0) return show_sets(); // the project's own: nothing to take
    const RuleSet& set = rule_sets()[static_cast<std::size_t>(index) - 1];
    session_.apply(set_rules(session_.document(), set.rules, set.title));
    show_sets();
}

void AgreeSlip::add_house_rule() {
    Json rules = Json::array();
    for (const HouseRule& rule : session_.project().rules.house) {
        rules.push_back({{"text", rule.text}});
        if (!rule.inspect.empty()) rules.back()["inspect"] = rule.inspect;
        if (!rule.source.empty()) rules.back()["source"] = rule.source;
    }
    rules.push_back({{"text", tr("New rule").toStdString()}});
    session_.apply(
        set_value(session_.document(), "/rules/house", rules, tr("Add a rule of the house").toStdString()));
}

void AgreeSlip::show_sets() {
    const Rules& rules = session_.project().rules;
    const RuleSet* chosen = find_rule_set(rules.set);
    QStringList names{chosen || rules.title.empty()
                          ? tr("This project's own")
                          : tr("%1 (this project's own)").arg(QString::fromStdString(rules.title))};
    int index = 0;
    const auto stated = session_.document().root.find("rules");
    for (std::size_t i = 0; i < rule_sets().size(); ++i) {
        const RuleSet& set = rule_sets()[i];
        QString name = said(set.title);
        if (&set == chosen) {
            index = static_cast<int>(i) + 1;
            // The order in which a person fills in keys does not make other rules.
            if (stated != session_.document().root.end() &&
                nlohmann::json(*stated) != nlohmann::json(set.rules))
                name = tr("%1, changed").arg(name);
        }
        names << name;
    }
    QStringList shown;
    for (int i = 0; i < sets_->count(); ++i)
        shown << sets_->itemText(i);
    if (shown != names) {
        sets_->clear();
        sets_->addItems(names);
    }
    sets_->setCurrentIndex(index);
    about_->setText(chosen ? tr("%1 %2.").arg(said(chosen->about), said(chosen->source))
                           : QString::fromStdString(rules.source));
    about_->setVisible(!about_->text().isEmpty());
}

void AgreeSlip::show_house(const Inspection* inspection) {
    const std::size_t count = session_.project().rules.house.size();
    while (house_->count() > static_cast<int>(count)) {
        QLayoutItem* item = house_->takeAt(house_->count() - 1);
        item->widget()->deleteLater();
        delete item;
    }
    while (house_->count() < static_cast<int>(count))
        house_->addWidget(new HouseRuleRow(session_, static_cast<std::size_t>(house_->count()), this));
    for (int i = 0; i < house_->count(); ++i)
        static_cast<HouseRuleRow*>(house_->itemAt(i)->widget())->refresh(inspection != nullptr);
}

void AgreeSlip::refresh() {
    show_sets();
    const std::optional<Inspection> inspection = inspect_shown(session_);
    for (RuleRow* row : rows_) {
        const InspectionRow* found = nullptr;
        if (inspection)
            for (const InspectionRow& line : inspection->rows)
                if (line.code == row->kind().id) found = &line;
        row->show(found);
    }
    show_house(inspection ? &*inspection : nullptr);
    if (!inspection) {
        counts_->setText(tr("The car cannot be computed, so no rule is decided."));
        detail_->clear();
        return;
    }
    QStringList parts;
    for (const Verdict verdict : {Verdict::breach, Verdict::margin, Verdict::look_yourself, Verdict::pass})
        if (const auto count = inspection->count(verdict))
            parts << tr("%1: %2").arg(verdict_text(verdict)).arg(count);
    counts_->setText(parts.isEmpty() ? tr("No rule is set.")
                                     : tr("%1 – %2").arg(QString::fromStdString(inspection->car),
                                                         parts.join(QStringLiteral(", "))));
    QString unknown;
    for (const InspectionRow& line : inspection->rows)
        if (session_.project().rules.others.contains(line.code))
            unknown += (unknown.isEmpty() ? QString() : QStringLiteral("\n")) +
                       tr("Look at it yourself: %1 %2 (%3)")
                           .arg(sentence_case(line.name), QString::fromStdString(line.limit_words),
                                QString::fromStdString(line.why));
    detail_->setText(unknown.trimmed());
    detail_->setVisible(!detail_->text().isEmpty());
}

} // namespace rampwright::ui
