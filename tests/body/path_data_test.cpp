// Path data by SVG 1.1 (W3C Recommendation, second edition, 2011), chapter 8 and appendix F.6.
#include <rampwright/body/fit_outline.hpp>
#include <rampwright/body/path_data.hpp>
#include <rampwright/core/problem.hpp>

#include <catch2/catch.hpp>

#include <numbers>
#include <random>

using namespace rampwright;
using Eigen::Vector2d;
using std::numbers::pi;

namespace {

DrawnLine only(const std::string& data) {
    const auto lines = read_path_data(data);
    REQUIRE(lines.size() == 1);
    return lines.front();
}

std::vector<Vector2d> ends(const DrawnLine& line) {
    std::vector<Vector2d> points{line.pieces.front().control[0]};
    for (const OutlinePiece& piece : line.pieces)
        points.push_back(piece.control[3]);
    return points;
}

double signed_area(const std::vector<Vector2d>& polygon) {
    double twice = 0;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vector2d &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return twice / 2;
}

std::string where_of(const std::string& data) {
    try {
        read_path_data(data);
    } catch (const Problem& problem) {
        CHECK(problem.exit() == Exit::not_ours);
        CHECK_FALSE(problem.remedy().empty());
        return problem.where();
    }
    return "read";
}

} // namespace

TEST_CASE("every command, absolute and relative, draws the same", "[path]") {
    // 8.3.2 to 8.3.7; the relative twin written out by hand.
    const DrawnLine one = only("M10 20 L30 20 H50 V40 C50 50 40 60 30 60 S10 50 10 40 Q5 35 10 30 T10 22 Z");
    const DrawnLine two = only("m10 20 20 0h20v20c0 10-10 20-20 20s-20-10-20-20q-5-5 0-10t0-8z");
    REQUIRE(one.pieces.size() == two.pieces.size());
    CHECK(one.closed);
    for (std::size_t i = 0; i < one.pieces.size(); ++i)
        for (std::size_t j = 0; j < 4; ++j)
            CHECK((one.pieces[i].control[j] - two.pieces[i].control[j]).norm() < 1e-12);
    // The first control point of S is the last one of the C before it, mirrored at its end: 2 (30,60) -
    // (40,60).
    CHECK((one.pieces[4].control[1] - Vector2d(20, 60)).norm() < 1e-12);
    // The control point of Q at (5, 35) gives T one at (15, 25): two thirds of the way to it from both ends.
    CHECK((one.pieces[6].control[1] - (Vector2d(10, 30) + 2. / 3 * Vector2d(5, -5))).norm() < 1e-12);
}

TEST_CASE("numbers run together as the grammar allows", "[path]") {
    const auto points = ends(only("M.5.5L-1-1e1,+3.25 4."));
    REQUIRE(points.size() == 3);
    CHECK(points[0] == Vector2d(.5, .5));
    CHECK(points[1] == Vector2d(-1, -10));
    CHECK(points[2] == Vector2d(3.25, 4));
    // Flags of an arc need no space after them.
    CHECK((ends(only("M0 0a5 5 0 0110 0")).back() - Vector2d(10, 0)).norm() < 1e-12);
}

TEST_CASE("a path may close and go on, and hold several lines", "[path]") {
    const auto lines = read_path_data("M0 0 4 0 4 4z l10 0 0 5 M20 20h5");
    REQUIRE(lines.size() == 3);
    CHECK(lines[0].closed);
    CHECK(lines[0].pieces.size() == 3);
    // 8.3.3: what follows a close starts at the closed line's first point.
    CHECK(ends(lines[1]).front() == Vector2d(0, 0));
    CHECK_FALSE(lines[1].closed);
    CHECK(lines[2].pieces.size() == 1);
    CHECK(read_path_data("").empty());
    CHECK(read_path_data("M1 1").empty());
    // Coming back without a close is closed too.
    CHECK(only("M0 0H4V4L0 0").closed);
}

