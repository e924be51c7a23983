#include <bench/bench.hpp>
#include <body/bodies.hpp>
#include <body/modeller.hpp>
#include <cmath>
#include <numbers>

namespace rampwright {

namespace {

/// Sawn, drilled and tilted bodies with three to seven cuts that overlap and break out, as the tests compare.
std::vector<BodyShape> drilled_bodies() {
    std::vector<BodyShape> all;
    for (unsigned seed = 100; seed < 120; ++seed) {
        bodies::Draw u(seed);
        all.push_back(bodies::wedge(u, false));
        for (unsigned i = 0; i < 3 + seed % 5; ++i) {
            if (i % 3 == 0)
                all.back().cuts.push_back(bodies::pocket(u));
            else
                all.back().cuts.push_back(bodies::bore(u, i % 3 == 1));
        }
    }
    return all;
}

Moments modelled(const BodyShape& shape) {
    std::vector<TopoDS_Shape> tools;
    for (const auto& cut : shape.cuts)
        tools.push_back(modeller::solid(cut));
    return modeller::moments(modeller::less(modeller::uncut(shape), tools));
}

/// A block with two equal bores that cross at right angles, whose volume has a closed form.
BodyShape crossed() {
    return {bodies::corners({{0, 0}, {.18, 0}, {.18, .03}, {0, .03}}),
            bodies::corners({{0, -.022}, {.18, -.022}, {.18, .022}, {0, .022}}),
            0,
            {Bore{{.05, -.03, .015}, {.05, .03, .015}, .01, false},
             Bore{{-.01, 0, .015}, {.19, 0, .015}, .01, false}}};
}

double crossed_volume() {
    const double r = .005;
    return .18 * .044 * .03 - std::numbers::pi * r * r * (.18 + .044) + 16 * r * r * r / 3;
}

bench::Result against_modeller() {
    const auto all = drilled_bodies();
    std::vector<Moments> ours, theirs;
    const double own = bench::least(5, [&] {
        ours.clear();
        return bench::core_seconds([&] {
                   for (int n = 0; n < 10; ++n)
                       for (const auto& shape : all)
                           ours.push_back(measure(shape).wood);
               }) /
               10;
    });
    const double other = bench::core_seconds([&] {
        for (const auto& shape : all)
            theirs.push_back(modelled(shape));
    });
    double apart = 0;
    for (size_t i = 0; i < all.size(); ++i)
        apart = std::max(apart, bodies::difference(ours[i], theirs[i]));
    const auto error = [](double volume) {
        return bench::digits(std::abs(volume / crossed_volume() - 1), 2);
    };
    return {other / own, "times",
            "Open CASCADE's Boolean cut and volume properties of the same 20 drilled bodies, one core; " +
                bench::digits(own / 20 * 1e3, 3) + " ms against " + bench::digits(other / 20 * 1e3, 3) +
                " ms a body; apart by at most " + bench::digits(apart, 2) +
                " of the body; error on two crossing bores with a closed form: ours " +
                error(measure(crossed()).wood.volume) + ", theirs " + error(modelled(crossed()).volume)};
}

/// Bores and pockets in turn along a long board, each opening the top or the side, each met by its neighbour.
BodyShape board(int cuts) {
    BodyShape shape{bodies::corners({{0, 0}, {2, 0}, {2, .03}, {0, .03}}),
                    bodies::corners({{0, -.022}, {2, -.022}, {2, .022}, {0, .022}}),
                    0,
                    {}};
    for (int i = 0; i < cuts; ++i) {
        const double x = .02 + .014 * i;
        if (i % 2)
            shape.cuts.push_back(Pocket{{x - .008, -.01, .02}, {x + .008, .01, .04}});
        else
            shape.cuts.push_back(Bore{{x, -.03, .02}, {x + .003, .01, .022}, .009, true});
    }
    return shape;
}

bench::Result time_per_cut() {
    std::string curve;
    double last = 0, first = 0;
    for (const int cuts : {4, 8, 16, 32, 64, 128}) {
        const BodyShape shape = board(cuts);
        const int calls = 512 / cuts;
        last = bench::least(5, [&] {
            return bench::core_seconds([&] {
                       for (int n = 0; n < calls; ++n)
                           measure(shape);
                   }) /
                   calls;
        });
        if (cuts == 4) first = last;
        curve +=
            (curve.empty() ? "" : ", ") + std::to_string(cuts) + ": " + bench::digits(last * 1e3, 3) + " ms";
    }
    return {last / 128 * 1e6, "us",
            "a body of 128 cuts, each meeting its neighbours; by number of cuts " + curve +
                "; the time grows as their number to the power " +
                bench::digits(std::log(last / first) / std::log(32.), 3)};
}

const bench::Registered modeller_ratio{"body-vs-solid-modeller", against_modeller};
const bench::Registered cut_time{"body-time-per-cut", time_per_cut};

} // namespace

} // namespace rampwright
