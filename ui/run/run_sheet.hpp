#pragma once

#include <QTabWidget>

namespace rampwright::ui {

class Session;

/// The sheet of the Run step: what a heat of the finished car looks like, each view of it a tab. A view is a
/// widget that reads the session; its page goes into the constructor's list.
class RunSheet : public QTabWidget {
    Q_OBJECT

public:
    explicit RunSheet(Session& session, QWidget* parent = nullptr);
};

} // namespace rampwright::ui
