// Several things at once: choosing them, and what the menus offer for them.
#include "drawing/drawing_actions.hpp"
#include "support/group.hpp"
#include "support/letters.hpp"

#include <QAction>
#include <QListWidget>
#include <QMenu>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("A rubber band chooses what it touches, Ctrl adds, Esc and a click on paper let go", "[group]") {
    Workbench bench;
    auto& drawing = bench.drawing();
    // Bittern's bars stand at x = 58 and 72 mm, 13 mm thick.
    drag(drawing, pixel_of(bench, View::top, 45, 16), pixel_of(bench, View::top, 68, -16), {}, [&] {
        CHECK(drawing.selection().size() == 2); // already while the button is down
    });
    CHECK(drawing.selection() == std::vector{piece_1, piece_0});
    CHECK_FALSE(drawing.selected());
    CHECK(chosen_rows(bench, "ballast.list") == std::vector{0, 1});
    CHECK(bench.session.history().count() == 0);
    press(bench, Qt::Key_Escape, {});
    CHECK(drawing.selection().empty());

    drag(drawing, pixel_of(bench, View::top, 45, 16), pixel_of(bench, View::top, 56, -16));
    CHECK(drawing.selection() == std::vector{piece_0});
    drag(drawing, pixel_of(bench, View::top, 100, 16), pixel_of(bench, View::top, 74, -16),
         Qt::ControlModifier);
    CHECK(drawing.selection() == std::vector{piece_0, piece_1});
    QTest::mouseClick(&drawing, Qt::LeftButton, {}, pixel_of(bench, View::top, 100, 16));
    CHECK(drawing.selection().empty());
    // Esc while the band is drawn brings back what was chosen before it.
    drag(drawing, pixel_of(bench, View::top, 45, 16), pixel_of(bench, View::top, 68, -16), {},
         [&] { press(bench, Qt::Key_Escape, {}); });
    CHECK(drawing.selection().empty());
}

TEST_CASE("Ctrl and Shift clicks add and take away; a plain click takes one; the list does the same",
          "[group]") {
    Workbench bench;
    auto& drawing = bench.drawing();
    click_piece(bench, 0);
    click_piece(bench, 1, Qt::ControlModifier);
    CHECK(drawing.selection() == std::vector{piece_0, piece_1});
    click_piece(bench, 0, Qt::ShiftModifier);
    CHECK(drawing.selection() == std::vector{piece_1});
    press(bench, Qt::Key_A);
    CHECK(drawing.selection() == std::vector{piece_0, piece_1});
    click_piece(bench, 1);
    CHECK(drawing.selected() == piece_1);
    auto& list = bench.find<QListWidget>(QStringLiteral("ballast.list"));
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(list.item(0)).center());
    QTest::mouseClick(list.viewport(), Qt::LeftButton, Qt::ControlModifier,
                      list.visualItemRect(list.item(1)).center());
    CHECK(drawing.selection() == std::vector{piece_0, piece_1});
    // In the step about the wood it is cuts.
    bench.choose_car("Swift");
    go_to_step(bench, 1);
    press(bench, Qt::Key_A);
    CHECK(drawing.selection() == std::vector{Target{TargetKind::cut, 0, 0}, Target{TargetKind::cut, 1, 0}});
    CHECK(chosen_rows(bench, "wood.list") == std::vector{0, 1});
}

TEST_CASE("The drawing's actions are enabled while they can work, in both menus", "[group]") {
    Workbench bench;
    DrawingActions& actions = bench.drawing().actions();
    const auto arranging = [&](const char* text) -> QAction& {
        for (auto* each : bench.drawing().findChildren<QAction*>())
            if (each->text().remove(QLatin1Char('&')).startsWith(QLatin1String(text))) return *each;
        throw std::runtime_error(text);
    };
    CHECK_FALSE(actions.cut->isEnabled());
    CHECK_FALSE(arranging("Mirror Across").isEnabled());
    CHECK(actions.paste->isEnabled());
    CHECK(actions.select_all->isEnabled());
    click_piece(bench, 0);
    CHECK(actions.cut->isEnabled());
    CHECK(arranging("Mirror Across").isEnabled());
    CHECK_FALSE(arranging("Align Tops").isEnabled());
    press(bench, Qt::Key_A);
    CHECK(arranging("Align Tops").isEnabled());
    CHECK_FALSE(arranging("Space Evenly Along x").isEnabled());
    // Behind a table of its step the drawing keeps its keys to itself; other steps have nothing to choose.
    bench.window->show_step(Step::agree);
    CHECK_FALSE(actions.paste->isEnabled());
    CHECK_FALSE(actions.select_all->isEnabled());
    // Every entry of the drawing's own menu shows its keys and has a letter of its own.
    bench.window->show_step(Step::load);
    press(bench, Qt::Key_A);
    QStringList shown;
    with_menu_at(bench.drawing(), pixel_of_piece(bench, 0, View::side), [&](QMenu& menu) {
        for (const QAction* each : menu.actions()) {
            if (each->isSeparator()) continue;
            CHECK_FALSE(mnemonic(each->text()).isEmpty());
            if (!each->menu()) CHECK_FALSE(each->shortcut().isEmpty());
            shown << each->text().remove(QLatin1Char('&'));
        }
        CHECK(repeated_letters(QStringLiteral("drawing"), texts_of(menu.actions())).isEmpty());
    });
    for (const char* text :
         {"Cut", "Copy", "Paste", "Duplicate", "Remove", "Select All", "Locked in Place", "Arrange"})
        CHECK(shown.contains(QLatin1String(text)));
    CHECK(bench.drawing().selection().size() == 2); // a right click on one of them keeps the others
}
