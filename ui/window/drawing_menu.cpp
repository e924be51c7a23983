// The part of the Edit menu that is about the drawing.
#include "drawing/car_canvas.hpp"
#include "window/main_window.hpp"

#include <QAction>
#include <QMenu>

#include <array>

namespace rampwright::ui {

void MainWindow::add_drawing_actions(QMenu* menu) {
    const auto draw = [this](Tool tool) {
        return [this, tool] {
            show_step(Step::shape);
            canvas_->set_tool(tool);
            canvas_->setFocus();
        };
    };
    menu->addAction(tr("Draw a &Pocket"), QKeySequence(Qt::CTRL | Qt::Key_K), this, draw(Tool::pocket));
    menu->addAction(tr("Draw a &Bore"), QKeySequence(Qt::CTRL | Qt::Key_B), this, draw(Tool::bore));
    menu->addSeparator();
    // Their keys (Insert, S, Delete) belong to the drawing: a field must be able to take them.
    const std::array<QAction*, 4> on_selection{
        menu->addAction(tr("&Add a Point After the Chosen One"), this,
                        [this] { canvas_->add_point_after_selected(); }),
        menu->addAction(tr("Corner or &Smooth"), this, [this] { canvas_->toggle_smooth(); }),
        menu->addAction(tr("Dup&licate What Is Chosen"), this, [this] { canvas_->duplicate_selected(); }),
        menu->addAction(tr("Re&move What Is Chosen"), this, [this] { canvas_->remove_selected(); })};
    const auto allow = [on_selection](const std::optional<Target>& target) {
        const bool point =
            target && (target->kind == TargetKind::profile_point || target->kind == TargetKind::plan_point);
        const bool thing = target && !point && target->kind != TargetKind::axle;
        on_selection[0]->setEnabled(point);
        on_selection[1]->setEnabled(point);
        on_selection[2]->setEnabled(thing);
        on_selection[3]->setEnabled(point || thing);
    };
    connect(canvas_, &CarCanvas::selection_changed, menu, allow);
    allow(canvas_->selected());
}

} // namespace rampwright::ui
