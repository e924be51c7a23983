#pragma once

#include "look/theme.hpp"
#include "panels/step_ruler.hpp"
#include "session/session.hpp"
#include "window/step_pages.hpp"

#include <QMainWindow>

#include <functional>

class QAction;
class QBoxLayout;
class QLabel;
class QMenu;
class QScrollArea;
class QStackedWidget;
class QTabBar;

namespace rampwright::ui {

class CarCanvas;
class FileDesk;
class FindingsPanel;
class NoticeBar;
class PictureCorner;

/// The workbench: the job's steps along the top, the sheet of paper, the answers, the slip of the step in
/// hand, and where the energy goes.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// @param keep_settings whether size, theme and folds are remembered from run to run.
    explicit MainWindow(Session& session, bool keep_settings = true, QWidget* parent = nullptr);

    CarCanvas& drawing() { return *canvas_; }
    Session& session() { return session_; }

    FileDesk& files() { return *files_; }
    void show_step(Step step);
    /// Of the step in hand: 0 is its sheet, then its further views.
    void show_view(int view);
    /// What a start by a person shows beside the project: work left by a crash, the first welcome.
    void greet(bool demo);

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build_middle();
    void build_menus();
    void build_car_menu();
    void build_history_menu(QMenu* edit);
    /// What is done on the drawing, as far as it is not dragging.
    void add_drawing_actions(QMenu* menu);
    void add_trace_actions(QMenu* menu);
    /// Lays a picture that was dropped at a place of the window under the drawing. @return whether it is one.
    bool take_dropped_picture(const QString& path, const QPoint& at);
    void rename_car_on_sheet();
    /// Asks for a file and which of its cars to add, as one step.
    void take_in_car();
    /// Does an edit, or says in the status line why it cannot be done.
    bool attempt(const std::function<Edit()>& make_edit);
    void show_title();
    void show_cars();
    void set_appearance(Appearance appearance);
    void build_help_menu();
    /// What's this, where a control has a tip and nothing longer to say: the tip.
    bool eventFilter(QObject* watched, QEvent* event) override;
    void tell_of_fault(const QString& report);
    void welcome(int step);
    void copy_figures();

    Session& session_;
    bool keep_settings_;
    NoticeBar* notices_ = nullptr;
    FileDesk* files_ = nullptr;
    StepRuler* steps_ = nullptr;
    QTabBar *cars_ = nullptr, *views_ = nullptr;
    Step step_ = Step::load;
    CarCanvas* canvas_ = nullptr;
    PictureCorner* corner_ = nullptr;
    QStackedWidget *sheets_ = nullptr, *slips_ = nullptr;
    QLabel* slip_title_ = nullptr;
    QBoxLayout* columns_ = nullptr; ///< the sheet, and the answers with the slip
    QWidget *slip_ = nullptr, *drawer_ = nullptr;
    bool drawer_wanted_ = true;
    FindingsPanel* findings_ = nullptr;
    std::vector<StepPage> pages_;
};

} // namespace rampwright::ui
