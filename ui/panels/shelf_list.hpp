#pragma once

#include "session/session.hpp"

#include <QListWidget>

namespace rampwright::ui {

/// The pieces on the shelf, with what is left of each. A row can be dragged to the drawing, or clicked and
/// then put down by a second click there.
class ShelfList : public QListWidget {
    Q_OBJECT

public:
    explicit ShelfList(Session& session, QWidget* parent = nullptr);
    std::optional<std::size_t> chosen() const;

Q_SIGNALS:
    /// A row was clicked: the piece is in the hand now.
    void picked(std::size_t shelf);
    /// Enter on a row: put it in the car.
    void wanted();

protected:
    void startDrag(Qt::DropActions actions) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void refresh();

    Session& session_;
};

} // namespace rampwright::ui
