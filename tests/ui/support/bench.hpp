#pragma once

#include "drawing/car_canvas.hpp"
#include "session/session.hpp"
#include "window/main_window.hpp"

#include <QTemporaryDir>

#include <functional>
#include <memory>
#include <string>

class QDialog;

namespace rampwright::ui::testing {

inline const std::string demo_path = std::string(RAMPWRIGHT_SOURCE_DIR) + "/data/harbour-hall.ramp.json";

/// The real window on a project, shown; it keeps no settings.
struct Workbench {
    explicit Workbench(const std::string& path = demo_path, QSize size = {1360, 860});
    Session session;
    std::unique_ptr<MainWindow> window;

    CarCanvas& drawing() { return window->drawing(); }
    /// The text of a label by its object name.
    QString text(const char* object_name) const;
    template <class Widget>
    Widget& find(const QString& object_name) const {
        auto* found = window->findChild<Widget*>(object_name);
        if (!found) throw std::runtime_error("no widget " + object_name.toStdString());
        return *found;
    }
    void choose_car(const std::string& name);
};

/// Where a piece of ballast of the car on the sheet is drawn, by the drawing's own map.
QPoint pixel_of_piece(Workbench& bench, std::size_t piece, View view);

/// A drag with the left button in steps, as a hand makes it. @param before_release runs with the button down.
void drag(QWidget& widget, QPoint from, QPoint to, Qt::KeyboardModifiers keys = {},
          const std::function<void()>& before_release = {});

/// Does something to the next modal dialog while `action` runs it.
void with_dialog(const std::function<void()>& action, const std::function<void(QDialog&)>& answer);

/// The SI value of a text the window shows.
double value_of(const QString& text, Quantity quantity);

} // namespace rampwright::ui::testing
