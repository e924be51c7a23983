// The part of the Edit menu that is about the drawing.
#include "drawing/car_canvas.hpp"
#include "drawing/drawing_actions.hpp"
#include "window/main_window.hpp"

#include <QMenu>

namespace rampwright::ui {

void MainWindow::add_drawing_actions(QMenu* menu) {
    DrawingActions& actions = canvas_->actions();
    connect(&actions, &DrawingActions::wood_wanted, this, [this] { show_step(Step::shape); });
    actions.fill(*menu);
    menu->addSeparator();
    menu->addActions({actions.draw_pocket, actions.draw_bore, actions.add_point, actions.corner_or_smooth});
}

} // namespace rampwright::ui
