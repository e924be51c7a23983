// Pockets and bores drawn by hand. Bittern's wood is 178 mm by 44 mm, 16 mm high; all removed volumes are
// boxes, cylinders and cones worked out here.
#include "fields/value_field.hpp"
#include "support/bench.hpp"

#include <QAction>
#include <QComboBox>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <catch2/catch.hpp>

#include <cmath>
#include <fstream>
#include <numbers>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

constexpr int shape_step = 1, load_step = 3;

const CutPlan& last_cut(Workbench& bench) {
    return bench.session.plan().body.cuts.back();
}

void take_tool(Workbench& bench, const char* name) {
    QTest::mouseClick(&bench.find<QPushButton>(QLatin1String(name)), Qt::LeftButton);
}

/// Wood taken away since, mm³, from the figures on screen and the car's own density.
double removed_mm3(Workbench& bench, double wood_before) {
    return (wood_before - bench.session.figures()->body_mass) / bench.session.plan().body.density * 1e9;
}

bool is_box(const CutPlan& cut, const Vec3& low, const Vec3& high) {
    return (cut.from.cwiseMin(cut.to) * 1e3 - low).norm() < 1e-6 &&
           (cut.from.cwiseMax(cut.to) * 1e3 - high).norm() < 1e-6;
}

} // namespace

TEST_CASE("A pocket is dragged in any view; its depth is 10 mm from above and from the front, through from "
          "the side",
          "[cuts]") {
    Workbench bench;
    go_to_step(bench, shape_step);
    const std::string before = to_text(bench.session.document());
    const double wood = bench.session.figures()->body_mass;
    struct Row {
        View view;
        QPointF one, other;
        Vec3 low, high;
        double removed; // mm³
    };
    for (const Row& row : {Row{View::top, {90, -10}, {110, 10}, {90, -10, 6}, {110, 10, 17}, 20. * 20 * 10},
                           Row{View::side, {90, 12}, {110, 4}, {90, -23, 4}, {110, 23, 12}, 20. * 44 * 8},
                           Row{View::front, {-5, 9}, {5, 13}, {168, -5, 9}, {179, 5, 13}, 10. * 10 * 4}}) {
        INFO(index(row.view));
        take_tool(bench, "tool.pocket");
        CHECK(bench.drawing().tool() == Tool::pocket);
        const QPoint from = pixel_of(bench, row.view, row.one.x(), row.one.y());
        drag(bench.drawing(), from, pixel_of(bench, row.view, row.other.x(), row.other.y()), {}, [&] {
            CHECK(bench.session.history().index() == 0);
            CHECK(bench.session.figures()->body_mass < wood); // live, before the hand lets go
        });
        REQUIRE(bench.session.plan().body.cuts.size() == 2);
        CHECK(is_box(last_cut(bench), row.low, row.high));
        CHECK(last_cut(bench).name == "pocket 1");
        CHECK(removed_mm3(bench, wood) == Approx(row.removed).epsilon(1e-6));
        CHECK(bench.drawing().selected() == Target{TargetKind::cut, 1, 0});
        CHECK(bench.drawing().tool() == Tool::pick);
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
        CHECK(to_text(bench.session.document()) == before);
    }
}

TEST_CASE("A pocket leaves 3 mm under it where the wood is thin, and goes through what is thinner",
          "[cuts]") {
    Workbench bench;
    bench.choose_car("Swift"); // 10 mm high at the tail, 5 mm at the nose
    go_to_step(bench, shape_step);
    take_tool(bench, "tool.pocket");
    drag(bench.drawing(), pixel_of(bench, View::top, 40, -5), pixel_of(bench, View::top, 50, 5));
    CHECK(last_cut(bench).from.z() == Approx(3e-3).margin(1e-9));
    // The smooth top edge bulges a little above its points at 10 mm; the cut starts 1 mm above it.
    CHECK(last_cut(bench).to.z() > 11e-3);
    CHECK(last_cut(bench).to.z() < 11.5e-3);
    type_into(bench.find<ValueField>(QStringLiteral("cut.to.2")), QStringLiteral("12"));
    CHECK(last_cut(bench).to.z() == Approx(12e-3));
}

