#pragma once

#include "drawing/paint_context.hpp"
#include "drawing/shelf_drop.hpp"
#include "session/session.hpp"

#include <QPixmap>
#include <QWidget>

#include <functional>
#include <memory>
#include <optional>

class QMimeData;

namespace rampwright::ui {

class PictureStore;

/// What the hand holds: nothing, so that it picks and drags; what cuts; a piece from the shelf; or the
/// picture under the drawing, to be moved, or to be measured between two of its places.
enum class Tool { pick, pocket, bore, piece, move_picture, measure_picture };

class DrawingActions;

/// The sheet of paper: the car in three views, to scale. What is drawn can be taken hold of.
class CarCanvas : public QWidget {
    Q_OBJECT

public:
    explicit CarCanvas(Session& session, QWidget* parent = nullptr);

    const Session& session() const { return session_; }
    const DrawingMap& map() const { return map_; }
    const CarShape& shape() const { return shape_; }

    /// What the step in hand lets one touch.
    Reach reach() const { return reach_; }
    void set_reach(Reach reach);

    /// The one thing that is chosen; none where nothing or several things are.
    const std::optional<Target>& selected() const { return selected_; }
    void select(std::optional<Target> target);
    /// All that is chosen. Several things are pieces or cuts, never points or axles.
    const std::vector<Target>& selection() const { return selection_; }
    void select_these(std::vector<Target> targets);
    /// Every piece, or every cut, that the step in hand lets one touch.
    void select_all();
    /// The pieces and cuts that are chosen.
    Group group() const { return group_of(selection_); }
    void select_finding(std::optional<std::size_t> finding);
    /// Frames a place and names it, until the hand is on the drawing again or the car changes. Whoever shows
    /// the drawing brings it into sight.
    void point_out(const PointedOut& place);
    const std::optional<PointedOut>& pointed_out() const { return pointed_out_; }
    /// The next thing, or the one before, that the step in hand lets one touch.
    void select_next(bool forward);

    Tool tool() const { return tool_; }
    /// Takes up a tool for cutting, or lays down what the hand holds (Tool::pick).
    void set_tool(Tool tool);
    /// Takes a piece of the shelf into the hand; the next click puts it down.
    void carry(std::size_t shelf);
    std::optional<std::size_t> carried() const { return carried_; }
    /// Does with the tool what it does where no mouse says where: a usual cut, a piece in the last cut.
    void use_tool_somewhere();

    /// The diameter bores are drawn with, m: the one chosen, or the first bit the person owns.
    double drill() const;
    void set_drill(double diameter) { drill_ = diameter; }

    /// A point of the outline more, in the middle of the stretch after the selected one.
    void add_point_after_selected();
    void toggle_smooth();
    void duplicate_selected();
    /// Takes away what is selected, as one step.
    void remove_selected();

    /// The pictures under the drawing, read as they are needed.
    PictureStore& pictures() { return *pictures_; }
    /// The picture that shows under a view in the step in hand; nothing where none does.
    const Underlay* shown_underlay(View view) const;

    void lock_selected(bool locked);
    void align_selected(int axis, AlignTo to);
    void space_selected(int axis);
    void mirror_selected(bool copy);
    /// To the system's clipboard. @return whether there was something to copy.
    bool copy_selected();
    void cut_selected();
    void paste();

    DrawingActions& actions() { return *actions_; }

    void zoom_by(double factor, const QPointF& about);
    void zoom_to_fit();

