#pragma once

#include "look/theme.hpp"
#include "panels/step_ruler.hpp"
#include "session/session.hpp"
#include "window/step_pages.hpp"

#include <QMainWindow>

#include <filesystem>
#include <functional>

class QAction;
class QLabel;
class QScrollArea;
class QStackedWidget;
class QTabBar;

namespace rampwright::ui {

class CarCanvas;
class FindingsPanel;
class LoadSlip;

/// The workbench: the job's steps along the top, the sheet of paper, the answers, the slip of the step in
/// hand, and where the energy goes.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    /// @param keep_settings whether size, theme and folds are remembered from run to run.
    explicit MainWindow(Session& session, bool keep_settings = true, QWidget* parent = nullptr);

    CarCanvas& drawing() { return *canvas_; }
    Session& session() { return session_; }

    /// Opens a file, after asking about unsaved work. Problems are shown to the person.
    bool open(const std::filesystem::path& path);
    bool save();
    bool save_as();
    /// Asks Save, Discard or Cancel where there is unsaved work. @return whether to go on.
    bool may_leave();
    void show_step(Step step);

protected:
    void closeEvent(QCloseEvent* event) override;

private:
    void build_middle();
    void build_menus();
    void build_car_menu();
    void rename_car_on_sheet();
    /// Does an edit, or says in the status line why it cannot be done.
    bool attempt(const std::function<Edit()>& make_edit);
    void choose_file();
    void show_title();
    void show_cars();
    void set_appearance(Appearance appearance);
    void show_problem(const QString& title, const Problem& problem);
    bool write(const std::filesystem::path& path);

    Session& session_;
    bool keep_settings_;
    StepRuler* steps_ = nullptr;
    QTabBar* cars_ = nullptr;
    CarCanvas* canvas_ = nullptr;
    QStackedWidget *sheets_ = nullptr, *slips_ = nullptr;
    QLabel* slip_title_ = nullptr;
    QWidget *slip_ = nullptr, *drawer_ = nullptr;
    bool drawer_wanted_ = true;
    LoadSlip* load_slip_ = nullptr;
    FindingsPanel* findings_ = nullptr;
    std::vector<StepPage> pages_;
};

} // namespace rampwright::ui
