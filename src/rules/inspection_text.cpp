#include "results/columns.hpp"

#include <rampwright/core/constants.hpp>
#include <rampwright/core/say.hpp>
#include <rampwright/rules/inspection.hpp>
#include <rampwright/units/format.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace rampwright {

namespace {

std::string_view to_string(Bound bound) {
    switch (bound) {
    case Bound::at_most:
        return "at-most";
    case Bound::at_least:
        return "at-least";
    case Bound::allowed:
        return "allowed";
    case Bound::words:
        return "words";
    }
    return {};
}

constexpr std::array verdicts{Verdict::breach, Verdict::margin, Verdict::look_yourself, Verdict::pass};

/// A limit with the digits a gauge shows, rounded to its strict side: what keeps the number shown keeps the
/// limit. Fractions of an inch stay what they are.
std::string limit_number(double limit, Quantity quantity, UnitSystem units, bool least) {
    if (quantity == Quantity::plain) return format_entry(limit, quantity, units);
    FormatOptions options{.trim = true, .fractions = true};
    // Rules are made of fractions of an inch: 44.45 mm is one.
    const bool fine = quantity == Quantity::length && units == UnitSystem::metric;
    options.decimals = default_decimals(quantity, units) + (fine ? 1 : 0);
    const Unit& unit = default_unit(quantity, units);
    // Less than a twentieth of the last digit is no other limit.
    constexpr double hair = 0.05;
    const double digits = std::pow(10.0, *options.decimals);
    const double number = from_si(limit, unit), last = number * digits;
    if (std::abs(last - std::round(last)) <= hair) return format(limit, quantity, units, options);
    return format(to_si((least ? std::ceil(last) : std::floor(last)) / digits, unit), quantity, units,
                  options);
}

Json row_json(const InspectionRow& row) {
    const bool mass = row.quantity == Quantity::mass, length = row.quantity == Quantity::length;
    const double unit = mass ? gram : length ? millimetre : 1;
    const auto number = [unit](const std::optional<double>& si) {
        return si ? Json(*si / unit) : Json(nullptr);
    };
    const auto words = [](const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); };
    return {{"id", row.code},
            {"name", row.name},
            {"rule", row.rule},
            {"inspect", row.inspect},
            {"source", row.source},
            {"bound", to_string(row.bound)},
            {"unit", mass     ? "g"
                     : length ? "mm"
                              : ""},
            {"limit", number(row.limit)},
            {"value", number(row.value)},
            {"margin", number(row.margin)},
            {"limit_words", words(row.limit_words)},
            {"value_words", words(row.value_words)},
            {"verdict", to_string(row.verdict)},
            {"why", words(row.why)}};
}

} // namespace

std::string_view to_string(Verdict verdict) {
    switch (verdict) {
    case Verdict::pass:
        return "pass";
    case Verdict::margin:
        return "margin";
    case Verdict::breach:
        return "breach";
    case Verdict::look_yourself:
        return "look";
    }
    return {};
}

std::string_view in_words(Verdict verdict) {
    switch (verdict) {
    case Verdict::pass:
        return "passes";
    case Verdict::margin:
        return "passes narrowly";
    case Verdict::breach:
        return "breaks the rule";
    case Verdict::look_yourself:
        return "look at it yourself";
    }
    return {};
}

std::string limit_text(const InspectionRow& row, UnitSystem units) {
    if (!row.limit) return row.limit_words.empty() ? "–" : row.limit_words;
    const bool least = row.bound == Bound::at_least;
    const std::string limit = limit_number(*row.limit, row.quantity, units, least);
    return least ? Core::tr("at least {limit}", {{"limit", limit}})
                 : Core::tr("at most {limit}", {{"limit", limit}});
}

std::string value_text(const InspectionRow& row, UnitSystem units) {
    if (!row.value) return row.value_words.empty() ? "–" : row.value_words;
    if (row.quantity == Quantity::plain) return format_entry(*row.value, row.quantity, units);
    return format(*row.value, row.quantity, units);
}

std::string margin_text(const InspectionRow& row, UnitSystem units) {
    if (!row.margin) return {};
    const double margin = *row.margin;
    if (row.quantity == Quantity::plain)
        return margin < 0
                   ? Core::tr("{amount} short", {{"amount", format_entry(-margin, row.quantity, units)}})
                   : "";
    const std::string amount = format(std::abs(margin), row.quantity, units);
    if (row.verdict != Verdict::breach) return Core::tr("{amount} left", {{"amount", amount}});
    return row.bound == Bound::at_least ? Core::tr("{amount} short", {{"amount", amount}})
                                        : Core::tr("{amount} too much", {{"amount", amount}});
}

std::string to_table(const Inspection& inspection, UnitSystem units) {
    std::vector<std::array<std::string, 5>> cells;
    std::array<std::size_t, 5> wide{};
    for (const InspectionRow& row : inspection.rows) {
        cells.push_back({Core::tr(in_words(row.verdict)), row.name, limit_text(row, units),
                         value_text(row, units), margin_text(row, units)});
        for (std::size_t i = 0; i < wide.size(); ++i)
            wide[i] = std::max(wide[i], width(cells.back()[i]));
    }
    std::string text = inspection.car;
    if (!inspection.title.empty()) text += ": " + inspection.title;
    text += "\n";
    for (std::size_t n = 0; n < cells.size(); ++n) {
        std::string line = "  ";
        for (std::size_t i = 0; i < wide.size(); ++i)
            line += padded(cells[n][i], wide[i] + 2);
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
        const InspectionRow& row = inspection.rows[n];
        const std::string indent(wide[0] + 4, ' ');
        if (row.verdict == Verdict::look_yourself) {
            text += indent + row.rule + "\n";
            if (!row.inspect.empty()) text += indent + "How: " + row.inspect + "\n";
        } else if (row.verdict == Verdict::breach) {
            text += indent + row.rule + "\n";
        }
        if (!row.why.empty()) text += indent + "(" + row.why + ")\n";
    }
    if (inspection.rows.empty()) text += "  the project states no rules\n";
    text += "  ";
    for (const Verdict verdict : verdicts)
        text += (verdict == verdicts.front() ? "" : ", ") + Core::tr(in_words(verdict)) + ": " +
                std::to_string(inspection.count(verdict));
    text += "\n";
    if (!inspection.source.empty()) text += "  Rules: " + inspection.source + "\n";
    return text + "  " + std::string(inspector_decides) + "\n";
}

Json to_json(const Inspection& inspection) {
    Json json{{"name", inspection.car},        {"title", inspection.title}, {"source", inspection.source},
              {"broken", inspection.broken()}, {"counts", Json::object()},  {"rows", Json::array()}};
    for (const Verdict verdict : verdicts)
        json["counts"][std::string(to_string(verdict))] = inspection.count(verdict);
    for (const InspectionRow& row : inspection.rows)
        json["rows"].push_back(row_json(row));
    return json;
}

} // namespace rampwright
