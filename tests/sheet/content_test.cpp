#include "sheet/paint.hpp"
#include "sheet/pdf_tools.hpp"
#include "sheet/words.hpp"
#include "support/demo.hpp"
#include "text/corner_text.hpp"

#include <rampwright/car/car_model.hpp>
#include <rampwright/results/table.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/steer/drift_board.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <sstream>

using namespace rampwright;
using namespace rampwright::test;
using ui::paper::Paper;
using ui::paper::Words;

namespace {

/// Spaces and line ends made one space, so that a label and its number can be looked for side by side.
std::string squeezed(const std::string& text) {
    std::istringstream words(text);
    std::string result, word;
    while (words >> word)
        result += (result.empty() ? "" : " ") + word;
    return result;
}

/// Whether one line of the text holds all of these, in this order.
bool on_one_line(const std::string& text, const std::vector<std::string>& parts) {
    std::istringstream lines(text);
    for (std::string line; std::getline(lines, line);) {
        line = squeezed(line);
        std::size_t at = 0;
        const bool all = std::all_of(parts.begin(), parts.end(), [&](const std::string& part) {
            at = line.find(squeezed(part), at);
            if (at == std::string::npos) return false;
            at += squeezed(part).size();
            return true;
        });
        if (all) return true;
    }
    return false;
}

std::string text_of(const Project& project, std::size_t car, Paper paper) {
    return PdfFile(ui::paper::to_pdf(sheet_of(project, car, paper), sheet_date)).text();
}

std::string utf8(const QString& text) {
    return text.toStdString();
}

void check_numbers(const Project& project, std::size_t n, Paper paper) {
    const std::string text = text_of(project, n, paper);
    const Figures figures = compute_figures(project, n);
    const CarModel model = build_car(project, n);
    const CarPlan& plan = project.cars[n];
    Words words;
    words.units = project.units;
    CAPTURE(plan.name, to_string(project.units), ui::paper::to_string(paper));

    // Every figure of the one result table, beside its label.
    for (const TableRow& row : table_rows(figures, project.units)) {
        CAPTURE(row.code, row.value);
        CHECK(on_one_line(text, {row.label, row.value}));
    }
    // The weight schedule: each part with grams and ounces; the last running total is the parts' sum.
    double sum = 0;
    for (const Part& part : model.parts) {
        CAPTURE(part.name);
        sum += part.properties.mass;
        CHECK(on_one_line(text, {part.name, utf8(words.bare_mass(part.properties.mass)),
                                 utf8(words.second_mass(part.properties.mass))}));
    }
    CHECK(on_one_line(text, {"All parts", utf8(words.bare_mass(sum)), utf8(words.second_mass(sum))}));
    CHECK(sum == Approx(total(model).mass).epsilon(1e-12));
    // Wheels: cant, and the drift board's target by plane geometry.
    for (const Wheel& wheel : model.wheels)
        CHECK(on_one_line(text, {utf8(ui::corner_text(wheel.corner)),
                                 utf8(words.bare_length(2 * wheel.radius)), utf8(Words::angle(wheel.cant))}));
    REQUIRE(figures.steer.best_toe);
    const double over = plan.steer.over.value_or(1.2);
    const double drift = *drift_from_steer(model.front_x - model.rear_x, *figures.steer.best_toe, over);
    CHECK(squeezed(text).find("drifts " + squeezed(utf8(words.length(std::abs(drift))))) !=
          std::string::npos);
    // Axle holes from the tail and the bottom.
    CHECK(on_one_line(text, {"rear axle, " + utf8(words.length(plan.axles.rear_x)) + " from the tail"}));
    CHECK(on_one_line(text, {"front axle, " + utf8(words.length(plan.axles.front_x)) + " from the tail"}));
    // Weights and cuts by name, where from and how heavy.
    for (const BallastPlan& piece : plan.ballast) {
        CAPTURE(piece.name);
        CHECK(
            on_one_line(text, {piece.name, utf8(words.bare_mass(piece.mass)),
                               utf8(words.second_mass(piece.mass)), utf8(words.bare_length(piece.at.x()))}));
    }
    // The inspection list: every rule by name, with its limit.
    for (const InspectionRow& row : inspect(project, model, figures).rows) {
        CAPTURE(row.code, row.name, limit_text(row, project.units));
        CHECK(on_one_line(text, {row.name.substr(1)}));
        if (row.limit) CHECK(on_one_line(text, {row.name.substr(1), limit_text(row, project.units)}));
    }
    for (const CutPlan& cut : plan.body.cuts) {
        CAPTURE(cut.name);
        const std::string from = utf8(words.bare_length(std::min(cut.from.x(), cut.to.x())));
        const std::string to = utf8(words.bare_length(std::max(cut.from.x(), cut.to.x())));
        CHECK(on_one_line(text, {cut.name, from + " to " + to}));
    }
}

} // namespace

