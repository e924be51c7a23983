#include "body/bodies.hpp"
#include "body/modeller.hpp"

#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>

using namespace rampwright;
using bodies::difference;
using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

void shift(Cut& cut, const Vector3d& by) {
    if (auto* pocket = std::get_if<Pocket>(&cut)) {
        pocket->low += by;
        pocket->high += by;
    } else {
        auto& bore = std::get<Bore>(cut);
        bore.from += by;
        bore.to += by;
    }
}

BodyShape drawn(unsigned seed, int cuts, double edge_radius = 0) {
    bodies::Draw u(seed);
    auto shape = bodies::wedge(u, seed % 2);
    shape.edge_radius = edge_radius;
    for (int i = 0; i < cuts; ++i) {
        if (i % 2)
            shape.cuts.push_back(bodies::pocket(u));
        else
            shape.cuts.push_back(bodies::bore(u, i % 4 == 2));
    }
    return shape;
}

std::string where(const BodyShape& shape) {
    try {
        measure(shape);
    } catch (const Problem& problem) {
        return problem.where();
    }
    return "measured";
}

} // namespace

TEST_CASE("a rounded body agrees with a solid modeller's loft", "[body][modeller]") {
    // Constant and half-side radii, sides that change along x: the loft between two sections is exact.
    for (const double radius : {.002, .004, .02}) {
        INFO("radius " << radius);
        BodyShape shape{bodies::corners({{.01, .002}, {.17, .004}, {.17, .014}, {.01, .034}}),
                        bodies::corners({{.01, -.02}, {.17, -.018}, {.17, .022}, {.01, .019}}),
                        radius,
                        {}};
        if (radius == .02) { // at both ends half the height, which stays the smaller side
            shape.profile = bodies::corners({{.01, .002}, {.17, .004}, {.17, .012}, {.01, .03}});
        }
        const auto loft = modeller::rounded(shape);
        CHECK(difference(measure(shape).uncut, modeller::moments(loft)) < 1e-8);
        bodies::Draw u(7);
        for (int i = 0; i < 5; ++i) {
            if (i % 2)
                shape.cuts.push_back(bodies::pocket(u));
            else
                shape.cuts.push_back(bodies::bore(u, i == 2));
        }
        const auto m = measure(shape);
        std::vector<TopoDS_Shape> tools;
        for (const auto& c : shape.cuts)
            tools.push_back(modeller::solid(c));
        CHECK(difference(m.wood, modeller::moments(modeller::less(loft, tools))) < 1e-6);
        for (size_t i = 0; i < tools.size(); ++i)
            if (m.removed[i].volume > 1e-11)
                CHECK(difference(m.removed[i], modeller::moments(modeller::common(loft, tools[i]))) < 1e-5);
    }
}

TEST_CASE("rounding that meets half a side has its closed form", "[body]") {
    // A wedge 100 mm long and 40 mm wide, its height falling from 30 to 6 mm: the radius of 8 mm holds while
    // the height is above 16 mm, then half the height. Area w h - (4 - π) r², cubic at most: Simpson's rule
    // is exact.
    const double w = .04, length = .1, bend = length * 14 / 24;
    const BodyShape shape{bodies::corners({{0, 0}, {length, 0}, {length, .006}, {0, .03}}),
                          bodies::corners({{0, -w / 2}, {length, -w / 2}, {length, w / 2}, {0, w / 2}}),
                          .008,
                          {}};
    const auto area = [&](double x) {
        const double h = .03 - .024 * x / length, r = std::min(.008, h / 2);
        return w * h - (4 - std::numbers::pi) * r * r;
    };
    const auto simpson = [](double a, double b, auto&& f) {
        return (b - a) / 6 * (f(a) + 4 * f((a + b) / 2) + f(b));
    };
    const auto moment = [&](double x) { return x * area(x); };
    const auto m = measure(shape).wood;
    CHECK(m.volume == Approx(simpson(0, bend, area) + simpson(bend, length, area)).epsilon(1e-9));
    CHECK(m.first.x() == Approx(simpson(0, bend, moment) + simpson(bend, length, moment)).epsilon(1e-9));
}

