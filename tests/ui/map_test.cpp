#include "drawing/drawing_map.hpp"
#include "drawing/snap.hpp"

#include <catch2/catch.hpp>

using namespace rampwright;
using namespace rampwright::ui;

namespace {

const CarExtent extent{{0, -0.035, -0.011}, {0.178, 0.035, 0.032}};
const QRectF paper(8, 8, 1000, 560);

} // namespace

TEST_CASE("The map is one scale, and back again", "[drawing]") {
    for (const double zoom : {1.0, 3.7}) {
        const DrawingMap map = DrawingMap::fit(paper, extent, zoom, {13, -7});
        const Vec3 at(0.0432, 0.0123, 0.0087);
        for (const View view : all_views) {
            CHECK((map.to_model(view, map.to_pixel(view, at), at) - at).norm() < 1e-12);
            const Vec3 step = at + Vec3(1e-3, 1e-3, 1e-3);
            const QPointF moved = map.to_pixel(view, step) - map.to_pixel(view, at);
            CHECK(moved.x() == Approx(map.pixels_per_metre() * 1e-3));
            CHECK(moved.y() == Approx(-map.pixels_per_metre() * 1e-3));
        }
    }
}

TEST_CASE("Side and top view share x, side and front view share z: first-angle projection", "[drawing]") {
    const DrawingMap map = DrawingMap::fit(paper, extent);
    const Vec3 at(0.05, 0.01, 0.02);
    CHECK(map.to_pixel(View::side, at).x() == Approx(map.to_pixel(View::top, at).x()));
    CHECK(map.to_pixel(View::side, at).y() == Approx(map.to_pixel(View::front, at).y()));
    // ISO 5456-2: from above, under the side view; from the front, on the side view's other side.
    CHECK(map.to_pixel(View::top, at).y() > map.to_pixel(View::side, at).y());
    CHECK(map.to_pixel(View::front, at).x() < map.to_pixel(View::side, at).x());
    // Seen from the nose, the car's left is on the right.
    CHECK(map.to_pixel(View::front, Vec3(0, 0.01, 0)).x() > map.to_pixel(View::front, Vec3(0, -0.01, 0)).x());
}

TEST_CASE("Everything fits on the paper and each view is picked where it lies", "[drawing]") {
    for (const QRectF& each :
         {paper, QRectF(0, 0, 600, 320), QRectF(0, 0, 2400, 900), QRectF(0, 0, 700, 1500)}) {
        const DrawingMap map = DrawingMap::fit(each, extent);
        for (const View view : all_views) {
            for (const Vec3& corner : {extent.low, extent.high}) {
                CHECK(each.contains(map.to_pixel(view, corner)));
                CHECK(map.frame(view).contains(map.to_pixel(view, corner)));
            }
            CHECK(map.view_at(map.to_pixel(view, (extent.low + extent.high) / 2)) == view);
        }
    }
}

TEST_CASE("Snapping: to the grid, but a move of less than half a step stays", "[drawing]") {
    CHECK(snapped(0.0503, 0.0506, 1e-3) == 0.0503);
    CHECK(snapped(0.0503, 0.0512, 1e-3) == Approx(0.051));
    CHECK(snapped(0.0503, 0.0400, 1e-3) == Approx(0.040));
    CHECK(snap_step(UnitSystem::inch_ounce) == Approx(0.0254 / 16));
}
