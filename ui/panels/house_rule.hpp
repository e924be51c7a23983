#pragma once

#include "session/session.hpp"

#include <QWidget>

class QLineEdit;

namespace rampwright::ui {

class VerdictMark;

/// A rule of the house on the slip: its text, and a way to strike it out. A person always looks at it.
class HouseRuleRow : public QWidget {
    Q_OBJECT

public:
    HouseRuleRow(Session& session, std::size_t index, QWidget* parent = nullptr);
    void refresh(bool inspected);

private:
    void commit();
    void remove();
    std::string pointer() const { return "/rules/house/" + std::to_string(index_); }

    Session& session_;
    std::size_t index_;
    VerdictMark* mark_;
    QLineEdit* text_;
};

} // namespace rampwright::ui
