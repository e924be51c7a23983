#include "support/bench.hpp"
#include "support/letters.hpp"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTabBar>
#include <QTest>
#include <QTimer>
#include <QWhatsThis>
#include <catch2/catch.hpp>

#include <set>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

std::string control_text(const QWidget& widget) {
    std::string text = std::string(widget.metaObject()->className()) + " \"" +
                       widget.objectName().toStdString() + "\" " + widget.accessibleName().toStdString();
    if (auto* button = qobject_cast<const QAbstractButton*>(&widget)) text += button->text().toStdString();
    return text;
}

template <class Widget>
void add_all(QWidget& window, std::vector<QWidget*>& found) {
    for (Widget* widget : window.findChildren<Widget*>())
        found.push_back(widget);
}

/// What a person works with, as far as it can be seen: the toolkit's own inner parts are left out.
std::vector<QWidget*> controls(QWidget& window) {
    std::vector<QWidget*> all;
    add_all<QAbstractButton>(window, all);
    add_all<QComboBox>(window, all);
    add_all<QLineEdit>(window, all);
    add_all<QPlainTextEdit>(window, all);
    add_all<QAbstractItemView>(window, all);
    add_all<CarCanvas>(window, all);
    std::erase_if(all, [](QWidget* widget) {
        return !widget->isVisible() || !widget->isEnabled() ||
               widget->objectName().startsWith(QStringLiteral("qt_")) ||
               qobject_cast<QComboBox*>(widget->parentWidget()) || // its own line
               qobject_cast<QTabBar*>(widget->parentWidget()) ||   // its arrows
               qobject_cast<QAbstractItemView*>(widget->parentWidget());
    });
    return all;
}

/// Closes whatever an action opened, as Escape does, until it is told to stop.
struct Closer {
    QTimer timer;
    Closer() {
        QObject::connect(&timer, &QTimer::timeout, [] {
            if (QWidget* popup = QApplication::activePopupWidget()) popup->close();
            if (auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget())) dialog->reject();
        });
        timer.start(30);
    }
};

} // namespace

TEST_CASE("In each menu and on each screen a letter is underlined once", "[keys]") {
    Workbench bench;
    const QMenuBar& bar = *bench.window->menuBar();
    for (const QAction* action : bar.actions()) {
        CHECK_FALSE(mnemonic(action->text()).isEmpty());
        REQUIRE(action->menu());
    }
    QStringList repeated = repeated_letters_of_menus(*bench.window, bar);
    each_screen(bench, [&](const Screen& shown) {
        QStringList texts = texts_of(bar.actions());
        for (auto* label : bench.window->findChildren<QLabel*>())
            if (label->isVisible() && label->buddy()) texts << label->text();
        for (auto* button : bench.window->findChildren<QAbstractButton*>())
            if (button->isVisible()) texts << button->text();
        repeated << repeated_letters(QString::fromStdString(shown.name()), texts);
    });
    INFO(repeated.join(QLatin1Char('\n')).toStdString());
    CHECK(repeated.isEmpty());
}

TEST_CASE("Tab comes by everything that can be worked with, and goes round", "[keys]") {
    Workbench bench;
    REQUIRE(QTest::qWaitForWindowExposed(bench.window.get()));
    bench.window->activateWindow();
    each_screen(bench, [&](const Screen& shown) {
        const std::string screen = shown.name();
        std::set<QWidget*> visited;
        auto* first = bench.window->findChildren<StepButton*>().front();
        first->setFocus();
        for (int i = 0; i < 400; ++i) {
            QWidget* focus = QApplication::focusWidget();
            REQUIRE(focus);
            if (i > 0 && focus == first) break;
            visited.insert(focus);
            QTest::keyClick(focus, Qt::Key_Tab);
            // A text with a link in it is gone through link by link.
            if (QApplication::focusWidget() == focus && qobject_cast<QLabel*>(focus))
                QTest::keyClick(focus, Qt::Key_Tab);
            INFO(screen << ": " << control_text(*focus) << " keeps Tab to itself");
            REQUIRE(QApplication::focusWidget() != focus);
        }
        for (QWidget* control : controls(*bench.window)) {
            if (!(control->focusPolicy() & Qt::TabFocus)) continue;
            const bool reached = visited.contains(control) || visited.contains(control->focusProxy());
            INFO(screen << ": " << control_text(*control));
            CHECK(reached);
        }
    });
}

