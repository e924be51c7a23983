#pragma once

#include "run/lane_picture.hpp"
#include "session/session.hpp"

#include <QWidget>

#include <memory>
#include <optional>

namespace rampwright::ui {

/// The lane in section, pieces told apart; a click chooses a piece, the arrow keys go from one to the next.
/// The start and finish lines can be dragged; Esc puts one back.
class LaneView : public QWidget {
    Q_OBJECT

public:
    explicit LaneView(Session& session, QWidget* parent = nullptr);
    void choose(std::optional<std::size_t> piece);
    /// Why the lane cannot be drawn; empty where it can.
    const QString& problem() const { return problem_; }
    const Track* track() const { return track_.get(); }
    enum class Line { start, finish };
    /// Where a line can be taken hold of, in the picture.
    QPoint line_place(Line line) const;
    QSize sizeHint() const override { return {800, 170}; }
    QSize minimumSizeHint() const override { return {300, 110}; }

Q_SIGNALS:
    void chosen(std::size_t piece);
    /// The lane is another: track and problem are up to date.
    void redrawn();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void refresh();
    LaneMap map() const;
    std::optional<Line> line_at(QPointF pixel) const;
    double place_of(double x) const;

    Session& session_;
    std::shared_ptr<const Track> track_;
    QString problem_;
    std::optional<std::size_t> piece_;
    std::optional<Line> held_;
};

} // namespace rampwright::ui
