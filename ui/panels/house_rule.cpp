#include "panels/house_rule.hpp"

#include "panels/verdict_mark.hpp"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QToolButton>

namespace rampwright::ui {

HouseRuleRow::HouseRuleRow(Session& session, std::size_t index, QWidget* parent)
    : QWidget(parent),
      session_(session),
      index_(index),
      mark_(new VerdictMark(this)),
      text_(new QLineEdit(this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(6);
    text_->setObjectName(QStringLiteral("/rules/house/%1/text").arg(index));
    text_->setAccessibleName(tr("Rule of the house %1").arg(index + 1));
    auto* strike = new QToolButton(this);
    strike->setText(QStringLiteral("×"));
    strike->setObjectName(QStringLiteral("rules.house.%1.remove").arg(index));
    strike->setAccessibleName(tr("Strike out rule of the house %1").arg(index + 1));
    strike->setToolTip(tr("Strike out this rule"));
    strike->setFocusPolicy(Qt::StrongFocus);
    row->addWidget(mark_);
    row->addWidget(text_, 1);
    row->addWidget(strike);
    connect(text_, &QLineEdit::editingFinished, this, &HouseRuleRow::commit);
    connect(strike, &QToolButton::clicked, this, &HouseRuleRow::remove);
}

void HouseRuleRow::refresh(bool inspected) {
    const auto& rules = session_.project().rules.house;
    if (index_ >= rules.size() || text_->isModified()) return;
    text_->setText(QString::fromStdString(rules[index_].text));
    text_->setAccessibleDescription(verdict_text(Verdict::look_yourself));
    mark_->show(inspected ? std::optional(Verdict::look_yourself) : std::nullopt);
}

void HouseRuleRow::commit() {
    const QString typed = text_->text().trimmed();
    if (!text_->isModified() || typed.isEmpty()) return;
    text_->setModified(false);
    session_.apply(set_value(session_.document(), pointer() + "/text", typed.toStdString(),
                             tr("Set rule of the house %1").arg(index_ + 1).toStdString()));
}

void HouseRuleRow::remove() {
    Json rules = session_.document().root.at(Json::json_pointer("/rules/house"));
    rules.erase(index_);
    text_->setModified(false);
    session_.apply(set_value(session_.document(), "/rules/house", rules.empty() ? Json() : rules,
                             tr("Strike out a rule of the house").toStdString()));
}

} // namespace rampwright::ui
