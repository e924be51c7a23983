#include "body/bodies.hpp"
#include "body/modeller.hpp"

#include <catch2/catch.hpp>

using namespace rampwright;

namespace {

/// Everything that a measure says, against the modeller. `own` and `cut` are the tolerances for the whole
/// body and for what a cut alone removes.
void compare(const BodyShape& shape, const TopoDS_Shape& uncut, double own, double cut) {
    const auto m = measure(shape);
    CHECK(bodies::difference(m.uncut, modeller::moments(uncut)) < own);
    std::vector<TopoDS_Shape> tools;
    for (const auto& c : shape.cuts)
        tools.push_back(modeller::solid(c));
    for (size_t i = 0; i < tools.size(); ++i) {
        const auto removed = modeller::moments(modeller::common(uncut, tools[i]));
        INFO("cut " << i << ": " << m.removed[i].volume << " m³");
        if (m.removed[i].volume > 1e-12) // a thousandth of a mm³ is nothing to compare
            CHECK(bodies::difference(m.removed[i], removed) < cut);
        else
            CHECK(removed.volume < 1.1e-12);
    }
    CHECK(bodies::difference(m.wood, modeller::moments(modeller::less(uncut, tools))) < own);
}

} // namespace

TEST_CASE("flat-faced bodies agree with a solid modeller to 1e-9", "[body][modeller]") {
    for (unsigned seed = 0; seed < 12; ++seed) {
        INFO("seed " << seed);
        bodies::Draw u(seed);
        auto shape = bodies::wedge(u, false);
        for (unsigned i = 0; i < 2 + seed % 5; ++i)
            shape.cuts.push_back(bodies::pocket(u));
        compare(shape, modeller::uncut(shape), 1e-9, 1e-9);
    }
}

TEST_CASE("drilled bodies agree with a solid modeller to 1e-6", "[body][modeller]") {
    for (unsigned seed = 100; seed < 124; ++seed) {
        INFO("seed " << seed);
        bodies::Draw u(seed);
        auto shape = bodies::wedge(u, false);
        for (unsigned i = 0; i < 3 + seed % 5; ++i) {
            if (i % 3 == 0)
                shape.cuts.push_back(bodies::pocket(u));
            else
                shape.cuts.push_back(bodies::bore(u, i % 3 == 1));
        }
        compare(shape, modeller::uncut(shape), 1e-6, 1e-6);
    }
}

TEST_CASE("bodies with smooth outlines agree with a solid modeller to 1e-4", "[body][modeller]") {
    for (unsigned seed = 200; seed < 208; ++seed) {
        INFO("seed " << seed);
        bodies::Draw u(seed);
        auto shape = bodies::wedge(u, true);
        for (unsigned i = 0; i < 2 + seed % 3; ++i) {
            if (i % 2 == 0)
                shape.cuts.push_back(bodies::bore(u, i % 4 == 0));
            else
                shape.cuts.push_back(bodies::pocket(u));
        }
        compare(shape, modeller::uncut(shape), 1e-4, 1e-4);
    }
}
