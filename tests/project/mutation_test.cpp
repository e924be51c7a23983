#include "project/helpers.hpp"

#include <catch2/catch.hpp>

#include <random>

using namespace rampwright;
using namespace rampwright::test;

namespace {

/// A text with a few random changes: bytes flipped, cut out, doubled, or replaced by what tends to hurt.
std::string mutated(std::string text, std::mt19937& random) {
    static const std::string nasty[] = {"null", "-1",   "1e999", "\"\"", "[]", "{}",    "true",    "0",
                                        "1e-9", "[[]]", "NaN",   ",",    ":",  "\xC3",  "\\u0000", "-",
                                        "1e9",  "\"",   "{",     "}",    "]",  "999999"};
    const auto changes = 1 + random() % 2;
    for (std::size_t i = 0; i < changes && !text.empty(); ++i) {
        const std::size_t at = random() % text.size();
        const std::size_t length = std::min<std::size_t>(random() % 20, text.size() - at);
        switch (random() % 9) {
        case 0:
            text[at] = static_cast<char>(random());
            break;
        case 1:
            text.erase(at, length);
            break;
        case 2:
            text.insert(random() % text.size(), text.substr(at, length));
            break;
        case 3:
            text.replace(at, length, nasty[random() % std::size(nasty)]);
            break;
        default: {
            // A value as a whole, which leaves valid JSON more often.
            const std::size_t colon = text.find(": ", at);
            if (colon == std::string::npos) break;
            const std::size_t end = text.find_first_of(",\n", colon);
            text.replace(colon + 2, end - colon - 2, nasty[random() % std::size(nasty)]);
        }
        }
    }
    return text;
}

} // namespace

TEST_CASE("mutated projects are read or refused, and what is read survives a save") {
    const std::string demo_text = bytes_of(demo_path());
    std::mt19937 random(20260214);
    int read = 0, no_project = 0, no_value = 0;
    for (int i = 0; i < 4000; ++i) {
        const std::string text = mutated(demo_text, random);
        Document document;
        try {
            document = parse_document(text);
        } catch (const Problem& problem) {
            REQUIRE(problem.exit() == Exit::not_ours);
            REQUIRE(!problem.where().empty());
            ++no_project;
            continue;
        }
        REQUIRE(parse_document(to_text(document)) == document);
        try {
            read_project(document);
            ++read;
        } catch (const Problem& problem) {
            REQUIRE(problem.exit() == Exit::not_ours);
            REQUIRE((problem.where() == "-" || document.root.is_object()));
            ++no_value;
        }
    }
    // All three outcomes must come up often, or the mutations test nothing.
    CHECK(read > 200);
    CHECK(no_project > 200);
    CHECK(no_value > 200);
}
