#include "plots/mark_plot.hpp"
#include "support/bench.hpp"

#include <rampwright/bench/wheel_table.hpp>
#include <rampwright/car/car_model.hpp>

#include <QAbstractSpinBox>
#include <QApplication>
#include <QChart>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QHelpEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScatterSeries>
#include <QTabBar>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QToolTip>
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

    // A slip of the pen in the first line is a reading spoilt, not a heading to pass over.
    const QString first = QStringLiteral("O;%1\n").arg(200.0), others = rows.section(QLatin1Char('\n'), 2);
    readings.setPlainText(first + others);
    CHECK_FALSE(put.isEnabled());
    CHECK(bench.text("spindown.result").contains(QStringLiteral("O;200")));
    readings.setPlainText(QStringLiteral("0;200\n") + others);
    CHECK(put.isEnabled());
    CHECK(plot.marks(0).count() == 8);

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

TEST_CASE("Wheels drawn: marks have names that cover nothing, words on request and for a reader", "[roll]") {
    Workbench bench;
    std::vector<BenchWheel> wheels(30);
    for (std::size_t i = 0; i < wheels.size(); ++i) {
        wheels[i].name = "W" + std::to_string(i + 1);
        wheels[i].mould = "7";
        // A crowd in the middle: not all of its names can stand beside it.
        wheels[i].mass = 2.6e-3 + 1e-7 * static_cast<double>(i % 5);
        wheels[i].diameter = 30e-3 + 1e-7 * static_cast<double>(i % 7);
    }
    wheels[29].mass = 3.4e-3;
    wheels[29].diameter = 30.4e-3;
    bench.session.apply(set_bench_wheels(bench.session.document(), wheels));
    choose_view(bench, Step::roll, "Wheels Drawn");
    bench.find<QComboBox>(QStringLiteral("wheelplot.across")).setCurrentIndex(2);
    QApplication::processEvents();
    auto& plot = *dynamic_cast<MarkPlot*>(&bench.find<QWidget>(QStringLiteral("wheelplot.plot")));
    const auto placed = plot.placed_labels();
    REQUIRE(placed.size() > 1);
    CHECK(placed.size() < wheels.size());
    CHECK(placed.front().text == QStringLiteral("W30, odd"));
    for (std::size_t i = 0; i < placed.size(); ++i) {
        for (std::size_t j = 0; j < i; ++j)
            CHECK_FALSE(placed[i].where.intersects(placed[j].where));
        for (std::size_t kind = 0; kind < 3; ++kind)
            for (const QPointF& point : plot.marks(kind).points()) {
                auto* series = const_cast<QScatterSeries*>(&plot.marks(kind));
                CHECK_FALSE(placed[i].where.contains(plot.chart()->mapToPosition(point, series)));
            }
    }
    // All are told, those without room beside them too.
    for (const BenchWheel& wheel : wheels)
        CHECK(plot.accessibleDescription().contains(
            QStringLiteral("wheel %1,").arg(QString::fromStdString(wheel.name))));
    CHECK(plot.accessibleDescription().contains(QStringLiteral("to take")));
    auto* odd = const_cast<QScatterSeries*>(&plot.marks(1));
    const QPoint at = plot.chart()->mapToPosition(odd->at(0), odd).toPoint();
    QHelpEvent help(QEvent::ToolTip, at, plot.viewport()->mapToGlobal(at));
    QApplication::sendEvent(plot.viewport(), &help);
    CHECK(QToolTip::text().contains(QStringLiteral("wheel W30, mould mark 7")));
    CHECK(QToolTip::text().contains(QStringLiteral("odd")));
}

