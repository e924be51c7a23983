// Outlines read from drawing files. Expected numbers by hand from SVG 1.1 (W3C, second edition, 2011) and CSS
// 2.1 (4.3.2: an inch is 96 px); drawings written and painted by another program, the toolkit's own.
#include "support/bench.hpp"
#include "trace/svg_file.hpp"
#include "trace/take_in.hpp"

#include <rampwright/body/fit_outline.hpp>
#include <rampwright/car/car_model.hpp>
#include <rampwright/templates/templates.hpp>

#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <QSvgGenerator>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include <algorithm>
#include <numbers>
#include <numeric>
#include <random>

using namespace rampwright;
using namespace rampwright::ui;
using namespace rampwright::ui::testing;
using std::numbers::pi;

namespace {

DrawnFile read(const std::string& inside,
               const std::string& root = "width='100mm' height='50mm' viewBox='0 0 100 50'") {
    return read_svg(QByteArray::fromStdString("<svg xmlns='http://www.w3.org/2000/svg' " + root + ">" +
                                              inside + "</svg>"));
}

Vec2 size_of(const DrawnFile& file, std::size_t shape = 0) {
    return file.shapes.at(shape).high - file.shapes.at(shape).low;
}

Problem problem_of(const std::string& text) {
    try {
        read_svg(QByteArray::fromStdString(text));
    } catch (const Problem& problem) {
        return problem;
    }
    throw std::runtime_error("it was read");
}

double distance_to(const Vec2& p, const std::vector<Vec2>& polygon) {
    double least = 1e9;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Vec2 &a = polygon[i], along = polygon[(i + 1) % polygon.size()] - a;
        const double length2 = along.squaredNorm();
        const double share = length2 > 0 ? std::clamp((p - a).dot(along) / length2, 0., 1.) : 0;
        least = std::min(least, (p - a - share * along).norm());
    }
    return least;
}

double apart(const std::vector<Vec2>& one, const std::vector<Vec2>& other) {
    double worst = 0;
    for (const Vec2& p : one)
        worst = std::max(worst, distance_to(p, other));
    for (const Vec2& p : other)
        worst = std::max(worst, distance_to(p, one));
    return worst;
}

std::vector<Vec2> polygon_of(const std::vector<PlanPoint>& points) {
    Outline outline;
    for (const PlanPoint& point : points)
        outline.push_back({point.at, point.smooth});
    return flatten(outline, 1e-6);
}

} // namespace

TEST_CASE("sizes are those of width, height and viewBox, in any unit", "[svg]") {
    const std::string box = "<rect x='1' y='2' width='40' height='20'/>";
    CHECK((size_of(read(box)) - Vec2(40, 20)).norm() < 1e-9);
    CHECK((size_of(read(box, "width='10cm' height='5cm' viewBox='0 0 200 100'")) - Vec2(20, 10)).norm() <
          1e-9);
    CHECK((size_of(read(box, "width='8in' height='4in' viewBox='0 0 80 40'")) - Vec2(101.6, 50.8)).norm() <
          1e-9);
    CHECK(
        (size_of(read(box, "width='72pt' height='72pt' viewBox='0 0 100 100'")) - Vec2(10.16, 5.08)).norm() <
        1e-9);
    // User units alone: 96 to the inch, and it says so.
    const DrawnFile plain = read(box, "");
    CHECK((size_of(plain) - Vec2(40, 20) * 25.4 / 96).norm() < 1e-9);
    CHECK_FALSE(plain.sized);
    CHECK(read(box).sized);
    CHECK_FALSE(read(box, "width='100%' height='100%' viewBox='0 0 100 50'").sized);
    // 7.8: by default the drawing keeps its shape and fits; told otherwise it is stretched.
    CHECK((size_of(read(box, "width='200mm' height='50mm' viewBox='0 0 100 50'")) - Vec2(40, 20)).norm() <
          1e-9);
    CHECK((size_of(read(box, "width='200mm' height='50mm' viewBox='0 0 100 50' preserveAspectRatio='none'")) -
           Vec2(80, 20))
              .norm() < 1e-9);
    CHECK((size_of(read(box, "width='200mm' viewBox='0 0 100 50'")) - Vec2(80, 40)).norm() < 1e-9);
}

