// Many steps with several things, undone and done again.
#include "support/group.hpp"

#include <catch2/catch.hpp>

#include <random>
#include <set>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("200 steps at random in the window, groups too: undone to the first byte, done again to the last",
          "[group]") {
    Workbench bench;
    const std::string first = to_text(bench.session.document());
    std::mt19937 random(11);
    auto& drawing = bench.drawing();
    std::set<int> kinds;
    int tries = 0;
    while (bench.session.history().count() < 200) {
        REQUIRE(++tries < 2000);
        const int kind = static_cast<int>(random() % 12), before = bench.session.history().count();
        press(bench, Qt::Key_A);
        // Doubled again and again it would be a scrap yard.
        if (drawing.selection().size() > 4) {
            drawing.lock_selected(false);
            press(bench, Qt::Key_Delete, {});
            continue;
        }
        if (random() % 3 == 0) drawing.select_next(true);
        if (drawing.selection().empty() && kind != 11) {
            drawing.paste();
            continue;
        }
        switch (kind) {
        case 0:
            press(bench, random() % 2 ? Qt::Key_Left : Qt::Key_Right, Qt::ShiftModifier);
            break;
        case 1:
            press(bench, random() % 2 ? Qt::Key_Up : Qt::Key_Down, Qt::ControlModifier);
            break;
        case 2:
            press(bench, Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
            break;
        case 3:
            press(bench, Qt::Key_M);
            break;
        case 4:
            press(bench, Qt::Key_M, Qt::ControlModifier | Qt::ShiftModifier);
            break;
        case 5:
            drawing.align_selected(static_cast<int>(random() % 3), static_cast<AlignTo>(random() % 4));
            break;
        case 6:
            drawing.space_selected(static_cast<int>(random() % 3));
            break;
        case 7:
            press(bench, Qt::Key_L);
            break;
        case 8:
            press(bench, Qt::Key_C);
            press(bench, Qt::Key_V);
            break;
        case 9:
            if (random() % 4 == 0) press(bench, Qt::Key_X);
            break;
        case 10:
            if (random() % 4 == 0) press(bench, Qt::Key_Delete, {});
            break;
        default:
            bench.window->show_step(random() % 2 ? Step::load : Step::shape);
            break;
        }
        // A nudge may go on the step before it.
        if (bench.session.history().count() > before) kinds.insert(kind);
        bench.session.choose_car(random() % 3);
    }
    CHECK(kinds.size() >= 9);
    const std::string last = to_text(bench.session.document());
    while (bench.session.history().canUndo())
        bench.session.history().undo();
    CHECK((to_text(bench.session.document()) == first));
    while (bench.session.history().canRedo())
        bench.session.history().redo();
    CHECK((to_text(bench.session.document()) == last));
}
