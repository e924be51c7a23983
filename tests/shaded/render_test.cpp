#include "car/car_fixture.hpp"
#include "support/demo.hpp"

#include <rampwright/shaded/render.hpp>

#include <catch2/catch.hpp>

#include <numbers>

using namespace rampwright;

namespace {

constexpr double quarter = std::numbers::pi / 2;

Scene scene_of(const Project& project, std::size_t index = 0) {
    const CarModel car = build_car(project, index);
    const CarPlan& plan = project.cars[index];
    auto body =
        std::make_shared<const LitSurface>(light_up(body_facets(finished_body(plan, car), 5e-5), 0.6));
    return make_scene(plan, car, body);
}

RenderSettings settings_for(const Scene& scene, int width, int height, double scale) {
    RenderSettings settings;
    settings.width = width;
    settings.height = height;
    settings.pixels_per_metre = scale;
    settings.centre = (scene.low + scene.high) / 2;
    settings.shadow = 0;
    return settings;
}

/// Area of what is covered, m².
double silhouette(const Picture& picture, double scale) {
    double sum = 0;
    for (const std::uint32_t pixel : picture.pixels)
        sum += static_cast<double>(pixel >> 24) / 255;
    return sum / (scale * scale);
}

std::array<int, 3> colour_at(const Picture& picture, int x, int y) {
    const std::uint32_t pixel =
        picture.pixels[static_cast<std::size_t>(y) * static_cast<std::size_t>(picture.width) +
                       static_cast<std::size_t>(x)];
    return {static_cast<int>(pixel >> 16 & 255), static_cast<int>(pixel >> 8 & 255),
            static_cast<int>(pixel & 255)};
}

} // namespace

TEST_CASE("seen from the front the picture covers the frontal area", "[shaded]") {
    const Project project = demo_project();
    for (std::size_t i = 0; i < project.cars.size(); ++i) {
        INFO(project.cars[i].name);
        const Scene scene = scene_of(project, i);
        constexpr double scale = 8000;
        const Picture picture = render(scene, {0, 0}, settings_for(scene, 800, 400, scale));
        CHECK(silhouette(picture, scale) == Approx(build_car(project, i).frontal_area).epsilon(0.01));
    }
}

TEST_CASE("seen from the right the nose points right, and from above it is as long and as wide", "[shaded]") {
    const Project project = test::plain_project();
    const Scene scene = scene_of(project);
    constexpr double scale = 2000;
    const RenderSettings settings = settings_for(scene, 480, 240, scale);
    const auto box = [&](const Picture& picture) {
        int left = picture.width, right = -1, up = picture.height, down = -1;
        for (int y = 0; y < picture.height; ++y)
            for (int x = 0; x < picture.width; ++x)
                if (picture.pixels[static_cast<std::size_t>(y * picture.width + x)] >> 24 >= 128) {
                    left = std::min(left, x);
                    right = std::max(right, x);
                    up = std::min(up, y);
                    down = std::max(down, y);
                }
        return std::array{left, right + 1, up, down + 1};
    };
    // The block is 180 mm long, and reaches 44 mm beyond its front axle and 25 mm behind its rear one.
    const auto side = box(render(scene, {quarter, 0}, settings));
    CHECK((side[1] - side[0]) / scale == Approx(0.180).margin(1 / scale));
    const auto above = box(render(scene, {quarter, quarter}, settings));
    CHECK((above[1] - above[0]) / scale == Approx(0.180).margin(1 / scale));
    // Over the axles' heads: block 45, and on each side gap 0.8, wheel 8 and head 0.2 x 4.5 mm.
    // A pixel counts from its half on: up to three quarters of one too much at each side.
    CHECK((above[3] - above[2]) / scale == Approx(0.045 + 2 * (0.0008 + 0.008 + 0.0009)).margin(1.5 / scale));
    // The tail's wheels are nearer to the picture's left than the front ones to its right.
    const Picture picture = render(scene, {quarter, 0}, settings);
    const int wheels =
        static_cast<int>(120 + scale * ((scene.low.z() + scene.high.z()) / 2 - scene.low.z() - 0.002));
    int first = -1, last = -1;
    for (int x = 0; x < picture.width; ++x)
        if (picture.pixels[static_cast<std::size_t>(wheels * picture.width + x)] >> 24) {
            if (first < 0) first = x;
            last = x;
        }
    CHECK(first - side[0] < side[1] - last);
}

