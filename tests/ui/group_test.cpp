// Several things at once: choosing, moving, arranging, the clipboard, and cars from other files.
#include "drawing/drawing_actions.hpp"
#include "drawing/piece_clipboard.hpp"
#include "support/bench.hpp"

#include <rampwright/project/group_edits.hpp>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDialog>
#include <QFileDialog>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMimeData>
#include <QPointer>
#include <QPushButton>
#include <QTabBar>
#include <QTest>
#include <QTimer>
#include <catch2/catch.hpp>

#include <random>
#include <set>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

const Target piece_0{TargetKind::piece, 0, 0}, piece_1{TargetKind::piece, 1, 0};

void click_piece(Workbench& bench, std::size_t piece, Qt::KeyboardModifiers keys = {}) {
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, keys, pixel_of_piece(bench, piece, View::side));
}

/// A key on the drawing of the window one has turned to.
void press(Workbench& bench, Qt::Key key, Qt::KeyboardModifiers keys = Qt::ControlModifier) {
    if (!bench.window->isActiveWindow()) {
        bench.window->activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(bench.window.get()));
    }
    QTest::keyClick(&bench.drawing(), key, keys);
}

Vec3 at(Workbench& bench, std::size_t piece) {
    return bench.session.plan().ballast.at(piece).at;
}

std::vector<int> chosen_rows(Workbench& bench, const char* list_name) {
    auto& list = bench.find<QListWidget>(QLatin1String(list_name));
    std::vector<int> rows;
    for (int row = 0; row < list.count(); ++row)
        if (list.item(row)->isSelected()) rows.push_back(row);
    return rows;
}

/// Answers dialogs that come one after another.
void with_dialogs(const std::function<void()>& action, std::vector<std::function<void(QDialog&)>> answers) {
    std::size_t next = 0;
    QPointer<QWidget> last; // another may come to stand in the same place in memory
    QTimer timer;
    timer.setInterval(20);
    QObject::connect(&timer, &QTimer::timeout, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog || dialog == last) return;
        last = dialog;
        if (next < answers.size())
            answers[next++](*dialog);
        else
            dialog->reject();
    });
    timer.start();
    action();
    CHECK(next == answers.size());
}

} // namespace

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

TEST_CASE("A group is dragged as one step, the figures follow, undo is to the byte", "[group]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    const QString load = bench.text("answer.front_load");
    const Vec3 first = at(bench, 0), second = at(bench, 1);
    press(bench, Qt::Key_A);
    const QPoint from = pixel_of_piece(bench, 1, View::side);
    const auto& map = bench.drawing().map();
    const QPoint way =
        (map.plane_to_pixel(View::side, {0.0124, 0}) - map.plane_to_pixel(View::side, {0, 0})).toPoint();
    drag(bench.drawing(), from, from + way, {}, [&] {
        CHECK(bench.text("answer.front_load") != load);
        CHECK(bench.session.history().count() == 0);
    });
    CHECK((at(bench, 0) - first).isApprox(Vec3(12e-3, 0, 0), 1e-9)); // on the grid
    CHECK((at(bench, 1) - second).isApprox(Vec3(12e-3, 0, 0), 1e-9));
    CHECK(bench.drawing().selection().size() == 2);
    CHECK(bench.session.history().count() == 1);
    const std::string after = to_text(bench.session.document());
    press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
    CHECK(bench.text("answer.front_load") == load);
    press(bench, Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    CHECK((to_text(bench.session.document()) == after));
    press(bench, Qt::Key_Z);

    // Ctrl takes the snap off; Esc puts all of it back.
    drag(bench.drawing(), from, from + way + QPoint(1, 0), Qt::ControlModifier);
    const double by = (at(bench, 0) - first).x() * 1e3;
    CHECK(std::abs(by - std::round(by)) > 1e-3);
    CHECK((at(bench, 1) - second).x() * 1e3 == Approx(by).margin(2e-6));
    press(bench, Qt::Key_Z);
    drag(bench.drawing(), from, from + way, {}, [&] { press(bench, Qt::Key_Escape, {}); });
    CHECK((to_text(bench.session.document()) == before));
    CHECK(bench.session.history().index() == 0);
}

TEST_CASE("A group is nudged by the same steps as one thing; a run of them is one step", "[group]") {
    Workbench bench;
    const Document before = bench.session.document();
    const Vec3 first = at(bench, 0), second = at(bench, 1);
    press(bench, Qt::Key_A);
    press(bench, Qt::Key_Left, {});
    press(bench, Qt::Key_Left, Qt::ShiftModifier);
    press(bench, Qt::Key_Right, Qt::ControlModifier);
    for (const double by : {(at(bench, 0) - first).x(), (at(bench, 1) - second).x()})
        CHECK(by == Approx(-10.8e-3).margin(1e-9));
    CHECK(bench.session.history().count() == 1);
    press(bench, Qt::Key_Z);
    CHECK((bench.session.document() == before));
}

TEST_CASE("Locked pieces stay when their group is moved or removed, and it is said", "[group]") {
    Workbench bench;
    click_piece(bench, 0);
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("ballast.duplicate")), Qt::LeftButton);
    REQUIRE(bench.session.plan().ballast.size() == 3);
    click_piece(bench, 1);
    press(bench, Qt::Key_L);
    REQUIRE(bench.session.plan().ballast.at(1).fixed);
    CHECK(bench.find<QCheckBox>(QStringLiteral("ballast.fixed")).isChecked());
    const Vec3 locked = at(bench, 1), first = at(bench, 0);
    press(bench, Qt::Key_A);
    CHECK_FALSE(bench.find<QCheckBox>(QStringLiteral("ballast.fixed")).isChecked());
    press(bench, Qt::Key_Left, {});
    CHECK(at(bench, 1) == locked);
    CHECK(at(bench, 0).x() == Approx(first.x() - 1e-3));
    CHECK(status_of(bench).contains(QStringLiteral("stay")));
    const int steps = bench.session.history().index();
    press(bench, Qt::Key_Delete, {});
    CHECK(QApplication::activeModalWidget() == nullptr);
    CHECK(bench.session.plan().ballast.size() == 1);
    CHECK(at(bench, 0) == locked);
    CHECK(bench.session.history().index() == steps + 1);
    press(bench, Qt::Key_Z);
    CHECK(bench.session.plan().ballast.size() == 3);
    // Alone it is not removed either.
    click_piece(bench, 1);
    press(bench, Qt::Key_Delete, {});
    CHECK(bench.session.plan().ballast.size() == 3);
    // All locked at once, and all let go again.
    press(bench, Qt::Key_A);
    press(bench, Qt::Key_L);
    CHECK(bench.session.plan().ballast.at(0).fixed);
    press(bench, Qt::Key_L);
    CHECK_FALSE(bench.session.plan().ballast.at(1).fixed);
}

