// The outline of the wood, shaped by hand. Bittern's is the block of 178 mm by 44 mm, 16 mm high.
#include "fields/value_field.hpp"
#include "support/bench.hpp"

#include <QAction>
#include <QCheckBox>
#include <QListWidget>
#include <QTest>
#include <catch2/catch.hpp>

#include <fstream>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

constexpr int outline_step = 1;

const std::vector<PlanPoint>& profile(Workbench& bench) {
    return bench.session.plan().body.profile;
}

const std::vector<PlanPoint>& plan(Workbench& bench) {
    return bench.session.plan().body.plan;
}

Vec2 in_mm(const PlanPoint& point) {
    return point.at * 1e3;
}

bool close(const PlanPoint& point, double x, double y, double margin = 1e-6) {
    return (in_mm(point) - Vec2(x, y)).norm() < margin;
}

void click(Workbench& bench, View view, double x, double y) {
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, view, x, y));
}

void show_inches(Workbench& bench) {
    for (QAction* action : bench.window->findChildren<QAction*>())
        if (action->text().startsWith(QStringLiteral("Inches"))) action->trigger();
    REQUIRE(bench.session.project().units == UnitSystem::inch_ounce);
}

} // namespace

TEST_CASE("A double click on the line adds a point, in both views; Delete takes it away", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    const std::string before = to_text(bench.session.document());
    QTest::mouseDClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 90, 16));
    REQUIRE(profile(bench).size() == 5);
    CHECK(close(profile(bench)[3], 90, 16, 0.2)); // between the front and the rear top corner
    QTest::keyClick(&bench.drawing(), Qt::Key_Delete);
    CHECK(to_text(bench.session.document()) == before);

    QTest::mouseDClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::top, 100, -22));
    REQUIRE(plan(bench).size() == 5);
    CHECK(close(plan(bench)[1], 100, -22, 0.2));
    CHECK(profile(bench).size() == 4);
    QTest::keyClick(&bench.drawing(), Qt::Key_Backspace);
    CHECK(to_text(bench.session.document()) == before);
    CHECK(bench.session.history().count() == 4);
}

TEST_CASE("Insert adds a point midway after the chosen one; so does the context menu", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    click(bench, View::side, 178, 16);
    QTest::keyClick(&bench.drawing(), Qt::Key_Insert);
    REQUIRE(profile(bench).size() == 5);
    CHECK(close(profile(bench)[3], 89, 16));
    CHECK(bench.drawing().selected() == Target{TargetKind::profile_point, 3, 0});
    choose_in_context_menu(bench.drawing(), pixel_of(bench, View::top, 178, 22), Qt::Key_A);
    REQUIRE(plan(bench).size() == 5);
    CHECK(close(plan(bench)[3], 89, 22));
    choose_in_context_menu(bench.drawing(), pixel_of(bench, View::side, 40, 0), Qt::Key_A);
    REQUIRE(profile(bench).size() == 6);
    CHECK(close(profile(bench)[1], 40, 0, 0.2));
}

TEST_CASE("Three points of an outline stay", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    click(bench, View::side, 0, 16);
    QTest::keyClick(&bench.drawing(), Qt::Key_Delete);
    REQUIRE(profile(bench).size() == 3);
    const Document triangle = bench.session.document();
    click(bench, View::side, 178, 16);
    QTest::keyClick(&bench.drawing(), Qt::Key_Delete);
    CHECK(bench.session.document() == triangle);
    CHECK(status_of(bench).contains(QStringLiteral("three points")));
    CHECK(bench.drawing().selected() == Target{TargetKind::profile_point, 2, 0});
}

TEST_CASE("A point is a corner or smooth: by key, by double click, by menu, by its box", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    const double wood = bench.session.figures()->body_mass;
    click(bench, View::side, 178, 16);
    QTest::keyClick(&bench.drawing(), Qt::Key_S);
    CHECK(profile(bench)[2].smooth);
    CHECK(bench.session.figures()->body_mass != Approx(wood));
    QTest::mouseDClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 178, 16));
    CHECK_FALSE(profile(bench)[2].smooth);
    CHECK(bench.session.figures()->body_mass == Approx(wood).epsilon(1e-12));
    choose_in_context_menu(bench.drawing(), pixel_of(bench, View::side, 178, 16), Qt::Key_S);
    CHECK(profile(bench)[2].smooth);
    choose_in_context_menu(bench.drawing(), pixel_of(bench, View::side, 178, 16), Qt::Key_C);
    CHECK_FALSE(profile(bench)[2].smooth);
    QTest::mouseClick(&bench.find<QCheckBox>(QStringLiteral("point.smooth")), Qt::LeftButton, {},
                      QPoint(8, 8));
    CHECK(profile(bench)[2].smooth);
}

