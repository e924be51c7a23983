#include "car/car_fixture.hpp"
#include "support/demo.hpp"
#include "support/folder.hpp"
#include "support/program.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/results/figures.hpp>
#include <rampwright/templates/templates.hpp>

#include <catch2/catch.hpp>

#include <charconv>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

using namespace rampwright;
namespace fs = std::filesystem;

namespace {

double number_of(std::string_view text) {
    double value = 0;
    const auto begin = text.find_first_of("-0123456789");
    REQUIRE(begin != std::string_view::npos);
    std::from_chars(text.data() + begin, text.data() + text.size(), value);
    return value;
}

/// What a program prints, without a shell's words in its arguments.
std::string printed(const std::string& command, const std::string& to) {
    REQUIRE(std::system((command + " > " + to + " 2>&1").c_str()) == 0);
    return test::bytes_of(to);
}

double after(const std::string& text, const std::string& label) {
    const auto at = text.find(label);
    INFO(text);
    REQUIRE(at != std::string::npos);
    return number_of(std::string_view(text).substr(at + label.size()));
}

/// Rows of a table by RFC 4180, read by its rules.
std::vector<std::vector<std::string>> read_csv(const std::string& text) {
    std::vector<std::vector<std::string>> rows(1, {""});
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::string& field = rows.back().back();
        if (quoted) {
            if (text[i] != '"')
                field += text[i];
            else if (i + 1 < text.size() && text[i + 1] == '"')
                field += text[++i];
            else
                quoted = false;
        } else if (text[i] == '"') {
            quoted = true;
        } else if (text[i] == ',') {
            rows.back().emplace_back();
        } else if (text[i] == '\r') {
            REQUIRE(text[++i] == '\n');
            rows.push_back({""});
        } else {
            field += text[i];
        }
    }
    REQUIRE(rows.back() == std::vector<std::string>{""}); // the last row ends too
    rows.pop_back();
    return rows;
}

} // namespace

// admesh is an independent reader and checker of STL (Debian package of that name).
TEST_CASE("an independent checker finds nothing to repair in a car's solid", "[templates]") {
    const test::TestFolder folder;
    const Project project = demo_project();
    for (const CarPlan& car : project.cars) {
        INFO(car.name);
        const std::string file = folder / (car.id + ".stl");
        const Ran ran = run_program({"outline", demo_path(), "--car", car.name, "--out", file});
        INFO(ran.err);
        REQUIRE(ran.exit == 0);
        CHECK(ran.out == file + "\n");
        const std::string report = printed("admesh " + file, folder / "report");
        CHECK(after(report, "Number of parts") == 1);
        CHECK(after(report, "Facets with 1 disconnected edge") == 0);
        CHECK(after(report, "Facets with 2 disconnected edges") == 0);
        CHECK(after(report, "Facets with 3 disconnected edges") == 0);
        CHECK(after(report, "Total disconnected facets") == 0);
        for (const char* repair : {"Degenerate facets", "Edges fixed", "Facets removed", "Facets added",
                                   "Facets reversed", "Backwards edges", "Normals fixed"})
            CHECK(after(report, repair) == 0);
        const auto& figures = compute_figures(project, std::size_t(&car - project.cars.data()));
        CHECK(after(report, "Volume") == Approx(figures.wood_volume * 1e9).epsilon(1e-3));
    }
}

TEST_CASE("a DXF read back by another program has the car's measures", "[templates]") {
    const test::TestFolder folder;
    const std::string file = folder / "bittern.dxf", script = folder / "read.py";
    REQUIRE(run_program({"outline", demo_path(), "--car", "Bittern", "--out", file}).exit == 0);
    std::ofstream(script) << R"(import sys, ezdxf
from ezdxf import bbox
drawing = ezdxf.readfile(sys.argv[1])
print("version", drawing.dxfversion)
print("errors", len(drawing.audit().errors), "fixes", len(drawing.audit().fixes))
space = drawing.modelspace()
for layer in ("SIDE_OUTLINE", "TOP_OUTLINE", "SIDE_HIDDEN", "TOP_CUTS"):
    box = bbox.extents(space.query('*[layer=="%s"]' % layer))
    print(layer, *("%.6f" % v for v in (*box.extmin, *box.extmax)))
for hole in sorted(space.query('CIRCLE[layer=="SIDE_HOLES"]'), key=lambda c: c.dxf.center.x):
    print("hole", "%.6f %.6f %.6f" % (hole.dxf.center.x, hole.dxf.center.y, hole.dxf.radius))
print("names", *(t.dxf.text for t in space.query("TEXT")), sep="|")
)";
    const std::string report = printed("/usr/bin/python3 " + script + " " + file, folder / "report");
    INFO(report);
    CHECK(report.find("version AC1009") != std::string::npos);
    CHECK(report.find("errors 0 fixes 0") != std::string::npos);
    const auto numbers = [&](const std::string& label) {
        std::vector<double> values;
        std::string line = report.substr(report.find(label) + label.size());
        line = line.substr(0, line.find('\n'));
        for (std::size_t at = 0; at < line.size();) {
            double value = 0;
            const auto [end, error] = std::from_chars(line.data() + at, line.data() + line.size(), value);
            if (error == std::errc()) {
                values.push_back(value);
                at = std::size_t(end - line.data());
            } else {
                ++at;
            }
        }
        return values;
    };
    const auto near = [](const std::vector<double>& found, const std::vector<double>& wanted) {
        REQUIRE(found.size() == wanted.size());
        for (std::size_t i = 0; i < wanted.size(); ++i)
            CHECK(found[i] == Approx(wanted[i]).margin(0.05));
    };
    // As the demo's file has it, mm.
    near(numbers("SIDE_OUTLINE"), {0, 0, 0, 178, 16, 0});
    const std::vector<double> top = numbers("TOP_OUTLINE");
    near(top, {0, top[1], 0, 178, top[1] + 44, 0});
    CHECK(top[4] < -5); // clear of the side view
    near(numbers("SIDE_HIDDEN"), {51, 8, 0, 79, 16, 0});
    near(numbers("TOP_CUTS"), {51, top[1] + 9, 0, 79, top[1] + 35, 0});
    CHECK(report.find("|weight pocket|") != std::string::npos);
}

