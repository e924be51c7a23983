#pragma once

#include "session/session.hpp"

#include <QFrame>

class QLabel;

namespace rampwright::ui {

/// The answers that are always in sight: heat time, mass and what is left, balance point, front load, and
/// the finding that matters most. They follow the hand, and show the change since it took hold.
class AnswersPanel : public QFrame {
    Q_OBJECT

public:
    explicit AnswersPanel(Session& session, QWidget* parent = nullptr);

Q_SIGNALS:
    void finding_chosen(std::size_t finding);

private:
    struct Row {
        QLabel* value = nullptr;
        QLabel* change = nullptr;
    };
    Row add_row(const QString& object_name, const char* code, const QString& caption, const QString& why);
    void refresh();
    void show(const Row& row, const QString& caption, const QString& value, const QString& change);

    Session& session_;
    QLabel *time_, *time_change_, *finding_;
    Row mass_, left_, balance_, front_;
};

} // namespace rampwright::ui
