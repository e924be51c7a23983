#pragma once

#include "session/session.hpp"

#include <QString>

#include <optional>
#include <string>

/// One value of the document, found by its JSON pointer; the unit is the one its key names.
namespace rampwright::ui {

struct ValueUnit {
    Quantity quantity = Quantity::plain;
    const Unit* unit = nullptr; ///< of the file; none for a plain number
};

/// The unit of the key a pointer ends in; of the key above for an element of an array and for the ends of a
/// range, "min" and "max".
ValueUnit find_value_unit(const std::string& pointer);

/// The number the file states, SI; nothing where it states none.
std::optional<double> find_number(const Document& document, const std::string& pointer);

/// The default that stands in where the file states nothing, as text with its unit; empty where there is
/// none.
QString assumed_text(const Project& project, const std::string& pointer);

/// The value of a key as text: nothing where the file has none or it is not a string.
std::optional<std::string> find_string(const Document& document, const std::string& pointer);

} // namespace rampwright::ui
