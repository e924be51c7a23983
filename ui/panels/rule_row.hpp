#pragma once

#include "session/session.hpp"

#include <rampwright/rules/inspection.hpp>
#include <rampwright/rules/rule_kinds.hpp>

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace rampwright::ui {

class ValueEditor;
class VerdictMark;

/// One rule on the slip: its mark, its name, its limit to be typed or chosen, and what is found on the car.
class RuleRow : public QWidget {
    Q_OBJECT

public:
    RuleRow(Session& session, const RuleKind& kind, QWidget* parent = nullptr);

    const RuleKind& kind() const { return kind_; }
    /// @param found the rule's line of the inspection; nullptr where the race has no such rule.
    void show(const InspectionRow* found);

private:
    QWidget* make_editor();
    void choose(int index);
    void commit_text();
    void show_value();
    std::string pointer() const { return "/rules/" + kind_.id; }

    Session& session_;
    const RuleKind& kind_;
    VerdictMark* mark_;
    QLabel *found_, *fault_;
    ValueEditor* number_ = nullptr; ///< limits with a unit
    QComboBox* choice_ = nullptr;   ///< what is allowed or not, how many wheels
    QLineEdit* text_ = nullptr;     ///< dates and lists
};

/// "greatest length" as a heading has it.
QString sentence_case(const std::string& words);

} // namespace rampwright::ui
