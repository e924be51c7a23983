#pragma once

#include "session/session.hpp"

#include <optional>
#include <span>
#include <string>

namespace rampwright::ui {

/// One value on a slip, in words. `pointer` may begin with "@" for the car on the sheet, and name a wheel
/// as "@/wheels/front-left/...", found by its corner. Texts are source texts of the context "Fields".
struct FieldSpec {
    const char* pointer;
    const char* label;
    const char* why;
};

/// A titled group of fields.
struct FieldGroup {
    const char* title;
    std::span<const FieldSpec> fields;
};

/// The groups of a step; the tables are in field_tables.cpp.
std::span<const FieldGroup> scale_fields();
std::span<const FieldGroup> shape_fields();
std::span<const FieldGroup> roll_fields();
std::span<const FieldGroup> aim_fields();
std::span<const FieldGroup> run_fields();
std::span<const FieldGroup> measured_fields();

/// The JSON pointer a spec stands for now; nothing where the file has no such wheel.
std::optional<std::string> resolve_pointer(const Session& session, const char* pointer);

} // namespace rampwright::ui
