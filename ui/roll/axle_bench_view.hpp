#pragma once

#include "session/session.hpp"

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QWidget>

namespace rampwright::ui {

/// The bench's axles: typed cell by cell or pasted, and which can stand for each other, the straight ones
/// first.
class AxleBenchView : public QWidget {
    Q_OBJECT

public:
    explicit AxleBenchView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void take_table(const QString& text);
    void edit_cell(int row, int column);
    void add_axle();
    void remove_axle();
    /// Puts the cursor on an axle, wherever its group has put it.
    void go_to(std::size_t place);

    Session& session_;
    QTableWidget* axles_;
    QLabel *groups_, *trouble_;
    QPushButton* remove_;
};

} // namespace rampwright::ui