TEST_CASE("A bore runs from press to release, its bit the first the person owns, or another", "[cuts]") {
    Workbench bench;
    go_to_step(bench, shape_step);
    const double wood = bench.session.figures()->body_mass;
    auto& bits = bench.find<QComboBox>(QStringLiteral("tool.drill"));
    const auto& owned = bench.session.project().tools.drill_bits;
    REQUIRE(static_cast<std::size_t>(bits.count()) == owned.size());
    take_tool(bench, "tool.bore");
    drag(bench.drawing(), pixel_of(bench, View::side, 178, 8), pixel_of(bench, View::side, 150, 8));
    REQUIRE(bench.session.plan().body.cuts.size() == 2);
    CHECK(last_cut(bench).is_bore);
    CHECK(last_cut(bench).diameter == Approx(owned.front()));
    CHECK((last_cut(bench).from * 1e3).isApprox(Vec3(178, 0, 8)));
    CHECK((last_cut(bench).to * 1e3).isApprox(Vec3(150, 0, 8)));
    // A cylinder and the cone of a 118° point, (d/2) / tan 59° long.
    const auto drilled = [](double d, double length) {
        const double r = d / 2, area = std::numbers::pi * r * r;
        return area * length + area * r / std::tan(59 * std::numbers::pi / 180) / 3;
    };
    CHECK(removed_mm3(bench, wood) == Approx(drilled(2.2, 28)).epsilon(1e-5));
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);

    // The bit of 8 mm, by the keyboard; then one that is typed.
    bits.setFocus();
    QTest::keyClick(&bits, Qt::Key_Down);
    QTest::keyClick(&bits, Qt::Key_Down);
    QTest::keyClick(&bits, Qt::Key_Down);
    CHECK(bench.drawing().drill() == Approx(8e-3));
    take_tool(bench, "tool.bore");
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::top, 105, 4));
    REQUIRE(bench.session.plan().body.cuts.size() == 2);
    CHECK((last_cut(bench).from * 1e3).isApprox(Vec3(105, 4, 17)));
    CHECK((last_cut(bench).to * 1e3).isApprox(Vec3(105, 4, 6)));
    CHECK(last_cut(bench).pointed);
    CHECK(removed_mm3(bench, wood) == Approx(drilled(8, 10)).epsilon(1e-5));
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);

    bits.lineEdit()->selectAll();
    type_into(*bits.lineEdit(), QStringLiteral("1/4 in"));
    CHECK(bench.drawing().drill() == Approx(6.35e-3));
    take_tool(bench, "tool.bore");
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 100, 8));
    CHECK((last_cut(bench).from * 1e3).isApprox(Vec3(100, -23, 8)));
    CHECK((last_cut(bench).to * 1e3).isApprox(Vec3(100, 23, 8)));
    CHECK_FALSE(last_cut(bench).pointed);
    CHECK(removed_mm3(bench, wood) == Approx(std::numbers::pi / 4 * 6.35 * 6.35 * 44).epsilon(1e-5));
    type_into(*bits.lineEdit(), QStringLiteral("thick"));
    CHECK(bench.drawing().drill() == Approx(6.35e-3));
}

TEST_CASE("Escape leaves a tool, also in the middle of a cut", "[cuts]") {
    Workbench bench;
    go_to_step(bench, shape_step);
    const Document before = bench.session.document();
    take_tool(bench, "tool.pocket");
    QTest::keyClick(&bench.drawing(), Qt::Key_Escape);
    CHECK(bench.drawing().tool() == Tool::pick);
    CHECK_FALSE(bench.find<QPushButton>(QStringLiteral("tool.pocket")).isChecked());
    take_tool(bench, "tool.bore");
    drag(bench.drawing(), pixel_of(bench, View::top, 90, 0), pixel_of(bench, View::top, 120, 0), {}, [&] {
        CHECK(bench.session.plan().body.cuts.size() == 2);
        QTest::keyClick(&bench.drawing(), Qt::Key_Escape);
    });
    CHECK(bench.session.document() == before);
    CHECK(bench.session.history().count() == 0);
    // A click with the pocket tool draws nothing and says what to do.
    take_tool(bench, "tool.pocket");
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::top, 100, 0));
    CHECK(bench.session.document() == before);
    CHECK(status_of(bench).contains(QStringLiteral("corner to corner")));
}

