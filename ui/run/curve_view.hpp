#pragma once

#include "run/lane_picture.hpp"
#include "session/session.hpp"

#include <QWidget>

#include <memory>
#include <optional>

namespace rampwright::ui {

/// One heat along the lane: the lane in section with the car on it, and below it, to the same place along the
/// lane, speed, load under the wheels, and the power each loss takes. The mouse or the arrow keys move a
/// cursor; the numbers there stand at the right.
class CurveView : public QWidget {
    Q_OBJECT

public:
    explicit CurveView(Session& session, QWidget* parent = nullptr);

    /// m from the start line.
    double cursor() const { return cursor_; }
    void set_cursor(double at);
    const Curves* curves() const { return curves_ ? &*curves_ : nullptr; }
    QSize sizeHint() const override { return {900, 460}; }
    QSize minimumSizeHint() const override { return {420, 240}; }

    /// The picture as it stands, on any device. @param size in the device's pixels.
    void paint(QPainter& painter, QSize size) const;
    /// Every point as a table with a line of names and units, parted by tabs.
    QString table() const;

Q_SIGNALS:
    void cursor_moved(double at);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    struct Line; ///< of a strip
    struct Strip;
    void refresh();
    void tell();
    std::vector<Strip> strips() const;
    double place_of(double x) const;
    void paint_strip(QPainter& painter, const Strip& strip, const QRectF& room) const;

    Session& session_;
    std::optional<Curves> curves_;
    std::shared_ptr<const Track> track_;
    double cursor_ = 0;
    bool stale_ = true;
};

} // namespace rampwright::ui
