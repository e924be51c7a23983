#include "support/demo.hpp"
#include "support/program.hpp"
#include "support/wrong_call.hpp"

#include <rampwright/core/version.hpp>
#include <rampwright/results/figures.hpp>

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>

using namespace rampwright;
namespace fs = std::filesystem;

TEST_CASE("figures prints what the core computes") {
    const Ran ran = run_program({"figures", demo_path(), "--json"});
    CHECK(ran.exit == 0);
    CHECK(ran.err.empty());
    const Json json = Json::parse(ran.out);
    CHECK(json["format"] == "rampwright-figures");
    CHECK(json["version"] == 1);
    const Project project = demo_project();
    REQUIRE(json["cars"].size() == project.cars.size());
    for (std::size_t car = 0; car < project.cars.size(); ++car)
        CHECK(json["cars"][car] == to_json(complete_figures(project, car)));
}

TEST_CASE("figures of one car, as a table") {
    const Project project = demo_project();
    const Ran ran = run_program({"figures", demo_path(), "--car", project.cars[1].name});
    CHECK(ran.exit == 0);
    CHECK(ran.out.find(project.cars[1].name) == 0);
    CHECK(ran.out.find(project.cars[0].name) == std::string::npos);
    CHECK(ran.out.find("heat time") != std::string::npos);
}

TEST_CASE("help and version") {
    CHECK(run_program({"--version"}).out == "rampwright " + std::string(version()) + "\n");
    const Ran help = run_program({"--help"});
    CHECK(help.exit == 0);
    CHECK(help.out.find("rampwright figures PROJECT") != std::string::npos);
    // Verbs of later days are not promised.
    CHECK(help.out.find("rampwright place") == std::string::npos);
    const Ran verb = run_program({"figures", "--help"});
    CHECK(verb.exit == 0);
    CHECK(verb.out.find("--json") != std::string::npos);
}

TEST_CASE("wrong calls exit with 2 and print nothing on standard output") {
    const std::vector<std::vector<std::string>> calls = {
        {"figures"},
        {"figures", demo_path(), demo_path()},
        {"figures", demo_path(), "--colour"},
        {"figures", demo_path(), "--car"},
        {"figures", demo_path(), "--draws", "many"},
        {"figures", demo_path(), "--draws", "-5"},
        {"versus", demo_path(), "--car", "x"},
        {"fly", demo_path(), "x"},
    };
    for (const auto& call : calls)
        check_wrong_call(call);
}

TEST_CASE("bad files: message, exit status, file untouched") {
    const fs::path folder = fs::temp_directory_path() / ("rampwright-bad-" + std::to_string(::getpid()));
    fs::create_directories(folder);
    const std::string demo = to_text(demo_document());
    const auto with = [&](const std::string& from, const std::string& to) {
        std::string text = demo;
        const std::size_t at = text.find(from);
        REQUIRE(at != std::string::npos);
        return text.replace(at, from.size(), to);
    };
    struct Case {
        std::string name, text;
        int exit;
        std::string says;
    };
    const std::vector<Case> cases = {
        {"truncated", demo.substr(0, demo.size() / 2), 4, "line "},
        {"empty", "", 4, "line 1"},
        {"not ours", "{\"format\": \"recipe\"}", 4, "/format"},
        {"newer", with("\"version\": 1", "\"version\": 2"), 4, "/version"},
        {"wrong type", with("\"start_line_mm\":", "\"start_line_mm\": \"zero\", \"was\":"), 4,
         "/track/start_line_mm"},
        {"nan", with("\"start_line_mm\":", "\"start_line_mm\": NaN, \"was\":"), 4, "line "},
        {"out of range", with("\"first_slope_deg\":", "\"first_slope_deg\": -400, \"was\":"), 4,
         "/track/first_slope_deg"},
        {"uphill", with("\"first_slope_deg\":", "\"first_slope_deg\": 25, \"was\":"), 4,
         "/track/first_slope_deg"},
    };
    for (const Case& c : cases) {
        const fs::path file = folder / "p.ramp.json";
        std::ofstream(file, std::ios::binary) << c.text;
        const Ran ran = run_program({"figures", file.string(), "--json"});
        CAPTURE(c.name, ran.err);
        CHECK(ran.exit == c.exit);
        CHECK(ran.out.empty());
        CHECK(ran.err.starts_with("rampwright: " + file.string() + ": "));
        CHECK(ran.err.find(c.says) != std::string::npos);
        std::ifstream again(file, std::ios::binary);
        CHECK(std::string(std::istreambuf_iterator<char>(again), {}) == c.text);
    }
    CHECK(run_program({"figures", (folder / "none.ramp.json").string()}).exit == 1);
    CHECK(run_program({"figures", folder.string()}).exit == 1);
    // Root may read anything, so a path through a file stands for what cannot be reached.
    CHECK(run_program({"figures", (folder / "p.ramp.json" / "x").string()}).exit == 1);
    const Ran nobody = run_program({"figures", demo_path(), "--car", "Dodo"});
    CHECK(nobody.exit == 1);
    CHECK(nobody.err.find("Dodo") != std::string::npos);
    fs::remove_all(folder);
}

TEST_CASE("versus says the same at every call") {
    const Project project = demo_project();
    const std::vector<std::string> call = {
        "versus", demo_path(), "--car", project.cars[2].name, "--car", project.cars[0].name, "--draws", "500",
        "--seed", "5",         "--json"};
    const Ran first = run_program(call), second = run_program(call);
    CHECK(first.exit == 0);
    CHECK(first.out == second.out);
    const Json json = Json::parse(first.out);
    CHECK(json["draws"] == 500);
    CHECK(json["seed"] == 5);
    CHECK(json["mean_gap_ms"] > 0);
    CHECK(json["p_first_wins"] > 0.5);
    CHECK(json["gap_at_finish_mm"] > 0);
}
