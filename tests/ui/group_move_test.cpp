// Several things at once: moved, arranged, locked.
#include "support/group.hpp"

#include <rampwright/project/edits.hpp>

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("A group is dragged as one step, the figures follow, undo is to the byte", "[group]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    const QString load = bench.text("answer.front_load");
    const Vec3 first = place_of_piece(bench, 0), second = place_of_piece(bench, 1);
    press(bench, Qt::Key_A);
    const QPoint from = pixel_of_piece(bench, 1, View::side);
    const auto& map = bench.drawing().map();
    const QPoint way =
        (map.plane_to_pixel(View::side, {0.0124, 0}) - map.plane_to_pixel(View::side, {0, 0})).toPoint();
    drag(bench.drawing(), from, from + way, {}, [&] {
        CHECK(bench.text("answer.front_load") != load);
        CHECK(bench.session.history().count() == 0);
    });
    CHECK((place_of_piece(bench, 0) - first).isApprox(Vec3(12e-3, 0, 0), 1e-9)); // on the grid
    CHECK((place_of_piece(bench, 1) - second).isApprox(Vec3(12e-3, 0, 0), 1e-9));
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
    const double by = (place_of_piece(bench, 0) - first).x() * 1e3;
    CHECK(std::abs(by - std::round(by)) > 1e-3);
    CHECK((place_of_piece(bench, 1) - second).x() * 1e3 == Approx(by).margin(2e-6));
    press(bench, Qt::Key_Z);
    drag(bench.drawing(), from, from + way, {}, [&] { press(bench, Qt::Key_Escape, {}); });
    CHECK((to_text(bench.session.document()) == before));
    CHECK(bench.session.history().index() == 0);
}

TEST_CASE("A group is nudged by the same steps as one thing; a run of them is one step", "[group]") {
    Workbench bench;
    const Document before = bench.session.document();
    const Vec3 first = place_of_piece(bench, 0), second = place_of_piece(bench, 1);
    press(bench, Qt::Key_A);
    press(bench, Qt::Key_Left, {});
    press(bench, Qt::Key_Left, Qt::ShiftModifier);
    press(bench, Qt::Key_Right, Qt::ControlModifier);
    for (const double by : {(place_of_piece(bench, 0) - first).x(), (place_of_piece(bench, 1) - second).x()})
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
    const Vec3 locked = place_of_piece(bench, 1), first = place_of_piece(bench, 0);
    press(bench, Qt::Key_A);
    CHECK_FALSE(bench.find<QCheckBox>(QStringLiteral("ballast.fixed")).isChecked());
    press(bench, Qt::Key_Left, {});
    CHECK(place_of_piece(bench, 1) == locked);
    CHECK(place_of_piece(bench, 0).x() == Approx(first.x() - 1e-3));
    CHECK(status_of(bench).contains(QStringLiteral("stay")));
    const int steps = bench.session.history().index();
    press(bench, Qt::Key_Delete, {});
    CHECK(QApplication::activeModalWidget() == nullptr);
    CHECK(bench.session.plan().ballast.size() == 1);
    CHECK(place_of_piece(bench, 0) == locked);
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

TEST_CASE("Mirrored, aligned and spaced from the menu: one step each", "[group]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());
    press(bench, Qt::Key_A);
    QTest::keyClick(&bench.drawing(), Qt::Key_M, Qt::ControlModifier);
    CHECK(bench.session.history().count() == 0); // both stand on the line
    CHECK(status_of(bench).contains(QStringLiteral("already")));
    bench.session.apply(move_ballast(bench.session.document(), 0, 0, Vec3(58, 1, 11.5) * 1e-3));
    press(bench, Qt::Key_M);
    CHECK(place_of_piece(bench, 0).y() == Approx(-1e-3));
    for (auto* each : bench.drawing().findChildren<QAction*>())
        if (each->text().remove(QLatin1Char('&')) == QStringLiteral("To the Centre Line")) each->trigger();
    CHECK(place_of_piece(bench, 0).y() == Approx(0).margin(1e-12));
    CHECK(bench.session.history().count() == 3);
    for (int i = 0; i < 3; ++i)
        press(bench, Qt::Key_Z);
    CHECK((to_text(bench.session.document()) == before));
}
