// Ballast from the shelf to its place on the drawing. Bittern's weight pocket runs from (51, -13, 8) to
// (79, 13, 17) mm; its wood is 16 mm high.
#include "drawing/shelf_drop.hpp"
#include "support/bench.hpp"

#include <rampwright/materials/materials.hpp>

#include <QApplication>
#include <QComboBox>
#include <QDropEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

constexpr int ballast_step = 3;

int row_of(Workbench& bench, const std::string& name) {
    const auto& shelf = bench.session.project().shelf;
    for (std::size_t i = 0; i < shelf.size(); ++i)
        if (shelf[i].name == name) return static_cast<int>(i);
    throw std::runtime_error("nothing on the shelf is " + name);
}

void pick_piece(Workbench& bench, const std::string& name) {
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    QListWidgetItem* item = shelf.item(row_of(bench, name));
    shelf.scrollToItem(item);
    QTest::mouseClick(shelf.viewport(), Qt::LeftButton, {}, shelf.visualItemRect(item).center());
}

void click_at(Workbench& bench, View view, double across, double up) {
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, view, across, up));
}

const BallastPlan& last_piece(Workbench& bench) {
    return bench.session.plan().ballast.back();
}

bool lies_at(const BallastPlan& piece, const Vec3& mm) {
    return (piece.at * 1e3 - mm).norm() < 1e-6;
}

/// What the toolkit sends while a row is dragged over the drawing and let go.
void drop_row(Workbench& bench, int row, QPoint at) {
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    (void)shelf;
    const auto mime = shelf_mime(static_cast<std::size_t>(row));
    QDragEnterEvent enter(at, Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&bench.drawing(), &enter);
    QDragMoveEvent move(at, Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&bench.drawing(), &move);
    QDropEvent drop(at, Qt::CopyAction, mime.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&bench.drawing(), &drop);
}

} // namespace

TEST_CASE("A piece that is clicked on the shelf and then over a pocket lies on the pocket's floor",
          "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    const std::string before = to_text(bench.session.document());
    for (const View view : all_views) {
        INFO(index(view));
        pick_piece(bench, "steel ball"); // 8 mm
        REQUIRE(bench.drawing().carried());
        click_at(bench, view, view == View::front ? 6 : 62, view == View::top ? 6 : 13);
        REQUIRE(bench.session.plan().ballast.size() == 3);
        // Where the hand was, within the pocket; where the view does not tell, its middle; always on its
        // floor.
        const Vec3 expected(view == View::front ? 65 : 62, view == View::side ? 0 : 6, 8 + 4);
        CHECK(lies_at(last_piece(bench), expected));
        CHECK(last_piece(bench).in == "weight pocket");
        CHECK(last_piece(bench).mass == Approx(2.1e-3));
        CHECK(bench.drawing().selected() == Target{TargetKind::piece, 2, 0});
        CHECK(bench.drawing().tool() == Tool::pick);
        CHECK_FALSE(bench.drawing().carried());
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
        CHECK(to_text(bench.session.document()) == before);
    }
    // Near its side it is moved in: the pocket ends at 13 mm.
    pick_piece(bench, "steel ball");
    click_at(bench, View::top, 77, 12);
    CHECK(lies_at(last_piece(bench), {75, 9, 12}));
}

TEST_CASE("A row dragged to the drawing does the same", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    drop_row(bench, row_of(bench, "tungsten bar 13"), pixel_of(bench, View::top, 65, 0));
    REQUIRE(bench.session.plan().ballast.size() == 3);
    CHECK(lies_at(last_piece(bench), {65, 0, 8 + 3.5}));
    CHECK(last_piece(bench).in == "weight pocket");
    // In another step there is nothing to drop it on.
    go_to_step(bench, 1);
    const Document before = bench.session.document();
    drop_row(bench, row_of(bench, "steel ball"), pixel_of(bench, View::top, 65, 0));
    CHECK(bench.session.document() == before);
}

TEST_CASE("Away from any cut a piece stays under the hand; from above it lies on the wood", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    pick_piece(bench, "lead sheet"); // 30 x 20 x 1 mm
    click_at(bench, View::top, 110, 3);
    CHECK(lies_at(last_piece(bench), {110, 3, 16.5}));
    CHECK(last_piece(bench).in.empty());
    pick_piece(bench, "steel ball");
    click_at(bench, View::side, 100, 9);
    CHECK(lies_at(last_piece(bench), {100, 0, 9}));
}

TEST_CASE("A wire takes the direction of the bore it is dropped on, and lies on its bottom", "[shelf]") {
    Workbench bench;
    go_to_step(bench, 1);
    auto& bits = bench.find<QComboBox>(QStringLiteral("tool.drill"));
    type_into(*bits.lineEdit(), QStringLiteral("6 mm"));
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("tool.bore")), Qt::LeftButton);
    drag(bench.drawing(), pixel_of(bench, View::front, 22, 10), pixel_of(bench, View::front, -10, 10));
    // Midway between the axles is the pocket: the bore is moved ahead of it.
    for (const char* end : {"cut.from.0", "cut.to.0"})
        type_into(bench.find<QLineEdit>(QLatin1String(end)), QStringLiteral("100"));
    go_to_step(bench, ballast_step);
    pick_piece(bench, "lead wire 20"); // 3 mm thick, 20 mm long
    click_at(bench, View::top, 100, 3);
    CHECK(last_piece(bench).in == "bore 1");
    CHECK(last_piece(bench).axis == 1);
    CHECK(lies_at(last_piece(bench), {100, 3, 10 - (3 - 1.5)}));
}