TEST_CASE("a body mirrored, moved or cut again measures as it must", "[body]") {
    for (unsigned seed = 400; seed < 412; ++seed) {
        INFO("seed " << seed);
        const auto shape = drawn(seed, 5, seed % 3 == 0 ? .003 : 0);
        const auto m = measure(shape);

        // Mirrored in the middle plane: y changes its sign, and with it every moment odd in y.
        auto mirrored = shape;
        for (auto& p : mirrored.plan)
            p.at.y() *= -1;
        for (auto& cut : mirrored.cuts) {
            if (auto* pocket = std::get_if<Pocket>(&cut)) {
                std::swap(pocket->low.y(), pocket->high.y());
                pocket->low.y() *= -1;
                pocket->high.y() *= -1;
            } else {
                std::get<Bore>(cut).from.y() *= -1;
                std::get<Bore>(cut).to.y() *= -1;
            }
        }
        const auto other = measure(mirrored).wood;
        const Eigen::Matrix3d mirror = Vector3d(1, -1, 1).asDiagonal();
        CHECK(difference({other.volume, mirror * other.first, mirror * other.second * mirror}, m.wood) <
              1e-8);

        // Moved as a whole: the centre follows, the inertia about it stays.
        auto moved = shape;
        const Vector3d by(.013, -.004, .006);
        for (auto& p : moved.profile)
            p.at += Vector2d(by.x(), by.z());
        for (auto& p : moved.plan)
            p.at += Vector2d(by.x(), by.y());
        for (auto& cut : moved.cuts)
            shift(cut, by);
        const auto before = with_density(m.wood, 400), after = with_density(measure(moved).wood, 400);
        CHECK(after.mass == Approx(before.mass).epsilon(1e-9));
        CHECK((after.centre - before.centre - by).norm() < 1e-9);
        CHECK((after.inertia - before.inertia).norm() < 1e-7 * before.inertia.norm());

        // A cut never adds mass, takes at most what it alone would, and nothing at all a second time.
        auto fewer = shape;
        fewer.cuts.pop_back();
        const double taken = measure(fewer).wood.volume - m.wood.volume, alone = m.removed.back().volume;
        CHECK(taken > -1e-12 * m.uncut.volume);
        CHECK(taken < alone + 1e-12 * m.uncut.volume);
        auto twice = shape;
        twice.cuts.insert(twice.cuts.end(), shape.cuts.begin(), shape.cuts.end());
        CHECK(difference(measure(twice).wood, m.wood) < 1e-8);

        // The order of the cuts does not matter.
        auto reversed = shape;
        std::reverse(reversed.cuts.begin(), reversed.cuts.end());
        CHECK(difference(measure(reversed).wood, m.wood) < 1e-8);
    }
}

TEST_CASE("a cavity filled again weighs as the uncut body", "[body]") {
    const BodyShape shape = drawn(500, 1);
    const auto m = measure(shape);
    CHECK(difference(m.wood + m.removed[0], m.uncut) < 1e-12);
}