TEST_CASE("every shape and transform counts", "[svg]") {
    const DrawnFile file =
        read("<rect width='10' height='4' rx='1'/><circle cx='50' cy='20' r='6'/>"
             "<ellipse cx='50' cy='20' rx='9' ry='3'/><polygon points='0,0 8,0 8,8'/>"
             "<polyline points='0 0 7 0 7 7 0 0'/><path d='M0 0h5v5h-5z'/><line x1='0' x2='5'/>");
    REQUIRE(file.shapes.size() == 6);
    CHECK(file.open_lines == 1);
    // Areas by hand: circle 36 pi, ellipse 27 pi, rectangle 40 less 4 - pi at its corners, 32, 25, 24.5.
    const double areas[] = {36 * pi, 27 * pi, 40 - (4 - pi), 32, 25, 24.5};
    for (std::size_t i = 0; i < 6; ++i)
        CHECK(file.shapes[i].area == Approx(areas[i]).epsilon(1e-3));

    const auto lowest = [](const std::string& transform) {
        const DrawnFile moved = read("<g transform='" + transform + "'><path d='M0 0 L10 0 L10 5 Z'/></g>");
        return std::pair{moved.shapes[0].low, moved.shapes[0].high};
    };
    // y points up here: a point (x, y) of the page is (x, -y).
    const auto check = [&](const std::string& transform, Vec2 low, Vec2 high) {
        INFO(transform);
        CHECK((lowest(transform).first - low).norm() < 1e-9);
        CHECK((lowest(transform).second - high).norm() < 1e-9);
    };
    check("translate(3 4)", {3, -9}, {13, -4});
    check("scale(2)", {0, -10}, {20, 0});
    check("scale(2,-1)", {0, 0}, {20, 5});
    check("rotate(90)", {-5, -10}, {0, 0});
    check("rotate(180, 10, 0)", {10, 0}, {20, 5});
    check("matrix(0 1 -1 0 7 0)", {2, -10}, {7, 0});
    check("skewX(45)", {0, -5}, {15, 0});
    check("skewY(45)", {0, -15}, {10, 0});
    check("translate(3,4) scale(2)", {3, -14}, {23, -4}); // the first is outermost
    const DrawnFile nested = read("<svg x='10' y='5' width='20' height='20' viewBox='0 0 10 10'>"
                                  "<rect width='10' height='10'/></svg>");
    CHECK((nested.shapes[0].low - Vec2(10, -25)).norm() < 1e-9);
    CHECK((nested.shapes[0].high - Vec2(30, -5)).norm() < 1e-9);
}

TEST_CASE("what is no line of the drawing is left out, and names are kept", "[svg]") {
    const DrawnFile file =
        read("<defs><rect id='no' width='90' height='40'/></defs><clipPath><rect width='80' "
             "height='40'/></clipPath><rect width='70' height='40' display='none'/>"
             "<rect width='70' height='40' style='fill:red; display: none'/><use href='#no'/>"
             "<text>Wren</text><title>Sheet</title><g id='side'><path d='M0 0h9v9z'>"
             "<title>Wren from the side</title></path></g><rect id='small' width='2' height='2'/>");
    REQUIRE(file.shapes.size() == 2);
    CHECK(file.references == 1);
    CHECK(file.shapes[0].name == QStringLiteral("Wren from the side"));
    CHECK(file.shapes[1].name == QStringLiteral("small"));
    // A millionth of a gap is no gap; a gap one can see is.
    CHECK(read("<path d='M0 0L10 0 10 5 0.000001 0.000001'/>").shapes.size() == 1);
    CHECK_THROWS_AS(read("<path d='M0 0L10 0 10 5 0.5 0.5'/>"), Problem);
}

