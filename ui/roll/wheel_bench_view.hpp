#pragma once

#include "session/session.hpp"

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

namespace rampwright::ui {

/// The wheel bench: a table of measured wheels, what is odd about them, the four to take and where each
/// goes.
class WheelBenchView : public QWidget {
    Q_OBJECT

public:
    explicit WheelBenchView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void show_wheels();
    void show_choice();
    void take_table(const QString& text);
    void open_table();
    void edit_cell(int row, int column);
    void add_wheel();
    void remove_wheel();
    void fit_choice();

    Session& session_;
    QTableWidget* wheels_;
    QLabel *choice_, *trouble_;
    QPushButton *fit_, *remove_;
    std::array<std::optional<std::size_t>, 4> chosen_; ///< bench wheel by corner
};

} // namespace rampwright::ui
