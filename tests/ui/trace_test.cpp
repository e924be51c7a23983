// Pictures under the drawing, and outlines taken in, as a person does it.
#include "drawing/underlay_painter.hpp"
#include "fields/value_field.hpp"
#include "support/bench.hpp"
#include "trace/outline_dialog.hpp"
#include "trace/picture_store.hpp"
#include "trace/trace.hpp"

#include <rampwright/body/outline.hpp>

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QDropEvent>
#include <QLabel>
#include <QListWidget>
#include <QMimeData>
#include <QPainter>
#include <QPushButton>
#include <QSlider>
#include <QTest>
#include <QUrl>
#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

constexpr int shape_step = 1;

/// A page of 400 by 200 dots, white, with two red marks 200 dots apart: at (100, 120) and (300, 120).
QString save_sketch(const QTemporaryDir& folder, const QString& name = QStringLiteral("sketch.png"),
                    QSize size = {400, 200}) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    for (const double share : {0.25, 0.75})
        painter.fillRect(QRectF(share * size.width() - 2, 0.6 * size.height() - 2, 4, 4), Qt::red);
    painter.end();
    const QString path = folder.filePath(name);
    REQUIRE(image.save(path));
    return path;
}

const std::optional<Underlay>& side(Workbench& bench) {
    return bench.session.plan().underlays[0];
}

void wait_for_picture(Workbench& bench, const QString& path) {
    REQUIRE(QTest::qWaitFor([&] { return bench.drawing().pictures().picture(path).read; }, 10000));
    QApplication::processEvents();
}

/// Where a dot of the sketch is on the drawing, px.
QPoint pixel_of_dot(Workbench& bench, const Underlay& underlay, QSize size, QPointF dot) {
    return bench.drawing()
        .map()
        .plane_to_pixel(View::side, underlay_to_plane(underlay, size).map(dot))
        .toPoint();
}

QColor colour_at(Workbench& bench, QPoint pixel) {
    return bench.drawing().grab().toImage().pixelColor(pixel);
}

/// Goes to the step about the wood and lays a picture under its side view.
void lay_in_side_view(Workbench& bench, const QString& path) {
    go_to_step(bench, shape_step);
    lay_picture_file(bench.session, path, false);
    wait_for_picture(bench, path);
}

void press(Workbench& bench, const char* name) {
    bench.find<QPushButton>(QLatin1String(name)).click();
    QApplication::processEvents();
}

} // namespace

TEST_CASE("A picture is dropped, scaled by two clicks and a typed distance, and turned level: one undo each",
          "[trace]") {
    QTemporaryDir folder;
    const QString path = save_sketch(folder);
    Workbench bench;
    go_to_step(bench, shape_step);
    const Document before = bench.session.document();
    QMimeData mime;
    mime.setUrls({QUrl::fromLocalFile(path)});
    const QPoint on_side = bench.drawing().mapTo(bench.window.get(), pixel_of(bench, View::side, 90, 8));
    QDragEnterEvent enter(on_side, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(bench.window.get(), &enter);
    QDropEvent drop(on_side, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(bench.window.get(), &drop);
    INFO(status_of(bench).toStdString());
    REQUIRE(side(bench).has_value());
    CHECK(bench.session.history().count() == 1);
    CHECK(side(bench)->picture == path.toStdString());
    CHECK(side(bench)->width == Approx(0.178)); // as wide as the block is long
    wait_for_picture(bench, path);

    // The two red marks, clicked where they are seen.
    const QPoint one = pixel_of_dot(bench, *side(bench), {400, 200}, {100, 120}),
                 other = pixel_of_dot(bench, *side(bench), {400, 200}, {300, 120});
    CHECK(colour_at(bench, one).red() > colour_at(bench, one).green() + 40);
    CHECK(colour_at(bench, one + QPoint(20, 0)).red() < colour_at(bench, one + QPoint(20, 0)).green() + 40);
    press(bench, "trace.scale");
    CHECK(bench.drawing().tool() == Tool::measure_picture);
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, one);
    // A slip of the hand is no second place.
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, one + QPoint(2, 1));
    CHECK(status_of(bench).contains(QStringLiteral("first place")));
    with_dialog([&] { QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, other); },
                [](QDialog& dialog) {
                    auto* field = dialog.findChild<QLineEdit*>(QStringLiteral("measure.distance"));
                    auto* ok = dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok);
                    QTest::keyClicks(field, QStringLiteral("3 furlongs"));
                    ok->click();
                    CHECK(dialog.findChild<QLabel*>(QStringLiteral("measure.fault"))
                              ->text()
                              .startsWith(QStringLiteral("Not taken")));
                    field->clear();
                    QTest::keyClicks(field, QStringLiteral("4 in"));
                    ok->click();
                });
    CHECK(bench.session.history().count() == 2);
    // 400 dots are twice the 200 between the marks: 8 in, but for the pixel a hand clicks on.
    CHECK(side(bench)->width == Approx(0.2032).epsilon(0.01));
    CHECK(side(bench)->turned == 0);
    // The first place stays where it was clicked.
    const QPoint after = pixel_of_dot(bench, *side(bench), {400, 200}, {100, 120});
    CHECK((after - one).manhattanLength() <= 2);
    CHECK(bench.drawing().tool() == Tool::pick);

    // Clicked askew and asked for level: the picture turns by as much.
    press(bench, "trace.scale");
    QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 40, 10));
    with_dialog(
        [&] {
            QTest::mouseClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 140, 20));
        },
        [](QDialog& dialog) {
            dialog.findChild<QCheckBox*>(QStringLiteral("measure.level"))->click();
            QTest::keyClicks(dialog.findChild<QLineEdit*>(QStringLiteral("measure.distance")),
                             QStringLiteral("100"));
            dialog.findChild<QDialogButtonBox*>()->button(QDialogButtonBox::Ok)->click();
        });
    CHECK(side(bench)->turned == Approx(-std::atan2(10., 100.)).margin(0.005));
    for (int i = 0; i < 3; ++i)
        bench.session.history().undo();
    CHECK(bench.session.document() == before);
}

