#include "fields/value_field.hpp"
#include "support/bench.hpp"

#include <QInputDialog>
#include <QListWidget>
#include <QPushButton>
#include <QTabBar>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

QAction& action(Workbench& bench, const QString& text) {
    for (auto* each : bench.window->findChildren<QAction*>())
        if (each->text().remove(QLatin1Char('&')) == text) return *each;
    throw std::runtime_error("no action " + text.toStdString());
}

} // namespace

TEST_CASE(
    "A car is duplicated to try something, changed apart from the first, and one undo a step brings all back",
    "[cars]") {
    Workbench bench;
    const Document before = bench.session.document();
    auto& tabs = bench.find<QTabBar>(QStringLiteral("cars"));
    const int count = tabs.count();
    const QString time = bench.text("answer.time");
    QTest::keyClick(bench.window.get(), Qt::Key_D, Qt::ControlModifier);
    REQUIRE(tabs.count() == count + 1);
    CHECK(tabs.tabText(tabs.currentIndex()) == QStringLiteral("Bittern 2"));
    CHECK(bench.text("answer.time") == time);

    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    QTest::keyClick(&bench.drawing(), Qt::Key_Left, Qt::ShiftModifier);
    CHECK(bench.text("answer.time") != time);
    bench.choose_car("Bittern");
    CHECK(bench.text("answer.time") == time);

    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(bench.session.document() == before);
    CHECK(tabs.count() == count);
}

TEST_CASE("A car is renamed and removed", "[cars]") {
    Workbench bench;
    const Document before = bench.session.document();
    auto& tabs = bench.find<QTabBar>(QStringLiteral("cars"));
    bench.choose_car("Swift");
    with_dialog([&] { QTest::keyClick(bench.window.get(), Qt::Key_F2); },
                [](QDialog& dialog) {
                    auto& input = dynamic_cast<QInputDialog&>(dialog);
                    input.setTextValue(QStringLiteral("Dunlin"));
                    input.accept();
                });
    CHECK(tabs.tabText(tabs.currentIndex()) == QStringLiteral("Dunlin"));
    const int count = tabs.count();
    action(bench, QStringLiteral("Remove from the Project")).trigger();
    CHECK(tabs.count() == count - 1);
    while (tabs.count() > 1)
        action(bench, QStringLiteral("Remove from the Project")).trigger();
    CHECK_FALSE(action(bench, QStringLiteral("Remove from the Project")).isEnabled());
    while (bench.session.history().canUndo())
        bench.session.history().undo();
    CHECK(bench.session.document() == before);
}

TEST_CASE("Switching units a hundred times changes what is shown and nothing else", "[cars]") {
    Workbench bench;
    const Document before = bench.session.document();
    const QString metric = bench.text("answer.mass");
    auto& inches = action(bench, QStringLiteral("Inches and Ounces"));
    auto& millimetres = action(bench, QStringLiteral("Millimetres and Grams"));
    for (int i = 0; i < 50; ++i) {
        inches.trigger();
        CHECK(bench.text("answer.mass").endsWith(QStringLiteral(" oz")));
        millimetres.trigger();
    }
    CHECK(bench.text("answer.mass") == metric);
    CHECK(difference(before, bench.session.document()).empty());

    // 3/8 in is 9.525 mm by definition, and reads back as it was typed.
    inches.trigger();
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of_piece(bench, 0, View::side));
    auto& height = bench.find<ValueField>(QStringLiteral("ballast.at.2"));
    height.setFocus();
    height.selectAll();
    QTest::keyClicks(&height, QStringLiteral("3/8 in"));
    QTest::keyClick(&height, Qt::Key_Return);
    CHECK(height.text() == QStringLiteral("3/8 in"));
    CHECK(bench.session.plan().ballast.at(0).at.z() == Approx(9.525e-3).epsilon(1e-12));
}

