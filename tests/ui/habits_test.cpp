#include "files/fault_report.hpp"
#include "files/file_desk.hpp"
#include "support/bench.hpp"

#include <rampwright/core/version.hpp>

#include <QAbstractSpinBox>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPointingDevice>
#include <QPushButton>
#include <QSlider>
#include <QTest>
#include <QWheelEvent>
#include <catch2/catch.hpp>

#include <csignal>
#include <sys/wait.h>
#include <unistd.h>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

void move_something(Workbench& bench) {
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    REQUIRE(bench.window->isWindowModified());
}

} // namespace

TEST_CASE("Closing with unsaved work offers to save, to discard and to stay", "[habits]") {
    Workbench bench;
    move_something(bench);
    with_dialog([&] { bench.window->close(); },
                [&](QDialog& dialog) {
                    auto& box = dynamic_cast<QMessageBox&>(dialog);
                    CHECK(box.button(QMessageBox::Save));
                    CHECK(box.button(QMessageBox::Discard));
                    REQUIRE(box.button(QMessageBox::Cancel));
                    QTest::mouseClick(box.button(QMessageBox::Cancel), Qt::LeftButton);
                });
    CHECK(bench.window->isVisible());
    with_dialog([&] { bench.window->close(); },
                [&](QDialog& dialog) {
                    QTest::mouseClick(dynamic_cast<QMessageBox&>(dialog).button(QMessageBox::Discard),
                                      Qt::LeftButton);
                });
    CHECK_FALSE(bench.window->isVisible());
}

TEST_CASE("Closing after undoing back to the saved state asks nothing", "[habits]") {
    Workbench bench;
    move_something(bench);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK_FALSE(bench.window->isWindowModified());
    bench.window->close();
    CHECK_FALSE(bench.window->isVisible());
    CHECK(QApplication::activeModalWidget() == nullptr);
}

TEST_CASE("Save from the closing question writes the file", "[habits]") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("race.ramp.json"));
    REQUIRE(QFile::copy(QString::fromStdString(demo_path), path));
    QFile(path).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    Workbench bench(path.toStdString());
    move_something(bench);
    const Vec3 at = bench.session.plan().ballast.at(0).at;
    with_dialog([&] { bench.window->close(); },
                [&](QDialog& dialog) {
                    QTest::mouseClick(dynamic_cast<QMessageBox&>(dialog).button(QMessageBox::Save),
                                      Qt::LeftButton);
                });
    CHECK_FALSE(bench.window->isVisible());
    CHECK(read_project(load_document(path.toStdString())).cars.at(0).ballast.at(0).at == at);
}

TEST_CASE("A file that cannot be opened is said, and the present project stays", "[habits]") {
    Workbench bench;
    const Document before = bench.session.document();
    QString said;
    with_dialog([&] { CHECK_FALSE(bench.window->files().open("/nowhere/at/all.ramp.json")); },
                [&](QDialog& dialog) {
                    said = dynamic_cast<QMessageBox&>(dialog).informativeText();
                    dialog.accept();
                });
    CHECK(said.contains(QStringLiteral("/nowhere/at/all.ramp.json")));
    CHECK(bench.session.document() == before);
}

TEST_CASE("A save that fails says so and keeps the work unsaved", "[habits]") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("race.ramp.json"));
    REQUIRE(QFile::copy(QString::fromStdString(demo_path), path));
    Workbench bench(path.toStdString());
    move_something(bench);
    folder.remove();
    with_dialog([&] { CHECK_FALSE(bench.window->files().save()); }, [](QDialog& dialog) { dialog.accept(); });
    CHECK(bench.window->isWindowModified());
}

TEST_CASE("Removing a piece asks nothing and one undo brings it back", "[habits]") {
    Workbench bench;
    const Document before = bench.session.document();
    const std::size_t count = bench.session.plan().ballast.size();
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("ballast.remove")), Qt::LeftButton);
    CHECK(QApplication::activeModalWidget() == nullptr);
    CHECK(bench.session.plan().ballast.size() == count - 1);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
}

TEST_CASE("The wheel over a field that is not in use changes nothing", "[habits]") {
    Workbench bench;
    const Document before = bench.session.document();
    int fields = 0;
    for (QWidget* widget : bench.window->findChildren<QWidget*>()) {
        if (!qobject_cast<QLineEdit*>(widget) && !qobject_cast<QAbstractSpinBox*>(widget) &&
            !qobject_cast<QComboBox*>(widget) && !qobject_cast<QSlider*>(widget))
            continue;
        ++fields;
        const QPointF middle = QRectF(widget->rect()).center();
        QWheelEvent wheel(middle, widget->mapToGlobal(middle), {}, {0, -120}, Qt::NoButton, Qt::NoModifier,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(widget, &wheel);
    }
    CHECK(fields > 20);
    CHECK(bench.session.document() == before);
}

TEST_CASE("The ballast list has a row for every drawn piece, and choosing goes both ways", "[habits]") {
    Workbench bench;
    for (std::size_t car = 0; car < bench.session.project().cars.size(); ++car) {
        bench.session.choose_car(car);
        auto& list = bench.find<QListWidget>(QStringLiteral("ballast.list"));
        CHECK(static_cast<std::size_t>(list.count()) == bench.session.plan().ballast.size());
        CHECK(static_cast<std::size_t>(list.count()) == bench.drawing().shape().ballast.size());
    }
    bench.session.choose_car(0);
    auto& list = bench.find<QListWidget>(QStringLiteral("ballast.list"));
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 1, View::side));
    CHECK(list.currentRow() == 1);
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(list.item(0)).center());
    CHECK(bench.drawing().selected() == Target{TargetKind::piece, 0, 0});
}

