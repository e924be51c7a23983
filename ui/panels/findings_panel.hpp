#pragma once

#include "session/session.hpp"

#include <QFrame>

#include <optional>

class QLabel;
class QListWidget;

namespace rampwright::ui {

/// What the car's builder should know, most severe first; numbered as on the drawing.
class FindingsPanel : public QFrame {
    Q_OBJECT

public:
    explicit FindingsPanel(Session& session, QWidget* parent = nullptr);
    void select(std::optional<std::size_t> finding);

Q_SIGNALS:
    void selected(std::optional<std::size_t> finding);

protected:
    void changeEvent(QEvent* event) override;

private:
    void refresh();

    Session& session_;
    QLabel* title_ = nullptr;
    QListWidget* list_ = nullptr;
    bool filling_ = false;
};

} // namespace rampwright::ui
