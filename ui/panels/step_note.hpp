#pragma once

#include "panels/step_ruler.hpp"

#include <QWidget>

class QCheckBox;
class QLabel;

namespace rampwright::ui {

class Session;

/// What a step is called.
QString step_name(Step step);

/// Over a step's fields: whether it is decided and by what, what is open, the usual next thing, and the box
/// with which the person confirms it.
class StepNote : public QWidget {
    Q_OBJECT

public:
    StepNote(Session& session, Step step, QWidget* parent = nullptr);

private:
    void refresh();

    Session& session_;
    Step step_;
    QCheckBox* confirmed_;
    QLabel* words_;
};

/// Keeps the ruler's marks with the car on the sheet.
void mark_decided_steps(StepRuler& ruler, Session& session);

} // namespace rampwright::ui
