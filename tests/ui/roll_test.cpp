#include "plots/mark_plot.hpp"
#include "support/bench.hpp"

#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/car/car_model.hpp>

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScatterSeries>
#include <QTabBar>
#include <QTest>
#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

void type(Workbench& bench, const char* name, const QString& text) {
    auto& field = bench.find<QLineEdit>(QLatin1String(name));
    field.setFocus();
    type_into(field, text);
}

} // namespace

TEST_CASE("Pendulum: swings typed in become a spin inertia with its doubt, put on the car in one step",
          "[roll]") {
    Workbench bench;
    bench.choose_car("Swift");
    choose_view(bench, Step::roll, "Pendulum");
    type(bench, "pendulum.mass", QStringLiteral("2.6 g"));
    type(bench, "pendulum.mass.sigma", QStringLiteral("0"));
    type(bench, "pendulum.spread", QStringLiteral("20 mm"));
    type(bench, "pendulum.spread.sigma", QStringLiteral("0"));
    type(bench, "pendulum.length", QStringLiteral("500 mm"));
    type(bench, "pendulum.length.sigma", QStringLiteral("0"));
    type(bench, "pendulum.swing", QStringLiteral("0 deg"));
    type(bench, "pendulum.time", QStringLiteral("31.4 s"));
    type(bench, "pendulum.time.sigma", QStringLiteral("0.157 s"));
    // Small swings of a bifilar pendulum, any textbook: I = m g r² T² / (4 pi² h), r half the spacing; only
    // the time is in doubt here, so the relative doubt of I is twice that of the time.
    const double period = 31.4 / 20, g = bench.session.project().track.gravity;
    const double pi = std::numbers::pi;
    const double expected = 2.6e-3 * g * 0.01 * 0.01 * period * period / (4 * pi * pi * 0.5);
    const QString text = bench.text("pendulum.result");
    INFO(text.toStdString());
    CHECK(text.contains(QStringLiteral("±")));
    CHECK(text.contains(QStringLiteral("the time")));
    const Document before = bench.session.document();
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("pendulum.put")), Qt::LeftButton);
    for (const WheelPlan& wheel : bench.session.plan().wheels)
        CHECK(wheel.spin_inertia.value_or(0) == Approx(expected).epsilon(1e-9));
    bench.session.history().undo();
    CHECK(bench.session.document() == before);

    const auto spin_before = bench.session.plan().wheels[std::size_t(all_corners[1])].spin_inertia;
    // Three wires: what is typed is the radius itself, so the same number means four times the inertia.
    bench.find<QComboBox>(QStringLiteral("pendulum.wires")).setCurrentIndex(1);
    bench.find<QComboBox>(QStringLiteral("pendulum.corner")).setCurrentIndex(1);
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("pendulum.put")), Qt::LeftButton);
    const auto& wheels = bench.session.plan().wheels;
    CHECK(wheels[std::size_t(all_corners[0])].spin_inertia.value_or(0) == Approx(4 * expected).epsilon(1e-9));
    CHECK(wheels[std::size_t(all_corners[1])].spin_inertia == spin_before);

    type(bench, "pendulum.time", QStringLiteral("3 furlongs"));
    CHECK_FALSE(bench.find<QPushButton>(QStringLiteral("pendulum.put")).isEnabled());
}

TEST_CASE("Spin-down: pasted readings give the friction that made them, put on the car in one step",
          "[roll]") {
    Workbench bench;
    bench.choose_car("Swift");
    choose_view(bench, Step::roll, "Spin-Down");
    auto& put = bench.find<QPushButton>(QStringLiteral("spindown.put"));
    CHECK_FALSE(put.isEnabled());
    bench.find<QCheckBox>(QStringLiteral("spindown.air")).setChecked(false);
    bench.find<QComboBox>(QStringLiteral("spindown.unit")).setCurrentIndex(2);
    type(bench, "spindown.inertia", QStringLiteral("320 g mm2"));
    type(bench, "spindown.mass", QStringLiteral("2.6 g"));
    type(bench, "spindown.bore", QStringLiteral("2.4 mm"));
    // Without air the speed falls evenly: torque = mu m g r (definition), here for mu = 0.12.
    const double g = bench.session.project().track.gravity;
    const double slowing = 0.12 * 2.6e-3 * g * 1.2e-3 / 320e-9;
    QString rows = QStringLiteral("time;speed\n");
    for (int t = 0; t < 8; ++t)
        rows += QStringLiteral("%1;%2\n").arg(t).arg(200 - slowing * t, 0, 'f', 9);
    auto& readings = bench.find<QPlainTextEdit>(QStringLiteral("spindown.readings"));
    readings.setPlainText(rows);
    INFO(bench.text("spindown.result").toStdString());
    CHECK(bench.text("spindown.result").contains(QStringLiteral("±")));
    const auto& plot = *dynamic_cast<MarkPlot*>(&bench.find<QWidget>(QStringLiteral("spindown.plot")));
    CHECK(plot.marks(0).count() == 8);
    REQUIRE(put.isEnabled());
    const Document before = bench.session.document();
    QTest::mouseClick(&put, Qt::LeftButton);
    const Model model = build_car(bench.session.project(), bench.session.car()).model;
    CHECK(model[ModelName::journal].value == Approx(0.12).epsilon(1e-6));
    CHECK(model[ModelName::journal].sigma > 0);
    bench.session.history().undo();
    CHECK(bench.session.document() == before);

    readings.setPlainText(rows + QStringLiteral("8;fast\n"));
    CHECK_FALSE(put.isEnabled());
    CHECK(bench.text("spindown.result").contains(QStringLiteral("fast")));
}

TEST_CASE("Wheels drawn: every measured wheel once, the four to take and the odd one by their marks",
          "[roll]") {
    Workbench bench;
    std::vector<BenchWheel> wheels(12);
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        wheels[i].name = std::to_string(i + 1);
        wheels[i].mass = 2.6e-3 + 1e-6 * static_cast<double>(i);
    }
    wheels[11].mass = 3.4e-3;
    bench.session.apply(set_bench_wheels(bench.session.document(), wheels));
    choose_view(bench, Step::roll, "Wheels Drawn");
    const auto& plot = *dynamic_cast<MarkPlot*>(&bench.find<QWidget>(QStringLiteral("wheelplot.plot")));
    CHECK(plot.marks(0).count() == 7);
    CHECK(plot.marks(1).count() == 1);
    CHECK(plot.marks(1).at(0).y() == Approx(3.4));
    CHECK(plot.marks(2).count() == 4);
    // No diameters were measured: nothing to draw, and it says so.
    bench.find<QComboBox>(QStringLiteral("wheelplot.across")).setCurrentIndex(2);
    CHECK(plot.marks(0).count() == 0);
    CHECK(bench.text("wheelplot.said").contains(QStringLiteral("12")));
}