TEST_CASE("Everything that can be worked with says what it is for", "[keys]") {
    Workbench bench;
    std::set<std::string> silent;
    each_screen(bench, [&](const Screen& shown) {
        const std::string screen = shown.name();
        for (QWidget* control : controls(*bench.window)) {
            bool said = false;
            for (const QWidget* at = control; at && at != bench.window.get() && !said;
                 at = at->parentWidget())
                said = !at->whatsThis().isEmpty() || !at->toolTip().isEmpty();
            // A button's own words say what it does.
            if (auto* button = qobject_cast<QAbstractButton*>(control)) said |= button->text().size() > 3;
            if (!said) silent.insert(screen + ": " + control_text(*control));
        }
    });
    for (const auto& each : silent)
        UNSCOPED_INFO(each);
    CHECK(silent.empty());
}

TEST_CASE("What's this answers with the tip where there is nothing longer", "[keys]") {
    Workbench bench;
    go_to_step(bench, 3);
    auto& button = bench.find<QAbstractButton>(QStringLiteral("shelf.household"));
    REQUIRE(button.isVisible());
    button.setWhatsThis({});
    button.setToolTip(QStringLiteral("a tip"));
    QHelpEvent query(QEvent::QueryWhatsThis, {}, {});
    CHECK(QApplication::sendEvent(&button, &query));
    CHECK(query.isAccepted());
}

TEST_CASE("Every shortcut of the menus does its action", "[keys]") {
    QTemporaryDir folder; // saving is among the actions
    const QString own = folder.filePath(QStringLiteral("race.ramp.json"));
    REQUIRE(QFile::copy(QString::fromStdString(demo_path), own));
    QFile(own).setPermissions(QFile::ReadOwner | QFile::WriteOwner);
    Workbench bench(own.toStdString());
    const Closer closer;
    // Something to undo and to redo, and something chosen.
    bench.session.apply(rampwright::set_units(bench.session.document(), UnitSystem::inch_ounce));
    bench.session.apply(rampwright::set_units(bench.session.document(), UnitSystem::metric));
    bench.session.history().undo();
    int tried = 0;
    for (QAction* action : bench.window->findChildren<QAction*>()) {
        if (action->shortcuts().isEmpty() || action->text().contains(QStringLiteral("Quit"))) continue;
        for (const QKeySequence& keys : action->shortcuts()) {
            if (action->shortcutContext() != Qt::WindowShortcut) continue;
            if (!action->isEnabled()) continue;
            INFO(action->text().toStdString() << " " << keys.toString().toStdString());
            REQUIRE(QTest::qWaitForWindowActive(bench.window.get()));
            bench.drawing().setFocus();
            QSignalSpy done(action, &QAction::triggered);
            QTest::keySequence(bench.window.get(), keys);
            QApplication::processEvents();
            CHECK(done.count() == 1);
            ++tried;
            if (QWhatsThis::inWhatsThisMode()) QWhatsThis::leaveWhatsThisMode();
            for (QWidget* other : QApplication::topLevelWidgets())
                if (other != bench.window.get() && other->isVisible()) other->close();
            bench.window->activateWindow();
        }
    }
    CHECK(tried >= 25);
}

TEST_CASE("The history lists what was done, and a click goes back to any of it", "[keys]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    bench.session.apply(rampwright::set_units(bench.session.document(), UnitSystem::inch_ounce));
    const std::string between = to_text(bench.session.document());
    bench.session.apply(rename_car(bench.session.document(), 0, "Heron"));
    const std::string after = to_text(bench.session.document());
    auto* menu = bench.window->findChild<QMenu*>(QStringLiteral("history"));
    REQUIRE(menu);
    const auto entries = [&] {
        Q_EMIT menu->aboutToShow();
        return menu->actions();
    };
    CHECK(bench.session.history().count() == 2);
    REQUIRE(entries().size() == 3);
    CHECK(entries().at(1)->text().contains(bench.session.history().text(0)));
    CHECK(entries().at(2)->text().contains(bench.session.history().text(1)));
    CHECK(entries().at(2)->isChecked());
    entries().at(0)->trigger();
    CHECK(to_text(bench.session.document()) == before);
    CHECK(entries().at(0)->isChecked());
    entries().at(2)->trigger();
    CHECK(to_text(bench.session.document()) == after);
    entries().at(1)->trigger();
    CHECK(to_text(bench.session.document()) == between);
}