TEST_CASE("a style's transform is read with its units, and goes before the attribute", "[svg]") {
    // CSS Transforms Module Level 1 (W3C, 2019), 7 and 13; user units are 1 mm here, y upward in what is
    // read.
    const auto check = [](const std::string& attributes, Vec2 low, Vec2 high) {
        const DrawnFile file = read("<rect width='10' height='5' " + attributes + "/>");
        CAPTURE(attributes);
        REQUIRE(file.shapes.size() == 1);
        CHECK((file.shapes[0].low - low).norm() < 1e-9);
        CHECK((file.shapes[0].high - high).norm() < 1e-9);
    };
    check("style='transform: translate(3px, 4px)'", {3, -9}, {13, -4});
    check("style='fill:none;transform:rotate(90deg)'", {-5, -10}, {0, 0});
    check("style='transform: rotate(0.25turn)'", {-5, -10}, {0, 0});
    check("style='transform: rotate(100grad)'", {-5, -10}, {0, 0});
    check("style='transform: translateX(2px) scaleY(2)'", {2, -10}, {12, 0});
    check("style='transform: none' transform='translate(9,9)'", {0, -5}, {10, 0});
    check("style='transform: translate(1px)' transform='translate(9,9)'", {1, -5}, {11, 0});
    CHECK_THROWS_AS(read("<rect width='1' height='1' style='transform: translate(50%)'/>"), Problem);
    CHECK_THROWS_AS(read("<rect width='1' height='1' style='transform: rotate3d(1,1,1,45deg)'/>"), Problem);
    CHECK_THROWS_AS(
        read("<rect width='1' height='1' style='transform: scale(2); transform-origin: center'/>"), Problem);
}

TEST_CASE("lines drawn one by one are joined where their ends meet", "[svg]") {
    // A rectangle of 30 by 10 from four lines in no order, one of them the other way round.
    const DrawnFile four =
        read("<g id='plan'><line x1='0' y1='0' x2='30' y2='0'/><line x1='30' y1='10' x2='0' y2='10'/>"
             "<line x1='30' y1='10' x2='30' y2='0'/><path d='M0 10V0'/></g>"
             "<line x1='50' y1='0' x2='60' y2='0'/>");
    REQUIRE(four.shapes.size() == 1);
    CHECK(four.shapes[0].area == Approx(300).epsilon(1e-12));
    CHECK(four.shapes[0].name == QStringLiteral("plan"));
    CHECK(four.open_lines == 1);
    // Half a disc from an arc and its chord: pi r^2 / 2.
    const DrawnFile half = read("<path d='M0 0A10 10 0 0 0 20 0'/><path d='M0 0H20'/>");
    REQUIRE(half.shapes.size() == 1);
    CHECK(half.shapes[0].area == Approx(std::numbers::pi * 50).epsilon(1e-4));
    // A gap that one can see stays one.
    CHECK_THROWS_AS(read("<path d='M0 0H10V5'/><path d='M10 5.02L0 0'/>"), Problem);
    // A regular polygon of 20 000 edges, shuffled: n r^2 sin(2 pi / n) / 2. The corners lie 6 thousandths
    // apart.
    constexpr int corners = 20000;
    std::vector<int> order(corners);
    std::iota(order.begin(), order.end(), 0);
    std::shuffle(order.begin(), order.end(), std::mt19937(4));
    std::string many;
    const auto corner = [](int n) {
        const double turn = 2 * std::numbers::pi * n / corners;
        return std::to_string(200 * std::cos(turn)) + ' ' + std::to_string(200 * std::sin(turn));
    };
    for (int n : order)
        many += "<path d='M" + corner(n) + "L" + corner(n + 1) + "'/>";
    const DrawnFile ring = read(many);
    REQUIRE(ring.shapes.size() == 1);
    CHECK(ring.shapes[0].area ==
          Approx(corners * 200. * 200 * std::sin(2 * std::numbers::pi / corners) / 2).epsilon(1e-6));
    CHECK(ring.open_lines == 0);
}