TEST_CASE("The picture is moved by dragging and by keys, and changed on its slip", "[trace]") {
    QTemporaryDir folder;
    const QString path = save_sketch(folder);
    Workbench bench;
    lay_in_side_view(bench, path);
    const Vec2 start = side(bench)->at;
    press(bench, "trace.move");
    drag(bench.drawing(), pixel_of(bench, View::side, 60, 8), pixel_of(bench, View::side, 80, 14));
    CHECK((side(bench)->at - start - Vec2(0.020, 0.006)).norm() < 0.6e-3);
    CHECK(bench.session.history().count() == 2);
    CHECK(bench.drawing().tool() == Tool::move_picture); // until it is laid down
    const Vec2 dragged = side(bench)->at;
    QTest::keyClick(&bench.drawing(), Qt::Key_Left);
    QTest::keyClick(&bench.drawing(), Qt::Key_Up, Qt::ControlModifier);
    CHECK((side(bench)->at - dragged - Vec2(-1e-3, 0.2e-3)).norm() < 1e-9);
    CHECK(bench.session.history().count() == 3);
    // A drag that is given up leaves nothing.
    QTest::mousePress(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 60, 8));
    QMouseEvent move(QEvent::MouseMove, pixel_of(bench, View::side, 90, 8),
                     bench.drawing().mapToGlobal(pixel_of(bench, View::side, 90, 8)), Qt::NoButton,
                     Qt::LeftButton, {});
    QApplication::sendEvent(&bench.drawing(), &move);
    QTest::keyClick(&bench.drawing(), Qt::Key_Escape);
    CHECK(bench.session.history().count() == 3);
    CHECK(bench.drawing().tool() == Tool::pick);

    type_into(bench.find<ValueField>(QStringLiteral("trace.width")), QStringLiteral("9 in"));
    CHECK(side(bench)->width == Approx(0.2286));
    type_into(bench.find<ValueField>(QStringLiteral("trace.turned")), QStringLiteral("-3"));
    CHECK(side(bench)->turned == Approx(-3 * 0.017453292519943295));
    bench.find<QSlider>(QStringLiteral("trace.opacity")).setValue(30);
    bench.find<QSlider>(QStringLiteral("trace.opacity")).setValue(20);
    CHECK(side(bench)->opacity == Approx(0.2));
    CHECK(bench.session.history().count() == 6); // the slide of a slider is one
    bench.find<QCheckBox>(QStringLiteral("trace.mirrored")).click();
    CHECK(side(bench)->mirrored);
    bench.find<QCheckBox>(QStringLiteral("trace.shown")).click();
    CHECK(side(bench)->hidden);
    CHECK(bench.drawing().shown_underlay(View::side) == nullptr);
    CHECK_FALSE(bench.find<QPushButton>(QStringLiteral("trace.move")).isEnabled());
    press(bench, "trace.remove");
    CHECK_FALSE(side(bench));
    CHECK(bench.session.history().count() == 9);
    // Other steps do not show it.
    bench.session.history().undo();
    bench.session.history().undo();
    CHECK(bench.drawing().shown_underlay(View::side) != nullptr);
    go_to_step(bench, 3);
    CHECK(bench.drawing().shown_underlay(View::side) == nullptr);
}

