#include "project/helpers.hpp"

#include <catch2/catch.hpp>

#include <clocale>
#include <locale>

using namespace rampwright;
using namespace rampwright::test;
using Catch::Contains;

namespace {

/// A project's text with these members after its format and version. Not inlined, because GCC 12 then warns
/// of string copies that cannot happen.
[[gnu::noinline]] std::string project(const std::string& members) {
    std::string text = R"({"format": "rampwright-project", "version": 1)";
    if (!members.empty()) text.append(", ").append(members);
    return text.append("}");
}

std::string written_and_read(const std::string& members) {
    const std::string text = to_text(parse_document(project(members)));
    REQUIRE(to_text(parse_document(text)) == text);
    return text;
}

/// German customs for numbers, as a program that sets its locale would have them.
struct German : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
};

} // namespace

TEST_CASE("loading and saving the demo leaves every byte as it was") {
    const std::string before = bytes_of(demo_path());
    REQUIRE(before.size() > 5000);
    TestFolder folder;
    write_file(folder / "once.ramp.json", to_text(demo_document()));
    CHECK(bytes_of(folder / "once.ramp.json") == before);
    write_file(folder / "twice.ramp.json", to_text(load_document(folder / "once.ramp.json")));
    CHECK(bytes_of(folder / "twice.ramp.json") == before);
}

TEST_CASE("unknown keys and the order of keys survive") {
    const std::string text = written_and_read(
        R"("zebra": {"z": 1, "a": [1, {"b": null}], "\u00e4/~": "\u0000\n\"x\\"}, "aardvark": true, "title": "T")");
    CHECK(text.find("zebra") < text.find("aardvark"));
    CHECK(text.find("aardvark") < text.find("title"));
    CHECK(text.find("\"z\"") < text.find("\"a\""));
    CHECK(parse_document(text).root == Json::parse(text));
    CHECK_THAT(text, Contains("\\u0000\\n\\\"x\\\\"));
    CHECK_THAT(text, Contains("ä/~"));
}

TEST_CASE("numbers are written in their shortest exact form and keep their kind") {
    // The double nearest to 0.1 is written 0.1, as in Steele & White, How to print floating-point numbers
    // accurately, 1990; the extremes are those of IEEE 754 binary64.
    const std::pair<const char*, const char*> rows[] = {{"0.1", "0.1"},
                                                        {"21.3", "21.3"},
                                                        {"1.50", "1.5"},
                                                        {"12.0", "12.0"},
                                                        {"12", "12"},
                                                        {"-7", "-7"},
                                                        {"-0.0", "-0.0"},
                                                        {"1e2", "100.0"},
                                                        {"0.00001", "0.00001"},
                                                        {"1e-6", "1e-06"},
                                                        {"1e22", "1e+22"},
                                                        {"0.30000000000000004", "0.30000000000000004"},
                                                        {"5e-324", "5e-324"},
                                                        {"1.7976931348623157e308", "1.7976931348623157e+308"},
                                                        {"9007199254740993", "9007199254740993"},
                                                        {"18446744073709551615", "18446744073709551615"},
                                                        {"-9223372036854775808", "-9223372036854775808"},
                                                        {"123456789.125", "123456789.125"}};
    for (const auto& [in, out] : rows) {
        INFO(in);
        CHECK_THAT(written_and_read(std::string("\"x\": ") + in),
                   Contains(std::string("\"x\": ") + out + "\n"));
    }
    CHECK(parse_document(project("\"x\": 0.1")).root["x"].get<double>() == 0.1);
    CHECK(parse_document(project("\"x\": 1e-999")).root["x"].get<double>() == 0);
}

TEST_CASE("short rows stand on one line, long ones do not") {
    CHECK_THAT(written_and_read(R"("at_mm": [1, 2.5, -3])"), Contains("\"at_mm\": [1, 2.5, -3]"));
    CHECK_THAT(written_and_read(R"("p": [[0, 0], [1, 2, "smooth"]])"),
               Contains("\"p\": [[0, 0], [1, 2, \"smooth\"]]"));
    CHECK_THAT(written_and_read(R"("pieces": [{"kind": "arc", "turn_deg": 25}])"),
               Contains("\n    {\"kind\": \"arc\", \"turn_deg\": 25}\n"));
    std::string many = "0";
    for (int i = 1; i < 60; ++i)
        many += "," + std::to_string(i);
    const std::string text = written_and_read("\"n\": [" + many + "]");
    CHECK_THAT(text, Contains("\n    59\n"));
    CHECK_THAT(written_and_read(R"("a": [], "o": {})"), Contains("\"a\": [],\n  \"o\": {}"));
}

TEST_CASE("a locale changes no number") {
    const std::string before = to_text(demo_document());
    const std::locale old = std::locale::global(std::locale(std::locale::classic(), new German));
    const std::string under_cpp_locale = to_text(parse_document(bytes_of(demo_path())));
    std::locale::global(old);
    CHECK(under_cpp_locale == before);

    // The C locale too, where the machine has one with a comma (a custom one may lie in LOCPATH).
    const std::string c_locale = std::setlocale(LC_ALL, nullptr);
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "de_DE", "fr_FR.UTF-8"})
        if (std::setlocale(LC_ALL, name) != nullptr) {
            const std::string under_c_locale = to_text(parse_document(bytes_of(demo_path())));
            const double number = parse_document(project("\"x\": 1.5")).root["x"].get<double>();
            std::setlocale(LC_ALL, c_locale.c_str());
            CHECK(under_c_locale == before);
            CHECK(number == 1.5);
        }
    std::setlocale(LC_ALL, c_locale.c_str());
}