TEST_CASE("Putty needs a cut to fill", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    const Document before = bench.session.document();
    pick_piece(bench, "tungsten putty");
    click_at(bench, View::top, 110, 0);
    CHECK(bench.session.document() == before);
    CHECK(status_of(bench).contains(QStringLiteral("Putty")));
    CHECK(bench.drawing().carried()); // still in the hand
    click_at(bench, View::top, 65, 0);
    CHECK(last_piece(bench).in == "weight pocket");
    CHECK(last_piece(bench).shape == PieceShape::putty);
}

TEST_CASE("The shelf says what is left, and gives no more", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    QListWidgetItem* bar = shelf.item(row_of(bench, "tungsten bar 13")); // four, two of them in the car
    CHECK(bar->text().contains(QStringLiteral("2 left")));
    for (const double x : {90., 110.}) {
        pick_piece(bench, "tungsten bar 13");
        click_at(bench, View::top, x, 0);
    }
    CHECK(bench.session.plan().ballast.size() == 4);
    CHECK(bar->text().contains(QStringLiteral("none left")));
    const Document before = bench.session.document();
    pick_piece(bench, "tungsten bar 13");
    CHECK_FALSE(bench.drawing().carried());
    drop_row(bench, row_of(bench, "tungsten bar 13"), pixel_of(bench, View::top, 120, 0));
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("ballast.duplicate")), Qt::LeftButton);
    CHECK(bench.session.document() == before);
    CHECK(status_of(bench).contains(QStringLiteral("all 4")));
}

TEST_CASE("A piece is put in the car, and into another cut, by the keyboard alone", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    shelf.setFocus();
    shelf.setCurrentRow(row_of(bench, "steel ball"));
    QTest::keyClick(&shelf, Qt::Key_Return);
    REQUIRE(bench.session.plan().ballast.size() == 3);
    CHECK(lies_at(last_piece(bench), {65, 0, 12})); // the middle of the last cut
    auto& in = bench.find<QComboBox>(QStringLiteral("ballast.in"));
    in.setFocus();
    QTest::keyClick(&in, Qt::Key_Up);
    CHECK(last_piece(bench).in.empty());
    QTest::keyClick(&in, Qt::Key_Down);
    CHECK(last_piece(bench).in == "weight pocket");
}

TEST_CASE("Escape lays a carried piece back on the shelf", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    const Document before = bench.session.document();
    pick_piece(bench, "steel ball");
    CHECK(bench.drawing().tool() == Tool::piece);
    QTest::mouseMove(&bench.drawing(), pixel_of(bench, View::top, 65, 0));
    QTest::keyClick(&bench.drawing(), Qt::Key_Escape);
    click_at(bench, View::top, 100, 0);
    CHECK(bench.session.document() == before);
    CHECK(bench.drawing().tool() == Tool::pick);
}

TEST_CASE("What holds a piece is chosen on the slip, its mass typed, left empty, and taken back", "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    const std::string before = to_text(bench.session.document());
    const double mass = bench.session.figures()->mass;
    auto& held = bench.find<QComboBox>(QStringLiteral("ballast.held"));
    auto& weighs = bench.find<QLineEdit>(QStringLiteral("ballast.held_mass"));
    CHECK_FALSE(held.isEnabled());
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    REQUIRE(held.isEnabled());
    held.setFocus();
    QTest::keyClick(&held, Qt::Key_Down); // press-fit
    QTest::keyClick(&held, Qt::Key_Down);
    CHECK(bench.session.plan().ballast[0].held == "screw");
    const Holding& screw = *find_holding("screw");
    CHECK(bench.session.figures()->mass - mass == Approx(screw.mass.value).epsilon(1e-6));
    CHECK(weighs.text().isEmpty());
    CHECK(weighs.placeholderText().startsWith(QString::number(screw.mass.value * 1e3)));
    type_into(weighs, QStringLiteral("0.05 oz"));
    CHECK(bench.session.plan().ballast[0].held_mass == Approx(0.05 * 28.349523125e-3).epsilon(1e-6));
    CHECK(bench.session.figures()->mass - mass == Approx(0.05 * 28.349523125e-3).epsilon(1e-6));
    CHECK(bench.session.history().count() == 3);
    weighs.setFocus();
    weighs.selectAll();
    QTest::keyClick(&weighs, Qt::Key_Delete);
    QTest::keyClick(&weighs, Qt::Key_Return);
    CHECK_FALSE(bench.session.plan().ballast[0].held_mass);
    while (bench.session.history().canUndo())
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(to_text(bench.session.document()) == before);
    CHECK(held.currentIndex() == 0);
}

TEST_CASE("A household piece is put on the shelf with its typical mass, once, and from there into the car",
          "[shelf]") {
    Workbench bench;
    go_to_step(bench, ballast_step);
    const std::string before = to_text(bench.session.document());
    auto& button = bench.find<QPushButton>(QStringLiteral("shelf.household"));
    CHECK(button.menu()->actions().size() == static_cast<int>(household_pieces().size()));
    auto& nut = bench.find<QAction>(QStringLiteral("household.nut-m5"));
    nut.trigger();
    REQUIRE(bench.session.project().shelf.size() == 8);
    CHECK(bench.session.project().shelf.back().name == "nut M5");
    CHECK(bench.session.project().shelf.back().mass == Approx(1.23e-3));
    nut.trigger();
    CHECK(bench.session.project().shelf.size() == 8);
    CHECK(status_of(bench).contains(QStringLiteral("on the shelf already")));
    pick_piece(bench, "nut M5"); // 4.7 mm long, 8.8 mm across, lying
    click_at(bench, View::top, 65, 0);
    CHECK(last_piece(bench).in == "weight pocket");
    CHECK(lies_at(last_piece(bench), {65, 0, 8 + 4.4}));
    for (int i = 0; i < 2; ++i)
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(to_text(bench.session.document()) == before);
}
