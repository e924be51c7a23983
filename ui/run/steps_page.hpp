#pragma once

#include "session/session.hpp"

#include <QScrollArea>

class QGridLayout;
class QLabel;
class QTimer;

namespace rampwright::ui {

/// What a builder can still do, effort and gain side by side; what single changes are worth; and what makes
/// the time uncertain. Worked out beside the window's own work, so that nothing waits for it.
class StepsPage : public QScrollArea {
    Q_OBJECT

public:
    explicit StepsPage(Session& session, QWidget* parent = nullptr);
    /// Whether what is shown belongs to the project as it is.
    bool fresh() const { return shown_ == wanted_; }

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void ask();
    void start();
    void fill(const std::vector<BuilderStep>& steps);
    void fill_worth();

    Session& session_;
    QTimer* settle_;
    QLabel* state_;
    QGridLayout *steps_, *worth_, *doubt_;
    std::vector<BuilderStep> found_;
    unsigned wanted_ = 1, shown_ = 0;
};

} // namespace rampwright::ui
