// The help menu, and the welcome of the first start.
#include "files/fault_report.hpp"
#include "files/file_desk.hpp"
#include "files/recovery.hpp"
#include "panels/notice_bar.hpp"
#include "window/help_window.hpp"
#include "window/main_window.hpp"

#include <rampwright/core/version.hpp>

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QHelpEvent>
#include <QMenuBar>
#include <QMessageBox>
#include <QSettings>
#include <QWhatsThis>

namespace rampwright::ui {

void MainWindow::build_help_menu() {
    QMenu* help = menuBar()->addMenu(tr("&Help"));
    qApp->installEventFilter(this);
    help->addAction(tr("&User Guide"), QKeySequence(Qt::Key_F1), this,
                    [] { HelpWindow::show_page(QStringLiteral("user-guide")); });
    help->addAction(tr("&The Model and Its Sources"), this,
                    [] { HelpWindow::show_page(QStringLiteral("model")); });
    help->addAction(tr("&Keyboard Shortcuts"), QKeySequence(Qt::CTRL | Qt::Key_F1), this,
                    [this] { show_shortcuts(*this); });
    help->addAction(tr("What Is T&his?"), QKeySequence(Qt::SHIFT | Qt::Key_F1), this,
                    [] { QWhatsThis::enterWhatsThisMode(); });
    help->addSeparator();
    help->addAction(tr("&Welcome"), this, [this] { welcome(0); });
    help->addAction(tr("&About Rampwright"), this, [this] {
        QMessageBox::about(
            this, tr("About Rampwright"),
            tr("<b>Rampwright %1</b><p>Build planning for unpowered gravity racers.<p>Free software under "
               "the GNU General Public License, version 3 or later.")
                .arg(QString::fromUtf8(version().data(), static_cast<qsizetype>(version().size()))));
    });
}

bool MainWindow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::QueryWhatsThis || event->type() == QEvent::WhatsThis) {
        const auto* control = qobject_cast<QWidget*>(watched);
        if (control && control->whatsThis().isEmpty() && !control->toolTip().isEmpty()) {
            if (event->type() == QEvent::WhatsThis)
                QWhatsThis::showText(static_cast<QHelpEvent*>(event)->globalPos(), control->toolTip());
            event->accept();
            return true;
        }
    }
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::greet(bool demo) {
    files_->offer_left_work();
    tell_of_fault(take_fault_report(Recovery::default_folder()));
    if (demo && !QSettings().value(QStringLiteral("welcome/seen"), false).toBool()) welcome(0);
}

void MainWindow::tell_of_fault(const QString& report) {
    if (report.isEmpty()) return;
    notices_->tell(QStringLiteral("fault"),
                   tr("Last time Rampwright was ended by a fault of its own. What it noted stays on this "
                      "computer; copy it if you want to report it."),
                   {{tr("Copy the Note"), [report] { QGuiApplication::clipboard()->setText(report); }},
                    {tr("Close"), {}}});
}

void MainWindow::welcome(int step) {
    const QString name = QStringLiteral("welcome");
    const auto done = [] { QSettings().setValue(QStringLiteral("welcome/seen"), true); };
    switch (step) {
    case 0:
        show_step(Step::load);
        notices_->tell(
            name,
            tr("Welcome to Harbour Hall race night. 1 of 3: grab a grey weight on the drawing and slide "
               "it towards the tail. Watch the heat time."),
            {{tr("Next"), [this] { welcome(1); }}, {tr("Enough"), done}});
        break;
    case 1:
        notices_->tell(
            name,
            tr("2 of 3: choose another car above the drawing, and see where its energy goes. Ctrl+Z takes "
               "back anything you did."),
            {{tr("Next"), [this] { welcome(2); }}, {tr("Enough"), done}});
        break;
    default:
        notices_->tell(
            name,
            tr("3 of 3: follow the ruler at the top from left to right to plan a car of your own: File, "
               "New starts with a plain block."),
            {{tr("Start a New Car"),
              [this, done] {
                  done();
                  if (files_->start_new()) show_step(Step::agree);
              }},
             {tr("Stay with the Demo"), done}});
    }
}

} // namespace rampwright::ui
