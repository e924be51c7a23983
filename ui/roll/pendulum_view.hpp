#pragma once

#include "roll/measured_entry.hpp"
#include "session/session.hpp"

#include <rampwright/bench/pendulum.hpp>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace rampwright::ui {

/// Spin inertia of a wheel from its swings on two or three wires, and the way into the plan.
class PendulumView : public QWidget {
    Q_OBJECT

public:
    explicit PendulumView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void show_result();
    void put_on_car();
    WireBench read() const;

    Session& session_;
    QComboBox *wires_, *corner_;
    MeasuredEntry *wheel_, *plate_, *spread_, *length_, *time_, *plate_time_, *swing_;
    QLabel *spread_label_, *result_;
    QSpinBox* count_;
    QPushButton* put_;
    std::optional<Combined> inertia_;
};

} // namespace rampwright::ui