TEST_CASE("Points are added and dragged on the outline over a picture", "[trace]") {
    QTemporaryDir folder;
    const QString path = save_sketch(folder);
    Workbench bench;
    lay_in_side_view(bench, path);
    const std::size_t points = bench.session.plan().body.profile.size();
    QTest::mouseDClick(&bench.drawing(), Qt::LeftButton, {}, pixel_of(bench, View::side, 90, 16));
    REQUIRE(bench.session.plan().body.profile.size() == points + 1);
    drag(bench.drawing(), pixel_of(bench, View::side, 90, 16), pixel_of(bench, View::side, 90, 12));
    CHECK(bench.session.plan().body.profile[3].at.y() == Approx(0.012));
}

TEST_CASE("The project file names the picture from its own folder, wherever it is saved", "[trace]") {
    QTemporaryDir folder;
    const QString path = save_sketch(folder);
    const std::string here = folder.filePath(QStringLiteral("wren.ramp.json")).toStdString();
    REQUIRE(QDir(folder.path()).mkdir(QStringLiteral("later")));
    const std::string there = folder.filePath(QStringLiteral("later/wren.ramp.json")).toStdString();
    const auto named = [](const std::string& file) {
        return load_document(file).root["cars"][0]["underlay"]["side"]["picture"].get<std::string>();
    };
    Session session;
    session.open(demo_path);
    lay_picture_file(session, path, false);
    session.save(here);
    CHECK(named(here) == "sketch.png");
    session.save(there);
    CHECK(named(there) == "../sketch.png");
    CHECK(session.plan().underlays[0]->picture == path.toStdString());
    session.open(there);
    CHECK(session.plan().underlays[0]->picture == path.toStdString());
    CHECK_FALSE(session.has_unsaved_work());
}

TEST_CASE("A picture that is gone is told, and its scale and place are kept", "[trace]") {
    QTemporaryDir folder;
    const QString path = save_sketch(folder);
    Workbench bench;
    go_to_step(bench, shape_step);
    lay_picture_file(bench.session, path, false);
    const Document laid = bench.session.document();
    const QString away = folder.filePath(QStringLiteral("away.png"));
    REQUIRE(QFile::rename(path, away));
    bench.drawing().pictures().clear();
    wait_for_picture(bench, path);
    CHECK(bench.text("trace.fault").contains(QStringLiteral("not there")));
    CHECK(bench.text("trace.fault").contains(path));
    CHECK(bench.find<QLabel>(QStringLiteral("trace.fault")).isVisible());
    CHECK(bench.find<QPushButton>(QStringLiteral("trace.find")).isVisible());
    CHECK(bench.session.document() == laid);
    // Put back, it shows again when the step is come to.
    REQUIRE(QFile::rename(away, path));
    go_to_step(bench, 3);
    go_to_step(bench, shape_step);
    wait_for_picture(bench, path);
    CHECK(bench.drawing().shown_underlay(View::side) != nullptr);
    // Something that is no picture.
    std::ofstream(folder.filePath(QStringLiteral("bad.png")).toStdString()) << "no picture";
    const auto bad = PictureStore::load(folder.filePath(QStringLiteral("bad.png")));
    CHECK(bad.image.isNull());
    CHECK_FALSE(bad.fault.isEmpty());
}

TEST_CASE("A large photo is made smaller away from the window; a drawing is made sharp", "[trace]") {
    QTemporaryDir folder;
    const QString photo = save_sketch(folder, QStringLiteral("photo.jpg"), {6000, 4000});
    const auto read = PictureStore::load(photo);
    CHECK(read.image.size() == QSize(2400, 1600));
    std::ofstream(folder.filePath(QStringLiteral("car.svg")).toStdString())
        << "<svg xmlns='http://www.w3.org/2000/svg' width='178mm' height='44.5mm' viewBox='0 0 178 44.5'>"
           "<rect width='178' height='44.5' fill='red'/></svg>";
    const QSize drawing = PictureStore::load(folder.filePath(QStringLiteral("car.svg"))).image.size();
    CHECK(drawing.width() == 2400);
    CHECK(drawing.height() == 600);
    PictureStore store;
    // Asked for, it comes later: the window goes on.
    CHECK_FALSE(store.picture(photo).read);
    REQUIRE(QTest::qWaitFor([&] { return store.picture(photo).read; }, 10000));
    CHECK(store.picture(photo).image.width() == 2400);
}