TEST_CASE("A dragged point keeps to 1 mm or 1/16 in, with Ctrl to neither", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    const auto pull = [&](Qt::KeyboardModifiers keys) {
        const Vec2 at = in_mm(profile(bench)[2]);
        drag(bench.drawing(), pixel_of(bench, View::side, at.x(), at.y()),
             pixel_of(bench, View::side, 170.3, 11.4), keys);
        const Vec2 to = profile(bench)[2].at;
        bench.session.history().undo();
        return to;
    };
    CHECK((pull({}) - Vec2(170e-3, 11e-3)).norm() < 1e-12);
    const Vec2 free = pull(Qt::ControlModifier);
    CHECK((free - Vec2(170.3e-3, 11.4e-3)).norm() < 0.3e-3);
    CHECK((free - Vec2(170e-3, 11e-3)).norm() > 0.1e-3);
    show_inches(bench);
    // 170.3 mm are 107.28 sixteenths of 1.5875 mm, 11.4 mm are 7.18.
    CHECK((pull({}) - Vec2(107, 7) * 1.5875e-3).norm() < 1e-9);
}

TEST_CASE("Arrow keys nudge a point by the grid, with Ctrl by a fifth of it", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    click(bench, View::top, 178, 22);
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    QTest::keyClick(&bench.drawing(), Qt::Key_Down, Qt::ControlModifier);
    CHECK(close(plan(bench)[2], 177, 21.8));
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(close(plan(bench)[2], 178, 22));
    show_inches(bench);
    click(bench, View::top, 178, 22);
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    QTest::keyClick(&bench.drawing(), Qt::Key_Left, Qt::ControlModifier);
    CHECK(close(plan(bench)[2], 178 - 25.4 / 16 - 25.4 / 80, 22));
}

TEST_CASE("A point's place is typed in any unit, also where the file leaves the outline to the block",
          "[outline]") {
    QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("block.ramp.json")).toStdString();
    {
        Document document = load_document(demo_path);
        document.root["cars"][0]["body"].erase("profile_mm");
        std::ofstream(path) << to_text(document);
    }
    Workbench bench(path);
    go_to_step(bench, outline_step);
    // By the list alone: no mouse.
    auto& list = bench.find<QListWidget>(QStringLiteral("wood.list"));
    for (int row = 0; row < list.count(); ++row)
        if (list.item(row)->text().startsWith(QStringLiteral("side point 3"))) list.setCurrentRow(row);
    CHECK(bench.drawing().selected() == Target{TargetKind::profile_point, 2, 0});
    type_into(bench.find<ValueField>(QStringLiteral("point.at.0")), QStringLiteral("6 1/2 in"));
    type_into(bench.find<ValueField>(QStringLiteral("point.at.1")), QStringLiteral("10mm + 2"));
    REQUIRE(profile(bench).size() == 4);
    CHECK(close(profile(bench)[2], 165.1, 12));
    CHECK(close(profile(bench)[3], 0, 32)); // the block's own corner, written out
    CHECK(bench.session.history().count() == 2);
}

TEST_CASE("What would make the outline cross itself is refused in plain words, and nothing is lost",
          "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    const Document before = bench.session.document();
    // The lower front corner is pulled up through the top edge: it stays where it last could be.
    drag(bench.drawing(), pixel_of(bench, View::side, 178, 0), pixel_of(bench, View::side, 120, 24), {}, [&] {
        CHECK(status_of(bench).contains(QStringLiteral("cross itself")));
        CHECK_FALSE(status_of(bench).contains(QLatin1Char('/'))); // no place in a file
        CHECK(bench.session.figures() != nullptr);
    });
    CHECK(status_of(bench).contains(QStringLiteral("cross itself")));
    CHECK(bench.session.figures() != nullptr);
    CHECK(in_mm(profile(bench)[1]).y() < 16);
    CHECK(bench.session.history().count() <= 1);
    while (bench.session.history().canUndo())
        bench.session.history().undo();
    CHECK(bench.session.document() == before);

    click(bench, View::side, 178, 0);
    auto& height = bench.find<ValueField>(QStringLiteral("point.at.1"));
    auto& along = bench.find<ValueField>(QStringLiteral("point.at.0"));
    type_into(along, QStringLiteral("90"));
    const Document moved = bench.session.document();
    type_into(height, QStringLiteral("20 mm"));
    CHECK(bench.session.document() == moved);
    CHECK(height.fault().contains(QStringLiteral("cross itself")));
    CHECK(height.text() == QStringLiteral("20 mm")); // what was typed stays to be mended
    type_into(height, QStringLiteral("15 mm"));
    CHECK(close(profile(bench)[1], 90, 15));
}

TEST_CASE("Page Down walks through everything that can be touched, and back", "[outline]") {
    Workbench bench;
    go_to_step(bench, outline_step);
    bench.drawing().setFocus();
    std::vector<Target> seen;
    for (int i = 0; i < 9; ++i) { // four points, four points, one pocket
        QTest::keyClick(&bench.drawing(), Qt::Key_PageDown);
        REQUIRE(bench.drawing().selected());
        CHECK(std::find(seen.begin(), seen.end(), *bench.drawing().selected()) == seen.end());
        seen.push_back(*bench.drawing().selected());
    }
    QTest::keyClick(&bench.drawing(), Qt::Key_PageDown);
    CHECK(*bench.drawing().selected() == seen.front());
    QTest::keyClick(&bench.drawing(), Qt::Key_PageUp);
    CHECK(*bench.drawing().selected() == seen.back());
}
