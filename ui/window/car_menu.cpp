// The menu of what is done with whole cars.
#include "text/figure_text.hpp"
#include "window/main_window.hpp"

#include <rampwright/project/take_in.hpp>

#include <QAction>
#include <QInputDialog>
#include <QMenuBar>
#include <QStatusBar>
#include <QTabBar>

namespace rampwright::ui {
bool MainWindow::attempt(const std::function<Edit()>& make_edit) {
    try {
        session_.apply(make_edit());
        return true;
    } catch (const Problem& problem) {
        statusBar()->showMessage(problem_text(problem));
        return false;
    }
}

void MainWindow::rename_car_on_sheet() {
    bool accepted = false;
    const QString old = QString::fromStdString(session_.plan().name);
    const QString name =
        QInputDialog::getText(this, tr("Rename the Car"), tr("&Name"), QLineEdit::Normal, old, &accepted);
    if (accepted && !name.trimmed().isEmpty() && name != old)
        attempt(
            [&] { return rename_car(session_.document(), session_.car(), name.trimmed().toStdString()); });
}

void MainWindow::build_car_menu() {
    QMenu* menu = menuBar()->addMenu(tr("&Car"));
    menu->addAction(tr("&Duplicate to Try Something"), QKeySequence(Qt::CTRL | Qt::Key_D), this, [this] {
        const std::string name = free_car_name(session_.project(), session_.plan().name);
        if (attempt([&] { return duplicate_car(session_.document(), session_.car(), name); }))
            for (std::size_t i = 0; i < session_.project().cars.size(); ++i)
                if (session_.project().cars[i].name == name) session_.choose_car(i);
    });
    menu->addAction(tr("Re&name…"), QKeySequence(Qt::Key_F2), this, [this] { rename_car_on_sheet(); });
    QAction* remove = menu->addAction(tr("&Remove from the Project"), this, [this] {
        attempt([&] { return remove_car(session_.document(), session_.car()); });
    });
    menu->addAction(tr("&Take In a Car from Another File…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O),
                    this, [this] { take_in_car(); });
    menu->addSeparator();
    menu->addAction(tr("Ne&xt Car"), QKeySequence(Qt::CTRL | Qt::Key_PageDown), this,
                    [this] { session_.choose_car((session_.car() + 1) % session_.project().cars.size()); });
    menu->addAction(tr("&Previous Car"), QKeySequence(Qt::CTRL | Qt::Key_PageUp), this, [this] {
        const std::size_t count = session_.project().cars.size();
        session_.choose_car((session_.car() + count - 1) % count);
    });
    const auto allow = [this, remove] { remove->setEnabled(session_.project().cars.size() > 1); };
    connect(&session_, &Session::changed, remove, allow);
    allow();
    connect(cars_, &QTabBar::tabBarDoubleClicked, this, [this](int tab) {
        if (tab >= 0) rename_car_on_sheet();
    });
}

} // namespace rampwright::ui
