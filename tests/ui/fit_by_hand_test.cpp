// What the hand does to a car is judged at once, with the right number; and everything can be taken back.
#include "drawing/finding_marks.hpp"
#include "fields/value_field.hpp"
#include "support/bench.hpp"

#include <rampwright/materials/starting_shapes.hpp>

#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

const Finding* find_finding(Workbench& bench, const std::string& code, const std::string& where) {
    for (const Finding& finding : bench.session.figures()->findings)
        if (finding.code == code && finding.where == where) return &finding;
    return nullptr;
}

double number_of(const Finding& finding, const std::string& name) {
    for (const auto& [key, value] : finding.values)
        if (key == name) return value;
    FAIL("no value " << name);
    return 0;
}

bool listed(Workbench& bench, const QString& text) {
    const auto& list = bench.find<QListWidget>(QStringLiteral("findings.list"));
    for (int i = 0; i < list.count(); ++i)
        if (list.item(i)->text().contains(text)) return true;
    return false;
}

} // namespace

TEST_CASE("Draw a pocket, drop a piece in it, drag it out through the wall: the finding appears, with the "
          "right number",
          "[fit-by-hand]") {
    Workbench bench;
    const std::string before = to_text(bench.session.document());

    // A pocket from x = 92 mm to 112 mm, 26 mm wide, 10 mm deep into the 16 mm of wood: its floor is at 6 mm.
    constexpr double x0 = 92, x1 = 112, half_width = 13, floor = 6;
    go_to_step(bench, 1);
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("tool.pocket")), Qt::LeftButton);
    drag(bench.drawing(), pixel_of(bench, View::top, x0, -half_width),
         pixel_of(bench, View::top, x1, half_width));
    REQUIRE(bench.session.plan().body.cuts.size() == 2);

    // A bar of 13 mm by 24 mm, 7 mm high, from the shelf into its middle.
    constexpr double length = 13, width = 24, height = 7, middle = (x0 + x1) / 2;
    go_to_step(bench, 3);
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    QTest::mouseClick(shelf.viewport(), Qt::LeftButton, {}, shelf.visualItemRect(shelf.item(0)).center());
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::top, middle, 0));
    REQUIRE(bench.session.plan().ballast.size() == 3);
    const BallastPlan& bar = bench.session.plan().ballast.back();
    CHECK(bar.in == "pocket 1");
    CHECK((bar.at * 1e3).isApprox(Vec3(middle, 0, floor + height / 2)));
    const std::string where = "/cars/0/ballast/2";
    CHECK_FALSE(find_finding(bench, "ballast-outside-cut", where));
    CHECK_FALSE(find_finding(bench, "ballast-outside-body", where));
    const Document in_place = bench.session.document();

    // Forward by 10 mm, through the pocket's front wall.
    const auto pull = [&](double by_x, double by_y) {
        const Vec3 at = bench.session.plan().ballast.back().at * 1e3;
        // Taken hold of away from its middle, where a mark may lie.
        drag(bench.drawing(), pixel_of(bench, View::top, at.x() - 4, at.y() - 8),
             pixel_of(bench, View::top, at.x() - 4 + by_x, at.y() - 8 + by_y));
    };
    pull(10, 0);
    const double out = middle + 10 + length / 2 - x1; // 6.5 mm
    const Finding* through_front = find_finding(bench, "ballast-outside-cut", where);
    REQUIRE(through_front);
    CHECK(number_of(*through_front, "outside_mm") == Approx(out).epsilon(1e-9));
    CHECK(number_of(*through_front, "outside_mm3") == Approx(out * width * height).epsilon(1e-6));
    CHECK(listed(bench, QStringLiteral("6.5 mm (1092 mm³)")));
    // Its place is on the part that sticks out, and so is its mark.
    REQUIRE(through_front->at);
    CHECK(through_front->at->x() * 1e3 == Approx(middle + 10 + length / 2));
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == in_place);
    CHECK_FALSE(listed(bench, QStringLiteral("1092 mm³")));

    // To the left by 16 mm, through the pocket's wall (at 13 mm) and the body's side (at 22 mm).
    pull(0, 16);
    const double past_wall = 16 + width / 2 - half_width, past_side = 16 + width / 2 - 22; // 15 mm and 6 mm
    const Finding* through_wall = find_finding(bench, "ballast-outside-cut", where);
    const Finding* through_side = find_finding(bench, "ballast-outside-body", where);
    REQUIRE(through_wall);
    REQUIRE(through_side);
    CHECK(number_of(*through_wall, "outside_mm") == Approx(past_wall).epsilon(1e-9));
    CHECK(number_of(*through_wall, "outside_mm3") == Approx(past_wall * length * height).epsilon(1e-6));
    CHECK(number_of(*through_side, "outside_mm") == Approx(past_side).epsilon(1e-9));
    CHECK(number_of(*through_side, "outside_mm3") == Approx(past_side * length * height).epsilon(1e-6));
    CHECK(listed(bench, QStringLiteral("15.0 mm (1365 mm³)")));
    CHECK(listed(bench, QStringLiteral("6.0 mm (546 mm³)")));

    while (bench.session.history().canUndo())
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(to_text(bench.session.document()) == before);
}