TEST_CASE("a bad file is refused in words, with the place", "[svg]") {
    const std::string head =
        "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='10mm' viewBox='0 0 10 10'>";
    const auto check = [](const std::string& text, const std::string& where, const std::string& says) {
        const Problem problem = problem_of(text);
        INFO(problem.where() << ": " << problem.wrong());
        CHECK(problem.exit() == Exit::not_ours);
        CHECK(problem.where().find(where) == 0);
        CHECK(problem.wrong().find(says) != std::string::npos);
        CHECK_FALSE(problem.remedy().empty());
    };
    check("", "line 1", "damaged or no SVG");
    check("{\"format\": \"rampwright-project\"}", "line 1", "damaged or no SVG");
    check("<html/>", "line 1", "no SVG");
    check(head + "\n<path d='M0 0h5v5z'/>\n<g>", "line 3", "damaged");
    check(head + "\n\n<path d='M0 0 L5 q'/></svg>", "line 3, d, character 9", "number is missing");
    check(head + "<g transform='turn(5)'/></svg>", "line 1, transform, character 1", "none");
    check(head + "<g transform='rotate(5'/></svg>", "line 1, transform", "brackets");
    check(head + "<rect width='5ell' height='3'/></svg>", "line 1, width", "unit");
    check(head + "<rect width='-5' height='3'/></svg>", "line 1", "below nothing");
    check(head + "<polygon points='1 2 3'/></svg>", "line 1", "coordinate too many");
    check(head + "</svg>", "-", "holds no line");
    check(head + "<path d='M0 0h5v5'/></svg>", "-", "no line of the drawing is closed");
    check(head + "<use href='#a'/></svg>", "-", "copies");
    check("<svg width='0' height='5'/>", "line 1", "not above nothing");
    check("<svg viewBox='0 0 0 5'/>", "line 1", "no size");
    std::string scales;
    for (int i = 0; i < 50; ++i)
        scales += "scale(1e7) ";
    check(head + "<path transform='" + scales + "' d='M0 0h5v5z'/></svg>", "line 1", "beyond all size");
    std::string deep = head;
    for (int i = 0; i < 5000; ++i)
        deep += "<g>";
    check(deep, "line 1", "nested too deeply");
    CHECK_THROWS_AS(read_svg_file(QStringLiteral("/nowhere/at/all.svg")), Problem);
}

TEST_CASE("damaged drawings never bring the reader down", "[svg]") {
    const Project project = read_project(load_document(demo_path));
    const std::string whole = template_file(project, 0, ".svg");
    std::mt19937 random(11);
    int read_ones = 0, refused = 0;
    for (int i = 0; i < 1500; ++i) {
        std::string text = whole;
        const int changes = 1 + static_cast<int>(random() % 6);
        for (int j = 0; j < changes; ++j) {
            const std::size_t at = random() % text.size();
            switch (random() % 3) {
            case 0:
                text[at] = static_cast<char>(random() % 256);
                break;
            case 1:
                text.erase(at, random() % 30);
                break;
            default:
                text.insert(at, text.substr(random() % text.size(), random() % 20));
            }
        }
        try {
            const DrawnFile file = read_svg(QByteArray::fromStdString(text));
            REQUIRE_FALSE(file.shapes.empty());
            ++read_ones;
        } catch (const Problem& problem) {
            REQUIRE(problem.exit() == Exit::not_ours);
            REQUIRE_FALSE(problem.remedy().empty());
            ++refused;
        }
    }
    CHECK(read_ones > 50);
    CHECK(refused > 50);
}

TEST_CASE("our own templates read back as the outlines they were made from", "[svg]") {
    const Project project = read_project(load_document(demo_path));
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        const DrawnFile file = read_svg(QByteArray::fromStdString(template_file(project, car, ".svg")));
        CHECK(file.sized);
        const BodyPlan& body = project.cars[car].body;
        for (const bool plan : {false, true}) {
            const QString name = plan ? QStringLiteral("top-outline") : QStringLiteral("side-outline");
            const auto shape = std::find_if(file.shapes.begin(), file.shapes.end(),
                                            [&](const DrawnShape& each) { return each.name == name; });
            REQUIRE(shape != file.shapes.end());
            const auto& drawn = plan ? body.plan : body.profile;
            const auto read_back = outline_from(*shape, {plan, 1, false, place_of_outline(body, plan)});
            CAPTURE(project.cars[car].name, plan, drawn.size(), read_back.size());
            CHECK(read_back.size() <= drawn.size());
            CHECK(apart(polygon_of(drawn), polygon_of(read_back)) < 0.05e-3);
        }
    }
}

