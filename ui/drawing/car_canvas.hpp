#pragma once

#include "drawing/paint_context.hpp"
#include "session/session.hpp"

#include <QWidget>

#include <optional>

namespace rampwright::ui {

/// The sheet of paper: the car in three views, to scale. What is drawn can be taken hold of.
class CarCanvas : public QWidget {
    Q_OBJECT

public:
    explicit CarCanvas(Session& session, QWidget* parent = nullptr);

    const DrawingMap& map() const { return map_; }
    const CarShape& shape() const { return shape_; }

    /// What the step in hand lets one touch.
    Reach reach() const { return reach_; }
    void set_reach(Reach reach);

    const std::optional<Target>& selected() const { return selected_; }
    void select(std::optional<Target> target);
    void select_finding(std::optional<std::size_t> finding);
    /// Takes the selected thing away, as one step.
    void remove_selected();

    void zoom_by(double factor, const QPointF& about);
    void zoom_to_fit();

    QSize sizeHint() const override { return {1000, 560}; }
    QSize minimumSizeHint() const override { return {560, 300}; }

Q_SIGNALS:
    void selection_changed(const std::optional<rampwright::ui::Target>& target);
    void finding_selected(std::optional<std::size_t> finding);
    /// What to say in the status line about what is under the hand; empty: nothing.
    void hint(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Grab {
        Target target;
        View view = View::side;
        QPointF pressed_at;
        Vec3 start = Vec3::Zero(); ///< the target's anchor when it was taken
        CarPlan plan;              ///< the car as it was then
        bool moving = false;       ///< the hand has moved far enough to mean it
    };

    void refresh();
    void refit();
    PaintContext context() const;
    std::optional<Target> target_at(const QPointF& pixel) const;
    std::optional<std::size_t> finding_at(const QPointF& pixel) const;
    void drag_to(const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    bool nudge(QKeyEvent* event);
    void hover(const QPointF& pixel);
    /// Adds a point to the outline under the hand.
    bool add_point(View view, const QPointF& pixel);
    void toggle_smooth();
    /// Does an edit, or says why it cannot be done.
    template <class MakeEdit>
    void attempt(MakeEdit make_edit, const QString& merge = {});

    Session& session_;
    DrawingMap map_;
    CarShape shape_;
    double zoom_ = 1;
    QPointF pan_;
    Reach reach_ = Reach::weight;
    std::optional<Target> selected_, hovered_;
    std::optional<std::size_t> selected_finding_;
    View last_view_ = View::side;
    std::optional<Grab> grab_;
    std::optional<QPointF> panning_from_;
};

} // namespace rampwright::ui
