#pragma once

#include "shaded/picture_maker.hpp"

#include <QWidget>

#include <optional>
#include <string>

class QTimer;

namespace rampwright::ui {

class Session;

/// The whole car in light and shade, turned by a drag or by the arrow keys.
class CarPicture : public QWidget {
    Q_OBJECT

public:
    explicit CarPicture(Session& session, QWidget* parent = nullptr);

    const Viewpoint& viewpoint() const { return from_; }
    void set_viewpoint(const Viewpoint& from);
    const QImage& picture() const { return picture_; }
    /// Whether the picture shows the car as it is, in full quality.
    bool up_to_date() const { return !maker_.busy() && !stale_; }
    const PictureMaker& maker() const { return maker_; }

    QSize sizeHint() const override { return {640, 420}; }
    QSize minimumSizeHint() const override { return {80, 60}; }

Q_SIGNALS:
    /// The person wants to see it large.
    void enlarge_wanted();

protected:
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void ask(int samples);
    void describe();
    void draw_number();

    Session& session_;
    PictureMaker maker_;
    Viewpoint from_;
    QImage picture_;
    DecalPicture number_;
    std::string number_shown_;
    std::optional<QPoint> held_at_;
    Viewpoint held_from_;
    QTimer* settle_;    ///< asks for full quality once the hand rests
    bool stale_ = true; ///< a better picture is on its way
};

} // namespace rampwright::ui
