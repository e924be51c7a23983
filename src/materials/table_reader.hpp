#pragma once

#include <rampwright/core/json.hpp>
#include <rampwright/materials/materials.hpp>

#include <functional>
#include <string_view>

namespace rampwright {

/// One row of a table under validation: every access that finds something missing or out of bounds throws
/// Problem with the row's JSON pointer.
class RowReader {
public:
    RowReader(const Json& row, std::string pointer);

    std::string text(const char* key) const;
    std::string text_or(const char* key, std::string otherwise) const;

    /// The number of the one key `name` + unit ending ("density_kg_m3"), in SI. Above zero.
    double positive(std::string_view name, Quantity quantity) const;
    /// Value and "sigma", with a unit of the same quantity, both above zero.
    Uncertain positive_uncertain(std::string_view name, Quantity quantity) const;
    /// The same for a value that may be zero.
    Uncertain uncertain(std::string_view name, Quantity quantity) const;
    bool has(std::string_view name, Quantity quantity) const;
    std::vector<double> lengths(const char* key) const;
    /// An outline of at least three points [a, b] or [a, b, "smooth"]; a from 0 to 1, b from `low` to `high`.
    std::vector<PlanPoint> outline(const char* key, double low, double high) const;

    /// Id, name, source, status, cautions, note.
    void read_common(SourcedRow& row) const;
    Tag status() const;

    [[noreturn]] void refuse(std::string_view key, std::string wrong, std::string remedy) const;

private:
    double number(std::string_view name, Quantity quantity) const;
    std::string find_key(std::string_view name, Quantity quantity) const;

    const Json& row_;
    std::string pointer_;
};

/// Calls `read` for each of the table's rows. Throws Problem where the text is no table.
void read_rows(std::string_view json, const std::function<void(const RowReader&)>& read);

} // namespace rampwright