TEST_CASE("dragging a cut by hundredths of a millimetre is smooth", "[body]") {
    // A smooth function's third differences are some 1e-8 of the cut here; an error that comes and goes shows
    // in them eight times as large. Where a face is newly met the function itself bends.
    for (const int which : {0, 1, 2, 3}) {
        INFO("cut " << which);
        BodyShape shape = drawn(600, 0);
        shape.cuts = {Bore{{.03, -.01, -.002}, {.06, .012, .022}, .009, true},
                      Bore{{.05, -.03, .012}, {.05, .03, .012}, .006, false},
                      Pocket{{.04, -.008, -.001}, {.07, .008, .0103}},
                      Bore{{.06, 0, -.001}, {.061, .003, .02}, .0095, true}};
        std::vector<double> volume;
        for (int k = 0; k < 80; ++k) {
            auto dragged = shape;
            shift(dragged.cuts[which], 1e-5 * k * Vector3d(1, .4, .3));
            volume.push_back(measure(dragged).wood.volume);
        }
        std::vector<double> jumps;
        for (size_t k = 0; k + 3 < volume.size(); ++k)
            jumps.push_back(std::abs(volume[k] - 3 * volume[k + 1] + 3 * volume[k + 2] - volume[k + 3]));
        std::sort(jumps.begin(), jumps.end());
        const double cut = measure(shape).removed[which].volume;
        CHECK(jumps[jumps.size() * 9 / 10] < 1e-7 * cut);
        CHECK(jumps.back() < 1e-6 * cut);
    }
}

TEST_CASE("a column of wood is what the cuts leave of it", "[body]") {
    BodyShape shape{
        bodies::corners({{0, 0}, {.18, 0}, {.18, .01}, {0, .03}}),
        bodies::corners({{0, -.022}, {.18, -.022}, {.18, .022}, {0, .022}}),
        0,
        {Pocket{{.02, -.01, .005}, {.05, .01, .012}}, Bore{{.03, 0, .02}, {.03, 0, .1}, .01, false}}};
    using Column = std::vector<std::array<double, 2>>;
    CHECK(z_intervals(shape, .09, 0) == Column{{0, .02}});
    const auto column = z_intervals(shape, .03, 0);
    REQUIRE(column.size() == 2);
    CHECK(column[0][0] == 0);
    CHECK(column[0][1] == Approx(.005));
    CHECK(column[1][0] == Approx(.012));
    CHECK(column[1][1] == Approx(.02));
    CHECK(z_intervals(shape, .03, .03).empty());
    CHECK(z_intervals(shape, -.01, 0).empty());
}

TEST_CASE("columns add up to the measured wood", "[body]") {
    // A plain midpoint sum over columns, good to a few parts in 1e5: an independent route to the same volume.
    for (unsigned seed = 700; seed < 703; ++seed) {
        const auto shape = drawn(seed, 4, .003);
        double sum = 0;
        const int nx = 400, ny = 120;
        for (int i = 0; i < nx; ++i)
            for (int j = 0; j < ny; ++j)
                for (const auto& [low, high] :
                     z_intervals(shape, .18 * (i + .5) / nx, -.025 + .05 * (j + .5) / ny))
                    sum += (high - low) * .18 / nx * .05 / ny;
        CHECK(sum == Approx(measure(shape).wood.volume).epsilon(2e-3));
    }
}

TEST_CASE("what can't be measured is refused with its place", "[body]") {
    const auto good = drawn(2, 2);
    CHECK(where(good) == "measured");
    auto bad = good;
    std::swap(bad.profile[2], bad.profile[4]);
    CHECK(where(bad).rfind("profile_mm/", 0) == 0);
    bad = good;
    bad.plan.clear();
    CHECK(where(bad) == "plan_mm");
    bad = good;
    bad.profile.resize(2);
    CHECK(where(bad) == "profile_mm");
    bad = good;
    std::get<Bore>(bad.cuts[0]).diameter = -1e-3;
    CHECK(where(bad) == "cuts/0");
    bad = good;
    std::get<Pocket>(bad.cuts[1]).low.x() = std::nan("");
    CHECK(where(bad) == "cuts/1");
    bad = good;
    bad.edge_radius = -1;
    CHECK(where(bad) == "edge_radius_mm");
    bad = good;
    bad.profile = bodies::corners({{0, 0}, {1, 0}, {1, 1}, {.5, 0}, {0, 1}}); // touches its own bottom
    CHECK(where(bad) == "profile_mm/0");
}
