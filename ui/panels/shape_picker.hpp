#pragma once

#include "session/session.hpp"

#include <QWidget>

class QToolButton;

namespace rampwright::ui {

/// The starting shapes as small drawings: one click gives the car on the sheet that outline, one undo takes
/// it back.
class ShapePicker : public QWidget {
    Q_OBJECT

public:
    explicit ShapePicker(Session& session, QWidget* parent = nullptr);

Q_SIGNALS:
    void refused(const QString& why);

protected:
    void changeEvent(QEvent* event) override;

private:
    void draw_icons();
    void refresh();

    Session& session_;
    std::vector<QToolButton*> buttons_; ///< in the table's order
};

} // namespace rampwright::ui