TEST_CASE("A piece from the shelf is put in the car and weighs on it", "[cars]") {
    Workbench bench;
    const Document before = bench.session.document();
    const double mass = value_of(bench.text("answer.mass"), Quantity::mass);
    auto& shelf = bench.find<QListWidget>(QStringLiteral("shelf"));
    for (int row = 0; row < shelf.count(); ++row) {
        shelf.setCurrentRow(row);
        INFO(shelf.currentItem()->text().toStdString());
        const std::size_t count = bench.session.plan().ballast.size();
        QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("shelf.add")), Qt::LeftButton);
        REQUIRE(bench.session.plan().ballast.size() == count + 1);
        const double added = bench.session.project().shelf.at(static_cast<std::size_t>(row)).mass;
        CHECK(bench.session.plan().ballast.back().mass == Approx(added));
        CHECK(value_of(bench.text("answer.mass"), Quantity::mass) == Approx(mass + added).margin(0.11e-3));
        bench.session.history().undo();
        CHECK(bench.session.document() == before);
    }
    CHECK(shelf.count() >= 5);
}

TEST_CASE("An outline point is dragged in the step about wood, and a double click adds one", "[cars]") {
    Workbench bench;
    QTest::mouseClick(&bench.find<StepButton>(QStringLiteral("step.1")), Qt::LeftButton);
    const Document before = bench.session.document();
    const double mass = value_of(bench.text("answer.mass"), Quantity::mass);
    auto& drawing = bench.drawing();
    const auto& profile = bench.session.plan().body.profile;
    // The upper front corner of the block.
    std::size_t corner = 0;
    for (std::size_t i = 0; i < profile.size(); ++i)
        if (profile[i].at.sum() > profile[corner].at.sum()) corner = i;
    const Vec2 at = profile[corner].at;
    const auto pixel = [&](double x, double z) {
        return drawing.map().plane_to_pixel(View::side, {x, z}).toPoint();
    };
    drag(drawing, pixel(at.x(), at.y()), pixel(at.x(), at.y() - 0.006));
    CHECK(bench.session.plan().body.profile[corner].at.y() == Approx(at.y() - 0.006).margin(0.6e-3));
    CHECK(value_of(bench.text("answer.mass"), Quantity::mass) < mass);
    bench.session.history().undo();
    CHECK(bench.session.document() == before);

    const std::size_t count = bench.session.plan().body.profile.size();
    QTest::mouseDClick(&drawing, Qt::LeftButton, {}, pixel(0.1, at.y()));
    CHECK(bench.session.plan().body.profile.size() == count + 1);
    QTest::keyClick(&drawing, Qt::Key_Delete);
    CHECK(difference(before, bench.session.document()).empty());
}

TEST_CASE("A pocket is dragged by its middle and by its corner; the wood that is gone weighs nothing",
          "[cars]") {
    Workbench bench;
    QTest::mouseClick(&bench.find<StepButton>(QStringLiteral("step.1")), Qt::LeftButton);
    auto& drawing = bench.drawing();
    const CutPlan cut = bench.session.plan().body.cuts.at(0);
    const Vec3 low = cut.from.cwiseMin(cut.to), high = cut.from.cwiseMax(cut.to), middle = (low + high) / 2;
    const auto pixel = [&](const Vec3& at) { return drawing.map().to_pixel(View::top, at).toPoint(); };
    drag(drawing, pixel(middle), pixel(middle + Vec3(0.01, 0, 0)));
    CHECK(bench.session.plan().body.cuts.at(0).from.x() == Approx(cut.from.x() + 0.01).margin(0.6e-3));
    bench.session.history().undo();

    const double wood = bench.session.figures()->body_mass;
    drag(drawing, pixel(high), pixel(high + Vec3(0.01, 0.002, 0)));
    const CutPlan grown = bench.session.plan().body.cuts.at(0);
    CHECK(grown.from.cwiseMax(grown.to).x() == Approx(high.x() + 0.01).margin(0.6e-3));
    CHECK(grown.from.cwiseMin(grown.to).isApprox(low));
    CHECK(bench.session.figures()->body_mass < wood);
}
