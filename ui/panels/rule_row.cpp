#include "panels/rule_row.hpp"

#include "fields/document_value.hpp"
#include "fields/quiet_combo_box.hpp"
#include "fields/value_editor.hpp"
#include "look/theme.hpp"
#include "panels/verdict_mark.hpp"
#include "text/figure_text.hpp"
#include "text/said.hpp"

#include <rampwright/units/key_unit.hpp>

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

namespace rampwright::ui {
namespace {

bool is_allowance(const RuleKind& kind) {
    return kind.id.starts_with("allow/");
}

/// What stands at a pointer, or null.
Json value_at(const Session& session, const std::string& pointer) {
    const Json::json_pointer place(pointer);
    const Json& root = session.document().root;
    return root.contains(place) ? root.at(place) : Json();
}

} // namespace

QString sentence_case(const std::string& words) {
    QString text = QString::fromStdString(words);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

RuleRow::RuleRow(Session& session, const RuleKind& kind, QWidget* parent)
    : QWidget(parent),
      session_(session),
      kind_(kind),
      mark_(new VerdictMark(this)),
      found_(new QLabel(this)),
      fault_(new QLabel(this)) {
    setObjectName(QStringLiteral("rule.%1").arg(QString::fromStdString(kind.id)));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 2, 0, 4);
    grid->setHorizontalSpacing(6);
    grid->setVerticalSpacing(0);
    grid->setColumnStretch(1, 1);
    auto* name = new QLabel(sentence_case(Core::tr(kind.name)), this);
    name->setWordWrap(true);
    QWidget* editor = make_editor();
    editor->setFixedWidth(116);
    name->setBuddy(editor->focusProxy() ? editor->focusProxy() : editor);
    found_->setObjectName(QStringLiteral("verdict.%1").arg(QString::fromStdString(kind.id)));
    found_->setWordWrap(true);
    found_->setFont(text_font(0.88));
    found_->setForegroundRole(QPalette::PlaceholderText);
    fault_->setWordWrap(true);
    fault_->hide();
    grid->addWidget(mark_, 0, 0, Qt::AlignTop);
    grid->addWidget(name, 0, 1, Qt::AlignVCenter);
    grid->addWidget(editor, 0, 2, Qt::AlignTop);
    grid->addWidget(found_, 1, 1, 1, 2);
    grid->addWidget(fault_, 2, 1, 1, 2);
    const QString why = tr("%1 %2").arg(said(kind.text), said(kind.inspect));
    setToolTip(why);
    setWhatsThis(why);
}

QWidget* RuleRow::make_editor() {
    const QString name = sentence_case(Core::tr(kind_.name));
    const auto prepare = [&](QWidget* widget) { widget->setAccessibleName(tr("Rule: %1").arg(name)); };
    if (find_key_unit(kind_.id.substr(0, kind_.id.find('/'))) && !is_allowance(kind_)) {
        number_ = new ValueEditor(session_, this);
        number_->field()->setObjectName(QString::fromStdString(pointer()));
        number_->field()->bind(pointer(), tr("rule, %1").arg(said(kind_.name)));
        prepare(number_->field());
        return number_;
    }
    if (is_allowance(kind_) || kind_.id == "wheels_touching") {
        choice_ = new QuietComboBox(this);
        choice_->setObjectName(QString::fromStdString(pointer()));
        if (is_allowance(kind_))
            choice_->addItems({tr("no rule"), tr("allowed"), tr("not allowed")});
        else
            choice_->addItems({tr("no rule"), tr("at least 3"), tr("at least 4")});
        prepare(choice_);
        connect(choice_, &QComboBox::activated, this, &RuleRow::choose);
        return choice_;
    }
    text_ = new QLineEdit(this);
    text_->setObjectName(QString::fromStdString(pointer()));
    text_->setPlaceholderText(kind_.id == "built_after" ? tr("year-month-day") : tr("kinds, with commas"));
    prepare(text_);
    connect(text_, &QLineEdit::editingFinished, this, &RuleRow::commit_text);
    return text_;
}

void RuleRow::choose(int index) {
    Json value;
    if (index > 0) value = is_allowance(kind_) ? Json(index == 1) : Json(index + 2);
    session_.apply(set_value(session_.document(), pointer(), value,
                             tr("Set rule, %1").arg(said(kind_.name)).toStdString()));
}

void RuleRow::commit_text() {
    if (!text_->isModified()) return;
    const QString typed = text_->text().trimmed();
    Json value;
    if (!typed.isEmpty() && kind_.id == "built_after") {
        value = typed.toStdString();
    } else if (!typed.isEmpty()) {
        value = Json::array();
        for (const QString& word : typed.split(QLatin1Char(','), Qt::SkipEmptyParts))
            if (!word.trimmed().isEmpty()) value.push_back(word.trimmed().toStdString());
    }
    try {
        text_->setModified(false);
        fault_->hide();
        session_.apply(set_value(session_.document(), pointer(), value,
                                 tr("Set rule, %1").arg(said(kind_.name)).toStdString()));
        show_value();
    } catch (const Problem& problem) {
        text_->setModified(true);
        fault_->setText(not_taken(plain_text(problem)));
        fault_->show();
    }
}

void RuleRow::show_value() {
    const Json value = value_at(session_, pointer());
    if (choice_) {
        const int index = value.is_boolean()  ? (value.get<bool>() ? 1 : 2)
                          : value.is_number() ? static_cast<int>(value.get<double>()) - 2
                                              : 0;
        choice_->setCurrentIndex(index);
    }
    if (text_ && !text_->isModified()) {
        QStringList words;
        if (value.is_string()) words << QString::fromStdString(value.get<std::string>());
        if (value.is_array())
            for (const Json& word : value)
                if (word.is_string()) words << QString::fromStdString(word.get<std::string>());
        text_->setText(words.join(QStringLiteral(", ")));
        text_->setModified(false);
    }
}

void RuleRow::show(const InspectionRow* found) {
    show_value();
    mark_->show(found ? std::optional(found->verdict) : std::nullopt);
    QString text;
    if (found) {
        const UnitSystem units = session_.project().units;
        const QString value = QString::fromStdString(value_text(*found, units)),
                      margin = QString::fromStdString(margin_text(*found, units));
        text = verdict_text(found->verdict);
        if (found->value || !found->value_words.empty()) text = tr("%1: %2").arg(text, value);
        if (!margin.isEmpty()) text = tr("%1, %2").arg(text, margin);
        // What the person must do comes before why the program does not.
        if (found->verdict == Verdict::look_yourself)
            text = tr("%1. %2").arg(text, QString::fromStdString(found->inspect));
        else if (!found->why.empty())
            text = tr("%1 (%2)").arg(text, QString::fromStdString(found->why));
        const QString why = QString::fromStdString(found->rule + " " + found->inspect +
                                                   (found->why.empty() ? "" : " (" + found->why + ")") +
                                                   (found->source.empty() ? "" : "\n" + found->source));
        setToolTip(why);
        setWhatsThis(why);
    }
    found_->setText(text);
    found_->setVisible(found != nullptr);
    QWidget* editor = number_   ? static_cast<QWidget*>(number_->field())
                      : choice_ ? static_cast<QWidget*>(choice_)
                                : text_;
    if (!number_ || number_->field()->fault().isEmpty()) editor->setAccessibleDescription(text);
}

} // namespace rampwright::ui
