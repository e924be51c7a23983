#include "units/entry_text.hpp"

#include <algorithm>
#include <array>

namespace rampwright {

namespace {

struct Sign {
    std::string_view typed;
    std::string_view plain;
};

constexpr auto signs = std::to_array<Sign>({
    {"−", "-"},      {"–", "-"},      {"‐", "-"},      {"‑", "-"},      {"×", "*"},   {"÷", "/"},
    {"⁄", "/"},      {"∕", "/"},      {"′", "'"},      {"’", "'"},      {"‘", "'"},   {"″", "\""},
    {"”", "\""},     {"“", "\""},     {"''", "\""},    {"′′", "\""},    {"’’", "\""}, {"º", "°"},
    {"˚", "°"},      {"μ", "µ"},      {"⋅", "·"},      {"℃", "°C"},     {"℉", "°F"},  {"\t", " "},
    {"\u00a0", " "}, {"\u2009", " "}, {"\u202f", " "}, {"\u2007", " "},
});

// Typed alone or after a whole number: 4½.
constexpr auto fractions = std::to_array<Sign>({
    {"½", "1/2"},
    {"⅓", "1/3"},
    {"⅔", "2/3"},
    {"¼", "1/4"},
    {"¾", "3/4"},
    {"⅕", "1/5"},
    {"⅖", "2/5"},
    {"⅗", "3/5"},
    {"⅘", "4/5"},
    {"⅙", "1/6"},
    {"⅚", "5/6"},
    {"⅐", "1/7"},
    {"⅛", "1/8"},
    {"⅜", "3/8"},
    {"⅝", "5/8"},
    {"⅞", "7/8"},
    {"⅑", "1/9"},
    {"⅒", "1/10"},
});

template <class Table>
const Sign* longest_at(const Table& table, std::string_view text) {
    const Sign* best = nullptr;
    for (const Sign& sign : table)
        if (text.substr(0, sign.typed.size()) == sign.typed &&
            (!best || sign.typed.size() > best->typed.size()))
            best = &sign;
    return best;
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// The second and later bytes of a UTF-8 character.
bool is_continuation(char c) {
    return (static_cast<unsigned char>(c) & 0xc0) == 0x80;
}

} // namespace

PlainEntry to_plain_entry(std::string_view typed) {
    PlainEntry entry;
    std::size_t character = 0;
    std::size_t counted = 0; // bytes whose characters are counted
    const auto add = [&](std::string_view plain) {
        entry.text += plain;
        entry.typed_at.insert(entry.typed_at.end(), plain.size(), character);
    };
    for (std::size_t at = 0; at < typed.size();) {
        const std::string_view rest = typed.substr(at);
        if (const Sign* sign = longest_at(signs, rest)) {
            add(sign->plain);
            at += sign->typed.size();
        } else if (const Sign* fraction = longest_at(fractions, rest)) {
            // The blanks keep its digits from running into its neighbours': 4½ is not 41/2.
            if (!entry.text.empty() && is_digit(entry.text.back())) add(" ");
            add(fraction->plain);
            at += fraction->typed.size();
            if (at < typed.size() && (is_digit(typed[at]) || typed[at] == '.' || typed[at] == ',')) add(" ");
        } else {
            add(rest.substr(0, 1));
            ++at;
        }
        for (; counted < at; ++counted)
            if (!is_continuation(typed[counted])) ++character;
    }
    entry.typed_at.push_back(character);
    return entry;
}

} // namespace rampwright
