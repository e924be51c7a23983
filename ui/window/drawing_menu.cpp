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
    const auto add = [&](const QString& text, const QKeySequence& keys, auto slot) {
        QAction* action = menu->addAction(text);
        action->setShortcut(keys);
        connect(action, &QAction::triggered, this, slot);
        return action;
    };
    add(tr("Draw a &Pocket"), QKeySequence(Qt::CTRL | Qt::Key_K), draw(Tool::pocket));
    add(tr("Draw a &Bore"), QKeySequence(Qt::CTRL | Qt::Key_B), draw(Tool::bore));
    menu->addSeparator();
    // Their keys (Insert, S, Delete) belong to the drawing: a field must be able to take them.
    const std::array<QAction*, 4> on_selection{
        add(tr("&Add a Point After the Chosen One"), {}, [this] { canvas_->add_point_after_selected(); }),
        add(tr("Corner or &Smooth"), {}, [this] { canvas_->toggle_smooth(); }),
        add(tr("D&uplicate What Is Chosen"), {}, [this] { canvas_->duplicate_selected(); }),
        add(tr("Re&move What Is Chosen"), {}, [this] { canvas_->remove_selected(); })};
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
