#include "fields/value_field.hpp"
#include "panels/agree_slip.hpp"
#include "panels/step_ruler.hpp"
#include "support/bench.hpp"

#include <rampwright/rules/rule_sets.hpp>

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QToolButton>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;
using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

namespace {

void go_to_step(Workbench& bench, Step step) {
    QTest::mouseClick(&bench.find<QAbstractButton>(QStringLiteral("step.%1").arg(static_cast<int>(step))),
                      Qt::LeftButton);
}

/// Chooses an entry of a choice by keyboard, as a person without a mouse does.
void choose_by_keys(QComboBox& box, int index) {
    box.setFocus();
    REQUIRE(box.hasFocus());
    QTest::keyClick(&box, Qt::Key_Home);
    for (int i = 0; i < index; ++i)
        QTest::keyClick(&box, Qt::Key_Down);
    REQUIRE(box.currentIndex() == index);
}

/// Chooses an entry by opening the list and clicking it.
void choose_by_mouse(QComboBox& box, int index) {
    QTest::mouseClick(&box, Qt::LeftButton);
    auto* view = box.view();
    REQUIRE(QTest::qWaitForWindowExposed(view->window()));
    const auto row = view->model()->index(index, 0);
    view->scrollTo(row);
    // The list ignores clicks that follow its opening within the double-click time.
    QTest::qWait(QApplication::doubleClickInterval() + 20);
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(row).center());
    QTest::qWait(20);
}

int set_index(const char* id) {
    const auto& sets = rule_sets();
    for (std::size_t i = 0; i < sets.size(); ++i)
        if (sets[i].id == id) return static_cast<int>(i) + 1;
    return -1;
}

void enter(QLineEdit& field, const QString& text) {
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, text);
    QTest::keyClick(&field, Qt::Key_Return);
}

std::string verdict(Workbench& bench, const char* id) {
    return bench.find<QLabel>(QStringLiteral("verdict.%1").arg(QLatin1String(id))).text().toStdString();
}

} // namespace

TEST_CASE(
    "A rule set is chosen with the mouse, its breaches are told in words, and undo brings the old one back",
    "[rules]") {
    Workbench bench;
    bench.choose_car("Swift");
    go_to_step(bench, Step::agree);
    const Document before = bench.session.document();
    auto& sets = bench.find<QComboBox>(QStringLiteral("rules.sets"));
    CHECK(sets.currentIndex() == 0);
    CHECK_THAT(sets.currentText().toStdString(), Contains("own"));
    choose_by_mouse(sets, set_index("first-timers"));
    CHECK(bench.session.project().rules.set == "first-timers");
    CHECK(sets.currentIndex() == set_index("first-timers"));
    CHECK_THAT(verdict(bench, "allow/raised_wheel"), StartsWith("breaks the rule: front"));
    CHECK_THAT(verdict(bench, "max_length_mm"), StartsWith("passes"));
    CHECK_THAT(verdict(bench, "allow/loose_weights"), StartsWith("look at it yourself. Shake"));
    CHECK_THAT(bench.text("rules.counts").toStdString(), Contains("breaks the rule:"));
    CHECK_THAT(bench.text("rules.decides").toStdString(), Contains("the inspector decide"));
    // Each verdict is on its field for those who hear the window.
    CHECK_THAT(bench.find<QComboBox>(QStringLiteral("/rules/allow/raised_wheel"))
                   .accessibleDescription()
                   .toStdString(),
               StartsWith("breaks the rule"));
    CHECK(bench.session.history().count() == 1);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
    CHECK(sets.currentIndex() == 0);
}

