#pragma once

#include "session/session.hpp"

#include <QWidget>

class QLabel;

namespace rampwright::ui {

/// The finished car on one kitchen scale: guided weighing, what was measured typed back from the sheet, the
/// plan beside it, and what to trim where.
class WeighSlip : public QWidget {
    Q_OBJECT

public:
    explicit WeighSlip(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void show_comparison(const Built* built);

    Session& session_;
    QWidget* table_;
    QLabel *advice_, *words_;
};

} // namespace rampwright::ui
