#include <rampwright/car/front_view.hpp>

#include <catch2/catch.hpp>

#include <functional>
#include <numbers>
#include <random>

using namespace rampwright;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

constexpr double mm = 1e-3;

Outline rectangle(double x1, double y1, double x2, double y2) {
    return {{{x1, y1}}, {{x2, y1}}, {{x2, y2}}, {{x1, y2}}};
}

/// A body that wedges down to the nose and narrows in the middle, with straight edges.
struct Wedge {
    double back = 30 * mm, front = 6 * mm, wide = 22 * mm, waist = 14 * mm, length = 180 * mm, radius = 0;

    BodyShape shape() const {
        BodyShape body;
        body.profile = {{{0, 0}}, {{length, 0}}, {{length, front}}, {{length / 3, back}}, {{0, back}}};
        body.plan = {{{0, -wide}},     {{length / 2, -waist}}, {{length, -wide}},
                     {{length, wide}}, {{length / 2, waist}},  {{0, wide}}};
        body.edge_radius = radius;
        return body;
    }
    /// Whether (x, y, z) is in the wood: written from the drawing, apart from the library.
    bool solid(double x, double y, double z) const {
        const double top =
            x < length / 3 ? back : back + (front - back) * (x - length / 3) / (length * 2 / 3);
        const double side = waist + (wide - waist) * std::abs(x - length / 2) / (length / 2);
        if (z < 0 || z > top || std::abs(y) > side) return false;
        const double r = std::min({radius, top / 2, side});
        const double in_y = std::abs(y) - (side - r), in_z = std::max(r - z, z - (top - r));
        return in_y <= 0 || in_z <= 0 || in_y * in_y + in_z * in_z <= r * r;
    }
};

/// Counts the dots of a fine picture of the view, one at a random place in each of its cells: dots in rows
/// would count an edge that runs along a row too wide or too narrow all along.
double raster(const std::function<bool(double, double)>& seen, double half_width, double low, double high) {
    constexpr int across = 700, up = 500;
    std::mt19937 random(3);
    std::uniform_real_distribution<double> unit(0, 1);
    int dots = 0;
    for (int i = 0; i < across; ++i)
        for (int k = 0; k < up; ++k)
            if (seen(-half_width + 2 * half_width * (i + unit(random)) / across,
                     low + (high - low) * (k + unit(random)) / up))
                ++dots;
    return dots * (2 * half_width / across) * ((high - low) / up);
}

} // namespace

TEST_CASE("front view of plain solids", "[car][front]") {
    BodyShape block;
    block.profile = rectangle(0, 0, 180 * mm, 30 * mm);
    block.plan = rectangle(0, -22.5 * mm, 180 * mm, 22.5 * mm);
    CHECK(measure_front_view(block, {}).area == Approx(45e-3 * 30e-3).epsilon(1e-12));
    CHECK(measure_front_view(block, {}).height == Approx(15e-3).epsilon(1e-12));
    // Rounded corners take off a square less a quarter disc each: (4 - pi) r².
    block.edge_radius = 5 * mm;
    CHECK(measure_front_view(block, {}).area ==
          Approx(45e-3 * 30e-3 - (4 - std::numbers::pi) * 25e-6).epsilon(2e-4));
    block.edge_radius = 0;

    // A wheel beside it counts, what the wood hides does not, nor does what two things share twice.
    const std::vector<ViewShape> wheels{ViewRectangle{{24 * mm, -9 * mm}, {32 * mm, 21 * mm}},
                                        ViewRectangle{{24 * mm, -9 * mm}, {32 * mm, 21 * mm}},
                                        ViewRectangle{{-5 * mm, 5 * mm}, {5 * mm, 9 * mm}},
                                        ViewDisc{{0, 60 * mm}, 4 * mm}};
    const double area = 45e-3 * 30e-3 + 8e-3 * 30e-3 + std::numbers::pi * 16e-6;
    CHECK(measure_front_view(block, wheels).area == Approx(area).epsilon(1e-3));

    // A pocket through the whole length opens the view; a shorter one does not.
    block.cuts = {Pocket{{-1 * mm, -5 * mm, 20 * mm}, {181 * mm, 5 * mm, 40 * mm}}};
    CHECK(measure_front_view(block, {}).area == Approx(45e-3 * 30e-3 - 10e-3 * 10e-3).epsilon(1e-12));
    block.cuts = {Pocket{{5 * mm, -5 * mm, 20 * mm}, {181 * mm, 5 * mm, 40 * mm}}};
    CHECK(measure_front_view(block, {}).area == Approx(45e-3 * 30e-3).epsilon(1e-12));
}

TEST_CASE("front view agrees with a fine raster", "[car][front]") {
    // The raster looks through the car along x at 120 places: independent of the strips the library uses.
    std::mt19937 random(11);
    std::uniform_real_distribution<double> unit(0, 1);
    for (int round = 0; round < 6; ++round) {
        Wedge wedge;
        wedge.back = (18 + 14 * unit(random)) * mm;
        wedge.front = (4 + 10 * unit(random)) * mm;
        wedge.waist = (8 + 12 * unit(random)) * mm;
        wedge.radius = round < 2 ? 0 : 6 * unit(random) * mm;
        const double axle = 6 * mm, radius = 15 * mm, inner = wedge.wide + 0.5 * mm;
        std::vector<ViewShape> wheels;
        for (const double side : {-1.0, 1.0})
            wheels.emplace_back(
                ViewRectangle{{std::min(side * inner, side * (inner + 8 * mm)), axle - radius},
                              {std::max(side * inner, side * (inner + 8 * mm)), axle + radius}});
        const auto seen = [&](double y, double z) {
            if (std::abs(y) >= inner && std::abs(y) <= inner + 8 * mm && std::abs(z - axle) <= radius)
                return true;
            for (int i = 0; i <= 120; ++i)
                if (wedge.solid(wedge.length * (i + 1e-6) / (120 + 2e-6), y, z)) return true;
            return false;
        };
        const double counted = raster(seen, 32 * mm, -10 * mm, 34 * mm);
        CHECK(measure_front_view(wedge.shape(), wheels).area == Approx(counted).epsilon(2e-3));
    }
}

TEST_CASE("front view is continuous while a point is dragged", "[car][front]") {
    Wedge wedge;
    wedge.radius = 4 * mm;
    BodyShape body = wedge.shape();
    body.profile[3].smooth = true;
    double before = measure_front_view(body, {}).area, largest = 0;
    for (int i = 0; i < 200; ++i) {
        body.profile[3].at.y() += 0.01 * mm;
        const double now = measure_front_view(body, {}).area;
        largest = std::max(largest, std::abs(now - before));
        before = now;
    }
    CHECK(largest < 0.02e-3 * 44e-3); // twice the step times the width: no jump
}
