#include "sheet/paint.hpp"
#include "sheet/pdf_tools.hpp"
#include "support/demo.hpp"

#include <rampwright/results/in_units.hpp>

#include <catch2/catch.hpp>

#include <regex>

using namespace rampwright;
using namespace rampwright::test;
using ui::paper::Paper;

namespace {

/// What may stand in millimetres and grams where people read inches and ounces, and why.
struct Allowed {
    const char* pattern;
    const char* why;
};
constexpr Allowed allow_list[] = {
    {R"((in|oz|in²) \((≈ )?[−0-9.]+ (mm|g|cm²)\))",
     "in brackets after the person's own: a rule, a drill bit or a scale may have only those"},
    {R"(This bar is 100 mm long)", "the bar itself: it is laid against a rule with millimetres"},
    {R"(the last field: 100 mm and 4 in\.)", "how to measure the two bars"},
    {R"(the 100 mm bar)", "which of the two bars is measured"},
    {R"(whose 100 mm bar came out at [0-9.]+ mm)", "what the person measured on that bar"},
    {R"(Piece oz g Running total, oz Running total, g Weighed, oz)", "the weight schedule lists both units"},
    {R"(No\. Weight oz g Lies in)", "the ballast map lists both units"},
};

/// Text in the order in which it was set, cell by cell, every break of line made one space.
std::string text_of(const Project& project, std::size_t car, Paper paper, double bar = 100) {
    const PdfFile file(ui::paper::to_pdf(sheet_of(project, car, paper, bar), sheet_date));
    return std::regex_replace(file.raw_text(), std::regex(R"(\s+)"), " ");
}

/// Every metric unit for lengths, areas, volumes, masses and densities that no entry of the list allows, with
/// what stands around it.
std::vector<std::string> strays(std::string text) {
    for (const Allowed& each : allow_list)
        text = std::regex_replace(text, std::regex(each.pattern), "#");
    // A unit by itself: not part of a word, nor of another unit.
    static const std::regex unit(R"((^|[ (])(mm|cm|g|kg|mg|mm²|cm²|mm³|cm³|kg/m³|g mm²|m/s)(?=$|[ ,.;:)]))");
    std::vector<std::string> found;
    for (std::sregex_iterator at(text.begin(), text.end(), unit), end; at != end; ++at) {
        const auto from = std::max<std::ptrdiff_t>(0, at->position() - 40);
        found.push_back(text.substr(static_cast<std::size_t>(from), 60));
    }
    return found;
}

/// The demo in inches with what makes pages speak: an as-built car that is off, a bit nobody owns, a wall too
/// thin, putty that overflows, glue weighed, an axle bent.
Project telling() {
    Project project = demo_project();
    project.units = UnitSystem::inch_ounce;
    project.tools.drill_bits = {2e-3};
    project.tools.saw_kerf = 1.7e-3;
    project.worse_scale.offset = 0.1e-3;
    CarPlan& car = project.cars[0];
    car.as_built.mass = 0.1405;
    car.as_built.balance_ahead_of_rear_axle = 0.047;
    car.readings.whole = {0.1404, 0.1406};
    car.ballast[0].held = "screw";
    car.ballast[0].held_mass = 1.3e-3;
    car.steer.bend = 0.04;
    car.steer.turn = 0.3;
    car.steer.drift = 0.02;
    car.steer.over = 1.5;
    CutPlan hollow;
    hollow.name = "hollow";
    hollow.is_bore = true;
    hollow.from = {0.14, 0, 0.016};
    hollow.to = {0.14, 0, 0.001};
    hollow.diameter = 6e-3;
    car.body.cuts.push_back(hollow);
    BallastPlan putty;
    putty.name = "putty";
    putty.shape = PieceShape::putty;
    putty.material = "tungsten putty";
    putty.mass = 9e-3;
    putty.mass_given = true;
    putty.in = hollow.name;
    car.ballast.push_back(putty);
    return project;
}

} // namespace

TEST_CASE("a sheet in inches and ounces has millimetres and grams where a reason is named, nowhere else",
          "[sheet][units]") {
    Project project = demo_project();
    project.units = UnitSystem::inch_ounce;
    for (std::size_t car = 0; car < project.cars.size(); ++car) {
        CAPTURE(project.cars[car].name);
        CHECK(strays(text_of(project, car, Paper::letter)) == std::vector<std::string>{});
    }
    CHECK(strays(text_of(project, 0, Paper::a4, 97)) == std::vector<std::string>{});
    const Project told = telling();
    const Figures figures = compute_figures(told, 0);
    // The findings are there, and so are the words on what was measured.
    std::vector<std::string> codes;
    for (const Finding& finding : figures.findings)
        codes.push_back(finding.code);
    for (const char* code : {"wall-thin", "putty-overflows", "bit-not-owned", "as-built-balance-behind"})
        CHECK(std::find(codes.begin(), codes.end(), code) != codes.end());
    const std::string text = text_of(told, 0, Paper::letter);
    CHECK(strays(text) == std::vector<std::string>{});
    for (const Finding& finding : figures.findings)
        CHECK(text.find(text_of(finding, UnitSystem::inch_ounce).substr(0, 30)) != std::string::npos);
}

TEST_CASE("the search itself finds units that are out of place", "[sheet][units]") {
    CHECK(strays("rear axle carries 67.2 g there").size() == 1);
    CHECK(strays("a wall of 1.4 mm: too thin").size() == 1);
    CHECK(strays("weighs 12 mm³ more, 3.5 mm").size() == 2);
    CHECK(strays("0.315 in (8.0 mm) deep").empty());
    CHECK(strays("deep (8.0 mm)").size() == 1); // no inches before it
    CHECK(strays("a 0.5 mm gap and the 100 mm bar").size() == 1);
    // A metric sheet is full of them.
    CHECK(strays(text_of(demo_project(), 0, Paper::a4)).size() > 100);
}

TEST_CASE("no number on a sheet in inches and ounces has more digits than hands can use", "[sheet][units]") {
    for (const Project& project : {telling(), [] {
                                       Project p = demo_project();
                                       p.units = UnitSystem::inch_ounce;
                                       return p;
                                   }()}) {
        const std::string text = text_of(project, 0, Paper::letter);
        // Four decimals only below a hundredth: 0.0035 oz is a tenth of a gram.
        static const std::regex many(R"([0-9]+\.[0-9]{4,} (in|oz|mm|g)(?=[ ,.;:)]|$))"),
            tiny(R"(0\.00[0-9]{2} oz)");
        for (std::sregex_iterator at(text.begin(), text.end(), many), end; at != end; ++at) {
            CAPTURE(at->str());
            CHECK(std::regex_match(at->str(), tiny));
        }
    }
}
