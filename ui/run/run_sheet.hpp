#pragma once

#include "session/session.hpp"

#include <QFrame>

class QStackedWidget;
class QTabBar;

namespace rampwright::ui {

/// The big sheet of the Run step: pages side by side on one paper.
class RunSheet : public QFrame {
    Q_OBJECT

public:
    explicit RunSheet(Session& session, QWidget* parent = nullptr);
    void add_page(const QString& name, const QString& why, QWidget* page);
    void show_page(int page);

private:
    QTabBar* tabs_;
    QStackedWidget* pages_;
};

} // namespace rampwright::ui