TEST_CASE("factor, mirror and place of what is taken in", "[svg]") {
    const DrawnFile file = read("<path d='M10 40 L90 40 L90 30 L10 10 Z'/>"); // high at its left end
    const auto right = outline_from(file.shapes[0], {false, 2, true, Vec2(0.001, 0.002)});
    REQUIRE(right.size() == 4);
    double low_x = 1, high_x = 0, low_z = 1, high_at = 0, high_z = 0;
    for (const PlanPoint& point : right) {
        low_x = std::min(low_x, point.at.x());
        high_x = std::max(high_x, point.at.x());
        low_z = std::min(low_z, point.at.y());
        if (point.at.y() > high_z) std::tie(high_z, high_at) = std::pair{point.at.y(), point.at.x()};
    }
    CHECK(low_x == Approx(0.001));
    CHECK(high_x == Approx(0.161));
    CHECK(low_z == Approx(0.002));
    CHECK(high_z == Approx(0.062));
    CHECK(high_at == Approx(0.161)); // mirrored: its high end is the nose now
    const auto top = outline_from(file.shapes[0], {true, 1, false, Vec2(0, 0)});
    double sum_low = 1, sum_high = -1;
    for (const PlanPoint& point : top) {
        sum_low = std::min(sum_low, point.at.y());
        sum_high = std::max(sum_high, point.at.y());
    }
    CHECK(sum_low == Approx(-0.015));
    CHECK(sum_high == Approx(0.015));
}

TEST_CASE("a drawing written by another program is read at its size", "[svg]") {
    // The toolkit's own writer, with its units, groups and transforms: a lens of two arcs 120 mm apart, 30 mm
    // high.
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("lens.svg"));
    QPainterPath lens(QPointF(0, 0));
    lens.quadTo(QPointF(60, 30), QPointF(120, 0));
    lens.quadTo(QPointF(60, -30), QPointF(0, 0));
    lens.closeSubpath();
    {
        QSvgGenerator writer;
        writer.setFileName(path);
        writer.setResolution(254); // a tenth of a millimetre a dot
        writer.setSize({1600, 800});
        writer.setViewBox(QRect(0, 0, 1600, 800));
        QPainter painter(&writer);
        painter.translate(200, 400);
        painter.scale(10, 10);
        painter.setBrush(Qt::black);
        painter.setPen(Qt::NoPen);
        painter.drawPath(lens);
    }
    const DrawnFile file = read_svg_file(path);
    REQUIRE_FALSE(file.shapes.empty());
    CHECK(file.sized);
    // The writer rounds the page to hundredths of a millimetre: one part in ten thousand.
    CHECK(size_of(file).x() == Approx(120).epsilon(2e-4));
    CHECK(size_of(file).y() == Approx(30).epsilon(2e-4)); // each parabola rises to half its control point
    CHECK(file.shapes[0].area == Approx(2 * 2. / 3 * 120 * 15).epsilon(1e-3));
    CHECK(outline_from(file.shapes[0], {false, 1, false, Vec2(0, 0)}).size() <= 8);
}

TEST_CASE("the areas read are those another program paints", "[svg]") {
    // The toolkit's renderer fills the same drawing at 20 dots a millimetre; its dots are counted.
    for (const std::string inside :
         {"<path d='M20 25 A15 8 30 1 0 45 30 L70 40 Q80 10 50 8 T20 25 Z'/>",
          "<g transform='translate(50 25) rotate(-20) scale(1.5 -0.8)'><path d='M-20-10c5-10 25-10 30 0s10 "
          "15 0 "
          "20a12 6 15 0 1-24-4z'/></g>",
          "<rect x='15' y='10' width='60' height='24' rx='9' ry='5' transform='skewX(12)'/>"}) {
        const std::string text = "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='50mm' "
                                 "viewBox='0 0 100 50'>" +
                                 inside + "</svg>";
        INFO(inside);
        QSvgRenderer renderer(QByteArray::fromStdString(text));
        REQUIRE(renderer.isValid());
        QImage image(2000, 1000, QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        renderer.render(&painter);
        painter.end();
        double dark = 0, across = 0, down = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const double ink = (255 - qGray(image.pixel(x, y))) / 255.;
                dark += ink;
                across += ink * (x + 0.5) / 20;
                down += ink * (y + 0.5) / 20;
            }
        const DrawnFile file = read_svg(QByteArray::fromStdString(text));
        REQUIRE(file.shapes.size() == 1);
        CHECK(file.shapes[0].area == Approx(dark / 400).epsilon(2e-3));
        // And its middle lies where that program paints it.
        const auto polygon = flatten(file.shapes[0].line, 0.001);
        double twice = 0;
        Vec2 moment = Vec2::Zero();
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Vec2 &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
            const double cross = a.x() * b.y() - a.y() * b.x();
            twice += cross;
            moment += cross * (a + b) / 3;
        }
        CHECK((moment / twice - Vec2(across / dark, -down / dark)).norm() < 0.03);
    }
}
