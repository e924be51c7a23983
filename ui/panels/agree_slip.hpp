#pragma once

#include "session/session.hpp"

#include <rampwright/rules/inspection.hpp>

#include <QWidget>

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace rampwright::ui {

class RuleRow;

/// The inspection of the car on the sheet; nothing where it cannot be computed.
std::optional<Inspection> inspect_shown(const Session& session);

/// The slip of the step "Agree": which rules the race goes by, each limit to be changed, and how the car on
/// the sheet stands, rule by rule.
class AgreeSlip : public QWidget {
    Q_OBJECT

public:
    explicit AgreeSlip(Session& session, QWidget* parent = nullptr);

private:
    void build_sets(QVBoxLayout& column);
    void build_rules(QVBoxLayout& column);
    void build_house(QVBoxLayout& column);
    void choose_set(int index);
    void add_house_rule();
    void refresh();
    void show_sets();
    void show_house(const Inspection* inspection);

    Session& session_;
    QComboBox* sets_ = nullptr;
    QLabel *about_ = nullptr, *counts_ = nullptr, *detail_ = nullptr;
    std::vector<RuleRow*> rows_;
    QVBoxLayout* house_ = nullptr;
};

} // namespace rampwright::ui
