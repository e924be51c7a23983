#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>
#include <vector>

namespace fs = std::filesystem;

namespace {

/// What stands in the files below a folder that matches a pattern, as "file: line".
std::vector<std::string> find_in(const std::string& folder, const std::regex& pattern) {
    std::vector<std::string> found;
    for (const auto& entry :
         fs::recursive_directory_iterator(std::string(RAMPWRIGHT_SOURCE_DIR) + "/" + folder)) {
        const std::string ending = entry.path().extension().string();
        if (!entry.is_regular_file() || (ending != ".hpp" && ending != ".cpp")) continue;
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);)
            if (std::regex_search(line, pattern)) found.push_back(entry.path().string() + ": " + line);
    }
    return found;
}

} // namespace

TEST_CASE("the core knows nothing of the window", "[house]") {
    const std::regex window(R"(#include\s*[<"](Q[A-Za-z]|ui/|\.\./ui))");
    CHECK(find_in("include", window).empty());
    CHECK(find_in("src", window).empty());
    // The pattern would find one.
    CHECK_FALSE(find_in("ui", window).empty());
}

TEST_CASE("public headers do not lean on private ones", "[house]") {
    CHECK(find_in("include", std::regex(R"(#include\s*")")).empty());
    CHECK_FALSE(find_in("src", std::regex(R"(#include\s*")")).empty());
}

TEST_CASE("no number goes through the locale", "[house]") {
    // strtod and its kin read "1.5" as 1 where the decimal mark is a comma.
    const std::regex by_locale(R"(\b(strtod|strtof|stod|stof|atof|sscanf|sprintf|snprintf|printf)\s*\()");
    CHECK(find_in("include", by_locale).empty());
    CHECK(find_in("src", by_locale).empty());
}

TEST_CASE("the top level is the house's plan", "[house]") {
    const std::vector<std::string> plan = {
        "CMakeLists.txt", "CMakePresets.json", "DEVELOPERS.md", "LICENSE", "README.md", "build", "data",
        "docs",           "include",           "src",           "tests",   "ui"};
    for (const auto& entry : fs::directory_iterator(RAMPWRIGHT_SOURCE_DIR)) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with(".")) continue;
        CAPTURE(name);
        CHECK(std::find(plan.begin(), plan.end(), name) != plan.end());
    }
}

TEST_CASE("every page a page points to is there", "[house]") {
    const fs::path root = RAMPWRIGHT_SOURCE_DIR;
    const std::regex link(R"(\]\(([^)#:]+)\))");
    int links = 0;
    std::vector<fs::path> pages = {root / "README.md", root / "DEVELOPERS.md"};
    for (const auto& entry : fs::directory_iterator(root / "docs"))
        if (entry.path().extension() == ".md") pages.push_back(entry.path());
    for (const fs::path& page : pages) {
        std::ifstream file(page);
        const std::string text{std::istreambuf_iterator<char>(file), {}};
        for (std::sregex_iterator it(text.begin(), text.end(), link), end; it != end; ++it, ++links) {
            CAPTURE(page.string(), (*it)[1].str());
            CHECK(fs::exists(page.parent_path() / (*it)[1].str()));
        }
    }
    CHECK(links > 5);
}
