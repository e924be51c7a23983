#pragma once

#include "session/session.hpp"

#include <QToolButton>

namespace rampwright::ui {

/// "?" beside a figure: opens its explanation. In the tab order, and named for those who cannot see it.
class WhyButton : public QToolButton {
    Q_OBJECT

public:
    /// @param code of the explanation: the figure's key in `figures --json`.
    /// @param figure what people call the figure: "Heat time".
    WhyButton(Session& session, std::string code, const QString& figure, QWidget* parent = nullptr);

    /// Opens the popover below the button, or below `at`.
    void ask(QWidget* at = nullptr);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Session& session_;
    std::string code_;
};

} // namespace rampwright::ui
