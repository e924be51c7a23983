#pragma once

#include "session/session.hpp"

#include <QTableWidget>
#include <QWidget>

namespace rampwright::ui {

class CantPicture;

/// The cant of each wheel: where its hub runs, what clears what, and the axle that makes it.
class CantView : public QWidget {
    Q_OBJECT

public:
    explicit CantView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();

    Session& session_;
    CantPicture *rear_, *front_;
    QTableWidget* table_;
};

} // namespace rampwright::ui
