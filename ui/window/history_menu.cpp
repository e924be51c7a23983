// The history as a list: what was done, step by step, and a way back to any of it.
#include "window/main_window.hpp"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QUndoStack>

#include <algorithm>

namespace rampwright::ui {

void MainWindow::build_history_menu(QMenu* edit) {
    // More than the hand can follow is not listed; undo and redo reach it step by step.
    constexpr int listed = 20;
    QMenu* menu = edit->addMenu(tr("&History"));
    menu->setObjectName(QStringLiteral("history"));
    connect(menu, &QMenu::aboutToShow, this, [this, menu] {
        menu->clear();
        auto* here = new QActionGroup(menu);
        QUndoStack& history = session_.history();
        const int first = std::max(0, history.index() - listed);
        const int last = std::min(history.count(), history.index() + listed);
        for (int after = first; after <= last; ++after) {
            QString text = after == 0 ? tr("As it was opened") : history.text(after - 1);
            text.replace(QLatin1Char('&'), QStringLiteral("&&")); // names may have one
            QAction* step =
                menu->addAction(text, this, [this, after] { session_.history().setIndex(after); });
            step->setCheckable(true);
            step->setChecked(after == history.index());
            here->addAction(step);
        }
    });
}

} // namespace rampwright::ui
