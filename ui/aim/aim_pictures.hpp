#pragma once

#include <rampwright/steer/cant_plan.hpp>

#include <QWidget>

#include <optional>
#include <vector>

namespace rampwright::ui {

/// The drift board from above: where the car should end, where it ended, where today's steer would lead.
/// Sideways is drawn four times as large as along the board, and says so.
class BoardPicture : public QWidget {
    Q_OBJECT

public:
    explicit BoardPicture(QWidget* parent = nullptr);

    struct Board {
        double over = 1, target = 0, tolerance = 0; ///< m; drift positive to the car's left
        std::optional<double> believed;             ///< m, what the log says by now
        std::vector<double> rolls;                  ///< m
    };
    void set(const Board& board);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Board board_;
};

/// The guide wheel's axle seen from its head: where the bend points, and where to turn it next.
class AxleHeadPicture : public QWidget {
    Q_OBJECT

public:
    explicit AxleHeadPicture(QWidget* parent = nullptr);
    /// @param turn rad clockwise from straight up. @param by the next move, rad clockwise.
    void set(double turn, std::optional<double> by);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double turn_ = 0;
    std::optional<double> by_;
};

/// A canted wheel from behind, its lean drawn three times as large: wood, axle, rail, lane.
class CantPicture : public QWidget {
    Q_OBJECT

public:
    explicit CantPicture(QWidget* parent = nullptr);
    struct Pair {
        double left_cant = 0, right_cant = 0; ///< rad
        double wheel_radius = 0.015, wheel_width = 0.008, track_half = 0.026, wood_half = 0.022;
        double axle_height = 0.005, wood_height = 0.016;
        std::optional<Vec2> rail; ///< width, height
    };
    void set(const Pair& pair);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Pair pair_;
};

} // namespace rampwright::ui