TEST_CASE("A piece is cut out of one car and pasted into another, its pocket comes along", "[group]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    const Json row = bench.session.document().root["cars"][0]["ballast"][0];
    click_piece(bench, 0);
    press(bench, Qt::Key_X);
    CHECK(bench.session.plan().ballast.size() == 1);
    CHECK(bench.session.history().count() == 1);
    bench.choose_car("Wagtail");
    press(bench, Qt::Key_V);
    REQUIRE(bench.session.plan().ballast.size() == 3);
    REQUIRE(bench.session.plan().body.cuts.size() == 2);
    CHECK(bench.session.plan().ballast[2].in == bench.session.plan().body.cuts[1].name);
    CHECK(bench.session.document().root["cars"][1]["ballast"][2]["at_mm"] == row["at_mm"]);
    CHECK(bench.drawing().selected() == Target{TargetKind::piece, 2, 0});
    CHECK(bench.session.history().count() == 2);
    press(bench, Qt::Key_Z);
    press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
}

TEST_CASE("What is copied in one window is pasted in another with the same figures", "[group]") {
    Workbench one, other;
    // Both bars taken out of the other window's car: after the paste it is the car of the first.
    press(other, Qt::Key_A);
    press(other, Qt::Key_Delete, {});
    const QString bare = other.text("answer.mass");
    press(one, Qt::Key_A);
    press(one, Qt::Key_C);
    press(other, Qt::Key_V);
    CHECK(other.text("answer.mass") != bare);
    for (const char* answer : {"answer.mass", "answer.front_load", "answer.balance", "answer.time"})
        CHECK(other.text(answer) == one.text(answer));
    CHECK(other.session.document().root["cars"][0]["ballast"] ==
          one.session.document().root["cars"][0]["ballast"]);
    CHECK(one.session.history().count() == 0);
}

