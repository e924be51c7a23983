#pragma once

#include "session/session.hpp"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

namespace rampwright::ui {

class AxleHeadPicture;
class BoardPicture;

/// The drift board and its tuning log: roll, read the drift, turn the axle, until it is within tolerance.
class TuningView : public QWidget {
    Q_OBJECT

public:
    explicit TuningView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void add(QLineEdit& field, Quantity quantity);
    void remove_selected();
    void set_wheel_from_board();

    Session& session_;
    BoardPicture* board_;
    AxleHeadPicture* head_;
    QLabel *belief_, *move_, *trouble_;
    QLineEdit *roll_, *turn_;
    QTableWidget* table_;
    QPushButton *remove_, *use_;
};

} // namespace rampwright::ui
