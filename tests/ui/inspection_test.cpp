#include "drawing/rule_place.hpp"
#include "panels/agree_slip.hpp"
#include "panels/inspection_view.hpp"
#include "panels/rule_row.hpp"
#include "panels/step_ruler.hpp"
#include "panels/verdict_mark.hpp"
#include "support/bench.hpp"

#include <rampwright/rules/rule_kinds.hpp>

#include <QLabel>
#include <QTabBar>
#include <QTableWidget>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

QTableWidget& list_of(Workbench& bench) {
    return bench.find<QTableWidget>(QStringLiteral("inspection.list"));
}

int row_of(const Inspection& inspection, const std::string& code) {
    for (std::size_t i = 0; i < inspection.rows.size(); ++i)
        if (inspection.rows[i].code == code) return int(i);
    throw std::runtime_error("no rule " + code);
}

void click_row(QTableWidget& list, int row) {
    list.scrollToItem(list.item(row, 1));
    QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(list.item(row, 1)).center());
}

} // namespace

TEST_CASE("The inspection list is a page of the step Agree, rule by rule", "[rules]") {
    Workbench bench;
    choose_view(bench, Step::agree, "Inspection List");
    QTableWidget& list = list_of(bench);
    REQUIRE(list.isVisible());
    const Inspection inspection = *inspect_shown(bench.session);
    REQUIRE(list.rowCount() == int(inspection.rows.size()));
    const UnitSystem units = bench.session.project().units;
    for (int row = 0; row < list.rowCount(); ++row) {
        const InspectionRow& line = inspection.rows[std::size_t(row)];
        const auto cell = [&](int column) { return list.item(row, column)->text().toStdString(); };
        CAPTURE(line.code);
        CHECK(cell(0) == verdict_text(line.verdict).toStdString()); // a word beside the mark
        CHECK_FALSE(list.item(row, 0)->icon().isNull());
        CHECK(cell(1) == sentence_case(line.name).toStdString());
        CHECK(cell(2) == limit_text(line, units));
        CHECK(cell(3) == value_text(line, units));
        CHECK((cell(4) == margin_text(line, units) || (cell(4) == "–" && margin_text(line, units).empty())));
        CHECK(cell(5).starts_with(line.inspect));
        CHECK(cell(6) == line.source);
        // A screen reader hears the row whole.
        const QString said = list.item(row, 0)->data(Qt::AccessibleTextRole).toString();
        CHECK(said.contains(sentence_case(line.name)));
        CHECK(said.contains(verdict_text(line.verdict)));
    }
    CHECK(list.accessibleName() == QStringLiteral("Inspection list"));
    CHECK(bench.text("inspection.decides").contains(QStringLiteral("inspector decide")));
    CHECK(bench.text("inspection.title").contains(QStringLiteral("Harbour Hall race committee")));
    // It follows an edit, the car and the units.
    bench.session.apply(set_value(bench.session.document(), "/rules/max_length_mm", 150, "shorter"));
    const int length = row_of(*inspect_shown(bench.session), "max_length_mm");
    CHECK(list.item(length, 0)->text() == QStringLiteral("breaks the rule"));
    CHECK(list.item(length, 4)->text() == QStringLiteral("28.0 mm too much"));
    bench.session.apply(set_units(bench.session.document(), UnitSystem::inch_ounce));
    CHECK(list.item(length, 3)->text() == QStringLiteral("7.008 in"));
}

TEST_CASE("A row of the inspection list shows its place on the drawing", "[rules]") {
    Workbench bench;
    choose_view(bench, Step::agree, "Inspection List");
    QTableWidget& list = list_of(bench);
    const Inspection inspection = *inspect_shown(bench.session);
    const int wheelbase = row_of(inspection, "wheelbase_mm/min");
    click_row(list, wheelbase);
    CHECK(bench.drawing().isVisible());
    CHECK_FALSE(list.isVisible());
    CHECK(bench.find<QTabBar>(QStringLiteral("views")).currentIndex() == 0);
    auto place = bench.drawing().pointed_out();
    REQUIRE(place);
    CHECK(place->name == QStringLiteral("Wheelbase, least"));
    // From axle to axle, as the plan has them.
    const CarPlan& plan = bench.session.plan();
    CHECK(place->view == View::side);
    CHECK(place->box.left() == Approx(plan.axles.rear_x).margin(1e-9));
    CHECK(place->box.right() == Approx(plan.axles.front_x).margin(1e-9));
    // A hand on the drawing, or an edit, lets go of it.
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, {20, 20});
    CHECK_FALSE(bench.drawing().pointed_out());
    // The keyboard alone: to the list's row and Return.
    choose_view(bench, Step::agree, "Inspection List");
    list.setFocus();
    QTest::keyClick(&list, Qt::Key_Home, Qt::ControlModifier);
    for (int i = 0; i < row_of(inspection, "max_width_mm"); ++i)
        QTest::keyClick(&list, Qt::Key_Down);
    QTest::keyClick(&list, Qt::Key_Return);
    place = bench.drawing().pointed_out();
    REQUIRE(place);
    CHECK(place->name == QStringLiteral("Greatest width"));
    CHECK(bench.drawing().hasFocus());
    bench.choose_car("Wagtail");
    CHECK_FALSE(bench.drawing().pointed_out());
}

TEST_CASE("What no drawing shows is said on the list", "[rules]") {
    Workbench bench;
    bench.session.apply(
        set_value(bench.session.document(), "/rules/built_after", "2025-09-01", "new cars only"));
    choose_view(bench, Step::agree, "Inspection List");
    QTableWidget& list = list_of(bench);
    click_row(list, row_of(*inspect_shown(bench.session), "built_after"));
    CHECK(list.isVisible());
    CHECK(bench.text("inspection.said").contains(QStringLiteral("nothing on the drawing")));
}

TEST_CASE("Places of rules lie on the car", "[rules]") {
    Workbench bench;
    const CarExtent extent = bench.drawing().shape().extent();
    int placed = 0;
    for (const RuleKind& kind : rule_kinds()) {
        const auto place =
            find_rule_place(kind.id, bench.session.plan(), bench.drawing().shape(), *bench.session.figures());
        if (!place) continue;
        ++placed;
        CAPTURE(kind.id);
        constexpr double room = 12e-3; // axle heads stand out
        const QRectF car = QRectF(to_plane(place->view, extent.low), to_plane(place->view, extent.high))
                               .normalized()
                               .adjusted(-room, -room, room, room);
        CHECK(car.contains(place->box));
        CHECK(place->box.width() > 0);
        CHECK(place->box.height() > 0);
    }
    CHECK(placed > 25);
}
