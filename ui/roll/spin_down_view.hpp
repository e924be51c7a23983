#pragma once

#include "plots/mark_plot.hpp"
#include "roll/bench_wheel_box.hpp"
#include "roll/reading_lines.hpp"

#include <rampwright/bench/spin_down.hpp>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include <array>
#include <vector>

namespace rampwright::ui {

/// Journal friction from how a wheel slows down on its axle, and the way into the plan. What is typed is kept
/// in the project, wheel by wheel.
class SpinDownView : public QWidget {
    Q_OBJECT

public:
    explicit SpinDownView(Session& session, QWidget* parent = nullptr);

private:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void refresh();
    void show_readings();
    void show_result();
    SpinDownReadings readings() const;
    void keep(const SpinDownReadings& readings, const QString& merge = {});
    void keep_text();
    SpeedUnit speed_unit() const;
    std::vector<Vec2> pairs() const;
    void put_on_car();
    SpinDown read() const;
    Measured windage() const;

    Session& session_;
    BenchWheelBox* measured_;
    QPlainTextEdit* readings_;
    bool text_typed_ = false; ///< and not kept, because it cannot be read yet
    int visit_ = 0;           ///< of the readings' text: what is typed in one is one undo step
    QComboBox* speed_unit_;
    MeasuredEntry *inertia_, *mass_, *bore_;
    std::array<ReadingLine<SpinDownReadings>, 3> lines_;
    QCheckBox* air_;
    MarkPlot* plot_;
    QLabel* result_;
    QPushButton* put_;
    std::optional<Combined> journal_;
};

} // namespace rampwright::ui