TEST_CASE("A starting shape is one click, scaled to the block, and one undo", "[fit-by-hand]") {
    Workbench bench;
    go_to_step(bench, 1);
    const std::string before = to_text(bench.session.document());
    CHECK(starting_shapes().size() >= 5);
    for (const StartingShape& shape : starting_shapes()) {
        INFO(shape.id);
        auto& button = bench.find<QToolButton>(QStringLiteral("shape.") + QString::fromStdString(shape.id));
        CHECK_FALSE(button.icon().isNull());
        QTest::mouseClick(&button, Qt::LeftButton);
        const BodyPlan& body = bench.session.plan().body;
        REQUIRE(body.profile.size() == shape.profile.size());
        for (std::size_t i = 0; i < shape.profile.size(); ++i)
            CHECK(
                (body.profile[i].at * 1e3 - Vec2(shape.profile[i].at.x() * 178, shape.profile[i].at.y() * 32))
                    .norm() < 1e-5);
        // It can be computed, it holds its axles, and no wheel runs into it.
        REQUIRE(bench.session.figures());
        for (const Finding& finding : bench.session.figures()->findings) {
            INFO(finding.text);
            CHECK(finding.code != "axle-misses-wood");
            CHECK(finding.code != "wheel-touches-body");
        }
        CHECK(bench.session.history().index() == 1);
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
        CHECK(to_text(bench.session.document()) == before);
    }
}

TEST_CASE("Fifty edits by hand are undone and done again byte for byte", "[fit-by-hand]") {
    Workbench bench;
    go_to_step(bench, 1);
    std::vector<std::string> texts{to_text(bench.session.document())};
    const auto note = [&] {
        texts.push_back(to_text(bench.session.document()));
        REQUIRE(bench.session.history().count() == static_cast<int>(texts.size()) - 1);
    };
    for (int round = 0; round < 10; ++round) {
        const double x = 84 + 3 * round;
        // A point more in the top edge, pulled down, put elsewhere; a small pocket drawn and doubled.
        QTest::mouseDClick(&bench.drawing(), Qt::LeftButton, {},
                           pixel_of(bench, View::side, 150 - 7 * round, 16));
        note();
        QTest::keyClick(&bench.drawing(), round % 2 ? Qt::Key_Up : Qt::Key_Down);
        note();
        // Its place typed; the last one becomes smooth.
        if (round < 9)
            type_into(bench.find<ValueField>(QStringLiteral("point.at.0")), QString::number(149 - 7 * round));
        else
            QTest::keyClick(&bench.drawing(), Qt::Key_S);
        note();
        QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("tool.pocket")), Qt::LeftButton);
        drag(bench.drawing(), pixel_of(bench, View::top, x, -20), pixel_of(bench, View::top, x + 2, -16));
        note();
        QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("cut.duplicate")), Qt::LeftButton);
        note();
    }
    REQUIRE(texts.size() == 51);
    for (std::size_t i = texts.size() - 1; i-- > 0;) {
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
        REQUIRE(to_text(bench.session.document()) == texts[i]);
    }
    CHECK_FALSE(bench.session.history().canUndo());
    for (std::size_t i = 1; i < texts.size(); ++i) {
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
        REQUIRE(to_text(bench.session.document()) == texts[i]);
    }
}
