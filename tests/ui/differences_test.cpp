#include "run/difference_table.hpp"
#include "support/bench.hpp"

#include <rampwright/project/edits.hpp>

#include <QComboBox>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

void open_race_page(Workbench& bench) {
    go_to_step(bench, static_cast<int>(Step::run));
    auto& tabs = bench.find<QTabBar>(QStringLiteral("run-sheet.tabs"));
    for (int i = 0; i < tabs.count(); ++i)
        if (tabs.tabText(i) == QStringLiteral("Two Cars, One Clock"))
            QTest::mouseClick(&tabs, Qt::LeftButton, {}, tabs.tabRect(i).center());
}

void choose_pair(Workbench& bench, int first, int second) {
    for (const auto& [name, row] : {std::pair{"versus.first", first}, {"versus.second", second}}) {
        auto& box = bench.find<QComboBox>(QLatin1String(name));
        box.setCurrentIndex(row);
        Q_EMIT box.activated(row);
    }
}

void wait_until_compared(DifferenceTable& table) {
    REQUIRE(QTest::qWaitFor([&] { return table.fresh(); }, 60000));
}

} // namespace

TEST_CASE("A duplicate with one change differs in one line, worth what the answers say", "[differences]") {
    Workbench bench;
    auto& session = bench.session;
    const QString time = bench.text("answer.time");
    QTest::keyClick(bench.window.get(), Qt::Key_D, Qt::ControlModifier);
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    QTest::keyClick(&bench.drawing(), Qt::Key_Left, Qt::ShiftModifier);
    REQUIRE(bench.text("answer.time") != time);
    const double second = session.figures()->heat.time.value();
    bench.choose_car("Bittern");
    const double first = session.figures()->heat.time.value();

    open_race_page(bench);
    choose_pair(bench, 0, 3);
    auto& panel = *bench.window->findChild<DifferenceTable*>();
    wait_until_compared(panel);
    auto& table = bench.find<QTableWidget>(QStringLiteral("differences"));
    REQUIRE(table.rowCount() == 1);
    CHECK(table.item(0, 0)->text() == QStringLiteral("tungsten bar 13: place"));
    CHECK(table.horizontalHeaderItem(1)->text() == QStringLiteral("Bittern"));
    CHECK(table.horizontalHeaderItem(2)->text() == QStringLiteral("Bittern 2"));
    CHECK(table.item(0, 1)->text() == QStringLiteral("58, 0, 11.5 mm"));
    CHECK(value_of(table.item(0, 3)->text(), Quantity::time) == Approx(second - first).margin(0.006e-3));
    CHECK(bench.text("differences.said").startsWith(QStringLiteral("Each alone adds up to")));

    // Taken back, nothing differs.
    session.history().undo();
    wait_until_compared(panel);
    CHECK(table.rowCount() == 0);
    CHECK(bench.text("differences.said").contains(QStringLiteral("differ in nothing")));
}

TEST_CASE("Two unlike cars are compared beside the window's own work", "[differences]") {
    Workbench bench;
    open_race_page(bench);
    auto& panel = *bench.window->findChild<DifferenceTable*>();
    choose_pair(bench, 0, 2);
    // The choice is made and the window free before the comparison is there.
    CHECK_FALSE(panel.fresh());
    REQUIRE(QTest::qWaitFor([&] { return panel.fresh(); }, 60000));
    auto& table = bench.find<QTableWidget>(QStringLiteral("differences"));
    CHECK(table.rowCount() > 3);
    for (int row = 0; row < table.rowCount(); ++row)
        for (int column = 0; column < 4; ++column)
            CHECK_FALSE(table.item(row, column)->text().isEmpty());
    // The sum and the whole are both said, and what lies between.
    CHECK(bench.text("differences.said").count(QStringLiteral(" ms")) == 3);
    // In the person's units.
    bench.session.apply(set_units(bench.session.document(), UnitSystem::inch_ounce));
    wait_until_compared(panel);
    bool inches = false;
    for (int row = 0; row < table.rowCount(); ++row)
        inches = inches || table.item(row, 1)->text().endsWith(QStringLiteral(" in"));
    CHECK(inches);
}
