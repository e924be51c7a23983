#include <rampwright/bench/combine.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;

TEST_CASE("the gauge block of the GUM, example H.1") {
    // JCGM 100:2008, H.1, as quoted in two public test suites (seen there); lengths in mm.
    const double infinite = std::numeric_limits<double>::infinity();
    const Formula length = [](const Eigen::VectorXd& x) {
        const double standard = x[0], difference = x[1], expansion = x[2], off = x[3], expansion_gap = x[4],
                     temperature_gap = x[5];
        return standard + difference - standard * (expansion_gap * off + expansion * temperature_gap);
    };
    const Combined l = combine(length, {{50.000623, 25e-6, 18},
                                        {215e-6, 9.7e-6, 25.6},
                                        {11.5e-6, 1.2e-6, infinite},
                                        {-0.1, 0.41, infinite},
                                        {0, 0.58e-6, 50},
                                        {0, 0.029, 2}});
    CHECK(l.value == Approx(50.000838).epsilon(1e-10));
    CHECK(l.sigma * 1e6 == Approx(31.7).margin(0.05)); // printed 32, and 31.7 in its text
    CHECK(std::abs(l.contributions[0]) * 1e6 == Approx(25).margin(0.05));
    CHECK(std::abs(l.contributions[1]) * 1e6 == Approx(9.7).margin(0.05));
    CHECK(l.contributions[2] == 0); // the temperature gap is expected to be zero
    CHECK(l.contributions[3] == 0);
    CHECK(std::abs(l.contributions[4]) * 1e6 == Approx(2.9).margin(0.05));
    CHECK(std::abs(l.contributions[5]) * 1e6 == Approx(16.6).margin(0.1)); // 16.675, printed cut off
    CHECK(l.freedom == Approx(16.7).margin(0.1));                          // printed 16, cut off
    // The printed 93 nm is 2.92 times the rounded 32; unrounded it is half a nanometre less.
    Combined cut = l;
    cut.freedom = std::floor(l.freedom);
    CHECK(cut.expanded(0.99) / cut.sigma == Approx(2.9208).margin(1e-4));
    CHECK(cut.expanded(0.99) * 1e6 == Approx(92.5).margin(0.2));
}

TEST_CASE("effective degrees of freedom, GUM G.4.1") {
    // u 0.25, 0.57, 0.82 % from 10, 5 and 15 readings of a product: 19.0 (seen in two public suites), t 2.09.
    const Formula product = [](const Eigen::VectorXd& x) { return x[0] * x[1] * x[2]; };
    const Combined y = combine(product, {{1, 0.0025, 9}, {1, 0.0057, 4}, {1, 0.0082, 14}});
    CHECK(y.freedom == Approx(19.0).margin(0.1));
    Combined cut = y;
    cut.freedom = 19;
    CHECK(cut.expanded(0.95) / cut.sigma == Approx(2.0930).margin(1e-4));
    CHECK(cut.expanded(0.95) == Approx(0.022).margin(0.0005));
}

TEST_CASE("a thermometer's calibration line, GUM H.3") {
    // Data and printed results from memory; the results, recomputed outside the project, agree with the
    // print.
    Eigen::VectorXd t(11), b(11);
    t << 21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511;
    b << -.171, -.169, -.166, -.159, -.164, -.165, -.156, -.157, -.159, -.161, -.160;
    const LineFit line = fit_line(t, b, 20);
    CHECK(line.at_origin == Approx(-0.171204).margin(1e-6));
    CHECK(line.at_origin_sigma == Approx(0.002878).margin(1e-6));
    CHECK(line.slope == Approx(0.0021827).margin(1e-7));
    CHECK(line.slope_sigma == Approx(0.0006679).margin(1e-7));
    CHECK(line.correlation == Approx(-0.93043).margin(1e-5));
    CHECK(line.scatter == Approx(0.0034976).margin(1e-7));
    CHECK(line.at(30).value == Approx(-0.149377).margin(1e-6));
    CHECK(line.at(30).sigma == Approx(0.004139).margin(1e-6));

    // The same height and sigma from the law of propagation with that correlation.
    Eigen::MatrixXd correlation(2, 2);
    correlation << 1, line.correlation, line.correlation, 1;
    const Combined height =
        combine([](const Eigen::VectorXd& x) { return x[0] + 10 * x[1]; },
                {{line.at_origin, line.at_origin_sigma, 9}, {line.slope, line.slope_sigma, 9}}, correlation);
    CHECK(height.value == Approx(line.at(30).value).epsilon(1e-12));
    CHECK(height.sigma == Approx(line.at(30).sigma).epsilon(1e-9));
}