    QSize sizeHint() const override { return {1000, 560}; }
    QSize minimumSizeHint() const override { return {560, 300}; }

Q_SIGNALS:
    /// @param target the one thing that is chosen now; none where nothing or several things are.
    void selection_changed(const std::optional<rampwright::ui::Target>& target);
    /// The step in hand lets one touch other things.
    void reach_changed();
    void tool_changed(rampwright::ui::Tool tool);
    /// Two places of the picture under the side view or the top view, m in the view's plane.
    void picture_measured(bool plan, QPointF one, QPointF other);
    void place_shown();
    void finding_selected(std::optional<std::size_t> finding);
    /// What to say in the status line about what is under the hand; empty: nothing.
    void hint(const QString& text);

protected:
    bool event(QEvent* event) override;
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
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dragLeaveEvent(QDragLeaveEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    /// What a press on a target means once it is let go without a drag.
    enum class Click { nothing, toggle, alone };
    struct Grab {
        Target target;
        View view = View::side;
        QPointF pressed_at;
        Vec3 start = Vec3::Zero(); ///< the target's anchor when it was taken
        CarPlan plan;              ///< the car as it was then
        bool moving = false;       ///< the hand has moved far enough to mean it
        QString refusal;           ///< why the last move was not taken; empty where it was
        Click click = Click::nothing;
        Group others; ///< what moves together with it, it included; empty where it moves alone
    };
    /// A rubber band around things.
    struct Band {
        QPointF pressed_at, at;   ///< px
        std::vector<Target> kept; ///< what was chosen before and stays so
        bool moving = false;
    };
    /// A cut while it is drawn.
    struct Stroke {
        View view = View::side;
        QPointF pressed_at, from; ///< px; on the view's plane, m
        CarPlan plan;             ///< the car without it
        bool moving = false, drawn = false;
    };

    /// The picture under the drawing on its way.
    struct PictureDrag {
        View view = View::side;
        QPointF pressed_at;
        Underlay start;
        bool moving = false;
    };
    /// A view's picture as it was last painted: it is turned and scaled anew only when that changes.
    struct PictureCache {
        QTransform place;
        qint64 image = 0;
        QRect frame;
        double pixel_ratio = 1;
        QPixmap pixels;
    };

    void refresh();
    void refit();
    void paint_picture(QPainter& painter, View view);
    void press_picture(View view, const QPointF& pixel);
    void drag_picture(const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    void finish_picture_drag();
    void paint_measuring(QPainter& painter) const;
    bool nudge_picture(int across, int up, Qt::KeyboardModifiers modifiers);
    PaintContext context() const;
    std::optional<Target> target_at(const QPointF& pixel) const;
    std::optional<std::size_t> finding_at(const QPointF& pixel) const;
    void drag_to(const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    bool nudge(QKeyEvent* event);
    void finish_drag();
    void press_target(View view, const Target& target, QMouseEvent* event);
    void press_paper(const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    void band_to(const QPointF& pixel);
    void toggle(const Target& target);
    void start_moving();
    bool is_selected(const Target& target) const;
    /// Chooses what an edit added at the ends of the lists.
    /// What the clipboard is to hold of them.
    std::unique_ptr<QMimeData> mime_of(const Group& group) const;
    void select_added(std::size_t pieces, std::size_t cuts);
    /// Does an edit of what is chosen, and says what stays or that nothing is to be done.
    bool attempt_group(const std::function<Edit()>& make_edit, const Group& moved, const QString& merge = {});
    QString what_stays(const Group& moved) const;
    void hover(const QPointF& pixel);
    void cancel();
    void set_view_of(const Target& target);

    void press_tool(View view, const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    void stroke_to(const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    void finish_stroke();
    QPointF plane_point(View view, const QPointF& pixel, Qt::KeyboardModifiers modifiers) const;
    std::optional<CutPlan> cut_between(const CarPlan& plan, View view, QPointF from, QPointF to) const;
    bool put_piece(std::size_t shelf, const Placement& placement);
    bool drop_piece(std::size_t shelf, View view, const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    void show_ghost(std::size_t shelf, const QPointF& pixel, Qt::KeyboardModifiers modifiers);
    double grid(Qt::KeyboardModifiers modifiers) const;

    /// Adds a point to the outline under the hand.
    bool add_point(View view, const QPointF& pixel);
    /// Does an edit, or says why it cannot be done. @return whether it was.
    bool attempt(const std::function<Edit()>& make_edit, const QString& merge = {});

    Session& session_;
    DrawingMap map_;
    CarShape shape_;
    double zoom_ = 1;
    QPointF pan_;
    Reach reach_ = Reach::weight;
    std::vector<Target> selection_;
    std::optional<Target> selected_, hovered_;
    std::optional<std::size_t> selected_finding_;
    std::optional<PointedOut> pointed_out_;
    View last_view_ = View::side;
    std::optional<Grab> grab_;
    std::optional<Band> band_;
    DrawingActions* actions_ = nullptr;
    Tool tool_ = Tool::pick;
    std::optional<std::size_t> carried_; ///< place on the shelf of the piece in the hand
    std::optional<BallastPlan> ghost_;
    std::optional<Stroke> stroke_;
    PictureStore* pictures_;
    std::array<PictureCache, 2> picture_caches_; ///< side, top
    std::optional<PictureDrag> picture_drag_;
    std::optional<View> measured_view_;
    std::optional<QPointF> measured_from_; ///< the first place, m in that view's plane
    QPointF hand_;                         ///< px: where the hand is while a picture is measured
    double drill_ = 0;                     ///< m; 0 until one is chosen: the first of the person's own
    std::optional<QPointF> panning_from_;
};

} // namespace rampwright::ui
