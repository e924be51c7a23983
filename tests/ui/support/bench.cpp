#include "support/bench.hpp"

#include <rampwright/units/entry.hpp>

#include <QApplication>
#include <QContextMenuEvent>
#include <QDialog>
#include <QElapsedTimer>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QStatusBar>
#include <QTabBar>
#include <QTest>
#include <QTimer>

#include <stdexcept>

namespace rampwright::ui::testing {

Workbench::Workbench(const std::string& path, QSize size) {
    session.open(path);
    window = std::make_unique<MainWindow>(session, false);
    window->resize(size);
    window->show();
    if (!QTest::qWaitForWindowExposed(window.get())) throw std::runtime_error("the window was not shown");
}

QString Workbench::text(const char* object_name) const {
    return find<QLabel>(QLatin1String(object_name)).text();
}

void Workbench::choose_car(const std::string& name) {
    auto& tabs = find<QTabBar>(QStringLiteral("cars"));
    for (int i = 0; i < tabs.count(); ++i)
        if (tabs.tabText(i).toStdString() == name) {
            QTest::mouseClick(&tabs, Qt::LeftButton, {}, tabs.tabRect(i).center());
            return;
        }
    throw std::runtime_error("no car " + name);
}

QPoint pixel_of_piece(Workbench& bench, std::size_t piece, View view) {
    return bench.drawing().map().to_pixel(view, bench.session.plan().ballast.at(piece).at).toPoint();
}

QPoint pixel_of(Workbench& bench, View view, double across_mm, double up_mm) {
    return bench.drawing().map().plane_to_pixel(view, {across_mm * 1e-3, up_mm * 1e-3}).toPoint();
}

void go_to_step(Workbench& bench, int step) {
    QTest::mouseClick(&bench.find<StepButton>(QStringLiteral("step.%1").arg(step)), Qt::LeftButton);
    QApplication::processEvents();
}

void choose_view(Workbench& bench, Step step, const char* name) {
    bench.window->show_step(step);
    auto& views = bench.find<QTabBar>(QStringLiteral("views"));
    for (int i = 0; i < views.count(); ++i)
        if (views.tabText(i) == QLatin1String(name)) {
            QTest::mouseClick(&views, Qt::LeftButton, {}, views.tabRect(i).center());
            QApplication::processEvents();
            return;
        }
    throw std::runtime_error(std::string("no view ") + name);
}

void each_screen(Workbench& bench, const std::function<void(const Screen&)>& look) {
    auto& views = bench.find<QTabBar>(QStringLiteral("views"));
    for (auto* step : bench.window->findChildren<StepButton*>()) {
        QTest::mouseClick(step, Qt::LeftButton);
        for (int view = 0; view < std::max(1, views.count()); ++view) {
            if (views.count() > 0) views.setCurrentIndex(view);
            for (int i = 0; i < 5; ++i)
                QApplication::processEvents();
            look({step->text(), views.count() > 1 ? views.tabText(view) : QString()});
        }
    }
}

QString status_of(const Workbench& bench) {
    return bench.window->statusBar()->currentMessage();
}

void type_into(QLineEdit& field, const QString& text) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, text);
    QTest::keyClick(&field, Qt::Key_Return);
}

void with_menu_at(QWidget& widget, QPoint at, const std::function<void(QMenu&)>& look) {
    bool seen = false;
    QTimer timer;
    timer.setInterval(20);
    QObject::connect(&timer, &QTimer::timeout, [&] {
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        if (!menu) return;
        if (seen) {
            menu->close(); // a second round: what was done to it did not close it
            return;
        }
        seen = true;
        look(*menu);
    });
    timer.start();
    QContextMenuEvent event(QContextMenuEvent::Mouse, at, widget.mapToGlobal(at));
    QApplication::sendEvent(&widget, &event);
    if (!seen) throw std::runtime_error("no menu came up");
}

void choose_in_context_menu(QWidget& widget, QPoint at, Qt::Key mnemonic) {
    with_menu_at(widget, at, [mnemonic](QMenu& menu) { QTest::keyClick(&menu, mnemonic); });
}

void drag(QWidget& widget, QPoint from, QPoint to, Qt::KeyboardModifiers keys,
          const std::function<void()>& before_release) {
    constexpr int steps = 6;
    QTest::mousePress(&widget, Qt::LeftButton, keys, from);
    for (int i = 1; i <= steps; ++i) {
        const QPoint at = from + (to - from) * i / steps;
        QMouseEvent move(QEvent::MouseMove, at, widget.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, keys);
        QApplication::sendEvent(&widget, &move);
        QApplication::processEvents();
    }
    if (before_release) before_release();
    QTest::mouseRelease(&widget, Qt::LeftButton, keys, to);
}

void with_dialogs(const std::function<void()>& action, std::vector<std::function<void(QDialog&)>> answers) {
    constexpr int long_enough = 3000; // ms, for an answer to close its dialog
    std::size_t next = 0;
    QPointer<QWidget> last; // another may come to stand in the same place in memory
    QElapsedTimer since;
    QTimer timer;
    timer.setInterval(20);
    QObject::connect(&timer, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog || (dialog == last && since.elapsed() < long_enough)) return;
        if (dialog == last || next == answers.size()) return dialog->reject();
        last = dialog;
        since.start();
        timer.start(); // anew, so that it goes on under a dialog that the answer brings up
        answers[next++](*dialog);
    });
    timer.start();
    action();
    // A button pressed by its letter acts a moment later; how much later is the machine's affair.
    constexpr int patience_ms = 10000;
    if (!QTest::qWaitFor([&] { return next == answers.size(); }, patience_ms))
        throw std::runtime_error(std::to_string(answers.size() - next) + " dialogs did not come up");
}

void with_dialog(const std::function<void()>& action, const std::function<void(QDialog&)>& answer) {
    with_dialogs(action, {answer});
}

double value_of(const QString& text, Quantity quantity) {
    // The window writes a true minus sign.
    return parse_entry(QString(text).replace(QChar(0x2212), QLatin1Char('-')).toStdString(), quantity,
                       UnitSystem::metric);
}

} // namespace rampwright::ui::testing
