// The block's wood, as it comes from the yard and as the scale finds it.
#include "fields/value_field.hpp"
#include "support/bench.hpp"

#include <rampwright/materials/materials.hpp>
#include <rampwright/materials/moisture.hpp>

#include <QComboBox>
#include <QTest>
#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

TEST_CASE("Another wood is chosen on the slip: its range is shown, the weighed block wins", "[wood]") {
    Workbench bench;
    go_to_step(bench, 1);
    const std::string before = to_text(bench.session.document());
    auto& kind = bench.find<QComboBox>(QStringLiteral("wood.kind"));
    const Wood& last = woods().back();
    kind.setFocus();
    QTest::keyClick(&kind, Qt::Key_End);
    const auto body = [&]() -> const BodyPlan& { return bench.session.plan().body; };
    CHECK(body().wood == last.id);
    CHECK(body().density == Approx(last.density.value));
    CHECK(bench.text("wood.range")
              .contains(QString::number(std::round(last.density.value - last.density.sigma))));
    CHECK(bench.text("wood.range")
              .contains(QString::number(std::round(last.density.value + last.density.sigma))));

    // A board from a damp shed, by the handbook's formula.
    type_into(bench.find<ValueField>(QStringLiteral("@/body/moisture_pct")), QStringLiteral("18 %"));
    CHECK(body().density == Approx(density_at_moisture(last.density.value, 0.12, 0.18)));
    CHECK(body().density > last.density.value);

    type_into(bench.find<ValueField>(QStringLiteral("@/body/block_mass_g")), QStringLiteral("100 g"));
    CHECK(body().density == Approx(0.1 / (0.178 * 0.044 * 0.032)));
    CHECK(bench.text("wood.range").contains(QStringLiteral("weighed")));
    while (bench.session.history().canUndo())
        QTest::keyClick(bench.window.get(), Qt::Key_Z, Qt::ControlModifier);
    CHECK(to_text(bench.session.document()) == before);
}
