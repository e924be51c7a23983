#pragma once

#include "session/session.hpp"

#include <QTableWidget>

namespace rampwright::ui {

/// The pieces of the lane as a table that can be typed into, in any unit. A value that is none is put back,
/// and `refused` says why.
class PieceTable : public QTableWidget {
    Q_OBJECT

public:
    explicit PieceTable(Session& session, QWidget* parent = nullptr);
    void add_straight();
    void add_arc();
    void remove_chosen();

Q_SIGNALS:
    void refused(const QString& why);

private:
    enum Column { kind, length, radius, turn, easing, columns };
    void refresh();
    void commit(int row, int column);
    void attempt(const std::function<Edit()>& edit);
    std::size_t place_for_new() const;

    Session& session_;
    bool filling_ = false;
};

} // namespace rampwright::ui
