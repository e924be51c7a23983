#include "drawing/paint_context.hpp"
#include "look/theme.hpp"
#include "shaded/car_picture.hpp"
#include "shaded/picture_corner.hpp"
#include "support/bench.hpp"

#include <QAccessible>
#include <QDialog>
#include <QTest>
#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;

namespace {

CarPicture& settled_picture(Workbench& bench) {
    auto& picture = bench.find<CarPicture>(QStringLiteral("picture"));
    REQUIRE(QTest::qWaitFor(
        [&] { return picture.isVisible() && picture.up_to_date() && !picture.picture().isNull(); }, 20000));
    return picture;
}

/// How many pixels show something.
int covered(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            count += qAlpha(image.pixel(x, y)) > 200;
    return count;
}

} // namespace

TEST_CASE("The whole car stands in the sheet's corner and turns by hand and by keys", "[picture]") {
    Workbench bench;
    CarPicture& picture = settled_picture(bench);
    CHECK(covered(picture.picture()) > 2000);
    // It covers neither the views nor the title block.
    const QRectF where = QRectF(picture.geometry());
    CHECK_FALSE(where.intersects(bench.drawing().map().frame(View::top)));
    CHECK_FALSE(where.intersects(bench.drawing().map().frame(View::side)));
    CHECK_FALSE(where.intersects(title_block(bench.drawing().map())));

    const QImage first = picture.picture();
    const double turn = picture.viewpoint().turn;
    picture.setFocus();
    QTest::keyClick(&picture, Qt::Key_Right);
    CHECK(picture.viewpoint().turn < turn);
    settled_picture(bench);
    CHECK(picture.picture() != first);
    QTest::keyClick(&picture, Qt::Key_Home);
    settled_picture(bench);
    CHECK(picture.picture() == first);

    drag(picture, {60, 40}, {100, 50});
    CHECK(picture.viewpoint().turn < turn);
    CHECK(picture.viewpoint().raise > 0.42);
    settled_picture(bench);
    CHECK(picture.picture() != first);
    // Neither is an edit.
    CHECK(bench.session.history().count() == 0);
}

TEST_CASE("The picture says what it is and how it is seen", "[picture]") {
    Workbench bench;
    CarPicture& picture = settled_picture(bench);
    QAccessibleInterface* seen = QAccessible::queryAccessibleInterface(&picture);
    REQUIRE(seen);
    CHECK_FALSE(seen->text(QAccessible::Name).isEmpty());
    const QString before = seen->text(QAccessible::Description);
    CHECK(before.contains(QStringLiteral("52")));
    QTest::keyClick(&picture, Qt::Key_Left, Qt::ShiftModifier);
    CHECK(seen->text(QAccessible::Description).contains(QStringLiteral("67")));
    CHECK(picture.focusPolicy() & Qt::TabFocus);
}

TEST_CASE("Dragged ballast shows in the picture without meshing the wood again", "[picture]") {
    Workbench bench;
    CarPicture& picture = settled_picture(bench);
    const int bodies = picture.maker().bodies_made();
    const QImage before = picture.picture();
    const QPoint from = pixel_of_piece(bench, 0, View::top);
    drag(bench.drawing(), from, from + QPoint(-24, 0));
    settled_picture(bench);
    CHECK(picture.picture() != before);
    CHECK(picture.maker().bodies_made() == bodies);
    bench.session.apply(
        set_value(bench.session.document(), "/cars/0/body/edge_radius_mm", 2.5, "Round edges"));
    settled_picture(bench);
    CHECK(picture.maker().bodies_made() == bodies + 1);
}

TEST_CASE("The car's paint and number show, in both themes", "[picture]") {
    Workbench bench;
    for (const Appearance appearance : {Appearance::dark, Appearance::light}) {
        apply_theme(appearance);
        CarPicture& picture = settled_picture(bench);
        const auto apply = [&](const char* key, const char* value) {
            bench.session.apply(set_value(bench.session.document(), key, value, "Paint"));
            settled_picture(bench);
        };
        apply("/cars/0/paint", "blue");
        const auto count = [&](auto like) {
            int n = 0;
            const QImage& image = picture.picture();
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x)
                    n += qAlpha(image.pixel(x, y)) == 255 && like(QColor(image.pixel(x, y)));
            return n;
        };
        const auto blue = [](const QColor& c) { return c.blue() > c.red() + 40; };
        const auto red = [](const QColor& c) { return c.red() > c.blue() + 40; };
        const auto white = [](const QColor& c) { return c.red() > 150 && c.blue() > 150; };
        CHECK(count(blue) > 800);
        const int plain = count(white);
        apply("/cars/0/number", "");
        CHECK(count(white) < plain - 20);
        apply("/cars/0/paint", "red");
        CHECK(count(red) > 800);
        CHECK(count(blue) < 50);
        apply("/cars/0/number", "7");
    }
}

TEST_CASE("A menu entry shows the car large", "[picture]") {
    Workbench bench;
    CarPicture& small = settled_picture(bench);
    QTest::keyClick(bench.window.get(), Qt::Key_T, Qt::ControlModifier);
    auto& large = bench.find<CarPicture>(QStringLiteral("large picture.car"));
    REQUIRE(QTest::qWaitFor([&] { return large.up_to_date() && !large.picture().isNull(); }, 20000));
    CHECK(large.width() > 2 * small.width());
    CHECK(large.viewpoint().turn == small.viewpoint().turn);
    QTest::keyClick(&large, Qt::Key_Escape);
    CHECK_FALSE(large.isVisible());
}

TEST_CASE("Magnifying the drawing takes the picture out of its way", "[picture]") {
    Workbench bench;
    CarPicture& picture = settled_picture(bench);
    for (int i = 0; i < 8; ++i)
        bench.drawing().zoom_by(1.4, QPointF(bench.drawing().rect().center()));
    REQUIRE(QTest::qWaitFor([&] { return !picture.isVisible(); }, 5000));
    bench.drawing().zoom_to_fit();
    settled_picture(bench);
}