TEST_CASE("Every standard shortcut is bound once", "[habits]") {
    Workbench bench;
    std::map<QString, int> bound;
    for (const QAction* action : bench.window->findChildren<QAction*>())
        for (const QKeySequence& keys : action->shortcuts())
            if (!keys.isEmpty()) ++bound[keys.toString()];
    for (const auto& [keys, count] : bound) {
        INFO(keys.toStdString());
        CHECK(count == 1);
    }
    for (const char* usual :
         {"Ctrl+N", "Ctrl+O", "Ctrl+S", "Ctrl+Shift+S", "Ctrl+Z", "Ctrl+Shift+Z", "Ctrl+Q", "F1"}) {
        INFO(usual);
        CHECK(bound.count(QLatin1String(usual)) == 1);
    }
}

TEST_CASE("A fault leaves its note in the person's folder, and it is taken once", "[habits]") {
    QTemporaryDir folder;
    CHECK(take_fault_report(folder.path()).isEmpty());
    for (const int signal : {SIGSEGV, SIGABRT}) {
        const pid_t child = ::fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            leave_fault_reports_in(folder.path());
            ::raise(signal);
            ::_exit(0);
        }
        int status = 0;
        REQUIRE(::waitpid(child, &status, 0) == child);
        REQUIRE(WIFSIGNALED(status));
        CHECK(WTERMSIG(status) == signal); // whoever started it still sees how it ended
        const QString report = take_fault_report(folder.path());
        CHECK(report.startsWith(QStringLiteral("Rampwright ") +
                                QString::fromStdString(std::string(version()))));
        CHECK(report.contains(signal == SIGSEGV ? QStringLiteral("SIGSEGV") : QStringLiteral("SIGABRT")));
        CHECK(report.count(QLatin1Char('\n')) > 5); // the calls that led there
        CHECK(take_fault_report(folder.path()).isEmpty());
    }
}

TEST_CASE("The answers stand on the left for a left hand", "[habits]") {
    Workbench bench;
    auto& slip = bench.find<QWidget>(QStringLiteral("slip"));
    const auto left_of_drawing = [&] {
        QApplication::processEvents();
        return slip.mapTo(bench.window.get(), QPoint()).x() <
               bench.drawing().mapTo(bench.window.get(), QPoint()).x();
    };
    CHECK_FALSE(left_of_drawing());
    for (QAction* action : bench.window->findChildren<QAction*>())
        if (action->text() == QStringLiteral("Answers on the &Left")) {
            action->trigger();
            CHECK(left_of_drawing());
            action->trigger();
            CHECK_FALSE(left_of_drawing());
            return;
        }
    FAIL("there is no such menu entry");
}

TEST_CASE("Two fingers push the paper and pinch it; Shift and the wheel push it sideways", "[habits]") {
    Workbench bench;
    CarCanvas& drawing = bench.drawing();
    const QPointF middle = QRectF(drawing.rect()).center();
    const Vec3 place(0.1, 0, 0.01);
    const auto seen = [&] { return drawing.map().to_pixel(View::side, place); };
    const QPointF before = seen();
    const double scale = drawing.map().pixels_per_metre();
    const auto turn = [&](QPoint pixels, QPoint angle, Qt::KeyboardModifiers keys) {
        QWheelEvent event(middle, drawing.mapToGlobal(middle), pixels, angle, Qt::NoButton, keys,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&drawing, &event);
    };
    turn({}, {-120, 0}, {});
    CHECK(seen() - before == QPointF(-30, 0));
    turn({30, 0}, {120, 0}, Qt::ShiftModifier);
    CHECK(seen() == before);
    CHECK(drawing.map().pixels_per_metre() == scale);
    turn({}, {0, 120}, {});
    CHECK(drawing.map().pixels_per_metre() > scale);
    drawing.zoom_to_fit();
    QNativeGestureEvent pinch(Qt::ZoomNativeGesture, QPointingDevice::primaryPointingDevice(), 2, middle,
                              middle, drawing.mapToGlobal(middle), 0.25, QPointF());
    QApplication::sendEvent(&drawing, &pinch);
    CHECK(drawing.map().pixels_per_metre() == Approx(1.25 * scale));
}