TEST_CASE("The clipboard's text is a table; our JSON as text pastes too; anything else says why not",
          "[group]") {
    Workbench bench;
    press(bench, Qt::Key_A);
    press(bench, Qt::Key_C);
    QClipboard* clipboard = QApplication::clipboard();
    const QStringList lines = clipboard->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    REQUIRE(lines.size() == 3);
    CHECK(lines[1].startsWith(QStringLiteral("tungsten bar 13\t39.5 g\t58")));
    CHECK(lines[1].endsWith(QStringLiteral("\tweight pocket")));
    const QString json = QString::fromUtf8(clipboard->mimeData()->data(QLatin1String(pieces_mime_type)));
    REQUIRE_FALSE(json.isEmpty());

    const Document before = bench.session.document();
    const QString as_table = clipboard->text();
    auto truncated = std::make_unique<QMimeData>();
    truncated->setData(QLatin1String(pieces_mime_type), json.left(40).toUtf8());
    for (const QString& bad :
         {QStringLiteral("a recipe for soup"), QString(), as_table, json.left(json.size() / 2),
          QStringLiteral("{\"format\": \"rampwright-pieces\", \"version\": 99}"),
          QString(json).replace(QLatin1String("\"box\""), QLatin1String("\"egg\""))}) {
        INFO(bad.left(50).toStdString());
        clipboard->setText(bad);
        press(bench, Qt::Key_V);
        CHECK((bench.session.document() == before));
        CHECK(bench.session.history().count() == 0);
        CHECK(status_of(bench).size() > 20);
    }
    clipboard->setMimeData(truncated.release());
    press(bench, Qt::Key_V);
    CHECK((bench.session.document() == before));
    CHECK(status_of(bench).contains(QStringLiteral("clipboard")));

    clipboard->setText(json);
    press(bench, Qt::Key_V);
    CHECK(bench.session.plan().ballast.size() == 4);
    CHECK(bench.session.history().count() == 1);
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
        QStringList letters;
        for (const QAction* each : menu.actions()) {
            if (each->isSeparator()) continue;
            const QString text = each->text();
            letters << text.mid(text.indexOf(QLatin1Char('&')) + 1, 1).toLower();
            if (!each->menu()) CHECK_FALSE(each->shortcut().isEmpty());
            shown << QString(text).remove(QLatin1Char('&'));
        }
        CHECK(letters.removeDuplicates() == 0);
    });
    for (const char* text :
         {"Cut", "Copy", "Paste", "Duplicate", "Remove", "Select All", "Locked in Place", "Arrange"})
        CHECK(shown.contains(QLatin1String(text)));
    CHECK(bench.drawing().selection().size() == 2); // a right click on one of them keeps the others
}

TEST_CASE("Mirrored, aligned and spaced from the menu: one step each", "[group]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    press(bench, Qt::Key_A);
    QTest::keyClick(&bench.drawing(), Qt::Key_M, Qt::ControlModifier);
    CHECK(bench.session.history().count() == 0); // both stand on the line
    CHECK(status_of(bench).contains(QStringLiteral("already")));
    bench.session.apply(move_ballast(bench.session.document(), 0, 0, Vec3(58, 1, 11.5) * 1e-3));
    press(bench, Qt::Key_M);
    CHECK(at(bench, 0).y() == Approx(-1e-3));
    for (auto* each : bench.drawing().findChildren<QAction*>())
        if (each->text().remove(QLatin1Char('&')) == QStringLiteral("To the Centre Line")) each->trigger();
    CHECK(at(bench, 0).y() == Approx(0).margin(1e-12));
    CHECK(bench.session.history().count() == 3);
    for (int i = 0; i < 3; ++i)
        press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
}

TEST_CASE("A car is taken in from another file, as one step, and what is other here is told", "[group]") {
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("other.ramp.json"));
    Document other = load_document(demo_path);
    other.root["track"]["title"] = "another lane";
    save_document(file.toStdString(), other);
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    auto& tabs = bench.find<QTabBar>(QStringLiteral("cars"));
    const auto choose_file = [&](QDialog& dialog) {
        auto* name = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
        REQUIRE(name);
        name->setText(file);
        dialog.accept();
    };
    const auto take = [&] { press(bench, Qt::Key_O, Qt::ControlModifier | Qt::ShiftModifier); };
    with_dialogs(take, {choose_file, [](QDialog& dialog) {
                            auto* list = dialog.findChild<QListWidget*>(QStringLiteral("take.in.cars"));
                            REQUIRE(list);
                            CHECK(list->count() == 3);
                            list->setCurrentRow(2);
                            dialog.accept();
                        }});
    REQUIRE(tabs.count() == 4);
    CHECK(tabs.tabText(tabs.currentIndex()) == QStringLiteral("Swift 2"));
    CHECK(status_of(bench).contains(QStringLiteral("Swift 2")));
    CHECK(status_of(bench).contains(QStringLiteral("Lane or air are others")));
    CHECK(bench.session.history().count() == 1);
    const QString time = bench.text("answer.time");
    bench.choose_car("Swift");
    CHECK(bench.text("answer.time") == time); // the same car on this lane
    press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
    CHECK(tabs.count() == 3);
    // Changed one's mind; and a file that is none.
    with_dialogs(take, {choose_file, [](QDialog& dialog) { dialog.reject(); }});
    CHECK(tabs.count() == 3);
    QFile broken(file);
    REQUIRE(broken.open(QIODevice::WriteOnly));
    broken.write("soup");
    broken.close();
    with_dialogs(take, {choose_file, [](QDialog& dialog) { dialog.accept(); }});
    CHECK((to_text(bench.session.document()) == before));
}

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