TEST_CASE("Everything of the rules by keyboard: a set, a limit, a permission, a date, a house rule",
          "[rules]") {
    Workbench bench;
    bench.choose_car("Bittern");
    go_to_step(bench, Step::agree);
    choose_by_keys(bench.find<QComboBox>(QStringLiteral("rules.sets")), set_index("free-class"));
    CHECK(bench.session.project().rules.set == "free-class");

    auto& length = bench.find<ValueField>(QStringLiteral("/rules/max_length_mm"));
    enter(length, QStringLiteral("7 in"));
    // The international inch, by definition.
    CHECK(*bench.session.project().rules.max_length == Approx(0.1778).epsilon(1e-12));
    // 178 mm of wood are two tenths of a millimetre too long.
    CHECK_THAT(verdict(bench, "max_length_mm"), StartsWith("breaks the rule: 178"));
    CHECK_THAT(bench.find<QComboBox>(QStringLiteral("rules.sets")).currentText().toStdString(),
               Contains("changed"));
    bool listed = false;
    for (const Finding& finding : bench.session.figures()->findings)
        listed = listed || (finding.code == "rule-breach" && finding.where == "/rules/max_length_mm");
    CHECK(listed);
    enter(length, QStringLiteral("178.2"));
    CHECK_THAT(verdict(bench, "max_length_mm"), StartsWith("passes narrowly"));
    enter(length, QStringLiteral("180"));
    CHECK_THAT(verdict(bench, "max_length_mm"), StartsWith("passes: "));

    enter(bench.find<ValueField>(QStringLiteral("/rules/wheelbase_mm/min")), QStringLiteral("4 1/2 in"));
    CHECK(*bench.session.project().rules.wheelbase.min == Approx(0.1143).epsilon(1e-12));
    CHECK_THAT(verdict(bench, "wheelbase_mm/min"), StartsWith("breaks the rule: 111"));

    choose_by_keys(bench.find<QComboBox>(QStringLiteral("/rules/allow/magnets")), 1);
    CHECK(bench.session.project().rules.allow.at("magnets"));
    CHECK_THAT(verdict(bench, "allow/magnets"), StartsWith("passes"));
    choose_by_keys(bench.find<QComboBox>(QStringLiteral("/rules/wheels_touching")), 2);
    CHECK(bench.session.project().rules.wheels_touching == 4);

    auto& date = bench.find<QLineEdit>(QStringLiteral("/rules/built_after"));
    enter(date, QStringLiteral("next week"));
    CHECK(bench.session.project().rules.built_after.empty());
    CHECK(date.text() == QStringLiteral("next week"));
    enter(date, QStringLiteral("2026-09-01"));
    CHECK(bench.session.project().rules.built_after == "2026-09-01");
    CHECK_THAT(verdict(bench, "built_after"), StartsWith("look at it yourself"));

    enter(bench.find<QLineEdit>(QStringLiteral("/rules/lubricants")), QStringLiteral("graphite, wax"));
    CHECK(bench.session.project().rules.lubricants->size() == 2);

    auto& add = bench.find<QPushButton>(QStringLiteral("rules.house.add"));
    add.setFocus();
    QTest::keyClick(&add, Qt::Key_Space);
    REQUIRE(bench.session.project().rules.house.size() == 1);
    enter(bench.find<QLineEdit>(QStringLiteral("/rules/house/0/text")),
          QStringLiteral("A smile at the start"));
    CHECK(bench.session.project().rules.house[0].text == "A smile at the start");
    auto& strike = bench.find<QToolButton>(QStringLiteral("rules.house.0.remove"));
    strike.setFocus();
    QTest::keyClick(&strike, Qt::Key_Space);
    CHECK(bench.session.project().rules.house.empty());
}

TEST_CASE("A rule follows the car while it is changed, and each car has its own verdicts", "[rules]") {
    Workbench bench;
    go_to_step(bench, Step::agree);
    choose_by_keys(bench.find<QComboBox>(QStringLiteral("rules.sets")), set_index("first-timers"));
    bench.choose_car("Bittern");
    CHECK_THAT(verdict(bench, "allow/raised_wheel"), StartsWith("passes"));
    bench.session.apply(
        set_touching(bench.session.document(), bench.session.car(), Corner::front_left, false));
    CHECK_THAT(verdict(bench, "allow/raised_wheel"), StartsWith("breaks the rule: front left"));
    bench.choose_car("Wagtail");
    CHECK_THAT(verdict(bench, "allow/canted_wheels"), StartsWith("breaks the rule: rear left"));
}