TEST_CASE("what is not a project is refused with its place and a remedy") {
    struct Row {
        std::string text, where, wrong;
    };
    const std::string deep(70, '[');
    const Row rows[] = {
        {"", "line 1, column 1", "not JSON"},
        {"hello", "line 1, column 1", "not JSON"},
        {"{\n  \"format\": \"rampwright-project\",\n  \"a\": tru\n}", "line 3, column 11", "not JSON"},
        {"{\"\xC3\xA4\": x}", "line 1, column 7", "not JSON"},
        {project("\"x\": NaN"), "line 1, column 53", "not JSON"},
        {project("\"x\": Infinity"), "line 1, column 53", "not JSON"},
        {project("\"x\": -Infinity"), "line 1, column 54", "not JSON"},
        {project("\"x\": 1e999"), "line 1, column 57", "too large"},
        {project("\"x\": 01"), "line 1, column 54", "not JSON"},
        {project("\"x\": 'a'"), "line 1, column 53", "not JSON"},
        {project("\"x\": 1,"), "line 1, column 55", "not JSON"},
        {project("") + "x", "line 1, column 47", "not JSON"},
        {project("\"x\": \"\xFF\""), "line 1, column 54", "not JSON"},
        {"[]", "-", "not a Rampwright project"},
        {"3", "-", "not a Rampwright project"},
        {"null", "-", "not a Rampwright project"},
        {"{}", "/format", "not a Rampwright project"},
        {"{\"format\": \"other\", \"version\": 1}", "/format", "not a Rampwright project"},
        {"{\"format\": 3, \"version\": 1}", "/format", "not a Rampwright project"},
        {"{\"format\": \"rampwright-project\"}", "/version", "missing"},
        {"{\"format\": \"rampwright-project\", \"version\": \"1\"}", "/version", "damaged"},
        {"{\"format\": \"rampwright-project\", \"version\": 0}", "/version", "damaged"},
        {"{\"format\": \"rampwright-project\", \"version\": -1}", "/version", "damaged"},
        {"{\"format\": \"rampwright-project\", \"version\": 1.5}", "/version", "damaged"},
        {"{\"format\": \"rampwright-project\", \"version\": 2}", "/version", "newer"},
        {"{\"format\": \"rampwright-project\", \"version\": 18446744073709551615}", "/version", "newer"},
        {project("\"version\": 1"), "/version", "twice"},
        {project(R"("cars": [{}, {"name": "a", "body": {"wood": 1, "wood": 1}}])"), "/cars/1/body/wood",
         "twice"},
        {project(R"("a/b": {"~": 1, "\u007e": 1})"), "/a~1b/~0", "twice"},
        {project("\"x\": " + deep + std::string(70, ']')), "/x/0/0", "nested"},
    };
    for (const Row& row : rows) {
        INFO(row.text.substr(0, 100));
        const auto problem = problem_of([&] { parse_document(row.text); });
        REQUIRE(problem);
        CHECK(problem->exit() == Exit::not_ours);
        if (row.wrong == "nested")
            CHECK_THAT(problem->where(), Catch::StartsWith(row.where));
        else
            CHECK(problem->where() == row.where);
        CHECK_THAT(problem->wrong(), Contains(row.wrong));
        CHECK(!problem->remedy().empty());
    }
}

TEST_CASE("nesting has a limit that no real project meets and no bomb passes") {
    const auto nested = [](std::size_t depth) {
        return project("\"x\": " + std::string(depth, '[') + std::string(depth, ']'));
    };
    CHECK_NOTHROW(parse_document(nested(63)));
    CHECK_THROWS_AS(parse_document(nested(64)), Problem);
    CHECK_THROWS_AS(parse_document(nested(1000000)), Problem);
    CHECK_THROWS_AS(parse_document(std::string(1000000, '[')), Problem);
    std::string objects;
    for (int i = 0; i < 100000; ++i)
        objects += "{\"a\":";
    CHECK_THROWS_AS(parse_document(objects), Problem);
}

TEST_CASE("a text above 64 MiB is refused, one just below is read") {
    std::string text = project("\"notes\": \"\"");
    text.insert(text.size() - 2, std::string(largest_project_file - text.size(), 'n'));
    REQUIRE(text.size() == largest_project_file);
    CHECK(parse_document(text).root["notes"].get_ref<const std::string&>().size() >
          largest_project_file - 100);
    text += ' ';
    const auto problem = problem_of([&] { parse_document(text); });
    REQUIRE(problem);
    CHECK(problem->exit() == Exit::not_ours);
    CHECK_THAT(problem->wrong(), Contains("64 MiB"));
}

TEST_CASE("a large object is read in time that grows with its size alone") {
    std::string members = "\"k\": 0";
    for (int i = 0; i < 200000; ++i)
        members += ",\"k" + std::to_string(i) + "\":" + std::to_string(i);
    CHECK(parse_document(project(members)).root.size() == 200003);
}

TEST_CASE("the demo cut short at any byte is refused; only the whole is a project") {
    const std::string text = bytes_of(demo_path());
    const std::size_t whole = text.find_last_of('}') + 1;
    for (std::size_t length = 0; length < text.size(); ++length) {
        const auto problem = problem_of([&] { parse_document(text.substr(0, length)); });
        if (problem.has_value() != (length < whole)) FAIL("at byte " << length);
        if (problem && problem->exit() != Exit::not_ours) FAIL("exit at byte " << length);
    }
}

TEST_CASE("what cannot be written says so") {
    Document document = parse_document(project(""));
    document.root["x"] = std::numeric_limits<double>::quiet_NaN();
    CHECK_THROWS_AS(to_text(document), Problem);
    document.root["x"] = std::numeric_limits<double>::infinity();
    CHECK_THROWS_AS(to_text(document), Problem);
    document.root["x"] = "\xFF\xFE";
    CHECK_THROWS_AS(to_text(document), Problem);
}