TEST_CASE("every number of the results is on the sheet, beside its label", "[sheet][content]") {
    const Project project = demo_project();
    for (std::size_t car = 0; car < project.cars.size(); ++car)
        check_numbers(project, car, car == 1 ? Paper::letter : Paper::a4);
}

TEST_CASE("a number that is not on the sheet is not found", "[sheet][content]") {
    const Project project = demo_project();
    const std::string text = text_of(project, 0, Paper::a4);
    CHECK_FALSE(on_one_line(text, {"heat time", "2.345"}));
    CHECK_FALSE(on_one_line(text, {"mass", "front load"}));
}

TEST_CASE("depths are those a ruler finds", "[sheet][content]") {
    // Bittern: a 178 x 44 x 32 block, sawn to 16; its pocket from 8 up to 17, 51 to 79 from the tail, 13 to
    // either side. By hand: 16 - 8 deep from the sawn top, 32 - 8 from the block's, 8 of wood below,
    // 22 - 13 = 9 to 22 + 13 = 35 from the right side.
    const std::string text = squeezed(text_of(demo_project(), 0, Paper::a4));
    for (const char* words :
         {"51.0 to 79.0", "9.0 to 35.0", "8.0 deep", "24.0 from the block's", "8.0 mm of wood"}) {
        CAPTURE(words);
        const std::string wanted = words;
        std::istringstream parts(wanted);
        // Narrow columns break lines: every word must be there.
        for (std::string part; parts >> part;)
            CHECK(text.find(part) != std::string::npos);
    }
}

TEST_CASE("the sheet says on which side of the line to saw, and what the blade takes", "[sheet][content]") {
    Project project = demo_project();
    project.tools.saw_kerf = 1.7e-3;
    const auto count = [&](std::size_t car, const std::string& words) {
        const std::string text = squeezed(text_of(project, car, Paper::a4));
        int found = 0;
        for (std::size_t at = text.find(words); at != std::string::npos; at = text.find(words, at + 1))
            ++found;
        return found;
    };
    // Swift's side is sawn, seen from above it is the block: one template and one step.
    CHECK(count(2, "Saw on the outside of the line") == 2);
    CHECK(count(2, "the blade takes 1.7 mm.") == 2);
    project.tools.saw_kerf = 0;
    CHECK(count(2, "Saw on the outside of the line") == 1);
    CHECK(count(2, "the blade takes") == 0);
}

TEST_CASE("what holds a weight is on the sheet with what it weighs", "[sheet][content]") {
    Project project = demo_project();
    project.cars[0].ballast[0].held = "screw";
    project.cars[0].ballast[0].held_mass = 1.3e-3;
    const std::string text = text_of(project, 0, Paper::a4);
    CHECK(on_one_line(text, {"one small wood screw for tungsten bar 13", "1.3"}));
    check_numbers(project, 0, Paper::a4);
}

TEST_CASE("the cautions of the work at hand are on the sheet, with who does it", "[sheet][content]") {
    Project project = demo_project();
    BallastPlan lead = project.cars[0].ballast[0];
    lead.name = "lead block";
    lead.material = "lead";
    lead.held = "hot-melt-glue";
    project.cars[0].ballast.push_back(lead);
    const std::string text = squeezed(text_of(project, 0, Paper::a4));
    for (const char* words :
         {"An adult does the sawing", "An adult does the drilling", "Clamp the block", "Lead is poisonous",
          "harms lungs", "Graphite powder gets into lungs", "vapour that harms",
          "Fast and two-part glues stick skin", "hot-glue gun", "Molten metal spits", "goggles",
          "Local rules and the adult in charge decide.", "Child", "Adult"})
        CHECK(text.find(words) != std::string::npos);
    // Page n of m, on every page.
    const auto sheet = sheet_of(project, 0, Paper::a4);
    for (std::size_t n = 1; n <= sheet.pages.size(); ++n)
        CHECK(text.find("Page " + std::to_string(n) + " of " + std::to_string(sheet.pages.size())) !=
              std::string::npos);
}

TEST_CASE("the plan counts back from the race's hour", "[sheet][content]") {
    Project project = demo_project();
    CHECK(text_of(project, 0, Paper::a4).find("36 hours before") != std::string::npos);
    project.race = {"2026-02-14", "10:30"}; // a Saturday
    const std::string text = text_of(project, 0, Paper::a4);
    CHECK(text.find("Sat 14 Feb, 10:30") != std::string::npos);
    CHECK(text.find("Sat 14 Feb, 09:45") != std::string::npos); // 45 minutes before
    CHECK(text.find("Thu 12 Feb, 22:30") != std::string::npos); // 36 hours before
    CHECK(text.find("Sat 7 Feb, 10:30") != std::string::npos);  // a week before
}

TEST_CASE("inches and ounces", "[sheet][content]") {
    Project project = demo_project();
    project.units = UnitSystem::inch_ounce;
    for (std::size_t car = 0; car < project.cars.size(); ++car)
        check_numbers(project, car, car == 1 ? Paper::a4 : Paper::letter);
}
