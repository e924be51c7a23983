#pragma once

#include "roll/bench_wheel_box.hpp"
#include "roll/reading_lines.hpp"
#include "session/session.hpp"

#include <rampwright/bench/pendulum.hpp>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

#include <array>

namespace rampwright::ui {

/// Spin inertia of a wheel from its swings on two or three wires, and the way into the plan. What is typed is
/// kept in the project, wheel by wheel.
class PendulumView : public QWidget {
    Q_OBJECT

public:
    explicit PendulumView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void show_readings();
    void show_result();
    PendulumReadings readings() const;
    void keep(PendulumReadings readings);
    void put_on_car();
    WireBench read() const;

    Session& session_;
    BenchWheelBox* measured_;
    QComboBox *wires_, *corner_;
    MeasuredEntry *wheel_, *plate_, *spread_, *length_, *time_, *plate_time_, *swing_;
    std::array<ReadingLine<PendulumReadings>, 7> lines_;
    QLabel *spread_label_, *result_;
    QSpinBox* count_;
    QPushButton* put_;
    std::optional<Combined> inertia_;
};

} // namespace rampwright::ui