TEST_CASE("Cuts are made, chosen and changed without a mouse", "[cuts]") {
    Workbench bench;
    go_to_step(bench, load_step);
    const double wood = bench.session.figures()->body_mass;
    QTest::keyClick(bench.window.get(), Qt::Key_B, Qt::ControlModifier); // brings the step with it
    CHECK(bench.drawing().tool() == Tool::bore);
    CHECK(bench.drawing().hasFocus());
    QTest::keyClick(&bench.drawing(), Qt::Key_Return);
    REQUIRE(bench.session.plan().body.cuts.size() == 2);
    CHECK(last_cut(bench).is_bore);
    // Midway between the axles at 22 mm and 133 mm.
    CHECK(last_cut(bench).from.x() == Approx(77.5e-3));
    const auto field = [&](const char* name) -> ValueField& {
        return bench.find<ValueField>(QLatin1String(name));
    };
    type_into(field("cut.from.0"), QStringLiteral("120"));
    type_into(field("cut.to.0"), QStringLiteral("4 3/4 in - 0.65 mm"));
    type_into(field("cut.from.1"), QStringLiteral("-10"));
    type_into(field("cut.to.1"), QStringLiteral("-10"));
    type_into(field("cut.diameter"), QStringLiteral("6"));
    CHECK(last_cut(bench).to.x() == Approx(120e-3));
    CHECK(last_cut(bench).diameter == Approx(6e-3));
    CHECK(last_cut(bench).pointed);
    auto& end = bench.find<QComboBox>(QStringLiteral("cut.end"));
    end.setFocus();
    QTest::keyClick(&end, Qt::Key_Up);
    CHECK_FALSE(last_cut(bench).pointed);
    CHECK(removed_mm3(bench, wood) == Approx(std::numbers::pi * 9 * 10).epsilon(1e-5));
    type_into(bench.find<QLineEdit>(QStringLiteral("cut.name")), QStringLiteral("peg hole"));
    CHECK(last_cut(bench).name == "peg hole");

    auto& duplicate = bench.find<QPushButton>(QStringLiteral("cut.duplicate"));
    duplicate.setFocus();
    QTest::keyClick(&duplicate, Qt::Key_Space);
    REQUIRE(bench.session.plan().body.cuts.size() == 3);
    CHECK(last_cut(bench).name == "bore 1");
    CHECK(last_cut(bench).from.x() == Approx(125e-3));
    // A name that another cut has is refused, and the cut keeps its own.
    type_into(bench.find<QLineEdit>(QStringLiteral("cut.name")), QStringLiteral("peg hole"));
    CHECK(last_cut(bench).name == "bore 1");
    QTest::keyClick(&bench.drawing(), Qt::Key_Delete);
    CHECK(bench.session.plan().body.cuts.size() == 2);

    QTest::keyClick(bench.window.get(), Qt::Key_K, Qt::ControlModifier);
    QTest::keyClick(&bench.drawing(), Qt::Key_Return);
    CHECK(is_box(last_cut(bench), {67.5, -10, 6}, {87.5, 10, 17}));
}

TEST_CASE("In inches, cuts keep to sixteenths and go 3/8 in deep", "[cuts]") {
    Workbench bench;
    go_to_step(bench, shape_step);
    for (QAction* action : bench.window->findChildren<QAction*>())
        if (action->text().startsWith(QStringLiteral("Inches"))) action->trigger();
    take_tool(bench, "tool.pocket");
    drag(bench.drawing(), pixel_of(bench, View::top, 91, -9.3), pixel_of(bench, View::top, 110, 9.3));
    // 91 mm are 57.3 sixteenths of an inch, 110 mm 69.3, 9.3 mm 5.9.
    const double sixteenth = 25.4 / 16;
    CHECK(is_box(last_cut(bench), {57 * sixteenth, -6 * sixteenth, 16 - 9.525},
                 {69 * sixteenth, 6 * sixteenth, 17}));
}

TEST_CASE("Drilled wood keeps its cuts, sawn wood its outline", "[cuts]") {
    QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("made.ramp.json")).toStdString();
    {
        Document document = load_document(demo_path);
        document.root["cars"][0]["done"] = {"sawn", "drilled"};
        std::ofstream(path) << to_text(document);
    }
    Workbench bench(path);
    go_to_step(bench, shape_step);
    const Document before = bench.session.document();
    take_tool(bench, "tool.pocket");
    CHECK(bench.drawing().tool() == Tool::pick);
    CHECK_FALSE(bench.find<QPushButton>(QStringLiteral("tool.pocket")).isChecked());
    CHECK(status_of(bench).contains(QStringLiteral("drilled")));
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 178, 16));
    QTest::keyClick(&bench.drawing(), Qt::Key_S);
    QTest::keyClick(&bench.drawing(), Qt::Key_Insert);
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    QTest::mouseDClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 90, 16));
    CHECK(bench.session.document() == before);
}
