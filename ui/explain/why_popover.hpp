#pragma once

#include "session/session.hpp"

#include <rampwright/explain/explain.hpp>

#include <QFrame>

#include <optional>

class QLabel;
class QPushButton;

namespace rampwright::ui {

/// What a figure means, in three steps: a sentence; the formula with today's numbers and its source; the
/// section of the model. Closes with Esc, or by a click beside it.
class WhyPopover : public QFrame {
    Q_OBJECT

public:
    WhyPopover(Session& session, const std::string& code, QWidget* parent);
    void show_below(QWidget& place);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void show_formula();
    void fit();

    std::optional<Explanation> explanation_;
    QWidget* place_ = nullptr;
    QLabel *sentence_, *law_, *formula_, *source_;
    QPushButton *more_, *read_;
};

} // namespace rampwright::ui
