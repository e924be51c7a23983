#pragma once

#include "plots/mark_plot.hpp"
#include "roll/measured_entry.hpp"

#include <rampwright/bench/spin_down.hpp>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

namespace rampwright::ui {

/// Journal friction from how a wheel of this car slows down on its axle, and the way into the plan.
class SpinDownView : public QWidget {
    Q_OBJECT

public:
    explicit SpinDownView(Session& session, QWidget* parent = nullptr);

private:
    void refresh();
    void show_result();
    void put_on_car();
    SpinDown read() const;
    Measured windage() const;

    Session& session_;
    QPlainTextEdit* readings_;
    QComboBox* speed_unit_;
    MeasuredEntry *inertia_, *mass_, *bore_;
    QCheckBox* air_;
    MarkPlot* plot_;
    QLabel* result_;
    QPushButton* put_;
    std::optional<Combined> journal_;
};

} // namespace rampwright::ui
