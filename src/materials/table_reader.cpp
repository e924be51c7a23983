#include "materials/table_reader.hpp"

#include <rampwright/core/problem.hpp>
#include <rampwright/units/key_unit.hpp>

#include <cmath>

namespace rampwright {

RowReader::RowReader(const Json& row, std::string pointer) : row_(row), pointer_(std::move(pointer)) {
    if (!row_.is_object()) refuse("", "a row of the table is no object", "write it in braces");
}

void RowReader::refuse(std::string_view key, std::string wrong, std::string remedy) const {
    const std::string where = key.empty() ? pointer_ : pointer_ + "/" + std::string(key);
    throw Problem(Exit::could_not, where, std::move(wrong), std::move(remedy));
}

std::string RowReader::text(const char* key) const {
    std::string found = text_or(key, "");
    if (found.empty()) refuse(key, "a row of the table has no " + std::string(key), "say it");
    return found;
}

std::string RowReader::text_or(const char* key, std::string otherwise) const {
    const auto found = row_.find(key);
    if (found == row_.end()) return otherwise;
    if (!found->is_string()) refuse(key, "this is no text", "write it in quotes");
    return found->get<std::string>();
}

std::string RowReader::find_key(std::string_view name, Quantity quantity) const {
    for (const auto& [key, value] : row_.items()) {
        const Unit* unit = find_key_unit(key);
        if (unit && unit->quantity == quantity && key == std::string(name) + std::string(key_ending(*unit)))
            return key;
    }
    return {};
}

bool RowReader::has(std::string_view name, Quantity quantity) const {
    return !find_key(name, quantity).empty();
}

double RowReader::number(std::string_view name, Quantity quantity) const {
    const std::string key = find_key(name, quantity);
    if (key.empty())
        refuse(name, "a row of the table has no " + std::string(name) + " with its unit in the key's name",
               "name the key like \"" + std::string(name) +
                   std::string(key_ending(default_unit(quantity, UnitSystem::metric))) + "\"");
    const Json& value = row_.at(key);
    if (!value.is_number()) refuse(key, "this is no number", "write a number");
    return to_si(value.get<double>(), *find_key_unit(key));
}

double RowReader::positive(std::string_view name, Quantity quantity) const {
    const double value = number(name, quantity);
    if (!(value > 0) || !std::isfinite(value)) refuse(name, "this is not above zero", "check the number");
    return value;
}

Uncertain RowReader::uncertain(std::string_view name, Quantity quantity) const {
    const Uncertain read{number(name, quantity), positive("sigma", quantity)};
    if (!(read.value >= 0) || !std::isfinite(read.value))
        refuse(name, "this is below zero", "check the number");
    return read;
}

Uncertain RowReader::positive_uncertain(std::string_view name, Quantity quantity) const {
    return {positive(name, quantity), positive("sigma", quantity)};
}

std::vector<double> RowReader::lengths(const char* key) const {
    const auto found = row_.find(key);
    const Unit* unit = find_key_unit(key);
    if (found == row_.end() || !found->is_array())
        refuse(key, "a row of the table has no list of sizes", "give it");
    std::vector<double> read;
    for (const Json& value : *found) {
        if (!value.is_number() || !(value.get<double>() > 0))
            refuse(key, "a size is not above zero", "check the number");
        read.push_back(to_si(value.get<double>(), *unit));
    }
    return read;
}

std::vector<PlanPoint> RowReader::outline(const char* key, double low, double high) const {
    const auto found = row_.find(key);
    if (found == row_.end() || !found->is_array() || found->size() < 3)
        refuse(key, "a row of the table has no outline of three points or more", "give it");
    std::vector<PlanPoint> points;
    for (const Json& point : *found) {
        const bool smooth = point.is_array() && point.size() == 3 && point[2] == "smooth";
        if (!point.is_array() || point.size() != (smooth ? 3u : 2u) || !point[0].is_number() ||
            !point[1].is_number())
            refuse(key, "this is no point", "write [a, b] or [a, b, \"smooth\"]");
        points.push_back({{point[0].get<double>(), point[1].get<double>()}, smooth});
        const Vec2& at = points.back().at;
        if (!(at.x() >= 0 && at.x() <= 1 && at.y() >= low && at.y() <= high))
            refuse(key, "a point lies outside of the block", "give shares of the block");
    }
    return points;
}

Tag RowReader::status() const {
    const std::string word = text("status");
    if (word == "published") return Tag::published;
    if (word == "memory") return Tag::memory;
    refuse("status", "\"" + word + "\" is no status of a source", "write \"published\" or \"memory\"");
}

void RowReader::read_common(SourcedRow& row) const {
    row.id = text("id");
    row.name = text("name");
    row.source = text("source");
    row.status = status();
    row.note = text_or("note", "");
    if (const auto found = row_.find("cautions"); found != row_.end()) {
        if (!found->is_array()) refuse("cautions", "this is no list", "write the codes in brackets");
        for (const Json& code : *found) {
            if (!code.is_string()) refuse("cautions", "a caution's code is no text", "write it in quotes");
            row.cautions.push_back(code.get<std::string>());
        }
    }
}

void read_rows(std::string_view json, const std::function<void(const RowReader&)>& read) {
    const Json table = Json::parse(json, nullptr, false);
    if (table.is_discarded())
        throw Problem(Exit::could_not, "-", "the table is not JSON", "look for a missing comma or quote");
    const auto rows = table.find("rows");
    if (rows == table.end() || !rows->is_array())
        throw Problem(Exit::could_not, "/rows", "the table has no list of rows", "put them under \"rows\"");
    for (std::size_t i = 0; i < rows->size(); ++i)
        read(RowReader((*rows)[i], "/rows/" + std::to_string(i)));
}

} // namespace rampwright