TEST_CASE("Pendulum and spin-down: what was typed is kept wheel by wheel, through undo, file and reopening",
          "[roll]") {
    QTemporaryDir folder;
    const std::string path = folder.filePath(QStringLiteral("race.ramp.json")).toStdString();
    const auto text_of = [](Workbench& bench, const char* name) {
        return bench.find<QLineEdit>(QLatin1String(name)).text();
    };
    {
        Workbench bench;
        choose_view(bench, Step::roll, "Pendulum");
        auto& of = bench.find<QComboBox>(QStringLiteral("pendulum.of"));
        REQUIRE(of.count() == 11); // ten in the demo's table and one that is not in it
        const int steps = bench.session.history().count();
        type(bench, "pendulum.time", QStringLiteral("31.4 s"));
        CHECK(bench.session.history().count() == steps + 1);
        CHECK(bench.session.project().pendulum.value().time.value().value == Approx(31.4));
        type(bench, "pendulum.length", QStringLiteral("400 mm"));
        of.setCurrentIndex(3);
        CHECK(text_of(bench, "pendulum.time").isEmpty());
        CHECK(text_of(bench, "pendulum.length") == QStringLiteral("400 mm")); // the same wires
        CHECK(text_of(bench, "pendulum.mass") == QStringLiteral("2.55 g"));   // the table's own
        type(bench, "pendulum.time", QStringLiteral("29.9 s"));
        CHECK(bench.session.project().bench_wheels[2].pendulum.value().time.value().value == Approx(29.9));
        of.setCurrentIndex(0);
        CHECK(text_of(bench, "pendulum.time") == QStringLiteral("31.4 s"));
        bench.session.history().undo(); // wheel 3's time
        CHECK_FALSE(bench.session.project().bench_wheels[2].pendulum);
        CHECK(text_of(bench, "pendulum.time") == QStringLiteral("31.4 s"));
        bench.session.history().undo();
        bench.session.history().undo();
        CHECK(text_of(bench, "pendulum.time").isEmpty());
        for (int redo = 0; redo < 3; ++redo)
            bench.session.history().redo();

        choose_view(bench, Step::roll, "Spin-Down");
        bench.find<QComboBox>(QStringLiteral("spindown.of")).setCurrentIndex(5);
        auto& readings = bench.find<QPlainTextEdit>(QStringLiteral("spindown.readings"));
        readings.setPlainText(QStringLiteral("s; rpm\n0; 1900\n2; 1710\n4; 1525\n6; 1345\n8; 11"));
        const int typed = bench.session.history().count();
        readings.setFocus();
        readings.moveCursor(QTextCursor::End);
        QTest::keyClicks(&readings, QStringLiteral("70"));
        // One visit of the text is one step, and what stands there stays as it was typed.
        CHECK(bench.session.history().count() == typed + 1);
        CHECK(readings.toPlainText().startsWith(QStringLiteral("s; rpm")));
        CHECK(bench.session.project().bench_wheels[4].spin_down.value().readings.size() == 5);
        bench.session.save(path);
    }
    Workbench again(path);
    choose_view(again, Step::roll, "Pendulum");
    CHECK(text_of(again, "pendulum.time") == QStringLiteral("31.4 s"));
    again.find<QComboBox>(QStringLiteral("pendulum.of")).setCurrentIndex(3);
    CHECK(text_of(again, "pendulum.time") == QStringLiteral("29.9 s"));
    CHECK(again.find<QPushButton>(QStringLiteral("pendulum.put")).isEnabled());
    choose_view(again, Step::roll, "Spin-Down");
    auto& readings = again.find<QPlainTextEdit>(QStringLiteral("spindown.readings"));
    CHECK(readings.toPlainText().isEmpty());
    again.find<QComboBox>(QStringLiteral("spindown.of")).setCurrentIndex(5);
    CHECK(readings.toPlainText().endsWith(QStringLiteral("8  1170")));
    CHECK(again.find<QPushButton>(QStringLiteral("spindown.put")).isEnabled());
    CHECK_FALSE(again.session.has_unsaved_work()); // looking changes nothing
}