TEST_CASE("arcs are those of appendix F.6", "[path]") {
    SECTION("the pie of 8.3.8: three quarters of a circle of 150 about (300, 200)") {
        const auto polygon = flatten(only("M300,200 h-150 a150,150 0 1,0 150,-150 z"), 1e-4);
        CHECK(std::abs(signed_area(polygon)) == Approx(0.75 * pi * 150 * 150).epsilon(1e-5));
        for (const Vector2d& p : polygon)
            CHECK(((p - Vector2d(300, 200)).norm() < 150 + 1e-3 && !(p.x() < 299.9 && p.y() < 199.9)));
    }
    SECTION("sweep goes towards growing angles, y pointing down") {
        // From (0,0) to (10,0) on a radius of 5 with sweep: over (5,-5).
        const DrawnLine up = only("M0 0A5 5 0 0 1 10 0");
        CHECK((up.pieces[up.pieces.size() / 2].control[0] - Vector2d(5, -5)).norm() < 1e-6);
        const DrawnLine down = only("M0 0A5 5 0 0 0 10 0");
        CHECK((down.pieces[down.pieces.size() / 2].control[0] - Vector2d(5, 5)).norm() < 1e-6);
    }
    SECTION("all four arcs between two points lie on ellipses of those axes, turned") {
        // F.6.2: ((x cos + y sin)/rx)² + ((-x sin + y cos)/ry)² = 1 about a common centre.
        const double rx = 30, ry = 12, phi = 25 * pi / 180;
        double swept = 0;
        for (const bool large : {false, true})
            for (const bool sweep : {false, true}) {
                const DrawnLine line =
                    only("M3 4A30 12 25 " + std::to_string(large) + " " + std::to_string(sweep) + " 20 -6");
                CHECK((ends(line).back() - Vector2d(20, -6)).norm() < 1e-12);
                const auto to_circle = [&](const Vector2d& p) {
                    return Vector2d((std::cos(phi) * p.x() + std::sin(phi) * p.y()) / rx,
                                    (-std::sin(phi) * p.x() + std::cos(phi) * p.y()) / ry);
                };
                std::vector<Vector2d> unit;
                for (const Vector2d& p : flatten(line, 1e-7))
                    unit.push_back(to_circle(p));
                // The centre of the unit circle through first, middle and last.
                const Vector2d a = unit.front(), b = unit[unit.size() / 2], c = unit.back();
                Eigen::Matrix2d m;
                m << 2 * (b - a).transpose(), 2 * (c - a).transpose();
                const Vector2d centre = m.inverse() * Vector2d(b.squaredNorm() - a.squaredNorm(),
                                                               c.squaredNorm() - a.squaredNorm());
                double way = 0;
                for (std::size_t i = 0; i < unit.size(); ++i) {
                    CHECK((unit[i] - centre).norm() == Approx(1).margin(2e-7));
                    if (i == 0) continue;
                    const Vector2d u = unit[i - 1] - centre, v = unit[i] - centre;
                    way += std::atan2(u.x() * v.y() - u.y() * v.x(), u.dot(v));
                }
                CHECK((way > 0) == sweep);
                CHECK((std::abs(way) > pi) == large);
                swept += std::abs(way);
            }
        CHECK(swept == Approx(4 * pi).epsilon(1e-3)); // each pair makes a whole turn
    }
    SECTION("F.6.6: radii too small grow, negative ones count as positive, none is a line") {
        const auto half = flatten(only("M0 0A1 -1 0 0 1 10 0"), 1e-6);
        for (const Vector2d& p : half)
            CHECK((p - Vector2d(5, 0)).norm() == Approx(5).epsilon(1e-6));
        CHECK(only("M0 0A0 5 0 0 1 10 0").pieces.front().straight);
    }
}

TEST_CASE("what is no path is refused with its place", "[path]") {
    CHECK(where_of("M0 0 L10 x") == "character 10");
    CHECK(where_of("L10 10") == "character 1");
    CHECK(where_of("M0 0 A5 5 0 2 1 10 0") == "character 13");
    CHECK(where_of("M0 0 L10") == "character 9");
    CHECK(where_of("M0 0 L1e400 0") == "character 7");
    CHECK(where_of("M0 0 Linf 0") == "character 7");
    CHECK(where_of("M0 0 z 5") == "character 8");
    CHECK(where_of("M0 0 K5") == "character 6");
}

TEST_CASE("no text brings the reader down", "[path]") {
    const std::vector<std::string> words{"M0 0",
                                         "m",
                                         "L",
                                         "l5-3",
                                         "h",
                                         "V7",
                                         "C1 2 3 4 5 6",
                                         "c",
                                         "s",
                                         "S4,4,9 1",
                                         "Q",
                                         "q3 3 0 6",
                                         "t",
                                         "T8 8",
                                         "A5 3 20 0 1 9 9",
                                         "a",
                                         "z",
                                         "Z",
                                         "0",
                                         "1",
                                         "-",
                                         ".5",
                                         "e2",
                                         "1e3",
                                         ",",
                                         " ",
                                         "\n",
                                         "+",
                                         "inf",
                                         "17.25",
                                         "\xff"};
    std::mt19937 random(7);
    int read = 0;
    for (int i = 0; i < 20000; ++i) {
        std::string data = i % 2 ? "M0 0" : "";
        const int length = static_cast<int>(random() % 12);
        for (int j = 0; j < length; ++j)
            data += words[random() % words.size()];
        try {
            for (const DrawnLine& line : read_path_data(data)) {
                ++read;
                REQUIRE_FALSE(line.pieces.empty());
                for (const OutlinePiece& piece : line.pieces) {
                    REQUIRE(piece.control[0] != piece.control[3]);
                    for (const Vector2d& p : piece.control)
                        REQUIRE(p.allFinite());
                }
            }
        } catch (const Problem& problem) {
            REQUIRE(problem.exit() == Exit::not_ours);
        }
    }
    CHECK(read > 500);
}
