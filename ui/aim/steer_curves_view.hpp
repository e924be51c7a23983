#pragma once

#include "session/session.hpp"

#include <QLabel>
#include <QTimer>
#include <QWidget>

namespace rampwright::ui {

class TimePlot;

/// Expected time against steer and against front load: today's place, the best, and how flat it is about
/// it.
class SteerCurvesView : public QWidget {
    Q_OBJECT

public:
    explicit SteerCurvesView(Session& session, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();

    Session& session_;
    TimePlot *steer_, *load_;
    QLabel *steer_words_, *load_words_;
    QTimer wait_;
};

} // namespace rampwright::ui
