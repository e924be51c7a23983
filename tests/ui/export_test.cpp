#include "support/bench.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/templates/templates.hpp>

#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QStatusBar>
#include <QSvgRenderer>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

// The toolkit's reader of SVG is an independent one.
TEST_CASE("An SVG of the templates read back has the car's measures in millimetres", "[export]") {
    Workbench bench;
    const Project& project = bench.session.project();
    for (std::size_t i = 0; i < project.cars.size(); ++i) {
        INFO(project.cars[i].name);
        const CarModel car = build_car(project, i);
        const std::string svg = to_svg(project.cars[i], car);
        QSvgRenderer reader(QByteArray::fromStdString(svg));
        REQUIRE(reader.isValid());
        // Bounds include the line's own width.
        constexpr double line = 0.25, most = 0.05;
        const auto check = [&](const char* id, double width, double height) {
            INFO(id);
            REQUIRE(reader.elementExists(QLatin1String(id)));
            const QRectF box = reader.boundsOnElement(QLatin1String(id));
            CHECK(std::abs(box.width() - line - width) < most);
            CHECK(std::abs(box.height() - line - height) < most);
        };
        for (const TemplateView view : {TemplateView::side, TemplateView::top}) {
            const LineWork work = draw_template(project.cars[i], car, view);
            const Vec2 size = (work.high - work.low) / millimetre;
            check(view == TemplateView::side ? "side-outline" : "top-outline", size.x(), size.y());
        }
        CHECK(std::abs(reader.boundsOnElement(QStringLiteral("check-bar")).width() - 100) < line + most);
        // The demo's blocks are 178 mm long; its axles stand where the file has them.
        const QRectF side = reader.boundsOnElement(QStringLiteral("side-outline"));
        const QRectF holes = reader.boundsOnElement(QStringLiteral("side-holes"));
        const AxlePlan& axles = project.cars[i].axles;
        CHECK(holes.center().x() - side.left() - line / 2 ==
              Approx((axles.rear_x + axles.front_x) / 2 / millimetre).margin(most));
        CHECK(holes.width() - line ==
              Approx((axles.front_x - axles.rear_x + axles.hole_diameter) / millimetre).margin(most));
        CHECK(svg.find(
                  "width=\"" +
                  svg.substr(svg.find("viewBox=\"0 0 ") + 13, svg.find(' ', svg.find("viewBox=\"0 0 ") + 13) -
                                                                  svg.find("viewBox=\"0 0 ") - 13) +
                  "mm\"") != std::string::npos);
    }
}

TEST_CASE("Templates are exported from the file menu", "[export]") {
    // The dialog starts in the project's folder, so that a bare name does.
    QTemporaryDir folder;
    const QString project = folder.filePath(QStringLiteral("race.ramp.json"));
    REQUIRE(QFile::copy(QString::fromStdString(demo_path), project));
    Workbench bench(project.toStdString());
    for (const QString& suffix : {QStringLiteral("svg"), QStringLiteral("stl")}) {
        bench.window->activateWindow();
        REQUIRE(QTest::qWaitForWindowActive(bench.window.get()));
        const QString name = QStringLiteral("Bittern.") + suffix;
        with_dialog([&] { QTest::keyClick(bench.window.get(), Qt::Key_E, Qt::ControlModifier); },
                    [&](QDialog& dialog) {
                        auto* entry = dialog.findChild<QLineEdit*>(QStringLiteral("fileNameEdit"));
                        REQUIRE(entry);
                        // Without the focus, typing would not let go of the file chosen in the list.
                        dialog.activateWindow();
                        entry->setFocus();
                        REQUIRE(QTest::qWaitFor([&] { return entry->hasFocus(); }));
                        entry->selectAll();
                        QTest::keyClicks(entry, name);
                        QTest::keyClick(entry, Qt::Key_Return);
                    });
        QFile written(folder.filePath(name));
        REQUIRE(written.open(QIODevice::ReadOnly));
        CHECK(written.readAll().toStdString() ==
              template_file(bench.session.project(), bench.session.car(), "." + suffix.toStdString()));
        CHECK(bench.window->statusBar()->currentMessage().contains(name));
    }
}
