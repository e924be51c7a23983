#pragma once

#include "run/race.hpp"

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include <optional>

class QCheckBox;
class QLabel;
class QSlider;
class QToolButton;

namespace rampwright::ui {

class RaceView;

/// A race to watch: play and pause, a slider to scrub, a quarter of the speed.
class RacePanel : public QWidget {
    Q_OBJECT

public:
    explicit RacePanel(QWidget* parent);
    /// Computes both heats (a few milliseconds) and goes to the start.
    void show_race(const Project& project, std::size_t first, std::size_t second);
    void pause();
    double time() const { return time_; }
    const Race* race() const { return race_ ? &*race_ : nullptr; }

private:
    void toggle();
    void advance();
    void go_to(double time);

    std::optional<Race> race_;
    UnitSystem units_ = UnitSystem::metric;
    double time_ = 0;
    RaceView* view_;
    QToolButton* play_;
    QSlider* slider_;
    QCheckBox* slow_;
    QLabel* said_;
    QTimer ticks_;
    QElapsedTimer since_;
};

} // namespace rampwright::ui
