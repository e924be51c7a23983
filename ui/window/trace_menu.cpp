// The part of the Edit menu that is about tracing.
#include "drawing/car_canvas.hpp"
#include "text/figure_text.hpp"
#include "trace/picture_store.hpp"
#include "trace/trace.hpp"
#include "window/main_window.hpp"

#include <QMenu>
#include <QStatusBar>

namespace rampwright::ui {

void MainWindow::add_trace_actions(QMenu* menu) {
    const auto add = [this, menu](const QString& text, QString (*act)(QWidget&, Session&, bool), bool plan) {
        menu->addAction(text, this, [this, act, plan] {
            show_step(Step::shape);
            if (const QString said = act(*this, session_, plan); !said.isEmpty())
                statusBar()->showMessage(said);
        });
    };
    add(tr("Lay a Picture under the Side &View…"), lay_picture, false);
    add(tr("Lay a Picture under the Top Vie&w…"), lay_picture, true);
    add(tr("Read the Side Outl&ine from SVG…"), read_outline, false);
    add(tr("Read the Top Outline fro&m SVG…"), read_outline, true);
}

bool MainWindow::take_dropped_picture(const QString& path, const QPoint& at) {
    if (!PictureStore::is_picture(path)) return false;
    show_step(Step::shape);
    const QPoint on_canvas = canvas_->mapFrom(this, at);
    const bool plan = canvas_->rect().contains(on_canvas) && canvas_->map().view_at(on_canvas) == View::top;
    statusBar()->showMessage(lay_picture_file(session_, path, plan));
    return true;
}

} // namespace rampwright::ui