TEST_CASE("What the scales say follows the division and the worse scale", "[rules]") {
    Workbench bench;
    go_to_step(bench, Step::agree);
    const auto words = [&] { return bench.text("scale.words.agree").toStdString(); };
    CHECK_THAT(words(), Contains("steps of 0.1 g, rounded to the nearest"));
    enter(bench.find<ValueField>(QStringLiteral("/scale/division_g")), QStringLiteral("1 g"));
    CHECK_THAT(words(), Contains("steps of 1 g"));
    choose_by_keys(bench.find<QComboBox>(QStringLiteral("scale.reads")), 1);
    CHECK(bench.session.project().scale.rounds_down);
    CHECK_THAT(words(), Contains("cut off"));
    enter(bench.find<ValueField>(QStringLiteral("/scale/worse/offset_g")), QStringLiteral("2"));
    CHECK(bench.session.project().worse_scale.offset == Approx(0.002));
    CHECK_THAT(words(), Contains("2 g too much"));
    enter(bench.find<ValueField>(QStringLiteral("/tools/pellet_diameter_mm")), QStringLiteral("4"));
    CHECK_THAT(words(), Contains("4 mm pellet"));
}

TEST_CASE("The weighed values are typed, the plan stands beside them, and the advice is read", "[rules]") {
    Workbench bench;
    bench.choose_car("Wagtail");
    go_to_step(bench, Step::paper);
    const Document before = bench.session.document();
    CHECK_THAT(bench.text("built.advice").toStdString(), Contains("Weigh the car"));
    auto& whole = bench.find<QLineEdit>(QStringLiteral("readings.whole"));
    for (const char* reading : {"143.1", "143.2 g", "143,0"})
        enter(whole, QLatin1String(reading));
    CHECK(bench.session.plan().readings.whole.size() == 3);
    CHECK(*bench.session.plan().as_built.mass == Approx(0.1431).epsilon(1e-9));
    CHECK_THAT(bench.text("readings.whole.mean").toStdString(), Contains("apart"));
    CHECK(value_of(bench.text("built.mass_g"), Quantity::mass) == Approx(0.1431).margin(6e-5));
    // Above what the race's scale may show by 1.4 g; where, nobody can tell yet.
    CHECK_THAT(bench.text("built.advice").toStdString(),
               StartsWith("Take 1.4 g") && Contains("Weigh the front"));
    auto& front = bench.find<QLineEdit>(QStringLiteral("readings.front"));
    enter(front, QStringLiteral("30.3"));
    CHECK_THAT(bench.text("built.advice").toStdString(),
               StartsWith("Take 1.4 g") && Contains("off, ") && !Contains("Weigh the front"));
    // What is no reading is refused and stays; the measured car keeps its values.
    enter(front, QStringLiteral("heavy"));
    CHECK(front.text() == QStringLiteral("heavy"));
    CHECK(bench.session.plan().readings.front.size() == 1);
    front.clear();
    // A reading is taken back with the keyboard.
    auto& chip = bench.find<QPushButton>(QStringLiteral("readings.whole.1"));
    chip.setFocus();
    QTest::keyClick(&chip, Qt::Key_Space);
    CHECK(bench.session.plan().readings.whole.size() == 2);
    CHECK(*bench.session.plan().as_built.mass == Approx(0.14305).epsilon(1e-9));
    while (bench.session.history().canUndo())
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
}

TEST_CASE("Values from the paper sheet are typed back without weighings", "[rules]") {
    Workbench bench;
    go_to_step(bench, Step::paper);
    enter(bench.find<ValueField>(QStringLiteral("@/as_built/mass_g")), QStringLiteral("5 oz"));
    enter(bench.find<ValueField>(QStringLiteral("@/as_built/balance_ahead_of_rear_axle_mm")),
          QStringLiteral("1 in"));
    CHECK(*bench.session.plan().as_built.mass == Approx(0.141747615625).epsilon(1e-9));
    CHECK(value_of(bench.text("built.balance_ahead_of_rear_axle_mm"), Quantity::length) ==
          Approx(0.0254).margin(6e-5));
}
