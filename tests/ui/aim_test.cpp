#include "support/bench.hpp"
#include "text/figure_text.hpp"

#include <rampwright/bench/wheel_choice.hpp>
#include <rampwright/steer/tuning_state.hpp>
#include <rampwright/study/time_curves.hpp>
#include <rampwright/study/wheel_worth.hpp>

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("The tuning log: a roll typed is logged, one undo takes it out, rubbish is kept and told",
          "[aim]") {
    Workbench bench;
    bench.choose_car("Swift");
    choose_view(bench, Step::aim, "Drift Board");
    auto& table = bench.find<QTableWidget>(QStringLiteral("tuning.table"));
    auto& roll = bench.find<QLineEdit>(QStringLiteral("tuning.roll"));
    REQUIRE(roll.isVisible());
    const Document before = bench.session.document();
    const int rows = table.rowCount();
    QTest::keyClicks(&roll, QStringLiteral("-3 in"));
    QTest::keyClick(&roll, Qt::Key_Return);
    CHECK(table.rowCount() == rows + 1);
    CHECK(bench.session.plan().steer.log.back().drift.value_or(0) == Approx(-0.0762));
    CHECK(roll.text().isEmpty());
    // What stands there is what the core makes of the log.
    const TuningState state = follow_tuning_log(bench.session.plan(), 0);
    const bool done = bench.text("tuning.move").contains(QStringLiteral("Done"));
    CHECK(done == state.log.done());
    bench.session.history().undo();
    CHECK(bench.session.document() == before);
    QTest::keyClicks(&roll, QStringLiteral("three"));
    QTest::keyClick(&roll, Qt::Key_Return);
    CHECK(roll.text() == QStringLiteral("three"));
    CHECK_FALSE(bench.text("tuning.trouble").isEmpty());
    CHECK(bench.session.document() == before);
}

TEST_CASE("Set the wheel to what the board showed: the touching front wheel, one undo step", "[aim]") {
    Workbench bench;
    bench.choose_car("Swift");
    choose_view(bench, Step::aim, "Drift Board");
    const Document before = bench.session.document();
    const TuningState state = follow_tuning_log(bench.session.plan(), 0);
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("tuning.use")), Qt::LeftButton);
    for (const Corner corner : {Corner::front_left, Corner::front_right}) {
        const WheelPlan& wheel = bench.session.plan().wheels[std::size_t(corner)];
        if (wheel.touches) CHECK(wheel.toe == Approx(state.steer()).margin(1e-7));
    }
    bench.session.history().undo();
    CHECK(bench.session.document() == before);
}

TEST_CASE("The curves name the best that the core finds", "[aim]") {
    Workbench bench;
    bench.choose_car("Swift");
    choose_view(bench, Step::aim, "Steer and Time");
    const TimeCurve curve =
        time_against_front_load(make_case(bench.session.project(), bench.session.car()), 0.03, 25);
    CHECK(bench.text("curve.load.words")
              .contains(quantity_text(curve.best.at, Quantity::mass, bench.session.project().units)));
    CHECK(bench.text("curve.steer.words").contains(QStringLiteral("1 ms")));
}

TEST_CASE("The wheel bench takes a pasted table, flags the odd one, and fits the chosen four", "[aim]") {
    Workbench bench;
    bench.choose_car("Swift");
    choose_view(bench, Step::roll, "Wheel Bench");
    auto& table = bench.find<QTableWidget>(QStringLiteral("bench.wheels"));
    const auto rows = bench.session.project().bench_wheels.size();
    REQUIRE(static_cast<std::size_t>(table.rowCount()) == rows);
    bool odd = false;
    for (int row = 0; row < table.rowCount(); ++row)
        odd = odd || table.item(row, 7)->text().contains(QStringLiteral("odd run-out"));
    CHECK(odd);
    QApplication::clipboard()->setText(
        QStringLiteral("name;mass (g);runout (mm)\nA;1,9;0,02\nB;1,8;0,03\nC;heavy;0,1\n"));
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("bench.paste")), Qt::LeftButton);
    CHECK(bench.session.project().bench_wheels.size() == rows + 3);
    CHECK(bench.text("bench.trouble").contains(QStringLiteral("heavy")));
    const WheelChoice choice =
        choose_wheels(bench.session.project().bench_wheels,
                      wheel_worth(make_case(bench.session.project(), bench.session.car())));
    const Document before = bench.session.document();
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("bench.fit")), Qt::LeftButton);
    const auto& plan = bench.session.plan();
    const Corner guide =
        plan.wheels[std::size_t(Corner::front_left)].touches ? Corner::front_left : Corner::front_right;
    CHECK(plan.wheels[std::size_t(guide)].mass ==
          Approx(*bench.session.project().bench_wheels[choice.guide].mass).margin(1e-9));
    bench.session.history().undo();
    CHECK(bench.session.document() == before);
}
