#pragma once

#include "drawing/car_canvas.hpp"
#include "session/session.hpp"
#include "window/main_window.hpp"

#include <QTemporaryDir>

#include <functional>
#include <memory>
#include <string>
#include <vector>

class QDialog;
class QLineEdit;
class QMenu;

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

/// The pixel of a place in a view's plane, mm.
QPoint pixel_of(Workbench& bench, View view, double across_mm, double up_mm);

/// Goes to a step of the job by a click on the ruler: 1 Shape, 3 Load.
void go_to_step(Workbench& bench, int step);

/// Goes to a step and clicks the tab of one of its views.
void choose_view(Workbench& bench, Step step, const char* name);

/// A step of the job in one of its views, as their buttons and tabs name them; a step of one view names none.
struct Screen {
    QString step, view;
    std::string name() const {
        return (view.isEmpty() ? step : step + QStringLiteral(", ") + view).toStdString();
    }
};

/// Goes through every step and each of its views.
void each_screen(Workbench& bench, const std::function<void(const Screen&)>& look);

/// What the status line says.
QString status_of(const Workbench& bench);

/// Types into a field and presses Return.
void type_into(QLineEdit& field, const QString& text);

/// Looks at the menu that a right click at a pixel brings up.
void with_menu_at(QWidget& widget, QPoint at, const std::function<void(QMenu&)>& look);

/// Chooses from the menu that a right click at a pixel brings up, by the letter under its line.
void choose_in_context_menu(QWidget& widget, QPoint at, Qt::Key mnemonic);

/// A drag with the left button in steps, as a hand makes it. @param before_release runs with the button down.
void drag(QWidget& widget, QPoint from, QPoint to, Qt::KeyboardModifiers keys = {},
          const std::function<void()>& before_release = {});

/// Answers modal dialogs that come one after another while `action` runs; one that stays open after its
/// answer, or that nobody waits for, is given up.
void with_dialogs(const std::function<void()>& action, std::vector<std::function<void(QDialog&)>> answers);

/// Does something to the next modal dialog while `action` runs it.
void with_dialog(const std::function<void()>& action, const std::function<void(QDialog&)>& answer);

/// The SI value of a text the window shows.
double value_of(const QString& text, Quantity quantity);

} // namespace rampwright::ui::testing