TEST_CASE("Axle bench: typed, pasted, added and removed, each one undo step, grouped anew", "[roll]") {
    Workbench bench;
    choose_view(bench, Step::roll, "Axle Bench");
    auto& table = bench.find<QTableWidget>(QStringLiteral("axles.table"));
    const auto axles = [&]() -> const std::vector<BenchAxle>& { return bench.session.project().bench_axles; };
    const std::size_t before = axles().size();
    const Document start = bench.session.document();
    REQUIRE(static_cast<std::size_t>(table.rowCount()) == before);
    const auto row_of = [&](const QString& name) {
        for (int row = 0; row < table.rowCount(); ++row)
            if (table.item(row, 0)->text() == name) return row;
        FAIL("no axle " << name.toStdString());
        return -1;
    };
    QApplication::clipboard()->setText(QStringLiteral("axle;finish;diameter (mm);bow (mm)\n"
                                                      "P1;fine;2,20;0\nP2;fine;2,205;0,01\n"
                                                      "P3;fine;2,21;0,02\nP4;fine;2,20;much\n"));
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("axles.paste")), Qt::LeftButton);
    REQUIRE(axles().size() == before + 4);
    CHECK(bench.text("axles.trouble").contains(QStringLiteral("much")));
    CHECK(table.item(row_of(QStringLiteral("P1")), 4)->text() ==
          table.item(row_of(QStringLiteral("P3")), 4)->text());
    CHECK(bench.text("axles.groups").contains(QStringLiteral("enough")));
    const auto group_of = [&](const QString& name) { return table.item(row_of(name), 4)->text(); };
    CHECK(group_of(QStringLiteral("P4")).contains(QStringLiteral("not measured")));

    // A bow typed in any unit moves it to the bowed ones.
    const int steps = bench.session.history().count();
    table.item(row_of(QStringLiteral("P4")), 3)->setText(QStringLiteral("0.01 in"));
    CHECK(bench.session.history().count() == steps + 1);
    CHECK(axles()[before + 3].bow.value_or(0) == Approx(0.254e-3));
    CHECK(group_of(QStringLiteral("P4")).contains(QStringLiteral("bowed")));
    table.item(row_of(QStringLiteral("P2")), 2)->setText(QStringLiteral("thick"));
    CHECK_FALSE(bench.text("axles.trouble").isEmpty());
    CHECK(bench.session.history().count() == steps + 1);
    table.item(row_of(QStringLiteral("P2")), 1)->setText(QStringLiteral("polished twice"));
    CHECK(axles()[before + 1].finish == "polished twice");

    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("axles.add")), Qt::LeftButton);
    CHECK(axles().size() == before + 5);
    QTest::mouseClick(&bench.find<QPushButton>(QStringLiteral("axles.remove")),
                      Qt::LeftButton); // the one added
    CHECK(axles().size() == before + 4);
    CHECK(axles().back().name == "P4");
    while (bench.session.history().canUndo())
        bench.session.history().undo();
    CHECK(bench.session.document() == start);
    CHECK(static_cast<std::size_t>(table.rowCount()) == before);
}

TEST_CASE("Every field of the roll and aim forms says what it is on request", "[roll][aim]") {
    Workbench bench;
    bench.choose_car("Swift");
    for (const auto& [step, view] : {std::pair{Step::roll, "Wheel Bench"},
                                     {Step::roll, "Wheels Drawn"},
                                     {Step::roll, "Axle Bench"},
                                     {Step::roll, "Pendulum"},
                                     {Step::roll, "Spin-Down"},
                                     {Step::aim, "Drift Board"},
                                     {Step::aim, "Steer and Time"},
                                     {Step::aim, "Cant"}}) {
        choose_view(bench, step, view);
        for (QWidget* widget : bench.window->findChildren<QWidget*>()) {
            const bool field = qobject_cast<QLineEdit*>(widget) || qobject_cast<QComboBox*>(widget) ||
                               qobject_cast<QPlainTextEdit*>(widget) || qobject_cast<QCheckBox*>(widget) ||
                               qobject_cast<QAbstractSpinBox*>(widget) || qobject_cast<QTableWidget*>(widget);
            if (!field || !widget->isVisible()) continue;
            // The inside of a spin box or an editable box answers with its whole.
            const auto* part = qobject_cast<QAbstractSpinBox*>(widget->parentWidget());
            INFO(view << ": " << widget->objectName().toStdString() << " "
                      << widget->accessibleName().toStdString());
            CHECK((part || !widget->whatsThis().isEmpty()));
        }
    }
}