TEST_CASE("paint, weight and turning show", "[shaded]") {
    Project project = test::plain_project();
    project.cars[0].paint = "#3060c0";
    const Scene scene = scene_of(project);
    constexpr double scale = 2000;
    const RenderSettings settings = settings_for(scene, 480, 240, scale);
    const Picture above = render(scene, {quarter, quarter}, settings);
    // Where the block's top is bare: its paint, lit; 3 : 6 : 12 whatever the light.
    const auto pixel_of = [&](double x, double y) {
        return colour_at(above, static_cast<int>(240 + scale * (x - settings.centre.x())),
                         static_cast<int>(120 - scale * (y - settings.centre.y())));
    };
    const auto paint = pixel_of(0.16, 0.003);
    CHECK(paint[2] > 100);
    CHECK(paint[0] == Approx(paint[2] / 4.).margin(2));
    CHECK(paint[1] == Approx(paint[2] / 2.).margin(2));
    // The brass bar lies open in its pocket: yellow, so more red than blue.
    const auto brass = pixel_of(0.060, 0);
    CHECK(brass[0] > brass[2] + 30);
    // From the left the picture is another one than from the right.
    project.cars[0].body.plan[2].at.y() += 0.01;
    const Scene lopsided = scene_of(project);
    const Picture right = render(lopsided, {0.9, 0.4}, settings),
                  left = render(lopsided, {0.8, 0.4}, settings);
    CHECK(right.pixels != left.pixels);
    CHECK(right.pixels == render(lopsided, {0.9, 0.4}, settings).pixels);
    CHECK_FALSE(right.pixels == Picture{480, 240, std::vector<std::uint32_t>(480 * 240, 0)}.pixels);
}

TEST_CASE("a scene fits its picture from every side", "[shaded]") {
    const Scene scene = scene_of(demo_project());
    for (const double raise : {-0.3, 0., 0.4, 1.2})
        for (double turn = 0; turn < 6.2; turn += 0.4) {
            const int width = 200, height = 130;
            const Picture picture =
                render(scene, {turn, raise},
                       settings_for(scene, width, height, scale_to_fit(scene, raise, width, height)));
            for (int x = 0; x < width; ++x) {
                CHECK(picture.pixels[static_cast<std::size_t>(x)] == 0);
                CHECK(picture.pixels[static_cast<std::size_t>((height - 1) * width + x)] == 0);
            }
            for (int y = 0; y < height; ++y) {
                CHECK(picture.pixels[static_cast<std::size_t>(y * width)] == 0);
                CHECK(picture.pixels[static_cast<std::size_t>(y * width + width - 1)] == 0);
            }
        }
}

TEST_CASE("a child's words for paint name a colour", "[shaded]") {
    CHECK(colour_of("reed brown")->isApprox(*colour_of("BROWN")));
    CHECK(colour_of("grey and white")->isApprox(*colour_of("grey")));
    CHECK(colour_of("light blue")->minCoeff() > colour_of("blue")->minCoeff());
    CHECK(colour_of("dark blue")->maxCoeff() < colour_of("blue")->maxCoeff());
    CHECK(colour_of("#ff8000")->isApprox(Colour(1, 128 / 255.f, 0)));
    CHECK_FALSE(colour_of(""));
    CHECK_FALSE(colour_of("varnish, two coats"));
    CHECK_FALSE(colour_of("tired, bored")); // "red" only as a word of its own
}

TEST_CASE("wheels are drawn with the section that the file states", "[shaded]") {
    Project project = demo_project();
    constexpr double mm = 1e-3, pi = std::numbers::pi;
    for (WheelPlan& wheel : project.cars[0].wheels) {
        wheel.outer_diameter = 30 * mm;
        wheel.width = 8 * mm;
        wheel.bore_diameter = 2.5 * mm;
        wheel.tread_thickness = 4 * mm;
        wheel.web_thickness = 5 * mm;
        wheel.hub_diameter = 14 * mm;
    }
    const auto ring = [](double inner, double outer, double width) {
        return pi / 4 * (outer * outer - inner * inner) * width;
    };
    // Tread, web and hub by hand; the drawn one has 48 sides and a tread rounded by 0.56 mm.
    const double round = 0.56 * mm, sides = std::sin(2 * pi / 48) / (2 * pi / 48);
    const double solid = ring(22 * mm, 30 * mm, 8 * mm) + ring(14 * mm, 22 * mm, 5 * mm) +
                         ring(2.5 * mm, 14 * mm, 8 * mm) - pi * 30 * mm * round * round;
    int wheels = 0;
    for (const SceneSolid& each : scene_of(project).solids) {
        if (each.stuff != Stuff::wheel) continue;
        ++wheels;
        CHECK(enclosed_volume(each.surface->mesh) == Approx(sides * solid).epsilon(0.005));
    }
    CHECK(wheels == 4);
    // A hub as wide as the tread leaves no web; the surface stays closed.
    for (WheelPlan& wheel : project.cars[0].wheels)
        wheel.hub_diameter = 22 * mm;
    for (const SceneSolid& each : scene_of(project).solids)
        if (each.stuff == Stuff::wheel)
            CHECK(enclosed_volume(each.surface->mesh) ==
                  Approx(sides * (ring(2.5 * mm, 30 * mm, 8 * mm) - pi * 30 * mm * round * round))
                      .epsilon(0.005));
}
