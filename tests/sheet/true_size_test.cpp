#include "sheet/paint.hpp"
#include "sheet/pdf_tools.hpp"
#include "support/demo.hpp"

#include <rampwright/body/outline.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace rampwright;
using namespace rampwright::test;
using ui::View;
using ui::paper::CheckBar;
using ui::paper::Page;
using ui::paper::Paper;
using ui::paper::PlacedTemplate;
using ui::paper::Sheet;

namespace {

constexpr double allowed = 0.05; // mm, what a printed template may be off

/// A bar's length as ink: from where black begins to where it ends.
double length_of(const PdfFile& file, std::size_t page, const CheckBar& bar) {
    const bool across = bar.from.y() == bar.to.y();
    const QRectF around = QRectF(bar.from, bar.to).normalized().adjusted(-1.5, -1.5, 1.5, 1.5);
    const Raster picture = raster(file, page, around);
    // The bar lies to the right of its direction on the page: below a lying one, left of an upright one.
    const auto strokes =
        across ? crossings_across(picture, bar.from.y() + 1) : crossings_down(picture, bar.from.x() - 1);
    REQUIRE(strokes.size() >= 5);
    return strokes.back().at + strokes.back().width / 2 - (strokes.front().at - strokes.front().width / 2);
}

/// The template's outline as points of the model, mm, and its edges' directions: straight from the plan, by
/// the core's own curves, not by what the sheet draws.
struct ModelEdge {
    QPointF from, to;
};
std::vector<ModelEdge> model_edges(const CarPlan& plan, View view) {
    Outline outline;
    for (const PlanPoint& point : view == View::side ? plan.body.profile : plan.body.plan)
        outline.push_back({point.at, point.smooth});
    const std::vector<Eigen::Vector2d> points = flatten(outline, 1e-6);
    std::vector<ModelEdge> edges;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Eigen::Vector2d &a = points[i], &b = points[(i + 1) % points.size()];
        edges.push_back({{a.x() * 1e3, a.y() * 1e3}, {b.x() * 1e3, b.y() * 1e3}});
    }
    return edges;
}

/// How far the outline's stroke lies from where the model has it, mm; the stroke is told by its width.
double miss(const std::vector<Crossing>& strokes, double expected, double slant) {
    double least = 99;
    for (const Crossing& each : strokes)
        if (std::abs(each.width - 0.35 * slant) < 0.06) least = std::min(least, std::abs(each.at - expected));
    return least;
}

struct Checked {
    int points = 0;
    double worst = 0;
};

/// Compares points along the model's outline with the ink on the page, where no other line is near.
Checked compare(const PdfFile& file, std::size_t page, const PlacedTemplate& placed, const CarPlan& plan) {
    const Raster picture = raster(file, page, placed.window);
    const QRectF inside = picture.window.adjusted(0.5, 0.5, -0.5, -0.5);
    Checked checked;
    for (const ModelEdge& edge : model_edges(plan, placed.view)) {
        const QPointF along = edge.to - edge.from;
        const double length = std::hypot(along.x(), along.y());
        const int count = std::max(1, static_cast<int>(length / 9));
        for (int i = 0; i < count; ++i) {
            const QPointF model = edge.from + along * ((i + 0.5) / count);
            const QPointF at = placed.origin + QPointF(model.x(), -model.y()) * placed.scale;
            if (!inside.contains(at)) continue;
            const bool level = std::abs(along.x()) >= std::abs(along.y());
            const double slant = length / std::abs(level ? along.x() : along.y());
            const double off = level ? miss(crossings_down(picture, at.x()), at.y(), slant)
                                     : miss(crossings_across(picture, at.y()), at.x(), slant);
            // A centre line or a pocket's mouth on the outline makes the stroke another one: passed over, but
            // most points are free.
            if (off > 5) continue;
            ++checked.points;
            checked.worst = std::max(checked.worst, off);
        }
    }
    return checked;
}

void check_sheet(const Project& project, std::size_t car, Paper paper, double printed_bar, int least_points) {
    const Sheet sheet = sheet_of(project, car, paper, printed_bar);
    const PdfFile file(ui::paper::to_pdf(sheet, sheet_date));
    const double scale = 100 / printed_bar;
    int bars = 0, points = 0;
    for (std::size_t n = 0; n < sheet.pages.size(); ++n) {
        const Page& page = sheet.pages[n];
        CAPTURE(project.cars[car].name, n + 1, page.title.toStdString());
        for (const CheckBar& bar : page.bars) {
            CHECK(length_of(file, n, bar) == Approx(bar.length * scale).margin(allowed));
            ++bars;
        }
        if (!page.templates.empty()) CHECK(page.bars.size() == 2);
        for (const PlacedTemplate& placed : page.templates) {
            CHECK(placed.scale == Approx(scale).epsilon(1e-12));
            const Checked checked = compare(file, n, placed, project.cars[car]);
            CHECK(checked.worst < allowed);
            points += checked.points;
        }
    }
    CHECK(bars >= 2);
    CHECK(points >= least_points);
}

} // namespace

TEST_CASE("printed at 100 %, bars and templates are true to 0.05 mm on either paper", "[sheet][size]") {
    const Project project = demo_project();
    for (const Paper paper : {Paper::letter, Paper::a4})
        for (std::size_t car = 0; car < project.cars.size(); ++car)
            check_sheet(project, car, paper, 100, 40);
}

TEST_CASE("a printer that shrinks gets a print that makes up for it", "[sheet][size]") {
    // The bar came out at 97 mm: everything true to size is drawn 100/97 larger.
    for (const double bar : {97.0, 101.5})
        check_sheet(demo_project(), 2, Paper::a4, bar, 30);
}

TEST_CASE("a long and wide block is split over pages without losing its size", "[sheet][size]") {
    const Project project = long_car(0.46, 0.23, 0.06);
    const Sheet sheet = sheet_of(project, 2, Paper::letter);
    std::size_t tiles = 0;
    for (const Page& page : sheet.pages)
        tiles += page.templates.size();
    // 466 mm over 191.9 mm with 20 mm of overlap: three columns; the top view takes two rows.
    CHECK(tiles == 3 + 6);
    check_sheet(project, 2, Paper::letter, 100, 80);
}

TEST_CASE("the measure itself finds a template that is off", "[sheet][size]") {
    const Project project = demo_project();
    const Sheet sheet = sheet_of(project, 0, Paper::a4);
    const PdfFile file(ui::paper::to_pdf(sheet, sheet_date));
    for (std::size_t n = 0; n < sheet.pages.size(); ++n)
        for (PlacedTemplate placed : sheet.pages[n].templates) {
            placed.origin += QPointF(0.1, 0.1);
            CHECK(compare(file, n, placed, project.cars[0]).worst > allowed);
            placed.origin -= QPointF(0.1, 0.1);
            CarPlan other = project.cars[0];
            for (PlanPoint& point : other.body.profile)
                point.at *= 1.002;
            for (PlanPoint& point : other.body.plan)
                point.at *= 1.002;
            CHECK(compare(file, n, placed, other).worst > allowed);
        }
}
