#pragma once

#include "run/race.hpp"

#include <QWidget>

class QPainter;

namespace rampwright::ui {

/// The picture of a race at one instant: the whole lane in side profile, and beneath it what a camera that
/// runs along sees, to scale: two lanes side by side, the first car's in front.
class RaceView : public QWidget {
    Q_OBJECT

public:
    explicit RaceView(QWidget* parent);
    void look(const Race* race, double time);
    QSize sizeHint() const override { return {640, 240}; }
    QSize minimumSizeHint() const override { return {320, 170}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paint_lane(QPainter& painter, const QRectF& room) const;
    void paint_camera(QPainter& painter, const QRectF& room) const;
    const Race* race_ = nullptr;
    double time_ = 0;
};

} // namespace rampwright::ui