TEST_CASE("the weight schedule adds up to the car", "[templates]") {
    Project project = demo_project();
    project.cars[0].ballast[0].name = "bar, \"long\"\nsecond line";
    const CarModel car = build_car(project, 0);
    const auto rows = read_csv(weight_schedule(car));
    REQUIRE(rows.size() == car.parts.size() + 2);
    CHECK(rows[0] ==
          std::vector<std::string>{"piece", "grams", "ounces", "running_total_g", "running_total_oz"});
    double sum = 0;
    bool named = false;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        REQUIRE(rows[i].size() == 5);
        // NIST Handbook 44, appendix C: 1 oz avoirdupois is 28.349523125 g.
        CHECK(number_of(rows[i][2]) == Approx(number_of(rows[i][1]) / 28.349523125).margin(6e-5));
        CHECK(number_of(rows[i][4]) == Approx(number_of(rows[i][3]) / 28.349523125).margin(6e-5));
        if (i + 1 < rows.size()) {
            sum += car.parts[i - 1].properties.mass * 1e3;
            CHECK(number_of(rows[i][3]) == Approx(sum).margin(5.1e-4));
        }
        named = named || rows[i][0] == "bar, \"long\"\nsecond line";
    }
    CHECK(named);
    CHECK(rows.back()[0] == "whole car");
    CHECK(number_of(rows.back()[1]) == Approx(compute_figures(project, 0).mass * 1e3).margin(5.1e-4));
    CHECK(number_of(rows.back()[1]) == Approx(number_of(rows[rows.size() - 2][3])).margin(1e-9));
}

TEST_CASE("a wrong call of outline says what is wrong and writes nothing", "[templates]") {
    const test::TestFolder folder;
    const auto refused = [&](std::vector<std::string> words, int exit, const std::string& says) {
        words.insert(words.begin(), "outline");
        const Ran ran = run_program(words);
        INFO(ran.err);
        CHECK(ran.exit == exit);
        CHECK(ran.out.empty());
        CHECK(ran.err.find(says) != std::string::npos);
        CHECK(ran.err.starts_with("rampwright: "));
        CHECK(fs::is_empty(folder.path()));
    };
    refused({demo_path(), "--car", "Bittern", "--out", folder / "a.png"}, 2, ".svg, .dxf, .stl or .csv");
    refused({demo_path(), "--car", "Bittern", "--out", folder / "svg"}, 2, ".svg, .dxf, .stl or .csv");
    refused({demo_path(), "--car", "Bittern"}, 2, "--out");
    refused({demo_path(), "--out", folder / "a.svg"}, 2, "--car NAME once");
    refused({demo_path(), "--car", "Dodo", "--out", folder / "a.svg"}, 1, "no car named 'Dodo'");
    refused({folder / "none.ramp.json", "--car", "Bittern", "--out", folder / "a.svg"}, 1, "none.ramp.json");
    refused({demo_path(), "--car", "Bittern", "--out", folder / "no/such/a.svg"}, 1, "no/such");
}

TEST_CASE("an old file is replaced whole", "[templates]") {
    const test::TestFolder folder;
    const std::string file = folder / "a.CSV";
    std::ofstream(file) << std::string(100000, 'x');
    REQUIRE(run_program({"outline", demo_path(), "--car", "bittern", "--out", file}).exit == 0);
    CHECK(test::bytes_of(file) == weight_schedule(build_car(demo_project(), 0)));
    CHECK(std::distance(fs::directory_iterator(folder.path()), {}) == 1);
}