TEST_CASE("An outline is taken in from an SVG drawing: chosen, sized, one undo step", "[trace]") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("wedge.svg"));
    // A wedge of 150 by 24 mm with a round nose, drawn at half its size; and a hole in it.
    std::ofstream(path.toStdString())
        << "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='20mm' "
           "viewBox='0 0 100 20'><path id='wedge' d='M0 0 L0 12 L72 12 A3 3 0 0 0 72 6 Z'/>"
           "<circle id='hole' cx='20' cy='8' r='2'/></svg>";
    Workbench bench;
    go_to_step(bench, shape_step);
    const Document before = bench.session.document();
    QString said;
    with_dialog([&] { said = read_outline_file(*bench.window, bench.session, path, false); },
                [](QDialog& dialog) {
                    auto* take = dialog.findChild<QPushButton*>(QStringLiteral("outline.take"));
                    auto* list = dialog.findChild<QListWidget*>(QStringLiteral("outline.list"));
                    REQUIRE(QTest::qWaitFor([&] { return take->isEnabled(); }, 10000));
                    REQUIRE(list->count() == 2);
                    CHECK(list->currentRow() == 0); // the largest
                    CHECK(list->item(0)->text().contains(QStringLiteral("75.0 mm × 12.0 mm")));
                    CHECK(list->item(0)->text().contains(QStringLiteral("wedge")));
                    auto* length = dialog.findChild<QLineEdit*>(QStringLiteral("outline.length"));
                    type_into(*length, QStringLiteral("15 cm"));
                    CHECK(dialog.findChild<QLineEdit*>(QStringLiteral("outline.factor"))->text() ==
                          QStringLiteral("2"));
                    CHECK(dialog.findChild<QLabel*>(QStringLiteral("outline.size"))
                              ->text()
                              .contains(QStringLiteral("taken in as 150.0 mm × 24.0 mm")));
                    REQUIRE(QTest::qWaitFor([&] { return take->isEnabled(); }, 10000));
                    take->click();
                });
    CHECK(said.contains(QStringLiteral("wedge.svg")));
    const auto& profile = bench.session.plan().body.profile;
    CHECK(profile.size() >= 5);
    CHECK(profile.size() < 16);
    Outline outline;
    for (const PlanPoint& point : profile)
        outline.push_back({point.at, point.smooth});
    double low = 1, high = 0, top = 0;
    for (const Vec2& p : flatten(outline, 1e-6)) {
        low = std::min(low, p.x());
        high = std::max(high, p.x());
        top = std::max(top, p.y());
    }
    CHECK(low == Approx(0).margin(0.05e-3));
    CHECK(high == Approx(0.150).margin(0.05e-3));
    CHECK(top == Approx(0.024).margin(0.05e-3));
    CHECK(bench.session.history().count() == 1);
    bench.session.history().undo();
    CHECK(bench.session.document() == before);
}

TEST_CASE("A drawing that cannot be read changes nothing and says why; neither does a figure of eight",
          "[trace]") {
    QTemporaryDir folder;
    const QString broken = folder.filePath(QStringLiteral("broken.svg")),
                  eight = folder.filePath(QStringLiteral("eight.svg"));
    std::ofstream(broken.toStdString()) << "<svg xmlns='http://www.w3.org/2000/svg'>\n<path d='M0 0 L";
    std::ofstream(eight.toStdString())
        << "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='50mm' viewBox='0 0 100 50'>"
           "<path d='M0 0 L100 50 L100 0 L0 40 Z'/></svg>";
    Workbench bench;
    const Document before = bench.session.document();
    const auto refused = [&](const QString& path, const char* label, const QString& says) {
        with_dialog([&] { read_outline_file(*bench.window, bench.session, path, false); },
                    [&](QDialog& dialog) {
                        auto* text = dialog.findChild<QLabel*>(QLatin1String(label));
                        CHECK(QTest::qWaitFor([&] { return text->text().contains(says); }, 10000));
                        CHECK(text->text().startsWith(QStringLiteral("Not ")));
                        CHECK_FALSE(
                            dialog.findChild<QPushButton*>(QStringLiteral("outline.take"))->isEnabled());
                        dialog.reject();
                    });
        CHECK(bench.session.document() == before);
    };
    refused(broken, "outline.about", QStringLiteral("line 2"));
    refused(eight, "outline.result", QStringLiteral("touches or crosses itself"));
}
